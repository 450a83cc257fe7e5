#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Shows that one case of must_not_compile.txt does not compile, that its twin does, and why.

    must_not_compile.py CASES NAME COMPILER INCLUDE_FOLDER;INCLUDE_FOLDER;…
"""
import re
import subprocess
import sys


def read_case(path, name):
    """The keys of one case: include, good, bad, says and maybe also."""
    with open(path, encoding="utf-8") as file:
        for block in file.read().split("\n## ")[1:]:
            title, *lines = block.splitlines()
            if title == name:
                return dict(line.split(None, 1) for line in lines if line.strip())
    sys.exit(f"no case '{name}' in {path}")


def compile_expression(compiler, folders, headers, expression):
    source = "".join(f"#include <{header}>\n" for header in headers)
    source += f"using namespace crownring;\nauto made() {{ return ({expression}); }}\n"
    command = [compiler, "-std=c++20", "-fsyntax-only", "-x", "c++", "-"]
    command += [f"-I{folder}" for folder in folders.split(";") if folder]
    return subprocess.run(command, input=source, capture_output=True, text=True, env={"LC_ALL": "C", "PATH": "/usr/bin:/bin"})


def main(cases, name, compiler, folders):
    case = read_case(cases, name)
    good = compile_expression(compiler, folders, [case["include"]], case["good"])
    if good.returncode != 0:
        sys.exit(f"the twin does not compile: {case['good']}\n{good.stderr}")
    headers = [case["include"]] + ([case["also"]] if "also" in case else [])
    bad = compile_expression(compiler, folders, headers, case["bad"])
    if bad.returncode == 0:
        sys.exit(f"this compiles, and must not: {case['bad']}")
    if not re.search(case["says"], bad.stderr):
        sys.exit(f"it does not compile for another reason than '{case['says']}':\n{bad.stderr}")


if __name__ == "__main__":
    main(*sys.argv[1:])
