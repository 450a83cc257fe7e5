#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Shows that no case of must_not_compile.txt about one header compiles, that each one's twin does, and why.

    must_not_compile.py CASES HEADER COMPILER INCLUDE_FOLDER;INCLUDE_FOLDER;…
"""
import pathlib
import re
import subprocess
import sys
import tempfile


def read_cases(path):
    """Yields (name, keys): include, good, bad, says and maybe also."""
    for block in pathlib.Path(path).read_text(encoding="utf-8").split("\n## ")[1:]:
        name, *lines = block.splitlines()
        yield name, dict(line.split(None, 1) for line in lines if line.strip())


class Compiler:
    """Compiles expressions after one header, which is itself compiled once."""

    def __init__(self, program, folders, header, own_folder):
        self._command = [program, "-std=c++20"] + [f"-I{folder}" for folder in folders.split(";") if folder]
        self._header = pathlib.Path(own_folder) / "case.h"
        self._header.write_text(f"#include <{header}>\n", encoding="utf-8")
        made = self._run(["-x", "c++-header", str(self._header), "-o", f"{self._header}.gch"])
        if made.returncode != 0:
            sys.exit(f"{header} does not compile:\n{made.stderr}")

    def _run(self, arguments, source=""):
        return subprocess.run(self._command + arguments, input=source, capture_output=True, text=True,
                              env={"LC_ALL": "C", "PATH": "/usr/bin:/bin"})

    def compile(self, expression, also=None):
        source = f"#include <{also}>\n" if also else ""
        source += f"using namespace crownring;\nauto made() {{ return ({expression}); }}\n"
        return self._run(["-fsyntax-only", "-include", str(self._header), "-x", "c++", "-"], source)


def fault(compiler, case):
    """What is wrong with the case, if anything."""
    good = compiler.compile(case["good"])
    if good.returncode != 0:
        return f"the twin does not compile: {case['good']}\n{good.stderr}"
    bad = compiler.compile(case["bad"], case.get("also"))
    if bad.returncode == 0:
        return f"this compiles, and must not: {case['bad']}"
    if not re.search(case["says"], bad.stderr):
        return f"it does not compile for another reason than '{case['says']}':\n{bad.stderr}"
    return None


def main(path, header, program, folders):
    cases = [(name, case) for name, case in read_cases(path) if case["include"] == header]
    if not cases:
        sys.exit(f"no case about '{header}' in {path}")
    with tempfile.TemporaryDirectory() as folder:
        compiler = Compiler(program, folders, header, folder)
        faults = {name: fault(compiler, case) for name, case in cases}
    for name, said in faults.items():
        print(f"{name}: {said or 'does not compile'}")
    sys.exit(any(faults.values()))


if __name__ == "__main__":
    main(*sys.argv[1:])
