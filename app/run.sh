#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds Crownring and opens it on the demo fleet. Without a display it prints the demo fleet's
# due list and writes a picture of the screen. Arguments go to the program:  app/run.sh --record my.crownring
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
build="$root/build"
screen="$build/app/program/crownring"
ctl="$build/app/ctl/crownringctl"

"$root/app/install.sh" build run

launcher=()
if command -v ccache >/dev/null; then launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
echo "Building in $build (a few minutes the first time)"
# The sources of a target as one: this tree is for running, not for changing.
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCROWNRING_TESTS=OFF \
    -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=0 "${launcher[@]}" >/dev/null
cmake --build "$build" --target crownring crownringctl

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    if [ $# -eq 0 ]; then set -- --demo; fi
    exec "$screen" "$@"
fi

day="$(date +%F)"
record="$(mktemp -d)/demo.crownring"
trap 'rm -rf "$(dirname "$record")"' EXIT
echo "No display. The demo fleet's due list on $day:"
"$ctl" --record "$record" post "$root/demo_data/fleet.jsonl"
"$ctl" --record "$record" due --on "$day"

picture="$build/next.png"
QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software \
    "$screen" --demo --picture "$picture" --force --place next --size 1280x800
echo "A picture of the screen: $picture"
