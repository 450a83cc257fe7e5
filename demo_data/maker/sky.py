# SPDX-License-Identifier: GPL-3.0-or-later
"""The flying: weather over the valley, who goes up at dawn and at dusk, and how the office logs it."""

import calendar
import math
from datetime import date, timedelta

from . import LAST_DAY, stream
from .roster import OPERATORS
from .workshop import Workshop
from .world import ONE_DAY, Balloon, Item, World

LATITUDE = math.radians(46.4)
SOLAR_NOON_UTC = 12 * 60 + 50        # the valley lies at 12.5 degrees west
FIRST_FLYING_DAY = date(2021, 3, 6)
# Chance of a flyable dawn and dusk by month.
DAWN = (0.05, 0.08, 0.16, 0.36, 0.50, 0.54, 0.56, 0.56, 0.52, 0.38, 0.10, 0.05)
DUSK = (0.00, 0.00, 0.06, 0.30, 0.44, 0.48, 0.48, 0.50, 0.44, 0.26, 0.02, 0.00)
GOOD_SLOTS = sum(30.4 * (dawn + dusk) for dawn, dusk in zip(DAWN, DUSK))
FIRST_FABRIC_TEST = 148 * 60         # minutes at which an envelope that never had one is called in
HOUR_LIMIT = {"ml": 110 * 60, "us": 100 * 60}


def half_day(day: date) -> int:
    """Minutes from sunrise to solar noon, from the declination of the sun (Cooper's formula, from memory)."""
    declination = math.radians(23.45) * math.sin(2 * math.pi * (284 + day.timetuple().tm_yday) / 365)
    return round(math.degrees(math.acos(-math.tan(LATITUDE) * math.tan(declination))) * 4)


def last_inspected_day(item: Item, rules: str) -> date:
    """The last day on which the operators still fly on an inspection: some days short of the law's tolerance."""
    done = item.inspected[0]
    if rules == "ml":
        return done + timedelta(days=392)
    return date(done.year + 1, done.month, calendar.monthrange(done.year + 1, done.month)[1])


