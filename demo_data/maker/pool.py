# SPDX-License-Identifier: GPL-3.0-or-later
"""Brings balloons and their items into the record, with what was known of them before."""

from datetime import date, timedelta

from . import FIRST_DAY, stream
from .manual import MAKER, SIZE_OF_ENVELOPE
from .roster import (CYLINDER_TYPES, HOSE_TYPE, INSTRUMENT_TYPE, OPERATORS, PROGRAMMES, ROWS, SIZES, TURN_TAKERS,
                     Row)
from .world import INSPECTED_KINDS, ONE_DAY, Balloon, Item, World

SERIES = {"envelope": ("ENV", 1000), "basket": ("BSK", 200), "burner": ("BRN", 300), "cylinder": ("CYL", 4000),
          "hose": ("HSE", 5000), "instrument": ("INS", 600)}
NOTHING_KNOWN = {"minutes": None, "landings": None, "inflations": None}
WORN_LOT = ("QE-OVB", "QE-OVD", "QE-GLOW", "QN126K")   # envelopes of one fabric lot that ages faster
CLOTH, HEAVY_CLOTH = "Tarnwick 40", "Tarnwick 55"      # invented
LARGE, HEAVY_ROWS = 18, 4                              # panel rows of a large envelope; of them of the heavier cloth
SECOND_HAND = "QE-NEWT"                                # bought without its papers
USUAL_MINUTES = {"rides": 61, "school": 54, "shore": 64}


