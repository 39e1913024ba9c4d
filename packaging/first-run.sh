#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# From nothing to the main job on Debian 12: installs what is missing, builds, and opens the window on the
# invented sample station. Without a display the sample station's last full month is checked, reported and
# charted into a folder whose path is printed.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

bash "$top/packaging/install-missing.sh" build run
bash "$top/packaging/build.sh" release -DWICKBOOK_BUILD_TESTS=OFF
wickbook="$top/build/release/app/wickbook"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$wickbook" --sample
fi

out=$(mktemp -d "${TMPDIR:-/tmp}/wickbook-sample-XXXXXX")
month=$(date -d "$(date +%Y-%m-01) -1 month" +%Y-%m)
first="$month-01"
last=$(date -d "$first +1 month -1 day" +%Y-%m-%d)
book="$out/sample.wickbook"
"$wickbook" sample --book "$book"
echo "No display: the invented sample station's month $month instead of the window."
"$wickbook" check --book "$book" --from "$first" --to "$last" | tee "$out/check.txt"
"$wickbook" report --book "$book" --month "$month" --out "$out/$month"
echo
cat "$out/$month/paragraph.txt"
echo
echo "Checked, reported and charted in: $out"