class Sky:
    def __init__(self, world: World, workshop: Workshop) -> None:
        self.world, self.workshop = world, workshop
        self.chance = stream("sky")
        self._busy: set[str] = set()             # items in the air in this slot

    def fly_day(self, day: date) -> None:
        """Both slots of a day, then the bookings of inspections that they caused."""
        if day < FIRST_FLYING_DAY:
            return
        flown: set[str] = set()
        for slot, odds in (("am", DAWN[day.month - 1]), ("pm", DUSK[day.month - 1])):
            if self.chance.random() < odds:
                flown |= self._fly_slot(day, slot)
        for registration in sorted(flown):
            self._book(registration, day)

    def _fly_slot(self, day: date, slot: str) -> set[str]:
        self._busy.clear()
        flown: set[str] = set()
        order = [balloon for _, balloon in sorted(self.world.balloons.items())]
        self.chance.shuffle(order)
        for balloon in order:
            if self.chance.random() > self._wish(balloon, day):
                continue
            kit, borrowed = self._kit(balloon, day)
            if kit and self._may_fly(balloon, kit, day):
                self._log(balloon, kit, borrowed, day, slot)
                self._busy.update(item.id for item in kit)
                flown.update(item.balloon for item in kit if item.balloon)
        return flown

    def _wish(self, balloon: Balloon, day: date) -> float:
        """The chance that it goes up in a flyable slot; private owners fly at the weekend."""
        share = 1.02 * balloon.pace / GOOD_SLOTS
        if balloon.operations == ["private"]:
            share *= 2.2 if day.weekday() >= 5 else 0.5
        return min(0.95, share)

    # -- the kit -----------------------------------------------------------------------------------------------
    def _kit(self, balloon: Balloon, day: date) -> tuple[list[Item], bool]:
        """The items of a flight, and whether they differ from what is fitted."""
        own = self.world.fitted(balloon.registration)
        if balloon.host:
            bottom = [item for item in self.world.fitted(balloon.host) if item.kind != "envelope"]
            return (own + bottom if bottom else []), True
        if not any(item.kind == "burner" for item in own):
            return [], False
        if self.chance.random() < 0.025:
            lent = self._borrow(balloon, own, day)
            if lent:
                return lent, True
        return own, False

    def _borrow(self, balloon: Balloon, own: list[Item], day: date) -> list[Item]:
        """Another basket of the same type, or cylinders from the shelf instead of the own ones."""
        if self.chance.random() < 0.3:
            basket = next((item for item in own if item.kind == "basket"), None)
            others = [item for _, item in sorted(self.world.items.items())
                      if item.kind == "basket" and basket and item is not basket and item.type == basket.type
                      and item.operator == balloon.operator and item.id not in self._busy and not item.set_aside
                      and item.since_inspection() < 80 * 60]
            return [self.chance.choice(others) if item is basket else item for item in own] if others else []
        spares = [item for item in self.world.shelf(balloon.operator, "cylinder")
                  if not item.set_aside and item.inspected and item.since_inspection() < 80 * 60
                  and last_inspected_day(item, balloon.rules) > day and item.id not in self._busy]
        count = min(len(spares), self.chance.randrange(1, 3))
        if count == 0:
            return []
        left = [item for item in own if item.kind == "cylinder"][:count]
        return [item for item in own if item not in left] + self.chance.sample(spares, count)

    def _may_fly(self, balloon: Balloon, kit: list[Item], day: date) -> bool:
        if balloon.stops and day > balloon.stops or self.world.is_grounded(balloon.registration, day):
            return False
        for item in kit:
            if item.id in self._busy or self.world.is_grounded(item.id, day):
                return False
            if item.inspected and day > last_inspected_day(item, balloon.rules):
                return False
            if item.since_inspection() > HOUR_LIMIT[balloon.rules] - 90 and balloon.operations != ["private"]:
                return False
        return True

    def _book(self, registration: str, day: date) -> None:
        """Books the 100-hour inspection once an item has used its hours; until then nothing of it flies."""
        balloon = self.world.balloons[registration]
        for envelope in self.world.fitted(registration, "envelope"):
            if envelope.clock[0] >= FIRST_FABRIC_TEST and not envelope.fabric_tested:
                self._book_fabric(envelope, day + ONE_DAY)
        used = [item for item in self.world.fitted(registration) if item.inspected
                and item.since_inspection() >= balloon.threshold and not self.world.is_grounded(item.id, day)]
        visit = day + timedelta(days=self.chance.randrange(1, 6))
        if not used or visit > LAST_DAY:
            return
        for item in used:
            self.world.ground(item.id, visit)
        self.world.ground(registration, visit)
        self.world.plan(visit, lambda on: self.workshop.hundred_hours(registration, on))

    def _book_fabric(self, envelope: Item, day: date) -> None:
        """The first strength test, the next morning, whatever the inspections say."""
        envelope.fabric_tested = True
        self.world.ground(envelope.id, day)
        self.world.plan(day, lambda on: self.workshop.fabric_test(envelope, on, "150 hours", always=True))

    # -- the log -----------------------------------------------------------------------------------------------
    def _log(self, balloon: Balloon, kit: list[Item], borrowed: bool, day: date, slot: str) -> None:
        minutes = max(35, min(120, round(self.chance.gauss(balloon.minutes, 13))))
        tethered = self.chance.random() < 0.007
        landings = self._landings(balloon, tethered)
        offset = self.chance.randrange(10, 45)
        launch = (SOLAR_NOON_UTC - half_day(day) + offset if slot == "am"
                  else SOLAR_NOON_UTC + half_day(day) - minutes - offset)
        time = f"{launch // 60:02}:{launch % 60:02}Z" if self.chance.random() < 0.72 else None
        hot = self.chance.random() < 0.25
        keys = {
            "balloon": balloon.registration,
            "minutes": minutes,
            "landings": landings if landings != 1 else None,
            "kit": sorted(item.id for item in kit) if borrowed else None,
            "max_temp_c": max(62, min(112, round(self.chance.gauss(86, 9)))) if hot else None,
            "tethered": True if tethered else None,
        }
        for envelope in self.world.fitted(balloon.registration, "envelope"):
            envelope.hottest = max(envelope.hottest, keys["max_temp_c"] or 0)
        entry_id = f"flt-{balloon.registration}-{day.isoformat()}-{slot}"
        pilot = self.chance.choice(OPERATORS[balloon.operator].pilots)
        self.world.fly(kit, minutes, landings, 1)
        slip = self.chance.random()
        if slip < 0.0025:
            keys["minutes"] = minutes // 10 if self.chance.random() < 0.5 else minutes + 30
        self.world.journal.add("flight.logged", entry_id, day, time=time, by=pilot, **keys)
        later = day + timedelta(days=self.chance.randrange(1, 10))
        if later > LAST_DAY:
            return
        office = OPERATORS[balloon.operator].office
        if slip < 0.0025:
            self.world.journal.add("entry.corrected", f"fix-{entry_id}", later, by=office, replaces=entry_id,
                                   **{"with": {"minutes": minutes}}, note="read again from the pilot's sheet")
        elif slip < 0.0037:
            twin = self.world.journal.add("flight.logged", f"{entry_id}-twin", day, time=time, by=office, **keys)
            self.world.journal.add("entry.voided", f"void-{twin}", later, by=office, voids=twin,
                                   reason="the same flight was entered twice")

    def _landings(self, balloon: Balloon, tethered: bool) -> int:
        if tethered:
            return self.chance.randrange(4, 13)
        more = 0.3 if "instruction" in balloon.operations else 0.03
        return self.chance.randrange(2, 5) if self.chance.random() < more else 1
