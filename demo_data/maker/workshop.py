# SPDX-License-Identifier: GPL-3.0-or-later
"""The repair station's side: yearly visits, 100-hour inspections, certificates, fabric tests, hoses."""

import math
from collections.abc import Callable
from datetime import date, timedelta
from random import Random

from . import LAST_DAY, stream
from .manual import AIR, GRAB, SIZE_OF_ENVELOPE
from .pool import Pool
from .roster import OPERATORS
from .world import INSPECTED_KINDS, ONE_DAY, Balloon, Item, World

STATED_ALWAYS = ("QE-HFA",)          # its office copies the clock from each release
NEW_FABRIC_N = 455.0                 # grab strength of new fabric
PROOF_N = {"ml": 135.0, "us": 133.4}  # load of a grab test that is only held; 30 lbf = 133.4 N
GRAB_METHOD = "grab, 25 mm jaws, warp"
WEAK_NOTE = "tore below the proof load"
AIR_METHOD = "ISO 9237, 100 Pa, 20 cm2"


def months_old(made: str, day: date) -> int:
    return (day.year - int(made[:4])) * 12 + day.month - int(made[5:7])


def wear(envelope: Item, row: int) -> float:
    """Fabric age at a row in units of log strength: the crown ages most, the mouth about half as fast."""
    rows = SIZE_OF_ENVELOPE[envelope.type].rows
    return envelope.decay * envelope.clock[0] / 6000 * math.exp(-0.7 * (1 - row / rows))


def grab_strength(envelope: Item, row: int, chance: Random) -> float:
    """What the fabric of a row bears, newtons."""
    return NEW_FABRIC_N * math.exp(-wear(envelope, row) + chance.gauss(0, 0.06))


def air_speed(envelope: Item, row: int, chance: Random) -> float:
    """The air that goes through the fabric of a row, mm/s at 100 Pa."""
    return 6 * math.exp(2.1 * wear(envelope, row) + chance.gauss(0, 0.15))


