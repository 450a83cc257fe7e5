#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Plants replaced words in sentences and sees each caught, and what is allowed left alone."""
import pathlib
import tempfile
import unittest

import house_rules
import replaced_words


class ReplacedWords(unittest.TestCase):
    def offences(self, name, line):
        with tempfile.TemporaryDirectory() as root:
            path = pathlib.Path(root, name)
            path.parent.mkdir(parents=True)
            path.write_text(line + "\n", encoding="utf-8")
            return list(replaced_words.replaced_words(house_rules.Tree(root)))

    def test_each_is_caught(self):
        for line in ('text: qsTr("Tester")', 'qsTr("a defect was cleared")', 'qsTr("it bars flight")', 'qsTr("Barring")',
                     'qsTr("in that capacity")', 'qsTr("a carabiner is worn")', 'qsTr("who is entitled")'):
            self.assertEqual(1, len(self.offences("qml/next/More.qml", line)), line)
        self.assertEqual(1, len(self.offences("app/words/more.cpp", '    "the test was undecided and "')))

    def test_keys_and_other_meanings_are_left(self):
        for line in ("qsTr(\"say 'capacity' and 'by'\")", 'qsTr("The tester\'s mark")', 'qsTr("% of the water capacity")',
                     '// a tester that barred it', 'row.key == "cleared"', 'objectName: "the tester"'):
            self.assertEqual([], self.offences("qml/next/More.qml", line), line)


if __name__ == "__main__":
    unittest.main()
