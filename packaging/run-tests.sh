#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# From nothing to passed tests on Debian 12: installs what is missing, builds the program with g++ and everything once
# more with clang under the address and undefined-behaviour sanitizers, warnings as errors in both, and runs every test
# under the sanitizers. Tests that kill the program, starve it or load a library into it take the one built by g++.
# What can't be had here (another program to compare with, open data) is skipped and says so.
#   run-tests.sh plain   one build without sanitizers (the dev preset) instead of the two
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
plain=
[ "${1:-}" = plain ] && plain=yes

bash "$top/packaging/install-missing.sh" build run test $([ -n "$plain" ] || echo sanitize)

# An independent program to compare with, where the npm client is at hand; never a reason to fail.
peers="$top/build/peers"
options=(-DWICKBOOK_BUILD_TESTS=ON -DWICKBOOK_FEWER_UNITS=ON)
if command -v npm >/dev/null; then
    [ -d "$peers/node_modules/psychrolib" ] ||
        npm install --silent --no-audit --no-fund --prefix "$peers" psychrolib@1.1.1 >/dev/null 2>&1 ||
        echo "PsychroLib could not be installed: its comparison will be skipped."
    [ -d "$peers/node_modules/psychrolib" ] && options+=("-DWICKBOOK_PSYCHROLIB=$peers")
fi

preset=dev
if [ -z "$plain" ]; then
    WICKBOOK_TARGETS="wickbook append_loop bring_forward failing_calls" \
        bash "$top/packaging/build.sh" dev "${options[@]}"
    preset=asan
    options+=("-DWICKBOOK_PLAIN_BUILD=$top/build/dev")
fi
bash "$top/packaging/build.sh" "$preset" "${options[@]}"
cd "$top"
QT_QPA_PLATFORM=offscreen ctest --preset "$preset" --parallel "$(nproc)"
