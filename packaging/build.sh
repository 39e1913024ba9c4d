#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Configures and builds a preset into build/<preset>. Arguments: the preset, then what goes to cmake
# (-DWICKBOOK_BUILD_TESTS=OFF, say). WICKBOOK_TARGETS names what alone is built, where not everything is.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$top"
preset=$1
shift

launcher=()
if command -v ccache >/dev/null; then
    launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
fi
cmake --preset "$preset" "${launcher[@]}" "$@"
read -ra targets <<<"${WICKBOOK_TARGETS:-all}"
cmake --build --preset "$preset" --target "${targets[@]}"
