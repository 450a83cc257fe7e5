#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every sentence that counts something has its English for one and for many.

    english_forms.py LUPDATE ROOT

What lupdate finds in app and qml is what crownring_en.ts holds: nothing is missing, nothing is left over. To mend:
lupdate -pluralonly -no-obsolete -locations none app qml -ts app/words/translations/crownring_en.ts, then fill in.
"""
import pathlib
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml


def forms(file):
    """Context and source of each sentence, with its translations; None where one is missing."""
    found = {}
    for context in xml.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            texts = [form.text for form in translation.iter("numerusform")]
            done = translation.get("type") is None and len(texts) == 2 and all(texts)
            found[context.findtext("name"), message.findtext("source")] = texts if done else None
    return found


def main(lupdate, root):
    kept = pathlib.Path(root, "app/words/translations/crownring_en.ts")
    with tempfile.TemporaryDirectory() as folder:
        fresh = pathlib.Path(folder, "fresh.ts")
        shutil.copy(kept, fresh)
        subprocess.run([lupdate, "-silent", "-pluralonly", "-no-obsolete", "-locations", "none", str(pathlib.Path(root, "app")),
                        str(pathlib.Path(root, "qml")), "-ts", str(fresh)], check=True, stderr=subprocess.DEVNULL)
        now, held = forms(fresh), forms(kept)
    wrong = [f"no English forms: {source!r} of {context}" for (context, source), texts in now.items() if not texts]
    wrong += [f"no longer said: {source!r} of {context}" for context, source in held.keys() - now.keys()]
    print("\n".join(wrong) or f"{len(now)} sentences that count, each with its forms")
    return 1 if wrong or len(now) < 5 else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
