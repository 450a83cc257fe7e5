# SPDX-License-Identifier: GPL-3.0-or-later
"""An inspection written down line by line, by the checklist that ships with the program."""

from datetime import date

from . import stream
from .manual import AIR, GRAB, MANUALS, SIZE_OF_ENVELOPE, limits_of, places_of
from .papers import tester_name
from .wording import BENCH_LIST, checklist_on, confirmed
from .workshop import AIR_METHOD, GRAB_METHOD, PROOF_N, air_speed, grab_strength, months_old
from .world import Item, World

REGIMES = {"part-ml-inspection": "part-ml", "us-annual": "us-14cfr"}
DOTS = (77, 82, 88, 93, 99, 104, 110, 116, 121, 127)     # of the tell-tale, degrees Celsius
TESTED_WITH = {"grab-strength": "grab tester", "air-permeability": "air tester", "burner-leak-test": "test gauge",
               "cylinder-leak-test": "test gauge", "hose-leak-test": "test gauge"}
NOT_FITTED = {"why": "not-fitted"}
NOT_THERE = {"envelope.check-flight": {"why": "other", "finding": "not called for: nothing was done that wants one"},
             "envelope.rapid-deflation": NOT_FITTED, "equipment.transponder": NOT_FITTED,
             "envelope.mouth-panels": NOT_FITTED,
             "closing.vent-and-control-lines": {"why": "other", "finding": "no vent, line or pulley was worked on"}}
NO_TURNING_VENTS = ("Sedge 65", "Alder 77")
FIRST_MINUTE, MINUTES_A_LINE, MINUTES_A_PLACE = 7 * 60 + 40, 4, 3


def checklist_of(visit: str, day: date) -> dict:
    """The checklist of that day cut down to the lines of this visit; that of the grab test serves the strength test too."""
    whole = checklist_on(BENCH_LIST, day)
    regime = REGIMES[visit]
    lines = [line for line in whole["lines"] if regime in line["sources"] and visit in line.get("visits", REGIMES)]
    used = {line["section"] for line in lines}
    sections = [section for section in whole["sections"] if section["id"] in used]
    return {**whole, "sections": sections, "lines": lines}


