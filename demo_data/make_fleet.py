#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the invented demo fleet: fleet.jsonl (one entry a line) and README.md beside this file.

    python3 make_fleet.py            writes both
    python3 make_fleet.py --check    writes nothing; exit 1 when a file differs from what would be written

Python's standard library only; the seed is fixed, so two runs give the same bytes."""

import argparse
import sys
from datetime import timedelta
from pathlib import Path

from maker import FIRST_DAY, LAST_DAY
from maker.cases import FIXED_VISITS, Cases
from maker.check import problems
from maker.components import tell as tell_of_components
from maker.directives import answer
from maker.happenings import happen
from maker.inspections import Inspections
from maker.journal import Journal
from maker.manual import publish
from maker.papers import calibrate, entitle
from maker.plans import plan
from maker.pool import Pool
from maker.roster import ROWS
from maker.shed import Shed
from maker.sky import Sky
from maker.story import readme
from maker.wording import adopt_wording
from maker.workshop import Workshop
from maker.world import World

HERE = Path(__file__).resolve().parent


def live_through() -> Journal:
    """Lives through the six seasons day by day and returns the record of them."""
    journal = Journal()
    world = World(journal)
    pool = Pool(world)
    workshop = Workshop(world, pool)
    sky, shed, cases = Sky(world, workshop), Shed(world, workshop), Cases(world, pool, workshop)

    publish(journal)
    calibrate(journal)
    entitle(journal)
    adopt_wording(journal)
    tell_of_components(journal)
    pool.open()
    shed.plan(range(FIRST_DAY.year, LAST_DAY.year + 1))
    cases.plan()
    Inspections(world, workshop).plan()
    pending = {row.registration for row in ROWS}
    day = FIRST_DAY
    while day <= LAST_DAY:
        for registration in sorted(pending & set(world.balloons)):
            workshop.plan_visits(world.balloons[registration], FIXED_VISITS.get(registration, {}))
            pending.remove(registration)
            cases.settle(registration)
        world.morning(day)
        sky.fly_day(day)
        day += timedelta(days=1)
    answer(journal, world)
    plan(journal, world)
    happen(journal, world)
    return journal


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--check", action="store_true", help="compare with the files instead of writing them")
    check = options.parse_args().check

    journal = live_through()
    found = problems(journal.lines())
    if found:
        print("\n".join(found[:20]), file=sys.stderr)
        return 1
    files = {"fleet.jsonl": "\n".join(journal.lines()) + "\n", "README.md": readme(journal.entries())}
    if check:
        stale = [name for name, text in files.items()
                 if not (HERE / name).exists() or (HERE / name).read_bytes() != text.encode()]
        print("\n".join(f"differs: {name}" for name in stale) or "same bytes")
        return 1 if stale else 0
    for name, text in files.items():
        (HERE / name).write_bytes(text.encode())
    return 0


if __name__ == "__main__":
    sys.exit(main())
