#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy over every source of core and app, and through them over the headers of the house.

    tidy.py BUILD_FOLDER JOBS

Most of its time goes into walking the headers, anew for each source that it is given (5 s for a file of the store, 2 s
for one of the rules), so the sources of a folder are read as one: folders in a third of a minute that took their files
one by one two minutes. Where two of them do not go together (each has a name for itself) the folder is halved, down to
single files. Precompiled headers are left out: what stands in them would be walked whole. Shadows are the compiler's to
find: of two sources read as one each may shadow what is the other's.
"""
import collections
import concurrent.futures
import json
import pathlib
import re
import shlex
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
PRECOMPILED = re.compile(r" -Winvalid-pch| (-Xclang )?-include(-pch)? (-Xclang )?\S*cmake_pch\S*")
TOGETHER = re.compile(r"\[clang-diagnostic-error\]")


def folders(build):
    """The sources of core and app by folder and by what they are compiled with."""
    found = collections.defaultdict(list)
    for entry in json.loads((build / "compile_commands.json").read_text(encoding="utf-8")):
        source = pathlib.Path(entry["file"])
        if source.is_relative_to(ROOT) and source.relative_to(ROOT).parts[0] in ("core", "app") and source.suffix == ".cpp":
            words = shlex.split(PRECOMPILED.sub("", entry["command"]))
            begin = next(i for i, word in enumerate(words) if "clang++" in word or "g++" in word)
            flags = words[begin + 1:words.index("-MD") if "-MD" in words else words.index("-o")]
            found[(source.parent, tuple(flags), entry["directory"])].append(source)
    return found


def tidied(folder, flags, directory, sources, build):
    """What clang-tidy says of these sources read as one; empty when it is content."""
    name = "_".join(sources[0].relative_to(ROOT).with_suffix("").parts)
    together = build / "tidy" / f"{name}_and_{len(sources) - 1}_more.cpp"
    together.write_text("".join(f'#include "{source}"\n' for source in sources), encoding="utf-8")
    run = subprocess.run(["clang-tidy-14", "-quiet", f"--config-file={ROOT / '.clang-tidy'}", str(together), "--", *flags,
                          f"-I{folder}", "-Wno-shadow"], cwd=directory, capture_output=True, text=True, check=False)
    if run.returncode == 0:
        return ""
    if TOGETHER.search(run.stdout) and len(sources) > 1:
        half = len(sources) // 2
        return "".join(tidied(folder, flags, directory, part, build) for part in (sources[:half], sources[half:]))
    return run.stdout or run.stderr


def main(build, jobs):
    (build / "tidy").mkdir(exist_ok=True)
    groups = sorted(folders(build).items(), key=lambda group: -len(group[1]))
    if not groups:
        sys.exit(f"no sources of core and app in {build}/compile_commands.json")
    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        said = list(pool.map(lambda group: tidied(*group[0], group[1], build), groups))
    print("".join(said), end="")
    print(f"{sum(len(sources) for _, sources in groups)} sources in {len(groups)} folders")
    return 1 if any(said) else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), int(sys.argv[2])))
