#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the Debian packages of dependencies.txt that are not there yet. Arguments: the groups wanted.
# Says what it would install and stops where it may not (neither root nor sudo).
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)

wanted=()
for group in "$@"; do
    while IFS= read -r name; do
        wanted+=("$name")
    done < <(awk -v group="[$group]" '/^\[/ {inside = ($0 == group); next} inside && NF && !/^#/ {print $1}' \
                 "$here/dependencies.txt")
done

missing=()
for name in "${wanted[@]}"; do
    if [ "$(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null)" != installed ]; then
        missing+=("$name")
    fi
done
[ ${#missing[@]} -eq 0 ] && exit 0

as_root=()
if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
        echo "These packages are missing; ask someone who may install them: ${missing[*]}" >&2
        exit 1
    fi
    as_root=(sudo)
fi
echo "Installing: ${missing[*]}"
export DEBIAN_FRONTEND=noninteractive
"${as_root[@]}" apt-get update -qq
"${as_root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
