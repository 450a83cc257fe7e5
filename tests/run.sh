#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Runs every test of Crownring, from a fresh Debian 12 (as root: installs what is missing) or again in the same tree.
#   tests/run.sh                         build, zones, lint and fuzz; stops at the first that fails
#   tests/run.sh build zones             only these steps
#   tests/run.sh build tidy              clang-tidy, which is no test and takes long; CI asks for it after the others
#   CROWNRING_FUZZ_SECONDS=3600 tests/run.sh fuzz
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
cd "$root"
logs="$root/build-test/logs"
mkdir -p "$logs"

export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
unset DISPLAY WAYLAND_DISPLAY
cores="$(nproc)"
at_once=$((cores + 2)) # tests of the window wait half of their time
fuzz_seconds="${CROWNRING_FUZZ_SECONDS:-10}"

# --- how a step runs: its output goes to a log; the end of it is shown when it fails -------------------------------

step() {
    local name="$1" began=$SECONDS
    shift
    printf '%-44s' "$name"
    # Not in a condition: `set -e` must hold inside the step.
    set +e
    (set -e; "$@") >"$logs/step.log" 2>&1
    local status=$?
    set -e
    cp "$logs/step.log" "$logs/${name//[^A-Za-z0-9]/-}.log"
    if [ $status -ne 0 ]; then
        printf 'FAILED after %d s\n' $((SECONDS - began))
        tail -n 100 "$logs/step.log"
        echo "tests/run.sh: the step '$name' failed; its whole output is in $logs/${name//[^A-Za-z0-9]/-}.log" >&2
        exit 1
    fi
    printf '%5d s\n' $((SECONDS - began))
}

closing_lines() { sed -n '/tests passed/,$p' "$logs/step.log" | sed 's/^/    /'; }

run_ctest() {
    ctest --test-dir "$root/build-test" --output-on-failure --timeout 600 --no-tests=error "$@"
}
# When a window has drawn what is tapped in it hangs on what else the machine does. Its tests, and no others, are asked once more,
# alone, and named: one that passes only then is a fault of the test, and to be mended.
run_tests() {
    run_ctest -j "$at_once" "$@" && return
    local failed
    failed="$(sed 's/^[0-9]*://' "$root/build-test/Testing/Temporary/LastTestsFailed.log")"
    if grep --quiet --invert-match '^qml/' <<<"$failed"; then return 1; fi
    echo "asked once more, alone: ${failed//$'\n'/ }"
    run_ctest -j 1 --rerun-failed
}

# --- a PostgreSQL cluster of our own: on a Unix socket in a temporary folder, gone at the end -----------------------

cluster=""
as_postgres() {
    if [ "$(id -u)" -eq 0 ]; then runuser -u postgres -- "$@"; else "$@"; fi
}
postgres_bin=/usr/lib/postgresql/15/bin
start_postgres() {
    as_postgres "$postgres_bin/initdb" --pgdata "$cluster/data" --username postgres --auth trust --encoding UTF8 \
        --no-locale --no-sync
    as_postgres "$postgres_bin/pg_ctl" --pgdata "$cluster/data" --log "$cluster/log" --wait start \
        --options "-c listen_addresses='' -c unix_socket_directories='$cluster' -c fsync=off"
    as_postgres "$postgres_bin/createdb" --host "$cluster" --username postgres crownring
}
stop_postgres() {
    if [ -z "$cluster" ]; then return; fi
    as_postgres "$postgres_bin/pg_ctl" --pgdata "$cluster/data" --mode immediate stop >/dev/null 2>&1 || true
    rm -rf "$cluster"
}
trap stop_postgres EXIT

postgres() {
    cluster="$(mktemp -d)"
    if [ "$(id -u)" -eq 0 ]; then chown postgres "$cluster"; fi
    step "PostgreSQL: a temporary cluster" start_postgres
    export CROWNRING_TEST_POSTGRES="postgresql:///crownring?host=$cluster&user=postgres"
}

# --- the steps ------------------------------------------------------------------------------------------------------

