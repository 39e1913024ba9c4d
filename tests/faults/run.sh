#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The long set of faults: every trial of every fault against the real program and real files, and a table of what became
# of them. Argument: a build folder that has test_faults (build/dev unless given). Some need root (small disks,
# read-only mounts) and say so; the window's need Xvfb and xdotool. Takes about an hour on two cores.
set -uo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=${1:-$top/build/dev}
program=$build/tests/faults/test_faults
[ -x "$program" ] || {
    echo "There is no $program: build it first (cmake --preset dev && cmake --build --preset dev)." >&2
    exit 2
}

ledger=$(mktemp)
said=$(mktemp)
trap 'rm -f "$ledger" "$said"' EXIT
WICKBOOK_LONG_FAULTS=1 WICKBOOK_FAULT_LEDGER=$ledger QT_QPA_PLATFORM=offscreen "$program" "${@:2}" >"$said" 2>&1
code=$?

{
    printf 'fault\ttrials\tacknowledged\tlost\tbooks that verify\tmessage\n'
    cat "$ledger"
} | awk -F'\t' '
    {
        for (i = 1; i <= NF; ++i) {
            if (i == 6) $i = substr($i, 1, 110)
            cell[NR, i] = $i
            if (length($i) > width[i]) width[i] = length($i)
        }
    }
    END {
        for (row = 1; row <= NR; ++row) {
            line = ""
            for (i = 1; i <= 6; ++i) line = line sprintf("%-" width[i] "s  ", cell[row, i])
            sub(/ +$/, "", line)
            print line
        }
    }'
echo
grep -E '^\[  (SKIPPED|FAILED) |Skipped|needs |not installed' "$said" | sort -u
tail -n 3 "$said"
exit $code
