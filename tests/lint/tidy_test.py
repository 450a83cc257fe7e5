#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Plants an offence in a little tree whose sources are compiled as one, and sees it found in the source that has it."""
import contextlib
import io
import json
import pathlib
import shutil
import tempfile
import unittest

import tidy

CONTENT = "namespace {{\n\nint {name}() {{\n    return 1;\n}}\n\n}}\n\nint {public}() {{\n    return {name}();\n}}\n"


class Tidy(unittest.TestCase):
    def setUp(self):
        self.root = pathlib.Path(tempfile.mkdtemp()).resolve()
        self.addCleanup(shutil.rmtree, self.root)
        shutil.copy(tidy.ROOT / ".clang-tidy", self.root)
        self.addCleanup(setattr, tidy, "ROOT", tidy.ROOT)
        tidy.ROOT = self.root
        self.build = self.root / "build"
        self.build.mkdir()
        self.sources = [self.root / wing / f"{name}.cpp" for wing in tidy.WINGS for name in ("first", "second")]
        for number, source in enumerate(self.sources):
            self.write(source, f"own{number}", f"public{number}")
        entries = []
        for number, pair in enumerate(zip(self.sources[::2], self.sources[1::2])):
            one = self.build / f"unity_{number}.cxx"
            one.write_text("".join(f'#include "{source}"\n' for source in pair), encoding="utf-8")
            entries.append({"directory": str(self.build), "file": str(one), "command": f"clang++ -std=c++20 -c {one}"})
        (self.build / "compile_commands.json").write_text(json.dumps(entries), encoding="utf-8")

    def write(self, source, name, public):
        source.parent.mkdir(parents=True, exist_ok=True)
        source.write_text(CONTENT.format(name=name, public=public), encoding="utf-8")

    def said(self):
        with contextlib.redirect_stdout(io.StringIO()) as out:
            status = tidy.main(self.build, 2)
        return status, out.getvalue()

    def test_an_orderly_tree(self):
        status, said = self.said()
        self.assertEqual((status, said), (0, f"{len(self.sources)} sources read as {len(tidy.WINGS)}\n"))

    def test_an_offence_in_a_source_that_is_read_with_others(self):
        for number in (1, len(self.sources) - 1):
            source = self.sources[number]
            self.write(source, "Misnamed", f"public{number}")
            status, said = self.said()
            self.write(source, f"own{number}", f"public{number}")
            self.assertEqual(status, 1)
            self.assertIn(f"{source}:3:5: error: invalid case style for function 'Misnamed'", said)

    def test_sources_that_have_one_name_for_two_things(self):
        self.write(self.sources[1], "own0", "public1")
        status, said = self.said()
        self.assertEqual((status, said), (0, f"{len(self.sources)} sources read as {len(tidy.WINGS) + 1}\n"))

    def test_sources_that_do_not_go_together_and_an_offence_in_the_second(self):
        self.write(self.sources[0], "own0", "public0")
        self.sources[0].write_text("#define own1 1 +\n" + self.sources[0].read_text(encoding="utf-8"), encoding="utf-8")
        self.write(self.sources[1], "own1", "Public1")
        status, said = self.said()
        self.assertEqual(status, 1)
        self.assertIn(f"2 sources of {tidy.WINGS[0].replace('/', '_')}_0 do not go together", said)
        self.assertIn(f"{self.sources[1]}:9:5: error: invalid case style for function 'Public1'", said)


if __name__ == "__main__":
    unittest.main()