# One tree serves for all: every test and every fuzz target runs under the address and undefined-behaviour sanitizers
# (tests/sanitize.cmake). The sources of a target are compiled as one: most of the time goes into the headers that all of them
# read. Without tables of lines (a tenth of the time of many files): a report of a sanitizer names functions, and its lines after a
# build with -DCMAKE_CXX_FLAGS_DEBUG="-O0 -gline-tables-only". ccache takes the compiler's word for what a file includes; else a
# cold cache preprocesses all twice.
export CCACHE_DEPEND=1 CCACHE_SLOPPINESS=pch_defines,time_macros
build_all() {
    local launcher=()
    if command -v ccache >/dev/null; then launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
    cmake -S "$root" -B "$root/build-test" -G Ninja "${launcher[@]}" -DCMAKE_C_COMPILER=clang-14 \
        -DCMAKE_CXX_COMPILER=clang++-14 -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=lld-14 -DCMAKE_BUILD_TYPE=Debug \
        -DCMAKE_CXX_FLAGS_DEBUG="-O0" -DCMAKE_COMPILE_WARNING_AS_ERROR=ON -DCROWNRING_SANITIZE=ON \
        -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=0
    cmake --build build-test
}
build() { step "build with sanitizers, warnings are errors" build_all; }

zones() {
    local zone
    if [ -z "$cluster" ]; then postgres; fi
    export ASAN_OPTIONS=detect_stack_use_after_return=0:strict_string_checks=1:malloc_context_size=5:quarantine_size_mb=8
    export LSAN_OPTIONS="suppressions=$root/tests/leaks_of_others.txt:print_suppressions=0"
    export UBSAN_OPTIONS=print_stacktrace=1
    # The first zone runs every test; the others leave out what is slow and what cannot ask for the time, and share the programs
    # that can: a date that goes wrong in one of them goes wrong west or east of Greenwich.
    for zone in UTC America/New_York Pacific/Auckland; do
        local choice=()
        case "$zone" in
        America/*) choice=(--label-exclude 'slow|lint|timeless|east') ;;
        Pacific/*) choice=(--label-exclude 'slow|lint|timeless|west') ;;
        esac
        TZ="$zone" step "tests in $zone" run_tests "${choice[@]}"
        closing_lines
    done
    unset ASAN_OPTIONS LSAN_OPTIONS UBSAN_OPTIONS
}

sources() { find core app tests -name '*.h' -o -name '*.cpp' | sort; }
check_scripts() { shellcheck app/run.sh app/install.sh tests/run.sh .ci/run; }
check_format() { sources | xargs clang-format-14 --dry-run -Werror; }
check_tidy() { python3 -B tests/lint/tidy.py build-test "$cores"; }
lint() {
    step "shellcheck" check_scripts
    step "clang-format" check_format
}
tidy() { step "clang-tidy" check_tidy; }

fuzz_one() {
    local target="$1" found corpora
    found="$(mktemp -d)"
    corpora=("tests/fuzz/corpus/$target")
    if [ "$target" = programme ]; then corpora+=(assets/programmes); fi
    mkdir -p "$logs/findings"
    "build-test/tests/fuzz/${target}_fuzz" -max_total_time="$fuzz_seconds" -timeout=10 -rss_limit_mb=2560 -max_len=16384 \
        -print_final_stats=1 -artifact_prefix="$logs/findings/$target-" "$found" "${corpora[@]}" \
        >"$logs/fuzz-$target.log" 2>&1 || { tail -n 60 "$logs/fuzz-$target.log"; return 1; }
    tail -n 12 "$logs/fuzz-$target.log"
    rm -rf "$found"
}
fuzz_two() {
    fuzz_one "$1" & local first=$!
    fuzz_one "$2" & local second=$!
    wait $first
    wait $second
}
fuzz() {
    step "fuzz: entry, programme, $fuzz_seconds s each" fuzz_two entry programme
    step "fuzz: csv, igc, $fuzz_seconds s each" fuzz_two csv igc
}

app/install.sh build run test
chosen=("$@")
if [ $# -eq 0 ]; then chosen=(build zones lint fuzz); fi
for each in "${chosen[@]}"; do
    case "$each" in
    build | zones | lint | fuzz | tidy) "$each" ;;
    *)
        echo "tests/run.sh: no step '$each'; there are build zones lint fuzz tidy" >&2
        exit 2
        ;;
    esac
done
printf 'All steps passed in %d min %d s.\n' $((SECONDS / 60)) $((SECONDS % 60))
