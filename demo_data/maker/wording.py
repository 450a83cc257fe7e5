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
ADOPTED, CONFIRMED = date(2026, 11, 2), date(2026, 11, 3)
AGAINST = "an invented reading of the rule, for this demonstration; not held against any real one"
# Whose wording, who confirms it and as what; what each begins with.
SHOPS = (("rides", "insp. 14", "organisation-certifying-staff", "part-ml-"),
         ("shore", "insp. K3", "inspection-authorization", "us-"))
LISTS = {"rides": ("hot-air-inspection", "maintenance-work", "pilot-owner-tasks"),
         "shore": ("hot-air-inspection", "maintenance-work", "pilot-owner-tasks")}
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


def checklist(name: str) -> dict:
    return json.loads((ASSETS / "checklists" / f"{name}.json").read_text(encoding="utf-8"))


def _confirmation(which: str, name: str) -> dict:
    document = text(name) if which == "text" else checklist(name)
    return {which: name, "revision": document["revision"], "digest": digest(document)}


def _day(which: str, name: str) -> date:
    """Nobody confirms what is not written yet: a revision that names its day is confirmed from that day on."""
    revision = _confirmation(which, name)["revision"]
    day = revision.split(".")[0]  # "2026-11-12.2": the second of that day
    return max(CONFIRMED, date.fromisoformat(day)) if len(day) == len("2026-11-12") else CONFIRMED


def confirmed(visit: str, outcome: str) -> list[dict]:
    """What a signature carries: the statement, then the checklist."""
    statement = STATEMENTS.get((visit, outcome))
    _, person, capacity, _ = next(shop for shop in SHOPS if visit.startswith(shop[3]))
    which = ([("text", statement)] if statement else []) + [("checklist", "hot-air-inspection")]
    return [{**_confirmation(*each), "by": person, "licence": licence_of(person, CONFIRMED, capacity),
             "on": _day(*each).isoformat(), "against": AGAINST} for each in which]


def adopt_wording(journal: Journal) -> None:
    for operator, person, capacity, prefix in SHOPS:
        names = sorted(path.stem for path in (ASSETS / "texts").glob(f"{prefix}*.json"))
        for name in names:
            journal.add("text.adopted", f"adopted-{name}", ADOPTED, by=OPERATORS[operator].office,
                        organisation=OPERATORS[operator].name, **text(name))
        # Reviews are confirmed by who may review; nobody here may.
        which = [("text", name) for name in names if "-review" not in name]
        for kind, name in which + [("checklist", each) for each in LISTS[operator]]:
            journal.add("text.confirmed", f"confirmed-{name}-{operator}", _day(kind, name), by=person, against=AGAINST,
                        confirmed_by=person, capacity=capacity, licence=licence_of(person, CONFIRMED, capacity),
                        **_confirmation(kind, name))
