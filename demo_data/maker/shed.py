# SPDX-License-Identifier: GPL-3.0-or-later
"""What goes on in the shed: cylinders change places, go to the test house, and bottom ends take turns."""

from datetime import date, timedelta

from . import FIRST_DAY, LAST_DAY, stream
from .roster import OPERATORS, ROWS
from .sky import last_inspected_day
from .workshop import Workshop
from .world import ONE_DAY, Item, World

SWAPS_A_MONTH = {"rides": 3, "school": 1, "shore": 2}
TURN_DAYS = ((4, 30), (6, 27), (9, 4))
CATCH_UP_DAYS = ((4, 3), (7, 2))
DOT_METHODS = {"volumetric": 144, "proof": 120, "external-visual": 60}


def test_due(item: Item) -> int | None:
    """The month (counted from year 0) of the next transport test; None where the stamp is unknown."""
    origin = item.tested or item.made
    return int(origin[:4]) * 12 + int(origin[5:7]) - 1 + item.test_months if origin else None


class Shed:
    def __init__(self, world: World, workshop: Workshop) -> None:
        self.world, self.workshop = world, workshop
        self.chance = stream("shed")

    def plan(self, years: range) -> None:
        for year in years:
            self.world.plan(date(year, 2, 15), self.workshop.inspect_shelf)
            self.world.plan(max(date(year - 1, 12, 4), FIRST_DAY), self._call_in)
            for month, dom in CATCH_UP_DAYS:
                self.world.plan(date(year, month, dom), self._catch_up)
            for month in range(4, 11):
                for operator, count in SWAPS_A_MONTH.items():
                    for _ in range(count):
                        day = date(year, month, self.chance.randrange(2, 27))
                        self.world.plan(day, lambda on, key=operator: self._swap(key, on))
            for month, dom in TURN_DAYS:
                for row in ROWS:
                    if row.swaps_with:
                        self.world.plan(date(year, month, dom),
                                        lambda on, row=row: self._take_turns(row.registration, row.swaps_with, on))

    # -- the cylinder pool -------------------------------------------------------------------------------------
    def _spare(self, operator: str, day: date) -> Item | None:
        """A cylinder of the shelf that is inspected and in test for a year, or none."""
        month = day.year * 12 + day.month - 1
        spares = [item for item in self.world.shelf(operator, "cylinder")
                  if not item.set_aside and item.inspected and item.since_inspection() < 70 * 60
                  and last_inspected_day(item, item.rules) > day + timedelta(days=120)
                  and (test_due(item) or 0) > month + 6 and not self.world.is_grounded(item.id, day)]
        return self.chance.choice(spares) if spares else None

    def _swap(self, operator: str, day: date) -> None:
        """A cylinder leaves in the evening; another from the shelf takes its place the next morning."""
        fitted = [item for _, item in sorted(self.world.items.items())
                  if item.kind == "cylinder" and item.operator == operator and item.balloon
                  and not self.world.is_grounded(item.id, day)]
        spare = self._spare(operator, day)
        if not fitted or spare is None or day >= LAST_DAY:
            return
        leaving = self.chance.choice(fitted)
        registration, place, by = leaving.balloon, leaving.place, OPERATORS[operator].office
        spare.set_aside = True                   # promised until tomorrow

        def evening(on: date) -> None:
            spare.set_aside = False
            if leaving.balloon == registration:
                self.world.remove(leaving, on - ONE_DAY, by)
                self.world.fit(spare, registration, on, by, place)
        self.world.plan(day + ONE_DAY, evening)

    def _call_in(self, day: date) -> None:
        """In early winter each cylinder that is due before the next goes to the test house; some are forgotten."""
        horizon = (day.year + 1) * 12 + day.month - 1
        for _, item in sorted(self.world.items.items()):
            due = test_due(item) if item.kind == "cylinder" else None
            if due is None or due >= horizon or item.set_aside:
                continue
            leave = day + timedelta(days=self.chance.randrange(3, 75))
            if leave <= LAST_DAY:
                send = self.chance.random() < 0.86
                self.world.plan(leave, lambda on, item=item, send=send: self._send(item, on, send))

    def _send(self, item: Item, day: date, to_test: bool) -> None:
        """Takes a cylinder off (with a spare in its place) and tests it, or leaves it on the shelf for good."""
        if self.world.is_grounded(item.id, day):
            return
        registration, place, by = item.balloon, item.place, OPERATORS[item.operator].office
        spare = self._spare(item.operator, day)
        if registration:
            why = "to the test house" if to_test else "test due, set aside"
            self.world.remove(item, day, by, time="08:00Z", note=why)
            self.world.ground(registration, day)
            if spare:
                self.world.fit(spare, registration, day, by, place, time="08:20Z")
        item.set_aside = True
        if to_test:
            back = day + timedelta(days=self.chance.randrange(9, 26))
            target = registration if registration and not spare else None
            self.world.plan(back, lambda on: self._tested(item, target, place, on))

    def _tested(self, item: Item, target: str | None, place: str | None, day: date) -> None:
        item.tested = day.isoformat()[:7]
        item.set_aside = target is not None and day < LAST_DAY
        by, ref = "test house 3", f"TH-{day.year}-{self.world.number(f'TH-{day.year}'):03}"
        if item.rules == "ml":
            self.world.done(item, "adr.periodic-test", day, by, ref=ref)
        else:
            method = self.chance.choice(sorted(DOT_METHODS))
            item.test_months = DOT_METHODS[method]
            self.world.done(item, "dot.requalification", day, by, ref=ref, method=method)
        if item.inspected is None or item.inspected[0] < day - timedelta(days=200):
            self.workshop.inspect(item, day, ref, note="missed the yearly visit")

        def refit(on: date) -> None:
            item.set_aside = False
            self.world.fit(item, target, on, OPERATORS[item.operator].office, place)
        if item.set_aside:
            self.world.plan(day + ONE_DAY, refit)

    def _catch_up(self, day: date) -> None:
        """What came to a balloon after its yearly visit is inspected on its own, not to run out before the next."""
        for registration in sorted(self.world.balloons):
            for envelope in self.world.fitted(registration, "envelope"):
                for item in self.world.fitted(registration, "basket", "burner", "cylinder"):
                    if (item.inspected and envelope.inspected and not self.world.is_grounded(item.id, day)
                            and item.inspected[0] < envelope.inspected[0] - timedelta(days=40)):
                        self.workshop.inspect(item, day, "parts check")

    # -- bottom ends that take turns ---------------------------------------------------------------------------
    def _take_turns(self, one: str, other: str, day: date) -> None:
        """The basket, burner, cylinders and hoses go from the balloon that has them to the other one."""
        holder, taker = (one, other) if self.world.fitted(one, "burner") else (other, one)
        parts = [item for item in self.world.fitted(holder) if item.kind != "envelope"]
        if any(self.world.is_grounded(item.id, day) for item in parts):
            return
        by = OPERATORS[self.world.balloons[one].operator].office

        def morning(on: date) -> None:
            for item in parts:
                if item.balloon == holder:
                    place = item.place
                    self.world.remove(item, on - ONE_DAY, by)
                    self.world.fit(item, taker, on, by, place)
        self.world.plan(day + ONE_DAY, morning)
