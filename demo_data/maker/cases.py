# SPDX-License-Identifier: GPL-3.0-or-later
"""The deliberate cases: what is late, open, contradictory or unproven on the day asked, and why."""

from datetime import date, timedelta

from .pool import Pool
from .roster import OPERATORS, ROWS
from .workshop import Workshop
from .world import Item, World

# Fixed visits: registration -> year -> day, or None for a year without one.
FIXED_VISITS: dict[str, dict[int, date | None]] = {
    "QE-OVG": {2025: date(2025, 11, 20), 2026: None},     # in tolerance, but its certificate has run out
    "QE-RYE": {2025: date(2025, 11, 4), 2026: None},      # in tolerance, its certificate still runs
    "QE-OVE": {2025: date(2025, 12, 12)},                 # nearing
    "QE-GLOW": {2025: date(2025, 12, 19)},                # nearing
    "QN131M": {2025: date(2025, 11, 17), 2026: None},     # nearing: good through 30 November
    "QN190R": {2025: date(2025, 10, 14), 2026: None},     # lapsed since 31 October
    "QE-IVY": {2025: date(2025, 7, 16), 2026: None},      # lapsed, flew in the tolerance
    "QE-PEA": {2022: date(2022, 5, 7)},                   # late
    "QE-WILM": {2023: date(2023, 5, 27)},                 # late
    "QN196R": {2024: date(2024, 4, 30)},                  # late
    "QE-LOFT": {2025: None, 2026: None},                  # laid up
}
LAID_UP = {"QE-LOFT": date(2024, 9, 29), "QN190R": date(2026, 10, 11)}
NEW_ENVELOPES = {"QE-OVC": (date(2025, 3, 17), "2025-02-25"), "QE-OVB": (date(2026, 2, 9), "2026-01-19")}


