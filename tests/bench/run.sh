#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds what is measured with optimisation and prints the table of measurements: ratios to a peer or a limit measured
# in the same run, medians of runs taken turn and turn about. A few minutes once it is built; nothing fails because
# it is slow. Further arguments go to measure.py, such as --only window charts, or --out table.md.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
bash "$top/packaging/install-missing.sh" build run test
WICKBOOK_TARGETS=bench bash "$top/packaging/build.sh" release -DWICKBOOK_BUILD_TESTS=ON -DWICKBOOK_FEWER_UNITS=ON

# The independent program to compare with, where the npm client is at hand.
peers="$top/build/peers"
if command -v npm >/dev/null && [ ! -d "$peers/node_modules/psychrolib" ]; then
    npm install --silent --no-audit --no-fund --prefix "$peers" psychrolib@1.1.1 >/dev/null 2>&1 || true
fi
arguments=()
[ -d "$peers/node_modules/psychrolib" ] && arguments+=(--psychrolib "$peers")
exec python3 "$top/tests/bench/measure/measure.py" "$top/build/release" "${arguments[@]}" "$@"
