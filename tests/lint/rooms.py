# SPDX-License-Identifier: GPL-3.0-or-later
"""Who may know whom. A new room is a line here.

Each line is a folder and what it stands on: it may know that and all that those stand on. A line names lines before it, so
that no circle can be written down. Folders inside a room of core know each other as they need, in no circle; those of
app/screen say in their CMakeLists.txt which they use.
"""

STANDS_ON = {
    "core/text": "",
    "core/problem": "core/text",
    "core/writing": "core/problem",
    "core/paper": "core/problem",
    "core/measure": "core/problem",
    "core/civil": "core/measure",
    "core/record": "core/civil",
    "core/registry": "core/record",
    "core/trust": "core/registry",
    "core/rules": "core/registry",
    "core/parts": "core/rules",
    "core/bench": "core/rules core/parts",
    "core/fabric": "core/measure",
    "core/forecast": "core/rules core/fabric",
    "core/sheets": "core/bench core/paper",
    "core/answers": "core/bench core/fabric core/parts core/forecast",
    "core/gate": "core/answers core/trust",
    "core/acts": "core/gate",
    "core/exchange": "core/registry core/fabric",
    "core/store": "core/trust core/writing",
    "app": "",
    "app/words": "core/sheets core/answers core/exchange",
    "app/print": "core/writing app/words",
    "app/ctl": "app/print core/acts core/sheets core/exchange core/store",
    "app/screen": "app/print core/acts core/sheets core/exchange core/store",
    "app/program": "app app/screen",
}

# The tests of a folder see what it does; these see more, for most go through a real record.
TESTS_ALSO = {
    "core/problem": "core/acts core/exchange core/store core/writing",
    "core/writing": "core/store",
    "core/store": "core/acts",
    "core/answers": "core/acts core/store",
    "core/gate": "core/acts core/store",
    "core/acts": "core/exchange core/store",
    "core/sheets": "core/acts core/store",
    "app/print": "core/acts core/store",
    "app/screen": "app/program app/ctl",
    "app/words": "core/acts core/store core/writing",
    "app/ctl": "app/screen",
}

# What a user is told is for the tests of every room: a fault and its sentence.
TOLD_TO_ALL_TESTS = {"core/problem", "app/words"}

# Folders of tests that are called otherwise than what they test.
TESTS_OF = {"": "core/text", "lint": "core/record", "fuzz": "core/acts", "qml": "app/program", "benchmarks": "app/program"}


def known():
    """For each line what it may know, itself among it."""
    found = {}
    for folder, below in STANDS_ON.items():
        found[folder] = {folder}.union(*(found[each] for each in below.split()))
    return found
