#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Several hands on one record: is what was acknowledged there, and do all answers equal a fresh replay?

    hands.py CROWNRINGCTL HAND kills [--rounds 2000]           crownringctl killed at random moments of its work
    hands.py CROWNRINGCTL HAND together [--seconds 600]        two programs that hold the record open, and crownringctl
    hands.py CROWNRINGCTL HAND server [--rounds 40]            the same on PostgreSQL, until its server was killed so many times

HAND is crownring_hand. `verify` replays the journal into a database of its own and holds every table against it, so that
"intact" is "equal to a fresh replay". Prints what was done; exits with 1 at the first thing that is not so.
"""
import argparse
import json
import os
import pathlib
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
import time

KINDS = {"E": "envelope", "B": "basket", "U": "burner", "C": "cylinder"}
PROGRAMME = "part-ml-hot-air"


def beginnings():
    entries = [{"entry": "balloon.entered", "on": "2024-01-01", "balloon": f"QE-{number}"} for number in range(1, 6)]
    for letter, kind in KINDS.items():
        for number in range(1, 6):
            entries.append({"entry": "item.entered", "on": "2024-01-01", "item": f"{letter}{number}", "kind": kind,
                            "serial": f"{letter}{number}", "made": "2020-01"})
            entries.append({"entry": "item.fitted", "on": "2024-01-01", "balloon": f"QE-{number}", "item": f"{letter}{number}"})
    entries.append({"entry": "programme.adopted", "on": "2024-01-01", "programme": PROGRAMME, "everything": True})
    return "".join(json.dumps(entry) + "\n" for entry in entries)


class Ctl:
    def __init__(self, program, record):
        self.program, self.record = program, record

    def start(self, *call, text=""):
        process = subprocess.Popen([self.program, "--record", str(self.record), *call], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, text=True)
        process.stdin.write(text)
        process.stdin.close()
        return process

    def run(self, *call, text=""):
        process = self.start(*call, text=text)
        out, errors = process.stdout.read(), process.stderr.read()
        return process.wait(), out, errors


def flights(dice, count):
    return "".join(json.dumps({"entry": "flight.logged", "on": f"2026-{dice.randrange(1, 11):02}-{dice.randrange(1, 29):02}",
                               "balloon": f"QE-{dice.randrange(1, 6)}", "minutes": dice.randrange(10, 120)}) + "\n" for _ in range(count))


def end_of(answer):
    said = json.loads(answer)
    return f"{said['writer']}:{said['sequence']}:{said['hash']}"


def must(holds, *what):
    if not holds:
        print("NOT SO:", *what)
        sys.exit(1)


def verified(ctl, ends):
    """Intact, and all that was acknowledged is there."""
    with tempfile.NamedTemporaryFile("w", suffix=".ends") as file:
        file.write("\n".join(ends) + "\n")
        file.flush()
        status, out, errors = ctl.run("verify", "--json", *(("--expect-from", file.name) if ends else ()))
    must(status == 0, "verify", status, out, errors)
    return json.loads(out)["entries"]


def kills(options, folder):
    dice = random.Random(options.seed)
    ctl = Ctl(options.ctl, folder / "record.crownring")
    status, out, errors = ctl.run("post", "-", "--json", text=beginnings())
    must(status == 0, "the beginnings", errors)
    ends, killed, took = [end_of(out)], 0, {}
    for number in range(options.rounds):
        name, call = dice.choice([("post", ("post", "-", "--json"))] * 5 +
                                 [("rebuild", ("rebuild",)), ("adopt", ("adopt", PROGRAMME, "--all", "--on", "2026-01-01")),
                                  ("backup", ("backup", str(folder / f"copy-{number}.crownring")))])
        text = flights(dice, dice.choice([1, 5, 200])) if name == "post" else ""
        process = ctl.start(*call, text=text)
        began = time.monotonic()
        try:
            process.wait(dice.random() * 1.5 * took.get(name, 1.0))
        except subprocess.TimeoutExpired:
            process.send_signal(signal.SIGKILL)
            killed += 1
        out, errors = process.stdout.read(), process.stderr.read()
        status = process.wait()
        if status != -signal.SIGKILL:
            must(status == 0, name, errors)
            took[name] = 0.8 * took.get(name, 1.0) + 0.2 * (time.monotonic() - began)
        if name == "post" and out.endswith("}\n"):  # told before it died, or alive
            ends.append(end_of(out))
        for left in folder.glob(f"copy-{number}*"):
            if left.name == f"copy-{number}.crownring":
                copied, _, errors = Ctl(options.ctl, left).run("verify", "--json")
                must(copied == 0, "a copy that is there is whole", errors)
            left.unlink()
        if number % 20 == 0:
            verified(ctl, ends)
    entries = verified(ctl, ends)
    print(f"{options.rounds} rounds, {killed} killed, {len(ends)} batches acknowledged, {entries} entries: all there, intact")


def at_work(options, location, folder, seconds):
    """Two programs that hold the record open."""
    return [subprocess.Popen([options.hand, str(location), f"hand-{number}", str(seconds), str(options.seed + number)],
                             stdout=(folder / f"ends-{number}").open("w"), stderr=(folder / f"errors-{number}").open("w"))
            for number in range(2)]


def told(folder, number):
    lines = (folder / f"ends-{number}").read_text().splitlines()
    return [line for line in lines if line]


def third_hand(ctl, dice, ends, away=("busy",)):
    """A "no" is never the answer; what may be is that one cannot ask."""
    status, out, errors = ctl.run(*dice.choice([("post", "-", "--json"), ("due", "--on", "2026-11-25", "--json"), ("verify", "--json")]),
                                  text=flights(dice, 3))
    must(status == 0 or status == 2 and any(word in errors for word in away), status, out, errors)
    if status == 0 and '"hash"' in out:
        ends.append(end_of(out))


def together(options, folder, location=None, away=("busy",), over=None):
    """
    :param over: an event that ends it before its time
    """
    dice = random.Random(options.seed)
    location = location or folder / "record.crownring"
    ctl = Ctl(options.ctl, location)
    status, out, errors = ctl.run("post", "-", "--json", text=beginnings())
    must(status == 0, "the beginnings", errors)
    ends = [end_of(out)]
    began = time.monotonic()
    hands = at_work(options, location, folder, 24 * 3600 if over else options.seconds)
    try:
        acts = 0
        while all(hand.poll() is None for hand in hands) and not (over and over.is_set()):
            third_hand(ctl, dice, ends, away)
            acts += 1
    finally:
        for hand in hands:
            hand.terminate()  # it ends what it is at
    for number, hand in enumerate(hands):
        must(hand.wait() == 0, f"hand {number}", (folder / f"errors-{number}").read_text())
        ends += told(folder, number)
    entries = verified(ctl, ends)
    print(f"{time.monotonic() - began:.0f} s, two hands and {acts} acts of crownringctl, {len(ends)} batches acknowledged, "
          f"{entries} entries: all there, intact")


class Server:
    """A cluster of its own on a Unix socket."""
    BIN = pathlib.Path("/usr/lib/postgresql/15/bin")
    PATIENCE = 300  # seconds in which what was killed recovers

    def __init__(self, folder):
        self.folder = folder
        self.killed = 0
        self.process = None
        shutil.chown(folder, "postgres", "postgres")
        self.run("initdb", "--pgdata", folder / "data", "--username", "postgres", "--auth", "trust", "--encoding", "UTF8", "--no-locale")
        self.start()
        self.run("createdb", "--host", folder, "--username", "postgres", "crownring")

    def launch(self, program, *options, **more):
        return subprocess.Popen([self.BIN / program, *options], cwd="/", user="postgres", group="postgres", extra_groups=[], **more)

    def run(self, *command):
        status = self.launch(*command, stdout=subprocess.DEVNULL).wait()
        must(status == 0, *command, status)

    def start(self):
        """Done when it takes connections again. While a backend of the one that was killed still lives, which notices that only
        when it next waits, a new server ends by itself, and is started again; nothing is removed."""
        until = time.monotonic() + self.PATIENCE
        while time.monotonic() < until:
            if self.process is None or self.process.poll() is not None:
                with (self.folder / "log").open("a") as log:
                    self.process = self.launch("postgres", "-D", self.folder / "data", "-c", "listen_addresses=", "-c",
                                               f"unix_socket_directories={self.folder}", stdout=log, stderr=log)
            if self.launch("pg_isready", "--quiet", "--host", self.folder).wait() == 0:
                return
            time.sleep(0.2)
        must(False, "the server does not start again:", (self.folder / "log").read_text()[-2000:])

    def kill(self):
        self.process.kill()
        self.process.wait()
        self.start()
        self.killed += 1

    def stop(self):
        self.process.send_signal(signal.SIGQUIT)
        self.process.wait()


def server(options, folder):
    """Killed so many times, at random moments of what the hands do, however long it takes."""
    socket = pathlib.Path(tempfile.mkdtemp())
    cluster = Server(socket)
    dice = random.Random(options.seed + 2)
    over = threading.Event()

    def kill_again_and_again():
        pause = options.seconds / (options.rounds + 1)
        try:
            while cluster.killed < options.rounds and not over.wait(pause * dice.uniform(0.5, 1.5)):
                cluster.kill()
                print(f"killed {cluster.killed} times", file=sys.stderr)
            over.wait(pause)
        finally:
            over.set()

    killer = threading.Thread(target=kill_again_and_again)
    killer.start()
    try:
        together(options, folder, f"postgresql:///crownring?host={socket}&user=postgres",
                 ("busy", "lost", "unopened", "server", "store-"), over)
        must(cluster.killed == options.rounds, "the server was killed", cluster.killed, "times only")
        print(f"the server was killed {cluster.killed} times")
    finally:
        over.set()
        killer.join()
        cluster.stop()
        shutil.rmtree(socket)


def main():
    options = argparse.ArgumentParser()
    options.add_argument("ctl")
    options.add_argument("hand")
    options.add_argument("what", choices=["kills", "together", "server"])
    options.add_argument("--rounds", type=int)
    options.add_argument("--seconds", type=int, default=600)
    options.add_argument("--seed", type=int, default=1)
    options = options.parse_args()
    options.rounds = options.rounds or (2000 if options.what == "kills" else 40)
    with tempfile.TemporaryDirectory() as folder:
        {"kills": kills, "together": together, "server": server}[options.what](options, pathlib.Path(folder))


if __name__ == "__main__":
    main()
