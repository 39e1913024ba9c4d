#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# From nothing to passed tests on Debian 12: installs what is missing, builds with warnings as errors (the dev preset,
# which compiles soonest), and runs every test. What can't be had here (another program to compare with, open data) is
# skipped and says so.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

bash "$top/packaging/install-missing.sh" build run test

# An independent program to compare with, where the npm client is at hand; never a reason to fail.
peers="$top/build/peers"
options=(-DWICKBOOK_BUILD_TESTS=ON -DWICKBOOK_FEWER_UNITS=ON)
if command -v npm >/dev/null; then
    [ -d "$peers/node_modules/psychrolib" ] ||
        npm install --silent --no-audit --no-fund --prefix "$peers" psychrolib@1.1.1 >/dev/null 2>&1 ||
        echo "PsychroLib could not be installed: its comparison will be skipped."
    [ -d "$peers/node_modules/psychrolib" ] && options+=("-DWICKBOOK_PSYCHROLIB=$peers")
fi

bash "$top/packaging/build.sh" dev "${options[@]}"
cd "$top"
QT_QPA_PLATFORM=offscreen ctest --preset dev --parallel "$(nproc)"