class Pool:
    def __init__(self, world: World) -> None:
        self.world = world
        self.chance = stream("pool")

    # -- items -------------------------------------------------------------------------------------------------
    def enter_item(self, kind: str, operator: str, day: date, type_name: str | None, made: str | None,
                   hours: float = 0, brought: dict | None = None, note: str | None = None) -> Item:
        """Enters one item with `hours` on its true clock. `brought` replaces what the record says of it."""
        prefix, base = SERIES[kind]
        number = base + self.world.number(prefix)
        office = OPERATORS[operator]
        item = Item(f"{prefix}-{number}", kind, f"TA{number}", operator, office.rules, type_name, made)
        if hours:
            minutes = round(hours * 60) + self.chance.randrange(0, 50)
            flights = round(minutes / USUAL_MINUTES[operator])
            item.clock = [minutes, flights + self.chance.randrange(0, 6), flights]
        known = dict(zip(("minutes", "landings", "inflations"), item.clock)) if hours else None
        self.world.items[item.id] = item
        self.world.journal.add("item.entered", f"enter-{item.id}", day, by=office.office, item=item.id, kind=kind,
                               serial=item.serial, type=type_name, made=made, brought_forward=brought or known,
                               note=note)
        return item

    def enter_cylinder(self, operator: str, day: date, made: str | None = "", hours: float | None = None,
                       brought: dict | None = None) -> Item:
        """`made` "": some year of the last fifteen."""
        if made == "":
            made = f"{self.chance.randrange(day.year - 13, day.year - 1)}-{self.chance.randrange(1, 13):02}"
        if hours is None:
            hours = 10 + 11 * (day.year - int(made[:4])) * self.chance.uniform(0.5, 1.2) if made else 90
        unnamed = self.chance.random() < 0.03
        item = self.enter_item("cylinder", operator, day, None if unnamed else self.chance.choice(CYLINDER_TYPES),
                               made, hours, brought)
        item.test_months = 120 if item.rules == "ml" else 144
        return item

    def _bottom_end(self, row: Row, day: date, known: bool) -> list[tuple[Item, str | None]]:
        """The basket, burner, cylinders and hoses of a balloon, with the places where they are fitted."""
        size, new = SIZES[row.size], row.hours == 0
        year = day.year - (0 if new else self.chance.randrange(2, 9))
        month = f"{year}-{self.chance.randrange(1, 13):02}" if not new else row.made[:7]
        hours = 0 if new else row.hours * self.chance.uniform(1.0, 1.7)
        lost = NOTHING_KNOWN if not known or row.registration == "QE-LOFT" else None
        basket_made = month if known else None
        parts = [(self.enter_item("basket", row.operator, day, size.basket, basket_made, hours, lost), None),
                 (self.enter_item("burner", row.operator, day, size.burner, month, hours * 0.9, lost), None)]
        for tank in range(1, size.cylinders + 1):
            unstamped = not known or self.chance.random() < 0.015
            made = None if unstamped else month if new else ""
            parts.append((self.enter_cylinder(row.operator, day, made, 0 if new else None,
                                              None if known else NOTHING_KNOWN), f"tank {tank}"))
        for hose in range(1, size.hoses + 1):
            made = month if new else f"{self.chance.randrange(2013, 2020)}-{self.chance.randrange(1, 13):02}"
            parts.append((self.enter_item("hose", row.operator, day, HOSE_TYPE, made), f"hose {hose}"))
        if row.size in "HL" and row.operator != "school":
            parts.append((self.enter_item("instrument", row.operator, day, INSTRUMENT_TYPE, month), "panel"))
        return parts

    # -- balloons ----------------------------------------------------------------------------------------------
    def enter_balloon(self, row: Row, day: date) -> None:
        office, known = OPERATORS[row.operator], row.registration != SECOND_HAND
        threshold = self._threshold(row)
        balloon = Balloon(row.registration, row.title, row.operator, office.rules, list(row.operations), row.pace, day,
                          USUAL_MINUTES[row.operator], threshold, tuple(map(int, row.slot.split("-"))), row.host)
        self.world.balloons[row.registration] = balloon
        self.world.journal.add("balloon.entered", f"enter-{row.registration}", day, by=office.office,
                               balloon=row.registration, title=row.title, operations=list(row.operations))
        envelope = self.new_envelope(row, day, row.made, row.hours)
        self.world.fit(envelope, row.registration, day, office.office)
        parts = [] if row.host or row.registration in TURN_TAKERS else self._bottom_end(row, day, known)
        for item, place in parts:
            self.world.fit(item, row.registration, day, office.office, place)
        if day != FIRST_DAY:
            self.adopt(PROGRAMMES[office.rules], day, office.office, row.registration, balloons=[row.registration])
        if known:
            papers = None if row.hours == 0 else self._last_slot(balloon.slot, day)
            self.history([envelope, *(item for item, _ in parts)], day, papers)

    def _last_slot(self, slot: tuple[int, int], day: date) -> date:
        """The yearly visit before `day`."""
        visit = date(day.year, *slot) + timedelta(days=self.chance.randrange(-12, 9))
        return visit if visit < day else date(visit.year - 1, visit.month, min(visit.day, 28))

    def _threshold(self, row: Row) -> int:
        """Minutes since inspection at which the next is booked: most in time, some run into the tolerance."""
        if OPERATORS[row.operator].rules == "us":
            hours = self.chance.uniform(88, 97) if row.operations != ("private",) else 1000
        else:
            hours = self.chance.uniform(88, 97) if self.chance.random() < 0.7 else self.chance.uniform(100, 106)
        return round(hours * 60)

    def new_envelope(self, row: Row, day: date, made: str, hours: float) -> Item:
        worn = row.registration in WORN_LOT and hours > 0 or row.registration == "QE-GLOW"
        partly = row.registration == "QE-IVY"
        half = 1 + self.chance.randrange(1, 8) // 4
        lot = "19-03" if worn else f"{made[2:4]}-{half:02}" if made else None
        known = {"minutes": round(hours * 60), "landings": None, "inflations": None} if partly else None
        item = self.enter_item("envelope", row.operator, day, SIZES[row.size].envelope, made or None, hours, known)
        if lot:
            self._state_lots(item, day, lot, made[2:4])
        if partly:
            item.clock[0] = round(hours * 60)
        item.decay = self.chance.gauss(0.240 if worn else 0.192, 0.010)
        return item

    def _state_lots(self, item: Item, day: date, lot: str, year: str) -> None:
        """Large envelopes have a heavier cloth in the rows at the mouth."""
        rows = SIZE_OF_ENVELOPE[item.type].rows
        heavy = HEAVY_ROWS if rows >= LARGE else 0
        add = self.world.journal.add
        add("fabric.stated", f"lot-{item.id}", day, by=MAKER, item=item.id, lot=lot, fabric=CLOTH,
            first_row=heavy + 1 if heavy else None)
        if heavy:
            add("fabric.stated", f"lot-{item.id}-mouth", day, by=MAKER, item=item.id, lot=f"{year}-H",
                fabric=HEAVY_CLOTH, last_row=heavy)

    def adopt(self, programmes: tuple[str, ...], day: date, by: str, name: str, **whom: list[str]) -> None:
        """Adopts programmes; `whom`: `balloons` or `items`."""
        for programme in programmes:
            self.world.journal.add("programme.adopted", f"adopt-{programme}-{name}", day, by=by,
                                   programme=programme, **whom)

    # -- what the papers said ----------------------------------------------------------------------------------
    def history(self, items: list[Item], day: date, papers: date | None) -> None:
        """The last inspection, certificate and test before the record began, done on the day of the `papers`;
        without papers the items are new, and this is their release."""
        new = papers is None
        done_on = papers or day
        ref = "maker's release" if new else "old logbook"
        for item in items:
            inspector = OPERATORS[item.operator].inspectors[0]
            filed = None if new else day
            if item.kind in INSPECTED_KINDS:
                used = 0 if new else min(item.clock[0], self.chance.randrange(900, 3300))
                figures = [max(0, item.clock[0] - used), max(0, item.clock[1] - used // 60),
                           max(0, item.clock[2] - used // 60)]
                stated = figures if new or self.chance.random() < 0.8 else False
                inspection = "ml.inspection" if item.rules == "ml" else "us.annual"
                self.world.done(item, inspection, done_on, inspector, stated=stated, ref=ref, filed=filed)
                self.world.ground(item.id, done_on)
                item.inspected = (done_on, figures[0])
            if item.kind == "envelope" and item.rules == "ml":
                self.world.done(item, "ml.arc-review", done_on, inspector, ref=ref, filed=filed)
            if item.kind == "cylinder":
                self._old_test(item, day)

    def _old_test(self, item: Item, day: date) -> None:
        """A cylinder that was due before it came into the record had been tested by then."""
        if item.made is None:
            return
        year, month = int(item.made[:4]), int(item.made[5:])
        due = year * 12 + month - 1 + item.test_months
        if due >= day.year * 12:
            return
        tested = date(due // 12, due % 12 + 1, self.chance.randrange(1, 28)) - timedelta(days=30)
        european = item.rules == "ml"
        method = None if european else "external-visual"
        self.world.done(item, "adr.periodic-test" if european else "dot.requalification", tested, "test house 3",
                        ref="stamp", method=method, filed=day)
        item.tested, item.test_months = tested.isoformat()[:7], 120 if european else 60

    # -- the beginning and what was bought later ---------------------------------------------------------------
    def open(self) -> None:
        """Enters what is there on the first day and plans the later arrivals."""
        first = [row for row in ROWS if row.entered == FIRST_DAY.isoformat()]
        for row in first:
            self.enter_balloon(row, FIRST_DAY)
        for rules, programmes in PROGRAMMES.items():
            fleet = [row.registration for row in first if OPERATORS[row.operator].rules == rules]
            self.adopt(programmes, FIRST_DAY, "office Lakeside" if rules == "ml" else "office Kestle Shore",
                       f"fleet-{rules}", balloons=fleet)
        for key, office in OPERATORS.items():
            spares = [self.enter_cylinder(key, FIRST_DAY) for _ in range(office.spare_cylinders)]
            self.history(spares, FIRST_DAY, date(2020, 2, 20))
            if office.rules == "ml":
                cylinders = sorted(item.id for item in self.world.items.values()
                                   if item.kind == "cylinder" and item.operator == key)
                self.adopt(("lpg-adr",), FIRST_DAY, office.office, f"pool-{key}", items=cylinders)
        for row in ROWS:
            if row not in first:
                self.world.plan(date.fromisoformat(row.entered), lambda day, row=row: self.enter_balloon(row, day))
        for key, day, count in (("rides", date(2022, 3, 1), 2), ("shore", date(2024, 2, 6), 2),
                                ("rides", date(2025, 3, 4), 2)):
            self.world.plan(day, lambda day, key=key, count=count: self._buy_cylinders(key, day, count))
        self.world.plan(date(2026, 9, 14), self._found_in_the_barn)

    def _buy_cylinders(self, operator: str, day: date, count: int) -> None:
        made = (day - timedelta(days=75)).isoformat()[:7]
        bought = [self.enter_cylinder(operator, day, made, 0) for _ in range(count)]
        self.history(bought, day, None)
        if OPERATORS[operator].rules == "ml":
            self.adopt(("lpg-adr",), day, OPERATORS[operator].office, f"pool-{operator}-{day.isoformat()}",
                       items=[item.id for item in bought])

    def _found_in_the_barn(self, day: date) -> None:
        """A spare basket, a burner and a cylinder of which nothing is known: unproven in every respect."""
        note = "came with a barn, no papers"
        found = [self.enter_item("basket", "school", day, None, None, 300, NOTHING_KNOWN, note),
                 self.enter_item("burner", "school", day, "Ember single", None, 200, NOTHING_KNOWN, note),
                 self.enter_cylinder("school", day, None, 80, NOTHING_KNOWN)]
        for item in found:
            item.set_aside = True
        self.adopt(("part-ml-hot-air", "lpg-adr"), day + ONE_DAY, "office Harrowfell", "barn",
                   items=[item.id for item in found])
