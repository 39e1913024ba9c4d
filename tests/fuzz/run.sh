#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Runs the fuzzers: run.sh SECONDS [TARGET…] builds them with clang and gives each target so many seconds of processor
# time (all targets where none is named), then prints a table. What it learns stays in build/fuzz/learnt/, a finding in
# build/fuzz/findings/. Exit code 1 where something was found.
# WICKBOOK_FUZZ_BUILD names another build folder than build/fuzz; WICKBOOK_FUZZ_AS_BUILT=1 runs what is built there;
# WICKBOOK_FUZZ_TIMEOUT is how long one input may take by the clock (10 s), for a machine with other work.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
here="$top/tests/fuzz"
build=${WICKBOOK_FUZZ_BUILD:-"$top/build/fuzz"}

if [ $# -lt 1 ] || ! [[ $1 =~ ^[0-9]+$ ]]; then
    echo "run.sh needs the processor seconds for each target first, as in: run.sh 60 csv sef" >&2
    exit 2
fi
seconds=$1
shift
targets=("$@")
if [ ${#targets[@]} -eq 0 ]; then
    for folder in "$here"/corpus/*/; do
        targets+=("$(basename "$folder")")
    done
fi

if [ -z "${WICKBOOK_FUZZ_AS_BUILT:-}" ]; then
    launcher=()
    if command -v ccache >/dev/null; then
        launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    fi
    cd "$top"
    cmake --preset fuzz -B "$build" "${launcher[@]}" >/dev/null
    cmake --build "$build" --target "${targets[@]/#/fuzz_}"
fi

# Freed memory is held back for a while to find its use; a quarter of the usual leaves the limit to the target.
export ASAN_OPTIONS=${ASAN_OPTIONS:-quarantine_size_mb=64:detect_leaks=1}
export UBSAN_OPTIONS=${UBSAN_OPTIONS:-print_stacktrace=1}
ticks=$(getconf CLK_TCK)
# User and system time of a process so far, in whole seconds; none once it has gone.
processor_seconds() {
    awk -v ticks="$ticks" '{sub(/^.*\) /, ""); print int(($12 + $13) / ticks)}' "/proc/$1/stat" 2>/dev/null || true
}

shared=/dev/shm
[ -d "$shared" ] || shared=${TMPDIR:-/tmp}
WICKBOOK_FUZZ_FOLDER=$(mktemp -d "$shared/wickbook-fuzz-run-XXXXXX")
export WICKBOOK_FUZZ_FOLDER
trap 'rm -rf "$WICKBOOK_FUZZ_FOLDER"' EXIT

table=()
found=0
for target in "${targets[@]}"; do
    learnt="$build/learnt/$target"
    findings="$build/findings/$target"
    log="$build/$target.log"
    mkdir -p "$learnt" "$findings"
    options=(-rss_limit_mb=512 "-timeout=${WICKBOOK_FUZZ_TIMEOUT:-10}" -max_len=4096 -print_final_stats=1 "-artifact_prefix=$findings/")
    [ -f "$here/dictionaries/$target.dict" ] && options+=("-dict=$here/dictionaries/$target.dict")
    kept=("$here/corpus/$target")
    [ -d "$here/found/$target" ] && kept+=("$here/found/$target")

    "$build/tests/fuzz/fuzz_$target" "${options[@]}" "$learnt" "${kept[@]}" >"$log" 2>&1 &
    fuzzer=$!
    used=0
    while now=$(processor_seconds "$fuzzer") && [ -n "$now" ]; do
        used=$now
        if [ "$used" -ge "$seconds" ]; then
            kill -INT "$fuzzer" 2>/dev/null || true
            break
        fi
        sleep 1
    done
    outcome=0
    wait "$fuzzer" || outcome=$?
    runs=$(awk '/^stat::number_of_executed_units:/ {print $2}' "$log")
    begun=$(awk '/INITED/ && !seen {for (i = 1; i < NF; i++) if ($i == "cov:") {print $(i + 1); seen = 1}}' "$log")
    ended=$(awk '/ cov: / {for (i = 1; i < NF; i++) if ($i == "cov:") last = $(i + 1)} END {print last}' "$log")
    reports=$(find "$findings" -type f | wc -l)
    # 72: ended from outside, as above.
    if [ "$outcome" -ne 0 ] && [ "$outcome" -ne 72 ] && [ "$outcome" -ne 130 ]; then
        reports="$reports (ended by itself, code $outcome: see $log)"
    fi
    [ "$reports" = 0 ] || found=1
    table+=("$(printf '%-10s %10s %12s %8s → %-8s %s' "$target" "$used" "${runs:-?}" "${begun:-?}" "${ended:-?}" "$reports")")
done

printf '%-10s %10s %12s %8s   %-8s %s\n' target "CPU s" executions coverage "" findings
printf '%s\n' "${table[@]}"
exit "$found"