class Cases:
    def __init__(self, world: World, pool: Pool, workshop: Workshop) -> None:
        self.world, self.pool, self.workshop = world, pool, workshop

    def plan(self) -> None:
        plan = self.world.plan
        for registration, (day, made) in NEW_ENVELOPES.items():
            plan(day, lambda on, name=registration, made=made: self._new_envelope(name, on, made))
        plan(date(2023, 6, 15), lambda on: self._over_temperature("QE-OVF", on, "19:40Z", settled=5))
        plan(date(2026, 9, 28), lambda on: self._over_temperature("QN126K", on, "07:15Z", settled=None))
        plan(date(2022, 8, 22), lambda on: self._hard_landing("QE-OAK", on, "19:10Z"))
        plan(date(2024, 5, 13), lambda on: self._hard_landing("QE-OVD", on, "06:50Z"))
        plan(date(2024, 7, 22), self._correction_taken_back)
        plan(date(2026, 4, 20), self._late_certificate)
        plan(date(2025, 8, 20), self._removed_but_not_fitted)
        plan(date(2026, 6, 3), self._fitted_twice)
        plan(date(2026, 5, 6), self._clock_goes_backward)
        plan(date(2026, 11, 12), self._off_and_on_again)

    def settle(self, registration: str) -> None:
        """What is fixed for a balloon as soon as it is in."""
        self.world.balloons[registration].stops = LAID_UP.get(registration)

    def _only(self, registration: str, kind: str) -> Item:
        return self.world.fitted(registration, kind)[0]

    # -- events ------------------------------------------------------------------------------------------------
    def _over_temperature(self, registration: str, day: date, time: str, settled: int | None) -> None:
        """The tell-tale of the evening or morning before; the strength test follows after `settled` days."""
        envelope = self._only(registration, "envelope")
        eve = day - timedelta(days=1)
        office = OPERATORS[envelope.operator].office
        self.world.event(eve, time, office, "over-temperature", "tell-tale: the 127 degree dot is black",
                         item=envelope.id)
        test_day = day + timedelta(days=settled) if settled else date.max
        self.world.ground(envelope.id, test_day)
        self.world.ground(registration, test_day)
        if settled:
            self.world.plan(test_day, lambda on: self._settle_over_temperature(envelope, on))

    def _settle_over_temperature(self, envelope: Item, day: date) -> None:
        self.workshop.special(envelope, "ml.over-temperature", day, "after over-temperature")
        self.workshop.fabric_test(envelope, day, "after over-temperature", always=True)

    def _hard_landing(self, registration: str, day: date, time: str) -> None:
        """Reported for the balloon; all that was fitted is inspected three days later."""
        parts = self.world.fitted(registration, "envelope", "basket", "burner", "cylinder")
        office = OPERATORS[parts[0].operator].office
        self.world.event(day - timedelta(days=1), time, office, "hard-landing", "basket dragged over a field wall",
                         balloon=registration)
        later = day + timedelta(days=3)
        for item in parts:
            self.world.ground(item.id, later)
        self.world.ground(registration, later)

        def inspect(on: date) -> None:
            for item in parts:
                self.workshop.special(item, "ml.special-inspection", on, "after hard landing")
                self.workshop.inspect(item, on, "after hard landing", stated=item.kind == "basket")
        self.world.plan(later, inspect)

    # -- a new envelope under an old registration --------------------------------------------------------------
    def _new_envelope(self, registration: str, day: date, made: str) -> None:
        row = next(row for row in ROWS if row.registration == registration)
        old, inspector = self._only(registration, "envelope"), OPERATORS[row.operator].inspectors[0]
        self.world.remove(old, day, inspector, time="09:00Z", note="fabric spent, kept for parts")
        old.set_aside = True
        new = self.pool.new_envelope(row, day, made, 0)
        self.world.fit(new, registration, day, inspector, time="10:00Z")
        self.pool.history([new], day, None)
        self.world.ground(registration, day)

    # -- paper that was put right --------------------------------------------------------------------------------
    def _correction_taken_back(self, day: date) -> None:
        """A correction of the wrong flight, voided the next week: the first figure counts again."""
        flight = self.world.journal.last_of("flt-QE-HFB-2024-07")
        fix = self.world.journal.add("entry.corrected", f"fix-{flight}", day, by="office Harrowfell", replaces=flight,
                                     **{"with": {"minutes": 95}})
        self.world.journal.add("entry.voided", f"void-{fix}", day + timedelta(days=6), by="office Harrowfell",
                               voids=fix, reason="that sheet belonged to another balloon")

    def _late_certificate(self, day: date) -> None:
        """One certificate is reviewed in spring, apart from the inspection: it outlasts the inspection's due date.
        The fabric of two balloons is pulled on that occasion too."""
        self.world.done(self._only("QE-RYE", "envelope"), "ml.arc-review", day, "insp. 09", ref="HF-R-2026-02")
        for registration in ("QE-RYE", "QN131M"):
            envelope = self._only(registration, "envelope")
            self.workshop.fabric_test(envelope, day, "spring fabric day")
            self.world.ground(envelope.id, day)

    # -- contradictions of the paper ---------------------------------------------------------------------------
    def _removed_but_not_fitted(self, day: date) -> None:
        """A removal of a cylinder that lies on the shelf: it changes nothing."""
        cylinder = self.world.shelf("rides", "cylinder")[0]
        self.world.journal.add("item.removed", f"off-{cylinder.id}-{day.isoformat()}-stray", day, by="office Lakeside",
                               balloon="QE-LAKE", item=cylinder.id, note="from the loading list")

    def _fitted_twice(self, day: date) -> None:
        """A cylinder of one balloon is fitted to a second one, and no removal was written."""
        cylinder = self.world.fitted("QE-OVF", "cylinder")[0]
        self.world.fit(cylinder, "QE-OVA", day, "pilot 03", "tank 5", note="extra fuel for a long flight",
                       unwritten=True)

    def _clock_goes_backward(self, day: date) -> None:
        """A component check states fewer minutes than the release before it did."""
        basket = self._only("QE-HFA", "basket")
        stated = [basket.inspected[1] - 60, basket.clock[1], basket.clock[2]]
        self.world.done(basket, "ml.inspection", day, "insp. 09", stated=stated, ref="component check",
                        note="after new runners")
        self.world.ground("QE-HFA", day)

    def _off_and_on_again(self, day: date) -> None:
        """Removed and refitted on one day without times: by the rules of the record it ends removed."""
        cylinder = self.world.fitted("QE-DAWN", "cylinder")[-1]
        place = cylinder.place
        self.world.fit(cylinder, "QE-DAWN", day, "office Lakeside", place, note="back after a leak check",
                       unwritten=True)
        self.world.remove(cylinder, day, "office Lakeside", note="off for a leak check")
