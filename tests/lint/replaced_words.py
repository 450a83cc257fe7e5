#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Words of the record's keys that screen and paper replace by the trade's. Prints every sentence with one; exits with 1.

    replaced_words.py ROOT

A key that is named as such stands in quotes of its own: 'capacity'.
"""
import re
import sys

from house_rules import Tree, offence

# What must not be said, and what is said instead.
REPLACED = [
    (r"testers?", "test equipment"),
    (r"carabiners?", "karabiner"),
    (r"barring|bars? (the )?flight", "grounds the balloon"),
    (r"cleared|clearing", "rectified"),
    (r"entitled|entitlements?", "authorised"),
    (r"capacity|capacities", "signing as"),
    (r"undecided", "inconclusive"),
    (r"incomparable", "not comparable"),
    (r"projected", "forecast"),
    (r"put off|postponed", "deferred"),
]
# Other meanings of these words.
ALLOWED = re.compile(r"'[\w.-]+'|[Tt]ester's (mark|document)|water capacity")
TRANSLATED = re.compile(r"\b(qsTr|tr|QT_TRANSLATE_(N_)?NOOP)\((\"\w+\", *)?$")
LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"')


def sentences(tree):
    """Path, line number and text of each literal that is translated or has several words."""
    for path, number, line in tree.lines("app", "qml", suffixes=(".h", ".cpp", ".qml")):
        code = line.split("//")[0]
        if 'R"(' in code or "objectName" in code or "#include" in code:
            continue
        for found in LITERAL.finditer(code):
            if " " in found.group(1).strip() or TRANSLATED.search(code[:found.start()]):
                yield path, number, found.group(1)


def replaced_words(tree):
    for path, number, text in sentences(tree):
        said = ALLOWED.sub("", text)
        for pattern, instead in REPLACED:
            if found := re.search(rf"\b({pattern})\b", said, re.IGNORECASE):
                yield offence(path, number, f"'{found.group(0)}': say '{instead}'")


def main(root):
    tree = Tree(root)
    offences = list(replaced_words(tree))
    said = sum(1 for _ in sentences(tree))
    if said < 500:
        sys.exit(f"only {said} sentences under {root}")
    print(*offences, f"{said} sentences, {len(offences)} offences", sep="\n")
    return 1 if offences else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
