# SPDX-License-Identifier: GPL-3.0-or-later
"""What must hold of the finished record; read from its lines alone, independent of how they were made."""

import json
from datetime import date

from . import FIRST_DAY, LAST_DAY
from .check_bench import BenchReader
from .journal import COMMON_HEAD, KEYS, minute_of

MOST_BYTES = 6_000_000
FLIGHTS = range(10_000, 14_001)
MINUTES_ALOFT = range(1, 241)
REQUIREMENTS = {"event.coil-run-dry", "event.flame-contact", "event.packed-wet", "ml.inspection", "ml.arc-review", "ml.arc-extension", "ml.special-inspection", "ml.over-temperature",
                "us.annual", "us.hundred-hour", "adr.periodic-test", "dot.requalification", "hose.replacement", "cylinder.shell", "cylinder.relief-valve",
                "fabric.strength-test", "burner.overhaul", "burner.service", "burner.leak-test", "extinguisher.check",
                "us.transponder-test"}


class Reader:
    """Reads the entries in the order of the file and notes every broken promise."""

    def __init__(self) -> None:
        self.found: list[str] = []
        self.flights = 0
        self._number = 0
        self._seen: set[str] = set()
        self._items: dict[str, str] = {}         # and the day on which each was entered
        self._balloons: set[str] = set()
        self._last = (FIRST_DAY.isoformat(), 0)
        self._bench = BenchReader(self._require)

    def read(self, entry: dict) -> None:
        self._number += 1
        self._keys(entry)
        self._moment(entry)
        if entry["entry"] == "item.entered":
            self._items[entry["item"]] = entry["on"]
        if entry["entry"] == "balloon.entered":
            self._balloons.add(entry["balloon"])
        self._references(entry)
        self._figures(entry)
        self._bench.read(entry)
        self._seen.add(entry["id"])

    def _require(self, holds: bool, what: str, entry: dict) -> None:
        if not holds:
            self.found.append(f"line {self._number}: {what}: {entry['id']}")

    def _keys(self, entry: dict) -> None:
        known = {*COMMON_HEAD, *KEYS[entry["entry"]], "note"}
        self._require(set(entry) <= known, "unknown key", entry)
        self._require(entry["id"] not in self._seen, "id used twice", entry)

    def _moment(self, entry: dict) -> None:
        """By moment, but for history on paper: an accomplishment older than the entry of its item."""
        on = entry["on"]
        # A list that was revised later is confirmed on the day of its revision.
        late = ("text.confirmed", "flight.planned")
        self._require(date.fromisoformat(on) <= LAST_DAY or entry["entry"] in late, "after the last day", entry)
        if entry["entry"] == "requirement.done" and on < self._items.get(entry["item"], on):
            return
        moment = (on, minute_of(entry["entry"], entry.get("time")))
        self._require(moment >= self._last, "out of order", entry)
        self._last = moment

    def _references(self, entry: dict) -> None:
        items = {*entry.get("items", ()), *entry.get("kit", ()), *([entry["item"]] if "item" in entry else ())}
        balloons = {*entry.get("balloons", ()), *([entry["balloon"]] if "balloon" in entry else ())}
        entries = {entry[key] for key in ("replaces", "voids") if key in entry}
        self._require(items <= set(self._items), "item not entered before", entry)
        self._require(balloons <= self._balloons, "balloon not entered before", entry)
        self._require(entries <= self._seen, "points at nothing", entry)

    def _figures(self, entry: dict) -> None:
        if entry["entry"] == "flight.logged":
            self.flights += 1
            self._require(entry["minutes"] in MINUTES_ALOFT, "minutes aloft", entry)
        if entry["entry"] == "requirement.done":
            self._require(entry["requirement"] in REQUIREMENTS, "requirement", entry)


def problems(lines: list[str]) -> list[str]:
    """Every broken promise, with its line number; empty when all hold."""
    reader = Reader()
    for line in lines:
        reader.read(json.loads(line))
    size = sum(len(line.encode()) + 1 for line in lines)
    if size >= MOST_BYTES:
        reader.found.append(f"{size} bytes")
    if reader.flights not in FLIGHTS:
        reader.found.append(f"{reader.flights} flights")
    return reader.found
