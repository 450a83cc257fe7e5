#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Alters a record in one place at a time and asks what the program says.

    alterations.py CROWNRINGCTL ENTRIES.jsonl [--count 3000] [--seed 1]

Each alteration is of its own copy: a value changed, a row deleted, inserted, doubled, two values swapped, a trigger or an
index dropped, bits, pages and ends of the file. An alteration is *found* when `verify` says so (exit 1 or 2), *harmless* when
verify says intact and every answer is what it was. Anything else is a fault: silent (an answer changed), a crash, a hang.
Prints a table by kind; exits with 1 when there is a fault. What only the writer of a later entry could tell, the end of a
journal cut off with its chain mended, is not among them: `verify --expect` is for that.
"""
import argparse
import collections
import json
import os
import pathlib
import random
import shutil
import sqlite3
import subprocess
import sys
import tempfile

SUFFIXES = ("", "-wal", "-shm", "-journal")


class Program:
    def __init__(self, path):
        self.path = path

    def ask(self, record, *call):
        """Exit status and standard output; None for a hang."""
        try:
            done = subprocess.run([self.path, "--record", str(record), *call], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                                  timeout=60)
        except subprocess.TimeoutExpired:
            return None, b""
        return done.returncode, done.stdout


def few(entries):
    """The entries about three balloons, and whatever else speaks of nothing but what they speak of."""
    entries = [json.loads(line) for line in pathlib.Path(entries).read_text(encoding="utf-8").splitlines() if line.strip()]
    balloons = [entry["balloon"] for entry in entries if entry["entry"] == "balloon.entered"][:3]
    fitted = collections.defaultdict(set)
    for entry in entries:
        if entry["entry"] == "item.fitted":
            fitted[entry["item"]].add(entry["balloon"])
    items = {item for item, on in fitted.items() if on <= set(balloons)}
    known = {"balloon": set(balloons), "item": items, "inspection": set(), "defect": set(), "person": set(), "id": set()}
    kept = []
    for entry in entries:
        speaks = []
        for key in ("balloon", "item", "kit", "items", "balloons"):
            named = entry.get(key, [])
            sort = "item" if key in ("item", "kit", "items") else "balloon"
            speaks += [(sort, name) for name in ([named] if isinstance(named, str) else named)]
        speaks += [("item", work["item"]) for work in entry.get("work", [])]
        for key, sort in (("inspection", "inspection"), ("defect", "defect"), ("replaces", "id"), ("voids", "id"), ("reading", "id")):
            if key in entry and entry["entry"] not in ("inspection.opened", "defect.found")[:1 if key == "inspection" else 2]:
                speaks.append((sort, entry[key]))
        for key in ("agreed_by", "signatory"):
            if key in entry:
                speaks.append(("person", entry[key]))
        if entry["entry"] == "person.entitled":
            entry.pop("balloons", None)
            speaks = []
        if any(name not in known[sort] for sort, name in speaks if entry["entry"] != "item.entered" or name in items):
            continue
        if entry["entry"] == "item.entered" and entry["item"] not in items:
            continue
        kept.append(entry)
        if "id" in entry:
            known["id"].add(entry["id"])
        if entry["entry"] == "inspection.opened":
            known["inspection"].add(entry["inspection"])
        if entry["entry"] == "defect.found":
            known["defect"].add(entry["defect"])
        if entry["entry"] == "person.entitled":
            known["person"].add(entry["person"])
    return kept, sorted(items), balloons


def answers(program, record, items, balloons):
    """What the program says of the record; None where it hangs or crashes."""
    told = {}
    calls = [("due", "--on", "2026-11-25", "--json"), ("balloons", "--on", "2026-11-25", "--json"),
             ("journal", "--most", "100000", "--json"), ("inspection", "list", "--on", "2026-11-25", "--json"),
             ("rig-up", "--kit", ",".join(items[:6]), "--on", "2026-11-25", "--minutes", "60", "--json")]
    calls += [("clock", item, "--on", "2026-11-25", "--json") for item in items]
    for call in calls:
        status, out = program.ask(record, *call)
        if status not in (0, 1, 2):
            return None
        told[call] = (status, out)
    return told


class Copies:
    def __init__(self, folder, original):
        self.folder, self.original = folder, original

    def make(self):
        for suffix in SUFFIXES:
            pathlib.Path(str(self.folder / "altered") + suffix).unlink(missing_ok=True)
        shutil.copyfile(self.original, self.folder / "altered")
        return self.folder / "altered"


def other(value, dice):
    """A value that is not this one, of its type."""
    if value is None:
        return dice.choice([0, 1, "x"])
    if isinstance(value, int):
        return dice.choice([value + 1, value - 1, 0 if value else 7, -value - 3, 999, 2 ** 62, -2 ** 62])
    if isinstance(value, bytes):
        at = dice.randrange(len(value)) if value else 0
        return bytes([*value[:at], (value[at] ^ 1) if value else 0, *value[at + 1:]])
    choices = [value + "x", "", "x" * 3000, value[::-1] if value[::-1] != value else value + "y", "\u0000", "[", "9999-99-99"]
    if value:
        at = dice.randrange(len(value))
        choices.append(value[:at] + chr((ord(value[at]) ^ 1) or 65) + value[at + 1:])
    return dice.choice([each for each in choices if each != value])


def alter_rows(database, dice):
    """One alteration by SQL, with the guards off. @return its kind, or None where the database itself refuses it"""
    database.isolation_level = None
    guards = database.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
    for name, _ in guards:
        database.execute(f"DROP TRIGGER {name}")
    database.execute("PRAGMA foreign_keys = OFF")
    tables = [name for (name,) in database.execute("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")]
    table = dice.choice([name for name in tables if database.execute(f"SELECT COUNT(*) FROM {name}").fetchone()[0]])
    columns = [(row[1], row[5]) for row in database.execute(f"PRAGMA table_info({table})")]
    names = [name for name, _ in columns]
    rows = database.execute(f"SELECT * FROM {table}").fetchall()
    row = dice.choice(rows)
    where = " AND ".join(f"{name} IS ?" for name in names)
    kind = dice.choice(["change"] * 6 + ["delete", "insert", "double", "swap"])
    try:
        if kind == "change":
            at = dice.randrange(len(names))
            database.execute(f"UPDATE {table} SET {names[at]} = ? WHERE {where}", (other(row[at], dice), *row))
        elif kind == "delete":
            database.execute(f"DELETE FROM {table} WHERE {where}", row)
        elif kind in ("insert", "double"):
            new = list(row)
            keys = [at for at, (_, key) in enumerate(columns) if key]
            at = dice.choice(keys or range(len(names)))
            new[at] = other(new[at], dice) if kind == "insert" or isinstance(new[at], bytes) else (
                new[at] + 1 if isinstance(new[at], int) else str(new[at]) + "2")
            database.execute(f"INSERT INTO {table} VALUES ({','.join('?' * len(new))})", new)
        else:
            second = dice.choice(rows)
            at = dice.randrange(len(names))
            if row[at] == second[at]:
                return None
            database.execute(f"UPDATE {table} SET {names[at]} = ? WHERE {where}", (second[at], *row))
            database.execute(f"UPDATE {table} SET {names[at]} = ? WHERE {where}", (row[at], *second))
    except (sqlite3.Error, OverflowError, ValueError):
        return None
    finally:
        for _, sql in guards:
            database.execute(sql)
    return f"{kind} a row" if kind != "change" else "change a value"


def alter_schema(database, dice):
    database.isolation_level = None
    kind, name = dice.choice(database.execute(
        "SELECT type, name FROM sqlite_master WHERE type IN ('trigger', 'index') AND sql IS NOT NULL").fetchall())
    database.execute(f"DROP {kind} {name}")
    return f"drop a{'n' if kind == 'index' else ''} {kind}"


def alter_file(path, dice):
    content = bytearray(path.read_bytes())
    kind = dice.choice(["flip a bit", "cut the end", "empty a page", "swap two pages"])
    size = int.from_bytes(content[16:18], "big") or 4096
    pages = len(content) // size
    if kind == "flip a bit":
        at = dice.randrange(len(content))
        content[at] ^= 1 << dice.randrange(8)
    elif kind == "cut the end":
        del content[dice.randrange(len(content)):]
    elif kind == "empty a page":
        at = dice.randrange(pages) * size
        content[at:at + size] = bytes(size)
    else:
        a, b = (dice.randrange(pages) * size for _ in range(2))
        content[a:a + size], content[b:b + size] = content[b:b + size], content[a:a + size]
    if bytes(content) == path.read_bytes():
        return None
    path.write_bytes(content)
    return kind


def altered(path, dice):
    way = dice.random()
    if way < 0.3:
        return alter_file(path, dice)
    database = sqlite3.connect(path)
    try:
        return alter_schema(database, dice) if way < 0.33 else alter_rows(database, dice)
    finally:
        database.close()


def main():
    options = argparse.ArgumentParser()
    options.add_argument("program")
    options.add_argument("entries")
    options.add_argument("--count", type=int, default=3000)
    options.add_argument("--seed", type=int, default=1)
    options = options.parse_args()
    dice = random.Random(options.seed)
    program = Program(options.program)
    faults = []
    table = collections.defaultdict(collections.Counter)
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        entries, items, balloons = few(options.entries)
        lines = folder / "entries.jsonl"
        lines.write_text("".join(json.dumps(entry) + "\n" for entry in entries), encoding="utf-8")
        original = folder / "original"
        status, _ = program.ask(original, "post", str(lines))
        if status != 0 or program.ask(original, "verify", "--json")[0] != 0:
            sys.exit("the entries cannot be posted, or do not verify")
        said = answers(program, original, items, balloons)
        copies = Copies(folder, original)
        done = 0
        while done < options.count:
            path = copies.make()
            kind = altered(path, dice)
            if kind is None:
                continue
            done += 1
            kept = folder / "kept"
            shutil.copyfile(path, kept)
            status, out = program.ask(path, "verify", "--json")
            if status in (1, 2):
                verdict = "found"
                if answers(program, path, items, balloons) is None:
                    verdict = "crash"
            elif status != 0:
                verdict = "hang" if status is None else "crash"
            else:
                now = answers(program, path, items, balloons)
                verdict = "crash" if now is None else "harmless" if now == said else "silent"
            table[kind][verdict] += 1
            if verdict not in ("found", "harmless"):
                faults.append((kind, verdict, done))
                keep = os.environ.get("CROWNRING_KEEP_ALTERED")
                if keep:
                    shutil.copyfile(kept, pathlib.Path(keep) / f"{done}-{verdict}.crownring")
    verdicts = ["found", "harmless", "silent", "crash", "hang"]
    print(f"{len(entries)} entries, seed {options.seed}")
    print(f"{'':18}" + "".join(f"{each:>10}" for each in verdicts))
    for kind, counts in sorted(table.items()):
        print(f"{kind:18}" + "".join(f"{counts[each]:10}" for each in verdicts))
    for fault in faults[:20]:
        print("fault:", *fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