class Workshop:
    def __init__(self, world: World, pool: Pool) -> None:
        self.world, self.pool = world, pool
        self.chance = stream("workshop")
        self._extensions: dict[str, int] = {}
        self.on_the_bench: dict[str, Callable[[date, str], None]] = {}   # whose next inspection is written line by line

    # -- the yearly visit --------------------------------------------------------------------------------------
    def plan_visits(self, balloon: Balloon, fixed: dict[int, date | None]) -> None:
        """One visit a year around the balloon's slot; `fixed` gives the days (None: no visit) of some years."""
        for year in range(balloon.entered.year, LAST_DAY.year + 1):
            day = date(year, *balloon.slot) + timedelta(days=self.chance.randrange(-12, 13))
            day = fixed.get(year, day)
            if day and balloon.entered + timedelta(days=5) < day <= LAST_DAY:
                self.world.plan(day, lambda day, name=balloon.registration: self.visit(name, day))

    def visit(self, registration: str, day: date, delay: int = 0) -> None:
        """Everything that is fitted is inspected; the envelope's certificate and fabric test go with it.
        While something of it waits for other work, the visit waits too, a month at the longest."""
        balloon = self.world.balloons[registration]
        if any(self.world.is_grounded(item.id, day) for item in self.world.fitted(registration)):
            if delay < 30:
                self.world.plan(day + ONE_DAY, lambda on: self.visit(registration, on, delay + 1))
            return
        ref = self.work_order(balloon.operator, day)
        for item in self.world.fitted(registration, *INSPECTED_KINDS):
            self.inspect(item, day, ref, stated=registration in STATED_ALWAYS or self.chance.random() < 0.4)
        for envelope in self.world.fitted(registration, "envelope"):
            if balloon.rules == "ml":
                self._certify(envelope, day, ref)
            self.fabric_test(envelope, day, ref)
        for hose in self.world.fitted(registration, "hose"):
            self._renew_hose(hose, day, ref)
        self.world.ground(registration, day)

    def hundred_hours(self, registration: str, day: date) -> None:
        """The inspection in the season: what has used its hours, and all of it once the envelope has."""
        balloon = self.world.balloons[registration]
        if registration in self.on_the_bench:
            self.on_the_bench.pop(registration)(day, self.work_order(balloon.operator, day))
            return
        fitted = self.world.fitted(registration, *INSPECTED_KINDS)
        used = [item for item in fitted if item.since_inspection() > 0.9 * balloon.threshold]
        if any(item.kind == "envelope" for item in used):
            used = fitted
        ref = self.work_order(balloon.operator, day)
        for item in used:
            self.inspect(item, day, ref, yearly=False, stated=self.chance.random() < 0.5)
            if item.kind == "envelope":
                self.fabric_test(item, day, ref)
        self.world.ground(registration, day)

    def inspect(self, item: Item, day: date, ref: str, *, yearly: bool = True, stated: bool = False,
                note: str | None = None) -> None:
        american = "us.annual" if yearly else "us.hundred-hour"
        self.world.done(item, "ml.inspection" if item.rules == "ml" else american, day, self._inspector(item),
                        stated=stated, ref=ref, note=note)
        if item.rules == "ml" or yearly or item.inspected is None:
            item.inspected = (day, item.clock[0])
        else:
            item.inspected = (item.inspected[0], item.clock[0])    # the annual's date stays
        self.world.ground(item.id, day)

    def inspect_shelf(self, day: date) -> None:
        """The spare parts are looked through once a winter; some are passed over."""
        for operator in OPERATORS:
            ref = self.work_order(operator, day)
            for kind in ("basket", "burner", "cylinder"):
                for item in self.world.shelf(operator, kind):
                    if not item.set_aside and self.chance.random() < 0.8:
                        self.inspect(item, day, ref)

    def special(self, item: Item, requirement: str, day: date, ref: str) -> None:
        """What an event asks for besides the inspection."""
        self.world.done(item, requirement, day, self._inspector(item), ref=ref)

    def _certify(self, envelope: Item, day: date, ref: str) -> None:
        """The rides' managing organisation extends a certificate twice and then reviews; the school reviews."""
        extended = self._extensions.get(envelope.id, 0)
        extend = envelope.operator == "rides" and extended < 2
        self._extensions[envelope.id] = extended + 1 if extend else 0
        self.world.done(envelope, "ml.arc-extension" if extend else "ml.arc-review", day, self._inspector(envelope),
                        ref=ref)

    # -- fabric ------------------------------------------------------------------------------------------------
    def fabric_test(self, envelope: Item, day: date, ref: str, *, always: bool = False) -> None:
        """The strength test once the envelope has two years or 150 hours, with readings; else only the air."""
        grown = months_old(envelope.made, day) >= 24 or envelope.clock[0] >= 150 * 60
        if grown or always:
            envelope.fabric_tested = True
            self.world.done(envelope, "fabric.strength-test", day, self._inspector(envelope), ref=ref)
            rows = SIZE_OF_ENVELOPE[envelope.type].rows
            for row in (rows, rows - 1, *(self.chance.randrange(2, rows - 1) for _ in range(3))):
                self._grab(envelope, day, row)
        if self.chance.random() < 0.6:
            self._air(envelope, day)

    def _grab(self, envelope: Item, day: date, row: int) -> None:
        size = SIZE_OF_ENVELOPE[envelope.type]
        strength = grab_strength(envelope, row, self.chance)
        proof = PROOF_N[envelope.rules]
        weak = strength < proof
        pulled_through = self.chance.random() < 0.35 or weak
        result = {"value": round(strength)} if pulled_through else {"held_at": proof}
        if weak:
            self.world.ground(envelope.id, date.max)           # it does not fly again
            result["note"] = WEAK_NOTE
        self.world.reading(envelope, day, self._inspector(envelope), quantity="grab-strength", unit="N",
                           gore=self.chance.randrange(1, size.gores + 1), row=row, method=GRAB_METHOD, **GRAB,
                           **result)

    def _air(self, envelope: Item, day: date) -> None:
        size = SIZE_OF_ENVELOPE[envelope.type]
        row = self.chance.randrange(size.rows // 2, size.rows + 1)
        speed = air_speed(envelope, row, self.chance)
        self.world.reading(envelope, day, self._inspector(envelope), quantity="air-permeability", unit="mm/s",
                           value=round(speed, 1), gore=self.chance.randrange(1, size.gores + 1), row=row,
                           method=AIR_METHOD, **AIR)

    # -- hoses -------------------------------------------------------------------------------------------------
    def _renew_hose(self, hose: Item, day: date, ref: str) -> None:
        """Ten years are a recommendation: most hoses are changed by then, some made new on their old fittings."""
        made = hose.tested or hose.made
        if months_old(made, day) < 113 or self.chance.random() < 0.25:
            return
        inspector = self._inspector(hose)
        if self.chance.random() < 0.4:
            self.world.done(hose, "hose.replacement", day, inspector, ref=ref, note="new hose on the old fittings")
            hose.tested = day.isoformat()[:7]
            return
        registration, place = hose.balloon, hose.place
        made = (day - timedelta(days=self.chance.randrange(40, 200))).isoformat()[:7]
        successor = self.pool.enter_item("hose", hose.operator, day, hose.type, made)
        self.world.remove(hose, day, inspector, time="13:00Z", note="past ten years, scrapped")
        self.world.fit(successor, registration, day, inspector, place, time="13:30Z")

    # -- words -------------------------------------------------------------------------------------------------
    def _inspector(self, item: Item) -> str:
        inspectors = OPERATORS[item.operator].inspectors
        return inspectors[int(item.id[4:]) % len(inspectors)]

    def work_order(self, operator: str, day: date) -> str:
        prefix = OPERATORS[operator].prefix
        return f"{prefix}-{day.year}-{self.world.number(f'{prefix}-{day.year}'):03}"
