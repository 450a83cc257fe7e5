#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every test has a label of the house: which part of the job it guards.

    labels.py CTEST BUILD_FOLDER
"""
import json
import subprocess
import sys

HOUSE = {"record", "rules", "bench", "fabric", "parts", "forecast", "fleet", "trust", "interface"}


def main(ctest, folder):
    listing = subprocess.run([ctest, "--test-dir", folder, "--show-only=json-v1"], capture_output=True, text=True, check=True)
    tests = json.loads(listing.stdout)["tests"]
    bare = []
    for test in tests:
        labels = {label for each in test.get("properties", []) if each["name"] == "LABELS" for label in each["value"]}
        if not labels & HOUSE:
            bare.append(test["name"])
    if not tests or bare:
        sys.exit(f"of {len(tests)} tests without a label of {sorted(HOUSE)}: {bare}")


if __name__ == "__main__":
    main(*sys.argv[1:])
