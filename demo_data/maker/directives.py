# SPDX-License-Identifier: GPL-3.0-or-later
"""Directives and a bulletin of autumn 2026, the parts of burners that decide whom they bind, and what was answered.
Issuers, numbers, valves and serial numbers are invented."""

from datetime import date

from .journal import Journal
from .roster import OPERATORS
from .world import Item, World

LISTED = date(2026, 11, 5)
FORMER, EFFECTIVE = date(2026, 6, 1), date(2026, 11, 10)
FIRST, LAST = 100, 239                                     # the valves that the directive names
AUTHORITY = {"issuer": "Ovelmere Aviation Office", "issued_by": "authority", "state": "QE"}
MAKER = {"issuer": "Tarnwick Aerostat Works", "issued_by": "manufacturer", "state": "QE"}
SIGNED = {"rides": ("insp. 14", "organisation-certifying-staff"), "school": ("insp. 09", "independent-certifying-staff"),
          "shore": ("insp. K3", "mechanic")}


def valve_of(burner: Item, number: int) -> tuple[str, int]:
    """A single burner has the older pilot valve."""
    return ("PV-1" if burner.type == "Ember single" else "PV-2"), 60 + 7 * number


def issue(journal: Journal) -> None:
    journal.add("directive.issued", "ad-2026-009", FORMER, directive="OAO-AD 2026-009", revision="0",
                title="Pilot valve PV-2: look at the stem seal", **AUTHORITY, effective=FORMER.isoformat(),
                source="OAO-AD 2026-009", applies={"kinds": ["burner"], "serials": [{"from": "TA301", "to": "TA304"}]},
                force="mandatory", first={"by": "2026-07-31"})
    journal.add("directive.issued", "ad-2026-014", EFFECTIVE, directive="OAO-AD 2026-014", revision="0",
                title="Pilot valve PV-2: replace the stem seal", **AUTHORITY, effective=EFFECTIVE.isoformat(),
                source="OAO-AD 2026-014, which rests on TAW-SB 26-03",
                applies={"kinds": ["burner"], "fitted": [{"part": "pilot-valve", "in": "burner", "types": ["PV-2"],
                                                          "serials": [{"from": f"S{FIRST:04}", "to": f"S{LAST:04}"}]}]},
                force="mandatory", first={"before_flight": True}, supersedes=["OAO-AD 2026-009"])
    journal.add("directive.issued", "sb-26-05", EFFECTIVE, directive="TAW-SB 26-05", revision="A",
                title="Crown ring: mark the knots", **MAKER, effective=EFFECTIVE.isoformat(), source="TAW-SB 26-05",
                applies={"kinds": ["envelope"], "types": ["Rowan 105"]}, force="recommended",
                first={"by": "2027-03-31"})


def answer(journal: Journal, world: World) -> None:
    issue(journal)
    burners = [item for _, item in sorted(world.items.items()) if item.kind == "burner"]
    for number, burner in enumerate(burners):
        kind, serial = valve_of(burner, number)
        journal.add("parts.listed", f"parts-{burner.id}", LISTED, by=OPERATORS[burner.operator].office, item=burner.id,
                    parts=[{"part": "pilot-valve", "type": kind, "serial": f"S{serial:04}", "whole": True}], whole=True,
                    source="seen on the valve's plate")
        if burner.serial in ("TA301", "TA302", "TA303", "TA304"):
            journal.add("directive.answered", f"ad-009-{burner.id}", date(2026, 7, 14), by="insp. 14",
                        directive="OAO-AD 2026-009", revision="0", item=burner.id, answer="done",
                        method="paragraph 1: no wear seen", licence="QE.CAO.0031 / 14", ref="OL-WO 26-118")
        if kind == "PV-2" and FIRST <= serial <= LAST:
            person, capacity = SIGNED[burner.operator]
            journal.add("directive.answered", f"ad-014-{burner.id}", EFFECTIVE, time="06:00Z", by=person,
                        directive="OAO-AD 2026-014", revision="0", item=burner.id, answer="done",
                        method="paragraph 2: stem seal replaced", capacity=capacity)
