#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Several hands on one record: is what was acknowledged there, and do all answers equal a fresh replay?

    hands.py CROWNRINGCTL HAND kills [--rounds 2000]           crownringctl killed at random moments of its work
    hands.py CROWNRINGCTL HAND together [--seconds 600]        two programs that hold the record open, and crownringctl
    hands.py CROWNRINGCTL HAND server [--rounds 40]            the same on PostgreSQL, its server killed again and again

HAND is crownring_hand. `verify` replays the journal into a database of its own and holds every table against it, so that
"intact" is "equal to a fresh replay". Prints what was done; exits with 1 at the first thing that is not so.
"""
import argparse
import json
import os
import pathlib
import random
import signal
import subprocess
import sys
import tempfile
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


def third_hand(ctl, dice, ends, away=lambda errors: "busy" in errors):
    status, out, errors = ctl.run(*dice.choice([("post", "-", "--json"), ("due", "--on", "2026-11-25", "--json"), ("verify", "--json")]),
                                  text=flights(dice, 3))
    must(status == 0 or away(errors), status, out, errors)
    if status == 0 and '"hash"' in out:
        ends.append(end_of(out))


def together(options, folder, location=None, between=None):
    dice = random.Random(options.seed)
    location = location or folder / "record.crownring"
    ctl = Ctl(options.ctl, location)
    status, out, errors = ctl.run("post", "-", "--json", text=beginnings())
    must(status == 0, "the beginnings", errors)
    ends = [end_of(out)]
    hands = at_work(options, location, folder, options.seconds)
    acts = 0
    while all(hand.poll() is None for hand in hands):
        if between:
            between(ctl, dice, ends)
        else:
            third_hand(ctl, dice, ends)
        acts += 1
    for number, hand in enumerate(hands):
        must(hand.wait() == 0, f"hand {number}", (folder / f"errors-{number}").read_text())
        ends += told(folder, number)
    entries = verified(ctl, ends)
    print(f"{options.seconds} s, two hands and {acts} acts of crownringctl, {len(ends)} batches acknowledged, {entries} entries: "
          "all there, intact")


class Server:
    """A cluster of its own on a Unix socket."""
    BIN = "/usr/lib/postgresql/15/bin"

    def __init__(self, folder):
        self.folder = folder
        subprocess.run(["chown", "postgres", str(folder)], check=True)
        self.call(f"{self.BIN}/initdb", "--pgdata", f"{folder}/data", "--username", "postgres", "--auth", "trust", "--encoding", "UTF8",
                  "--no-locale")
        self.start()
        self.call(f"{self.BIN}/createdb", "--host", str(folder), "--username", "postgres", "crownring")
        self.killed = 0

    def call(self, *command):
        subprocess.run(["runuser", "-u", "postgres", "--", *command], check=True, stdout=subprocess.DEVNULL, cwd="/")

    def start(self):
        self.call(f"{self.BIN}/pg_ctl", "--pgdata", f"{self.folder}/data", "--log", f"{self.folder}/log", "--wait", "start", "--options",
                  f"-c listen_addresses='' -c unix_socket_directories='{self.folder}'")

    def kill(self):
        os.kill(int((self.folder / "data" / "postmaster.pid").read_text().splitlines()[0]), signal.SIGKILL)
        for tried in range(60):  # its backends notice only after a while that it is gone
            time.sleep(0.5)
            try:
                self.start()
                break
            except subprocess.CalledProcessError:
                must(tried < 59, "the server does not start again")
        self.killed += 1


def server(options, folder):
    socket = pathlib.Path(tempfile.mkdtemp())
    cluster = Server(socket)
    options.seconds = options.seconds or 600
    pause = options.seconds / (options.rounds + 1)
    last = [time.monotonic()]

    def between(ctl, dice, ends):
        third_hand(ctl, dice, ends, away=lambda errors: any(word in errors for word in ("busy", "lost", "unopened", "server", "store-")))
        if time.monotonic() - last[0] > pause and cluster.killed < options.rounds:
            cluster.kill()
            last[0] = time.monotonic()

    try:
        together(options, folder, f"postgresql:///crownring?host={socket}&user=postgres", between)
        print(f"the server was killed {cluster.killed} times")
    finally:
        cluster.call(f"{cluster.BIN}/pg_ctl", "--pgdata", f"{socket}/data", "--mode", "immediate", "stop")


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
