#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy over every source of core and app, and through them over the headers of the house.

    tidy.py BUILD_FOLDER JOBS

Nearly all of its time goes into walking the headers, anew for each source that it is given, so the sources of a whole wing are
read as one: core and app in a few minutes less than folder by folder. Two sources go together unless they call different things
by one name; what still does not compile together is parted, down to single files. Precompiled headers are left out: what
stands in them would be walked whole. Shadows are the compiler's to find: of two sources read as one each may shadow what is
the other's.
"""
import concurrent.futures
import json
import pathlib
import re
import shlex
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDED = re.compile(r'^#include "(.+)"$', re.M)
# What goes together best, the narrower first; each costs its headers once.
WINGS = ("core/exchange", "core/fabric", "core/store", "core", "app/screen", "app/ctl", "app")
PATHS = ("-I", "-isystem")
ALIAS = re.compile(r"^using (\w+ = [^;]*);", re.M)
TYPE = re.compile(r"^(?:struct|class|enum class|concept) (\w+)", re.M)
VALUE = re.compile(r"^(?:constexpr|const|static|std::|Q)(?:<[^;]*?>|[^(=;{<])*?(\w+)(?: = |\{|;|\[)", re.M)
FUNCTION = re.compile(r"^[A-Za-z_][^(=;{]*?[ *&](\w+)\(([^)]*)\)", re.M)
IN_SOURCE = re.compile(r"^(\S+\.cpp):\d+:\d+: error: .*\[clang-diagnostic-error\]", re.M)


def compiled(build):
    """Each source with what it is compiled with; of sources that are compiled as one, each."""
    for entry in json.loads((build / "compile_commands.json").read_text(encoding="utf-8")):
        file = pathlib.Path(entry["file"])
        texts = INCLUDED.findall(file.read_text(encoding="utf-8")) if file.name.startswith("unity_") else [file]
        for source in map(pathlib.Path, texts):
            yield source, shlex.split(entry["command"])


def wings(build):
    """The sources of each wing with all that any of them needs to be read: include folders, definitions, the language."""
    sources, flags = {wing: set() for wing in WINGS}, {wing: {} for wing in WINGS}
    for source, words in compiled(build):
        folder = source.parent.relative_to(ROOT).as_posix() if source.is_relative_to(ROOT) else ""
        wing = next((each for each in WINGS if f"{folder}/".startswith(f"{each}/")), None)
        if not wing or source.suffix != ".cpp":
            continue
        sources[wing].add(source)
        before = ""
        for word in words:
            if before in PATHS:
                flags[wing][(before, word)] = True
            elif word.startswith(("-D", "-std=")) or (word.startswith("-I") and word != "-I"):
                flags[wing][(word,)] = True
            before = word
        flags[wing][(f"-I{source.parent}",)] = True
    for wing in WINGS:
        if not sources[wing]:
            sys.exit(f"no sources of {wing} in {build}/compile_commands.json")
        yield wing.replace("/", "_"), sorted(sources[wing]), [word for flag in flags[wing] for word in flag]


def own_names(source):
    """What a source calls by a name: types, values, functions by what they take. An alias may stand twice."""
    text = source.read_text(encoding="utf-8")
    names = {}
    for name, taken in FUNCTION.findall(text):
        names |= {name: "a function", name + re.sub(r"\s*\w+(?=,|$)", "", taken): source}
    names |= {alias.split()[0]: alias for alias in ALIAS.findall(text)}
    return names | {name: source for name in TYPE.findall(text) + VALUE.findall(text)}


def together(sources):
    """The sources in groups of which no two call different things by one name of their own."""
    groups = []
    for source in sources:
        names = own_names(source)
        for group, taken in groups:
            if all(taken.get(name, what) == what for name, what in names.items()):
                break
        else:
            group, taken = [], {}
            groups.append((group, taken))
        group.append(source)
        taken.update(names)
    return [group for group, _ in groups]


def parted(sources, said):
    """Those that did not compile from those that did; halves where that is no help."""
    failed = [source for source in sources if str(source) in IN_SOURCE.findall(said)]
    if failed and len(failed) < len(sources):
        return [source for source in sources if source not in failed], failed
    return sources[:len(sources) // 2], sources[len(sources) // 2:]


def tidied(build, name, sources, flags):
    """What clang-tidy says of these sources read as one; empty when it is content."""
    one = build / "tidy" / f"{name}.cpp"
    one.write_text("".join(f'#include "{source}"\n' for source in sources), encoding="utf-8")
    run = subprocess.run(["clang-tidy-14", "-quiet", f"--config-file={ROOT / '.clang-tidy'}", str(one), "--", *flags, "-Wno-shadow"],
                         cwd=build, capture_output=True, text=True, check=False)
    if run.returncode == 0:
        return ""
    if "[clang-diagnostic-error]" in run.stdout and len(sources) > 1:
        print(f"{len(sources)} sources of {name} do not go together:", *re.findall(r".*clang-diagnostic-error.*", run.stdout)[:3], sep="\n  ")
        return "".join(tidied(build, f"{name}_{i}", part, flags) for i, part in enumerate(parted(sources, run.stdout)))
    return run.stdout or run.stderr


def main(build, jobs):
    (build / "tidy").mkdir(exist_ok=True)
    work = []
    for wing, sources, flags in wings(build):
        work += [(f"{wing}_{i}", group, flags) for i, group in enumerate(together(sources))]
    work.sort(key=lambda each: -len(each[1]))
    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        said = list(pool.map(lambda each: tidied(build, *each), work))
    print("".join(said), end="")
    print(f"{sum(len(sources) for _, sources, _ in work)} sources read as {len(work)}")
    return 1 if any(said) else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), int(sys.argv[2])))