def spread(count: int, gores: int, rows: int) -> list[tuple[int, int]]:
    """Places of fabric tests, gore and row: once around the envelope, two of three in the upper third of the rows."""
    upper = rows // 3
    return [(1 + index * gores // count,
             rows - index // 3 * 2 % upper - index % 3 if index % 3 < 2 else 2 + index // 3 * 7 % (rows - upper - 2))
            for index in range(count)]


class Inspection:
    """One visit to the bench. The lines are settled in the order in which one works, each inspector by a clock of his
    own; what was read, found and put right stands at the minute of its line."""

    def __init__(self, world: World, name: str, visit: str, registration: str, day: date, by: str,
                 work: list[dict]) -> None:
        self.world, self.name, self.visit, self.registration, self.day = world, name, visit, registration, day
        self.operator = world.balloons[registration].operator
        self.items, self.work = world.fitted(registration), work
        self.checklist = checklist_of(visit, day)
        self.chance = stream(f"bench {name}")
        self._clocks: dict[tuple[str, date], int] = {}
        self._now = FIRST_MINUTE
        self.worn: dict[tuple[str, str], int] = {}       # figures that are not those of a sound item, by item
        self.findings: dict[str, str] = {}               # what is noted on a line, by its id
        self._minute_of: dict[tuple[str, str | None], int] = {}
        self._readings: list[dict] = []
        self.write("inspection.opened", f"open-{name}", by, day, items=[item.id for item in self.items], work=work,
                   visit=visit, balloon=registration, checklist=self.checklist, timed=False)

    def write(self, kind: str, entry_id: str, by: str, day: date, *, timed: bool = True, **keys) -> str:
        """An entry of this inspection, at the minute of the line in hand."""
        time = f"{self._now // 60:02}:{self._now % 60:02}Z" if timed else None
        return self.world.journal.add(kind, entry_id, day, time=time, by=by, inspection=self.name, **keys)

    def item(self, kind: str, index: int = 0) -> Item:
        return [item for item in self.items if item.kind == kind][index]

    def lines(self, *sections: str) -> list[tuple[dict, Item | None]]:
        """The lines of these sections, in the order in which one works: by section, item and line."""
        ordered = []
        for section in sections or [part["id"] for part in self.checklist["sections"]]:
            lines = [line for line in self.checklist["lines"] if line["section"] == section]
            ordered += [(line, None) for line in lines if not line["kinds"] and self._calls_for(line)]
            ordered += [(line, item) for item in self.items for line in lines
                        if item.kind in line["kinds"] and self._calls_for(line, item)]
        return ordered

    def _calls_for(self, line: dict, item: Item | None = None) -> bool:
        """Some lines come only when one of certain requirements is part of the work."""
        work = {piece["requirement"] for piece in self.work if item is None or piece["item"] == item.id}
        return not line.get("only_with") or bool(work & set(line["only_with"]))

    # -- the lines -------------------------------------------------------------------------------------------------
    def turn_to(self, by: str, day: date, minutes: int = MINUTES_A_LINE) -> None:
        """The next thing that this inspector does."""
        self._now = self._clocks.get((by, day), FIRST_MINUTE)
        self._clocks[by, day] = self._now + minutes

    def work_through(self, lines: list[tuple[dict, Item | None]], by: str, day: date) -> None:
        """Takes the readings that the manual wants and settles each line."""
        for line, item in lines:
            self.turn_to(by, day)
            absent = self._absent(line, item)
            tester = self._read(line, item, by, day) if item and not absent else None
            self._minute_of[line["id"], item and item.id] = self._now
            self._settle(line, item, by, day, absent, tester)

    def _settle(self, line: dict, item: Item | None, by: str, day: date, absent: dict | None,
                tester: str | None) -> None:
        name = f"{line['id']}-{item.id}" if item else line["id"]
        said = {"state": "not-applicable", **absent} if absent else {"state": "done", "finding": self._seen(line, item)}
        self.write("line.settled", f"line-{self.name}-{name}", by, day, line=line["id"], item=item and item.id,
                   tester=tester, **said)

    def _absent(self, line: dict, item: Item | None) -> dict | None:
        if line["id"] == "envelope.turning-vents" and item.type in NO_TURNING_VENTS:
            return NOT_FITTED
        return NOT_THERE.get(line["id"])

    def _seen(self, line: dict, item: Item | None) -> str | None:
        """What an inspector notes although nothing is wrong."""
        if item and line["id"].endswith(".identification"):
            return f"serial {item.serial}, made {item.made}" if item.made else f"serial {item.serial}"
        if line["id"] == "papers.data":
            return "; ".join(self.manuals())
        return self.findings.get(line["id"])

    def manuals(self) -> list[str]:
        return [MANUALS[kind].cited for kind in MANUALS if any(item.kind == kind for item in self.items)]

    # -- readings --------------------------------------------------------------------------------------------------
    def _read(self, line: dict, item: Item, by: str, day: date) -> str | None:
        """All readings of a line on which the type's manual puts a limit; returns the tester used."""
        tester = None
        for quantity in (asked["quantity"] for asked in line.get("readings", ())):
            limit = limits_of(item.kind).get(quantity) if item.type else None
            if limit and limit.placed:
                self.pull(line, item, by, day, quantity)
            elif limit:
                self._note(line, item, quantity, by, day, unit=limit.unit, **self._figure(quantity, item))
            if limit and quantity in TESTED_WITH:
                tester = self._tester(quantity)
        return tester

    def pull(self, line: dict, item: Item, by: str, day: date, quantity: str = "grab-strength",
             tears: tuple[int, int] | None = None, note: str | None = None) -> dict:
        """Tests the fabric at all places that the manual asks. `tears`: at the place of this number it tears under
        so many newtons, and the testing stops there. Returns the last reading."""
        size = SIZE_OF_ENVELOPE[item.type]
        for number, (gore, row) in enumerate(spread(places_of(item.type, quantity), size.gores, size.rows), 1):
            self.turn_to(by, day, MINUTES_A_PLACE)
            if tears and number == tears[0]:
                return self._note(line, item, quantity, by, day, gore=gore, row=row, unit="N", value=tears[1],
                                  method=GRAB_METHOD, note=note, **GRAB)
            self._note(line, item, quantity, by, day, gore=gore, row=row, **self._fabric(quantity, item, row))
        return self._readings[-1]

    def last_reading(self, quantity: str, item: Item) -> str:
        return [reading["id"] for reading in self._readings
                if (reading["quantity"], reading["item"]) == (quantity, item.id)][-1]

    def _tester(self, quantity: str) -> str | None:
        return tester_name(self.operator, TESTED_WITH[quantity]) if quantity in TESTED_WITH else None

    def _note(self, line: dict, item: Item, quantity: str, by: str, day: date, **keys) -> dict:
        name = f"reading-{self.name}-{len(self._readings) + 1:02}"
        self.write("reading.taken", name, by, day, item=item.id, quantity=quantity, line=line["id"],
                   tester=self._tester(quantity), **keys)
        self._readings.append({"id": name, "item": item.id, "quantity": quantity, **keys})
        return self._readings[-1]

    def _fabric(self, quantity: str, item: Item, row: int) -> dict:
        if quantity == "air-permeability":
            return {"unit": "mm/s", "value": round(air_speed(item, row, self.chance), 1), "method": AIR_METHOD, **AIR}
        strength, proof = round(grab_strength(item, row, self.chance)), PROOF_N[item.rules]
        pulled_through = self.chance.random() < 0.2 or strength < proof
        return {"unit": "N", "method": GRAB_METHOD, **GRAB,
                **({"value": strength} if pulled_through else {"held_at": proof})}

    def _figure(self, quantity: str, item: Item) -> dict:
        """A figure as a sound item of some age gives it."""
        chance = self.chance
        if (quantity, item.id) in self.worn:
            return {"value": self.worn[quantity, item.id]}
        if quantity == "tell-tale":
            turned = max(index for index, dot in enumerate(DOTS) if dot <= max(item.hottest, DOTS[0]))
            return {"value": DOTS[turned], "below": DOTS[turned + 1]}
        if quantity == "relief-valve-age":
            return {"value": months_old(item.made, self.day) // 12 % 9 if item.made else 4}
        draw = {
            "flying-wire-length-difference": lambda: chance.randrange(2, 13),
            "carabiner-wear": lambda: chance.randrange(1, 6) / 10,
            "runner-thickness": lambda: chance.randrange(14, 23),
            "broken-strands": lambda: chance.randrange(0, 2),
            "burner-leak-test": lambda: 800,
            "cylinder-leak-test": lambda: 800,
            "hose-leak-test": lambda: 1100,
            "altimeter-error": lambda: chance.randrange(-9, 10),
            "envelope-thermometer-error": lambda: chance.randrange(-3, 4),
        }
        return {"value": draw[quantity]()}

    # -- what is wrong, and the end --------------------------------------------------------------------------------
    def find(self, number: int, item: Item, line: str, what: str, severity: str, by: str, day: date, **keys) -> str:
        """`line` is where it shows; the entry stands at the minute at which that line was settled."""
        defect = f"{self.name}/{number}"
        self._now = self._minute_of.get((line, item.id), self._now)
        self.write("defect.found", f"found-{self.name}-{number}", by, day, defect=defect, item=item.id, what=what,
                   severity=severity, line=line, **keys)
        return defect

    def close(self, outcome: str, by: str, day: date, statement: str, capacity: str, licence: str,
              limitations: str | None = None, excepted: list[dict] | None = None) -> None:
        self.write("inspection.closed", f"close-{self.name}", by, day, outcome=outcome, statement=statement,
                   signatory=by, capacity=capacity, licence=licence, manuals=self.manuals(), timed=False,
                   limitations=limitations, excepted=excepted, confirmed=confirmed(self.visit, outcome, self.day))
