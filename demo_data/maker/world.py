# SPDX-License-Identifier: GPL-3.0-or-later
"""The state of the fleet while the seasons pass: items, where they are fitted, their true clocks.

Each change of state writes its entry, so the record and the state cannot part."""

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, timedelta

from .journal import Journal
from .papers import signed_by

INSPECTED_KINDS = ("envelope", "basket", "burner", "cylinder")
ONE_DAY = timedelta(days=1)


@dataclass
class Item:
    """One serialised thing. `clock` is the true one, also where the record does not know it."""
    id: str
    kind: str
    serial: str
    operator: str
    rules: str                       # "ml" (European) or "us"
    type: str | None = None
    made: str | None = None          # "YYYY-MM" or "YYYY-MM-DD"; None: unknown
    clock: list[int] = field(default_factory=lambda: [0, 0, 0])   # minutes, landings, inflations
    balloon: str | None = None
    place: str | None = None
    inspected: tuple[date, int] | None = None    # day and minutes of the last inspection
    tested: str | None = None        # "YYYY-MM" of a cylinder's last transport test or a hose's renewal
    test_months: int = 120           # and the interval that it left
    set_aside: bool = False          # kept on the shelf, not to be fitted
    fabric_tested: bool = False      # a strength test is on record
    hottest: int = 0                 # envelope: the highest temperature that a flight logged, degrees Celsius
    decay: float = 0.2               # fabric: loss of log strength in 100 h at the crown

    def since_inspection(self) -> int:
        return self.clock[0] - self.inspected[1] if self.inspected else 0


@dataclass
class Balloon:
    """A registration. `host`: whose basket, burner and cylinders it borrows by the kit of each flight."""
    registration: str
    title: str
    operator: str
    rules: str
    operations: list[str]
    pace: int                        # flights a year
    entered: date
    minutes: int                     # usual time aloft
    threshold: int                   # minutes since inspection at which the next one is booked
    slot: tuple[int, int]            # month and day of the yearly visit
    host: str | None = None
    stops: date | None = None        # no flight after this day


class World:
    def __init__(self, journal: Journal) -> None:
        self.journal = journal
        self.items: dict[str, Item] = {}
        self.balloons: dict[str, Balloon] = {}
        self._fitted: dict[str, dict[str, Item]] = defaultdict(dict)
        self._tasks: dict[date, list[Callable[[date], None]]] = defaultdict(list)
        self._grounded: dict[str, date] = {}
        self._numbers: dict[str, int] = defaultdict(int)

    # -- the diary ---------------------------------------------------------------------------------------------
    def plan(self, day: date, task: Callable[[date], None]) -> None:
        """Does `task` in the morning of `day`."""
        self._tasks[day].append(task)

    def morning(self, day: date) -> None:
        for task in self._tasks.pop(day, []):
            task(day)

    def number(self, series: str) -> int:
        """The next number of a series: 1, 2, …"""
        self._numbers[series] += 1
        return self._numbers[series]

    # -- who may fly -------------------------------------------------------------------------------------------
    def ground(self, name: str, until: date) -> None:
        """Keeps a balloon or an item on the ground through `until`."""
        self._grounded[name] = max(until, self._grounded.get(name, until))

    def is_grounded(self, name: str, day: date) -> bool:
        return self._grounded.get(name, date.min) >= day

    # -- fittings ----------------------------------------------------------------------------------------------
    def fitted(self, registration: str, *kinds: str) -> list[Item]:
        items = sorted(self._fitted[registration].values(), key=lambda item: item.id)
        return [item for item in items if not kinds or item.kind in kinds]

    def shelf(self, operator: str, kind: str) -> list[Item]:
        return [item for _, item in sorted(self.items.items())
                if item.balloon is None and item.kind == kind and item.operator == operator]

    def fit(self, item: Item, registration: str, day: date, by: str, place: str | None = None,
            time: str | None = None, note: str | None = None, unwritten: bool = False) -> None:
        """Fits an item. `unwritten`: it is elsewhere and nobody writes the removal; the record must ask."""
        if (item.balloon is not None) != unwritten:
            raise ValueError(f"{item.id} is at {item.balloon}")
        if item.balloon is not None:
            del self._fitted[item.balloon][item.id]
        self.journal.add("item.fitted", self._id("fit", item.id, day), day, time=time, by=by, note=note,
                         balloon=registration, item=item.id, place=place)
        item.balloon, item.place = registration, place
        self._fitted[registration][item.id] = item

    def remove(self, item: Item, day: date, by: str, time: str | None = None, note: str | None = None) -> None:
        self.journal.add("item.removed", self._id("off", item.id, day), day, time=time, by=by, note=note,
                         balloon=item.balloon, item=item.id, place=item.place)
        del self._fitted[item.balloon][item.id]
        item.balloon = item.place = None

    def _id(self, word: str, name: str, day: date) -> str:
        """A meaningful id, with a count from the second of the same day on."""
        base = f"{word}-{name}-{day.isoformat()}"
        count = self.number(base)
        return base if count == 1 else f"{base}-{count}"

    # -- use and accomplishments -------------------------------------------------------------------------------
    def fly(self, kit: list[Item], minutes: int, landings: int, inflations: int) -> None:
        for item in kit:
            for index, amount in enumerate((minutes, landings, inflations)):
                item.clock[index] += amount

    def done(self, item: Item, requirement: str, day: date, by: str, *, stated: list[int] | bool = False,
             ref: str | None = None, method: str | None = None, filed: date | None = None,
             note: str | None = None) -> None:
        """Writes an accomplishment. `stated`: True gives the item's clock of now, a list gives that one. A paper that is
        no inspection of the record names who signed it, where that is known."""
        figures = item.clock if stated is True else stated
        clock = dict(zip(("minutes", "landings", "inflations"), figures)) if figures else None
        word = requirement.replace(".", "-")
        self.journal.add("requirement.done", self._id(word, item.id, day), day, by=by, filed=filed, note=note,
                         item=item.id, requirement=requirement, method=method, clock=clock, ref=ref,
                         **signed_by(by) if ref and ref != "stamp" and ref not in self.journal.inspections else {})

    def reading(self, item: Item, day: date, by: str, **keys) -> None:
        self.journal.add("reading.taken", self._id("reading", item.id, day), day, by=by, item=item.id, **keys)

    def event(self, day: date, time: str, by: str, event: str, note: str, *, item: str | None = None,
              balloon: str | None = None) -> None:
        self.journal.add("event.reported", self._id(event, item or balloon, day), day, time=time, by=by, note=note,
                         item=item, balloon=balloon, event=event)
