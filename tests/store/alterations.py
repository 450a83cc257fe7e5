#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Alters a record in one place at a time and asks what the program says.

    alterations.py CROWNRINGCTL ENTRIES.jsonl [--count 3000] [--seed 1]

Each alteration is of its own copy: a value changed, a row deleted, inserted, doubled, two values swapped, a trigger or an
index dropped, the number of the schema with a row, bits, pages and ends of the file; the same of the log of last changes
that stands beside a record in use; the end of the journal cut off with its chain mended. An alteration is *told* when `verify`
says so (exit 1 or 2) and due lists and rig-up checks refuse by themselves, whatever they rest on; *missed* when it takes
`verify --expect` with what was acknowledged last, *harmless* when neither says so and every answer is what it was.
Anything else is a fault: untold (`verify` says so, but a due list or a rig-up check does not), silent (an answer
changed), a crash, a hang. Tells on standard error how far it is, and prints a table by kind, also when it is stopped
(SIGTERM, Ctrl+C); exits with 1 when there is a fault. Only the two last kinds may be missed without --expect: nothing in the
record can tell them.
"""
import argparse
import collections
import hashlib
import json
import os
import pathlib
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

SUFFIXES = ("", "-wal", "-shm", "-journal")


class Program:
    def __init__(self, path, cache):
        self.path = path
        self.last = None  # what was asked last, and how it ended
        # What a sanitizer finds is no answer; by itself it would end the program with 1, as a "no" does.
        self.environment = dict(os.environ, ASAN_OPTIONS=os.environ.get("ASAN_OPTIONS", "") + ":exitcode=99",
                                XDG_CACHE_HOME=cache)

    def ask(self, record, *call):
        """Exit status and standard output; None for a hang."""
        try:
            done = subprocess.run([self.path, "--record", str(record), *call], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                                  timeout=300, env=self.environment)
        except subprocess.TimeoutExpired:
            self.last = (*call[:2], "no answer")
            return None, b""
        self.last = (*call[:2], done.returncode)
        return done.returncode, done.stdout


def few(entries):
    """The entries about three balloons, and whatever else speaks of nothing but what they speak of."""
    entries = [json.loads(line) for line in pathlib.Path(entries).read_text(encoding="utf-8").splitlines() if line.strip()]
    balloons = [entry["balloon"] for entry in entries if entry["entry"] == "balloon.entered"][:3]
    fitted = collections.defaultdict(set)
    for entry in entries:
        if entry["entry"] == "item.fitted" and "balloon" in entry:
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
    return kept, sorted(items), sorted(known["inspection"])[:2]


def answers(program, record, items, inspections, lines="100000"):
    """What the program says of the record; None where it hangs or crashes."""
    told = {}
    calls = [("due", "--on", "2026-11-25", "--json"), ("balloons", "--on", "2026-11-25", "--json"),
             ("journal", "--most", lines, "--json"), ("inspection", "list", "--on", "2026-11-25", "--json"),
             ("directives", "--on", "2026-11-25", "--json"), ("pool", "--on", "2026-11-25", "--json"),
             ("rig-up", "--kit", ",".join(items[:6]), "--on", "2026-11-25", "--minutes", "60", "--json")]
    calls += [("clock", item, "--on", "2026-11-25", "--json") for item in items[:8]]
    calls += [("inspection", "show", inspection, "--on", "2026-11-25", "--json") for inspection in inspections]
    for call in calls:
        status, out = program.ask(record, *call)
        if status not in (0, 1, 2):
            return None
        told[call] = (status, out)
    return told


def beside(path, suffix):
    return pathlib.Path(str(path) + suffix)


class Copies:
    def __init__(self, folder):
        self.folder = folder

    def make(self, original):
        for suffix in SUFFIXES:
            beside(self.folder / "altered", suffix).unlink(missing_ok=True)
        for suffix in ("", "-wal"):
            if beside(original, suffix).exists():
                shutil.copyfile(beside(original, suffix), beside(self.folder / "altered", suffix))
        return self.folder / "altered"


def keep_a_picture(path):
    """As the program does it."""
    content = b"\xff\xd8 no picture, but bytes that are kept as one"
    with sqlite3.connect(path) as database:
        database.execute("INSERT INTO picture VALUES (?, 'image/jpeg', ?)", (hashlib.sha256(content).hexdigest(), content))
    database.close()


def in_use(program, original, folder, lines):
    """The record while somebody has it open: what was posted last stands in the log beside it."""
    used, copy = folder / "used", folder / "in-use"
    shutil.copyfile(original, used)
    reader = sqlite3.connect(used, isolation_level=None)
    reader.execute("BEGIN")
    reader.execute("SELECT COUNT(*) FROM entry").fetchone()
    _, out = program.ask(used, "post", str(lines), "--json")
    for suffix in ("", "-wal"):
        shutil.copyfile(beside(used, suffix), beside(copy, suffix))
    reader.close()
    return copy, acknowledged(out)


def acknowledged(out):
    end = json.loads(out)
    return f"{end['writer']}:{end['sequence']}:{end['hash']}"


def other(value, dice):
    """A value that is not this one, of its type."""
    if value is None:
        return dice.choice([0, 1, "x"])
    if isinstance(value, int):
        return dice.choice([value + 1, value - 1, 0 if value else 7, -value - 3, 999, 2 ** 62, -2 ** 62])
    if isinstance(value, float):
        return dice.choice([value + 0.5, -value - 1.0, 0.0 if value else 7.0, 1e300, float("inf")])
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


def alter_number(database, dice):
    """What may be built otherwise may be accounted for otherwise: nobody turns that off by a number."""
    database.execute(f"PRAGMA user_version = {dice.choice([0, 1, 9, 11, 99, -1])}")
    return alter_rows(database, dice) and "number and a row"


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


def alter_log(path, dice):
    """The log of a record in use."""
    log = beside(path, "-wal")
    content = bytearray(log.read_bytes())
    kind = dice.choice(["flip a bit", "cut the end", "lose it"])
    if kind == "flip a bit":
        at = dice.randrange(len(content))
        content[at] ^= 1 << dice.randrange(8)
    elif kind == "cut the end":
        del content[dice.randrange(len(content)):]
    if kind == "lose it":
        log.unlink()
    else:
        log.write_bytes(content)
    return f"log: {kind}"


def cut_and_mend(program, path, dice):
    """What was written last goes, the chain is made to end before it, and what is computed is computed anew."""
    database = sqlite3.connect(path, isolation_level=None)
    guards = database.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
    for name, _ in guards:
        database.execute(f"DROP TRIGGER {name}")
    count = dice.randrange(1, 10)
    database.execute("DELETE FROM amendment WHERE entry_no > (SELECT MAX(entry_no) FROM entry) - ?", (count,))
    database.execute("DELETE FROM entry WHERE entry_no > (SELECT MAX(entry_no) FROM entry) - ?", (count,))
    database.execute("UPDATE writer SET (last_sequence, last_hash) = (SELECT sequence, hash FROM entry e"
                     " WHERE e.writer_no = writer.writer_no ORDER BY sequence DESC LIMIT 1)")
    for _, sql in guards:
        database.execute(sql)
    database.close()
    program.ask(path, "rebuild")
    return "cut and mend"


def altered(program, path, dice):
    way = dice.random()
    if beside(path, "-wal").exists():
        return alter_log(path, dice)
    if way < 0.04:
        return cut_and_mend(program, path, dice)
    if way < 0.3:
        return alter_file(path, dice)
    database = sqlite3.connect(path)
    try:
        change = alter_schema if way < 0.33 else alter_number if way < 0.36 else alter_rows
        return change(database, dice)
    finally:
        database.close()


def judged(program, path, end, said, items, inspections):
    """What the program makes of an altered record."""
    status, _ = program.ask(path, "verify", "--json")
    if status in (1, 2):
        now = answers(program, path, items, inspections, "200")
        if now is None:
            return "crash"
        tells = [now[call][0] == 2 or b"cannot-say" in now[call][1] for call in now if call[0] in ("due", "rig-up")]
        return "told" if all(tells) else "untold"
    if status != 0:
        return "hang" if status is None else "crash"
    status, _ = program.ask(path, "verify", "--expect", end, "--json")
    if status in (1, 2):
        return "missed"
    now = answers(program, path, items, inspections)
    return "crash" if now is None or status != 0 else "harmless" if now == said else "silent"


def alter_many(program, copies, ends, said, items, inspections, count, dice, table, faults):
    """Into `table` what became of each, into `faults` what should not have."""
    original, used = ends
    began = time.monotonic()
    done = 0
    while done < count:
        each = used if dice.random() < 0.1 else original
        path = copies.make(each)
        kind = altered(program, path, dice)
        if kind is None:
            continue
        done += 1
        kept = [(suffix, beside(path, suffix).read_bytes()) for suffix in SUFFIXES if beside(path, suffix).exists()]
        verdict = judged(program, path, ends[each], said[each], items, inspections)
        if verdict == "missed" and kind != "cut and mend" and not kind.startswith("log:"):
            verdict = "silent"
        table[kind][verdict] += 1
        if verdict not in ("told", "missed", "harmless"):
            faults.append((kind, verdict, done, *program.last))
            keep = os.environ.get("CROWNRING_KEEP_ALTERED")
            for suffix, content in kept if keep else []:
                beside(pathlib.Path(keep) / f"{done}-{verdict}.crownring", suffix).write_bytes(content)
        if done % 250 == 0:
            print(f"{done} alterations, {len(faults)} faults, {time.monotonic() - began:.0f} s", file=sys.stderr)


def main():
    options = argparse.ArgumentParser()
    options.add_argument("program")
    options.add_argument("entries")
    options.add_argument("--count", type=int, default=3000)
    options.add_argument("--seed", type=int, default=1)
    options = options.parse_args()
    dice = random.Random(options.seed)
    faults = []
    table = collections.defaultdict(collections.Counter)
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        program = Program(options.program, str(folder / "cache"))
        entries, items, inspections = few(options.entries)
        lines, later = folder / "entries.jsonl", folder / "later.jsonl"
        lines.write_text("".join(json.dumps(entry) + "\n" for entry in entries), encoding="utf-8")
        balloon = next(entry["balloon"] for entry in entries if entry["entry"] == "balloon.entered")
        flights = [{"entry": "flight.logged", "on": "2026-11-24", "balloon": balloon, "minutes": 60 + more} for more in range(5)]
        later.write_text("".join(json.dumps(flight) + "\n" for flight in flights), encoding="utf-8")
        original = folder / "original"
        status, out = program.ask(original, "post", str(lines), "--json")
        if status != 0:
            sys.exit("the entries cannot be posted")
        keep_a_picture(original)
        used, last = in_use(program, original, folder, later)
        ends = {original: acknowledged(out), used: last}
        said = {}
        for each, end in ends.items():
            copy = Copies(folder).make(each)
            if program.ask(copy, "verify", "--expect", end)[0] != 0:
                sys.exit("what was not altered does not verify")
            said[each] = answers(program, copy, items, inspections)
        signal.signal(signal.SIGTERM, signal.default_int_handler)
        try:
            alter_many(program, Copies(folder), ends, said, items, inspections, options.count, dice, table, faults)
        except KeyboardInterrupt:
            print("stopped before the end")
    verdicts = ["told", "missed", "harmless", "untold", "silent", "crash", "hang"]
    print(f"{len(entries)} entries, seed {options.seed}")
    print(f"{'':18}" + "".join(f"{each:>10}" for each in verdicts))
    for kind, counts in sorted(table.items()):
        print(f"{kind:18}" + "".join(f"{counts[each]:10}" for each in verdicts))
    for fault in faults[:20]:
        print("fault:", *fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
