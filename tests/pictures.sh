#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Pictures of every place and form over the demo fleet, to be looked at in build-test/pictures, and those of the README
# made anew in their place. The tests that take them fail where QML complains or a form is wider than its sheet.
#   tests/pictures.sh            all of them
#   tests/pictures.sh --readme   only those of the README
set -euo pipefail

cd "$(dirname "${BASH_SOURCE[0]}")/.."
tests="${CROWNRING_BUILD:-build-test}/tests/qml/qml_tests"
export CROWNRING_PICTURES=1
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software TZ=UTC
export ASAN_OPTIONS=detect_stack_use_after_return=0 LSAN_OPTIONS=suppressions="$PWD/tests/leaks_of_others.txt:print_suppressions=0"
unset DISPLAY WAYLAND_DISPLAY

"$tests" every_form picturesOfTheReadme
if [ "${1:-}" != --readme ]; then
    "$tests" every_form fitsItsSheet
    "$tests" window pictures
    "$tests" daily_taps
fi
for picture in next fabric; do
    cp "${tests%/tests/qml/qml_tests}/pictures/readme-$picture.png" "assets/pictures/$picture.png"
done
