# SPDX-License-Identifier: GPL-3.0-or-later
# Completion for bash. It asks the program itself for verbs and options, so it is never behind it.
_wickbook() {
    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD - 1]} program=${COMP_WORDS[0]}
    COMPREPLY=()
    if ((COMP_CWORD == 1)); then
        local verbs
        verbs=$("$program" --help 2>/dev/null | sed -n '/^Subcommands:/,/^$/s/^  \([a-z][a-z-]*\) .*/\1/p')
        case $current in
        -*) mapfile -t COMPREPLY < <(compgen -W "--help --version --sample" -- "$current") ;;
        *)
            mapfile -t COMPREPLY < <(compgen -W "$verbs" -- "$current")
            local file
            while IFS= read -r file; do
                [[ -d $file || $file == *.wickbook ]] && COMPREPLY+=("$file")
            done < <(compgen -f -- "$current")
            compopt -o filenames 2>/dev/null
            ;;
        esac
        return
    fi
    case $current in
    -*)
        local options
        options=$("$program" "${COMP_WORDS[1]}" --help 2>/dev/null | grep -oE -- '(^|[ ,])--[a-z][a-z-]*' |
            tr -d ' ,' | sort -u)
        mapfile -t COMPREPLY < <(compgen -W "$options" -- "$current")
        ;;
    *)
        local file
        while IFS= read -r file; do
            [[ $previous != --book || -d $file || $file == *.wickbook ]] && COMPREPLY+=("$file")
        done < <(compgen -f -- "$current")
        compopt -o filenames 2>/dev/null
        ;;
    esac
}
complete -F _wickbook wickbook
