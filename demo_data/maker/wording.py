# SPDX-License-Identifier: GPL-3.0-or-later
"""The wording that is signed: adopted by the workshops as it ships, and confirmed before their first signature."""

import hashlib
import json
from datetime import date
from pathlib import Path

from .journal import Journal
from .papers import licence_of
from .roster import OPERATORS

ASSETS = Path(__file__).resolve().parents[2] / "assets"
ADOPTED, CONFIRMED, SIGNED = date(2026, 11, 2), date(2026, 11, 3), date(2026, 11, 16)
AGAINST = "an invented reading of the rule, for this demonstration; not held against any real one"
# Whose wording, who confirms it and as what; what each begins with.
SHOPS = (("rides", "insp. 14", "organisation-certifying-staff", "part-ml-"),
         ("shore", "insp. K3", "inspection-authorization", "us-"))
LISTS = {"rides": ("hot-air-inspection", "maintenance-work", "pilot-owner-tasks"),
         "shore": ("hot-air-inspection", "maintenance-work", "pilot-owner-tasks")}
BENCH_LIST = "hot-air-inspection"
STATEMENTS = {("part-ml-inspection", "released"): "part-ml-release",
              ("us-annual", "released"): "us-inspection-airworthy",
              ("us-annual", "discrepancies"): "us-inspection-discrepancies"}


def canonical(document: dict) -> str:
    return json.dumps(document, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def digest(document: dict) -> str:
    return hashlib.sha256(canonical(document).encode()).hexdigest()


def text(name: str) -> dict:
    whole = json.loads((ASSETS / "texts" / f"{name}.json").read_text(encoding="utf-8"))
    return {key: whole[key] for key in ("text", "revision", "title", "body", "source")}


def checklists(name: str) -> list[dict]:
    """All its revisions that ship, the oldest first."""
    folder = ASSETS / "checklists"
    files = [*folder.glob(f"former/{name}-*.json"), folder / f"{name}.json"]
    return sorted((json.loads(file.read_text(encoding="utf-8")) for file in files), key=lambda each: each["revision"])


def checklist_on(name: str, day: date) -> dict:
    """The revision that was there on that day."""
    return [each for each in checklists(name) if _written(each) <= day][-1]


def _written(document: dict) -> date:
    day = document["revision"].split(".")[0]  # "2026-11-12.2": the second of that day
    return date.fromisoformat(day) if len(day) == len("2026-11-12") else date.min


def _confirmation(which: str, name: str, document: dict) -> dict:
    return {which: name, "revision": document["revision"], "digest": digest(document)}


def _day(document: dict) -> date:
    """Nobody confirms what is not written yet: a revision that names its day is confirmed from that day on."""
    return max(CONFIRMED, _written(document))


def confirmed(visit: str, outcome: str, opened: date) -> list[dict]:
    """What a signature carries: the statement, then the checklist that the visit was opened with."""
    statement = STATEMENTS.get((visit, outcome))
    _, person, capacity, _ = next(shop for shop in SHOPS if visit.startswith(shop[3]))
    which = [("text", statement, text(statement))] if statement else []
    which.append(("checklist", BENCH_LIST, checklist_on(BENCH_LIST, opened)))
    return [{**_confirmation(*each), "by": person, "licence": licence_of(person, CONFIRMED, capacity),
             "on": _day(each[2]).isoformat(), "against": AGAINST} for each in which]


def adopt_wording(journal: Journal) -> None:
    for operator, person, capacity, prefix in SHOPS:
        names = sorted(path.stem for path in (ASSETS / "texts").glob(f"{prefix}*.json"))
        for name in names:
            journal.add("text.adopted", f"adopted-{name}", ADOPTED, by=OPERATORS[operator].office,
                        organisation=OPERATORS[operator].name, **text(name))
        # Reviews are confirmed by who may review; nobody here may.
        which = [("text", name) for name in names if "-review" not in name]
        confirmed_here = [(kind, name, text(name), f"confirmed-{name}-{operator}") for kind, name in which]
        confirmed_here += [("checklist", name, checklists(name)[-1], f"confirmed-{name}-{operator}")
                           for name in LISTS[operator]]
        before = checklist_on(BENCH_LIST, SIGNED)  # under which the visits of November were signed
        confirmed_here.append(("checklist", BENCH_LIST, before, f"confirmed-{BENCH_LIST}-{before['revision']}-{operator}"))
        for kind, name, document, entry in confirmed_here:
            journal.add("text.confirmed", entry, _day(document), by=person, against=AGAINST, confirmed_by=person,
                        capacity=capacity, licence=licence_of(person, CONFIRMED, capacity),
                        **_confirmation(kind, name, document))
