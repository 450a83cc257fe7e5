#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Walks a plan of visits through years that might come, knowing nothing of how it was made.

    walk_plan.py CROWNRINGCTL FLEET.jsonl STATIONS.json --known DAY --from DAY [--months 24] [--risk 0.05] [--paths 10] [--seed 1]

A year to come is made of the fleet's own log: for each balloon and year the days of one of its last years, 52 weeks a year on, so that
Saturdays stay Saturdays. Nothing is flown from Monday to Friday of a visit, nor what the plan's stations file keeps free for nobody. On
the Friday the work that the plan names is posted as done. On each Thursday of a week of visits, and at the end, the due list is asked: a
row that the plan undertook to keep and that is past its limit by then is a lapse, even if a tolerance would bear it. Prints the share of
balloons with a lapse, and each lapse; exits with 1 where the share is larger than the risk by more than three standard errors.
"""
import argparse
import collections
import datetime
import json
import pathlib
import random
import shutil
import subprocess
import sys
import tempfile

PAST = {"lapsed", "spent", "tolerance"}
WEEK = datetime.timedelta(days=7)


def day(text):
    return datetime.date.fromisoformat(text)


class Ctl:
    def __init__(self, program, record):
        self.program, self.record = program, record

    def ask(self, *call, text=None, may_fail=False):
        done = subprocess.run([self.program, "--record", str(self.record), *call], input=text, capture_output=True, text=True)
        if done.returncode != 0 and not may_fail:
            sys.exit(f"{' '.join(call)}: {done.returncode}\n{done.stderr[:2000]}")
        return done


def logs_of(entries, known):
    """By balloon and whole year before `known` (0 the last one) its flights, with the days since that year began."""
    logs = collections.defaultdict(lambda: collections.defaultdict(list))
    first = {}
    for entry in entries:
        if entry["entry"] != "flight.logged" or day(entry["on"]) > known:
            continue
        ago = (known - day(entry["on"])).days
        year, rest = divmod(ago, 364)
        logs[entry["balloon"]][year].append((363 - rest, entry))
        first[entry["balloon"]] = max(first.get(entry["balloon"], 0), ago)
    return {balloon: [years[year] for year in range(min(first[balloon] // 364, 5))] for balloon, years in logs.items()}


def years_to_come(dice, logs, known, until, away):
    for balloon, years in sorted(logs.items()):
        if not years:
            continue
        begins = known + datetime.timedelta(days=1)
        while begins <= until:
            for since, flown in dice.choice(years):
                on = begins + datetime.timedelta(days=since)
                if on <= until and not any(first <= on <= last for first, last in away[balloon]):
                    kept = {key: flown[key] for key in ("entry", "balloon", "minutes", "landings", "inflations", "kit") if key in flown}
                    yield {**kept, "on": on.isoformat()}
            begins += 52 * WEEK


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("ctl", "fleet", "stations"):
        parser.add_argument(name)
    parser.add_argument("--known", required=True)
    parser.add_argument("--from", dest="first", required=True)
    parser.add_argument("--months", default="24")
    parser.add_argument("--risk", default="0.05")
    parser.add_argument("--paths", type=int, default=10)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    known = day(asked.known)
    folder = pathlib.Path(tempfile.mkdtemp())
    record = folder / "fleet.crownring"
    ctl = Ctl(asked.ctl, record)
    ctl.ask("post", asked.fleet)
    entries = [json.loads(line) for line in open(asked.fleet, encoding="utf-8") if line.strip()]
    answer = ctl.ask("plan", "--stations", asked.stations, "--from", asked.first, "--months", asked.months, "--risk", asked.risk, "--json",
                     may_fail=True)
    plan = json.loads(answer.stdout)
    if answer.returncode != 0 or plan.get("unproven"):
        sys.exit(f"there is no plan: {answer.stderr[:500]} gap {plan.get('gap')}")
    print(f"{len(plan['visits'])} visits, cost {plan['cost']:.0f} of {plan['cost_when_due']:.0f} when due, gap {100 * plan['gap']:.2f} %, "
          f"chance {plan['chance']:.4f}, {len(plan['not_kept'])} rows that it says it cannot keep")
    not_kept = {(row["item"], row["requirement"]) for row in plan["not_kept"]} | {
        (row["item"], row["requirement"]) for row in plan["left_out"]}
    away = collections.defaultdict(list)
    work = collections.defaultdict(list)
    for visit in plan["visits"]:
        monday = day(visit["week"])
        friday = monday + datetime.timedelta(days=4)
        away[visit["balloon"]].append((monday, friday))
        for done in visit["covers"]:
            work[friday].append({"entry": "requirement.done", "on": friday.isoformat(), "item": done["item"],
                                 "requirement": done["requirement"], "ref": "as planned",
                                 "signatory": "walk", "licence": "none: made up"})
    first = day(plan["from"])
    until = first + plan["weeks"] * WEEK - datetime.timedelta(days=1)
    before = json.loads(ctl.ask("due", "--on", known.isoformat(), "--json").stdout)["rows"]
    kept = {(row["item"], row["requirement"]) for row in before
            if row.get("balloon") and row["force"] == "mandatory" and row["required"] and row["standing"] not in PAST | {"unproven"}} - not_kept
    balloon_of = {row["item"]: row["balloon"] for row in before if row.get("balloon")}
    balloons = {balloon_of[item] for item, _ in kept}
    dice = random.Random(asked.seed)
    lapses = 0
    for path in range(asked.paths):
        walked = folder / f"path{path}.crownring"
        shutil.copy(record, walked)
        walk = Ctl(asked.ctl, walked)
        flown = list(years_to_come(dice, logs_of(entries, known), known, until, away))
        future = flown + [done for friday in sorted(work) for done in work[friday]]
        walk.ask("post", "-", text="".join(json.dumps(entry) + "\n" for entry in future))
        lapsed = {}
        for on in sorted({friday - datetime.timedelta(days=1) for friday in work} | {until}):
            for row in json.loads(walk.ask("due", "--on", on.isoformat(), "--json").stdout)["rows"]:
                of = (row["item"], row["requirement"])
                if of in kept and row["standing"] in PAST and row["required"]:
                    lapsed.setdefault(balloon_of[row["item"]], (on.isoformat(), *of, row["standing"], row["governs"]))
        lapses += len(lapsed)
        print(f"path {path + 1}: {len(flown)} flights, {len(lapsed)} of {len(balloons)} balloons with a lapse")
        for balloon, what in sorted(lapsed.items()):
            print(f"    {balloon}: {' '.join(map(str, what))}")
        walked.unlink()
    shutil.rmtree(folder)
    walks = asked.paths * len(balloons)
    risk = float(asked.risk)
    print(f"lapses: {lapses} of {walks} balloons' walks, {100 * lapses / max(walks, 1):.2f} % (risk {100 * risk:.1f} %)")
    sys.exit(lapses / max(walks, 1) > risk + 3 * (risk * (1 - risk) / max(walks, 1)) ** 0.5)


main()
