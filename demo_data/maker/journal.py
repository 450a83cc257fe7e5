# SPDX-License-Identifier: GPL-3.0-or-later
"""The list of entries being written: which keys a kind may carry, their order, and the order of the lines."""

import json
from datetime import date

COMMON_HEAD = ("entry", "id", "on", "time", "by")

KEYS = {
    "item.entered": ("item", "kind", "serial", "type", "made", "brought_forward", "lot", "release", "vessel"),
    "balloon.entered": ("balloon", "title", "operations"),
    "programme.adopted": ("programme", "balloons", "items"),
    "item.fitted": ("balloon", "item", "place", "to", "release", "lot"),
    "item.removed": ("balloon", "item", "place", "from"),
    "item.state": ("item", "state", "to"),
    "cylinder.filled": ("item", "level_percent"),
    "flight.logged": ("balloon", "minutes", "landings", "inflations", "kit", "max_temp_c", "tethered", "fuel_kg", "oat_c",
                      "load_kg"),
    "requirement.done": ("item", "requirement", "method", "clock", "ref", "signatory", "licence", "mark"),
    "reading.taken": ("item", "quantity", "value", "below", "held_at", "unit", "gore", "row", "place", "direction", "jaw_mm",
                      "pressure_pa", "area_cm2", "method", "inspection", "line", "tester", "confirmed"),
    "event.reported": ("balloon", "item", "event", "temp_c", "minutes"),
    "event.notified": ("event", "balloon", "item", "to", "ref"),
    "type.described": ("type", "kind", "manual", "revision", "gores", "rows"),
    "limit.stated": ("type", "kind", "quantity", "unit", "least", "most", "proof", "places", "direction", "jaw_mm",
                     "pressure_pa", "area_cm2", "passes", "source", "retires"),
    "fabric.stated": ("item", "lot", "fabric", "first_gore", "last_gore", "first_row", "last_row"),
    "person.entitled": ("person", "capacity", "licence", "until", "balloons"),
    "tester.calibrated": ("tester", "until", "what", "certificate", "measures", "unit", "from", "to", "station"),
    "inspection.opened": ("inspection", "visit", "items", "balloon", "work", "checklist"),
    "line.settled": ("inspection", "line", "item", "state", "why", "page", "finding", "tester", "photographs"),
    "defect.found": ("defect", "item", "what", "severity", "inspection", "line", "reading", "gore", "row"),
    "repair.made": ("item", "method", "gore", "row", "width_mm", "height_mm", "lot", "defect", "inspection"),
    "part.replaced": ("item", "part", "removed_serial", "fitted_serial", "release_document", "defect", "inspection"),
    "defect.deferred": ("defect", "item", "reason", "until", "until_minutes", "agreed_by", "inspection"),
    "defect.cleared": ("defect", "item", "what", "ref", "inspection"),
    "inspection.closed": ("inspection", "outcome", "statement", "signatory", "capacity", "licence", "manuals",
                          "limitations", "excepted", "confirmed"),
    "text.adopted": ("text", "revision", "title", "body", "source", "organisation"),
    "text.confirmed": ("text", "checklist", "revision", "digest", "against", "confirmed_by", "capacity", "licence"),
    "directive.issued": ("directive", "revision", "title", "issuer", "issued_by", "state", "effective", "source", "applies",
                         "force", "first", "repeat", "terminating", "supersedes", "credits"),
    "directive.answered": ("directive", "revision", "item", "balloon", "answer", "method", "clock", "amoc", "terminating",
                           "why", "capacity", "licence", "ref", "inspection"),
    "parts.listed": ("item", "parts", "whole", "source"),
    "use.planned": ("balloon", "item", "from", "to", "times", "flights_a_week"),
    "flight.planned": ("balloon", "minutes", "landings", "inflations", "kit"),
    "visit.planned": ("balloon", "station", "from", "to", "covers"),
    "entry.corrected": ("replaces", "with"),
    "entry.voided": ("voids", "reason"),
}

# Minute of the day at which an entry without a time counts.
UNTIMED_MINUTE = {
    "flight.logged": 12 * 60,
    "flight.planned": 12 * 60,
    "requirement.done": 18 * 60,
    "cylinder.filled": 18 * 60,
    **dict.fromkeys(("reading.taken", "line.settled", "defect.found", "repair.made", "part.replaced", "directive.answered"), 18 * 60),
    "defect.deferred": 18 * 60 + 1,
    "defect.cleared": 18 * 60 + 2,
    "inspection.closed": 18 * 60 + 10,
    "item.removed": 23 * 60 + 59,
    "event.notified": 23 * 60 + 59,
}

# Within one minute: what others refer to comes first.
RANK = {kind: rank for rank, kind in enumerate(
    ("item.entered", "balloon.entered", "programme.adopted", "type.described", "limit.stated", "fabric.stated", "person.entitled",
     "text.adopted", "text.confirmed", "tester.calibrated", "directive.issued", "parts.listed", "use.planned",
     "flight.planned", "visit.planned", "item.fitted", "item.state", "flight.logged", "event.reported", "inspection.opened", "requirement.done", "cylinder.filled",
     "reading.taken", "line.settled", "defect.found", "repair.made", "part.replaced", "directive.answered", "defect.deferred",
     "defect.cleared", "inspection.closed", "item.removed", "event.notified", "entry.corrected", "entry.voided"))}


def minute_of(kind: str, time: str | None) -> int:
    """Minute of the day of an entry; `time` is "HH:MMZ" or None."""
    if time is None:
        return UNTIMED_MINUTE.get(kind, 0)
    return int(time[:2]) * 60 + int(time[3:5])


class Journal:
    """Collects entries in any order and gives them back as lines by moment, references before use."""

    def __init__(self) -> None:
        self._entries: dict[str, tuple[tuple, dict]] = {}
        self.inspections: set[str] = set()       # that the record holds

    def add(self, entry: str, entry_id: str, on: date, /, *, time: str | None = None, by: str | None = None,
            note: str | None = None, filed: date | None = None, **keys) -> str:
        """Adds one entry and returns its id. `filed` moves the line (never the moment) behind a later day:
        paper about a day before its item was entered. Keys that are None are left out; an unknown key or a
        second use of an id is a mistake of the maker and raises."""
        unknown = set(keys) - set(KEYS[entry])
        if unknown:
            raise KeyError(f"{entry}: {sorted(unknown)}")
        if entry_id in self._entries:
            raise KeyError(f"id used twice: {entry_id}")
        values = {"entry": entry, "id": entry_id, "on": on.isoformat(), "time": time, "by": by, **keys, "note": note}
        ordered = {key: values[key] for key in (*COMMON_HEAD, *KEYS[entry], "note") if values.get(key) is not None}
        if entry == "inspection.opened":
            self.inspections.add(keys["inspection"])
        minute = minute_of(entry, time) if filed is None else 0
        place = (filed or on, minute, 0 if filed is None else 1, RANK[entry], entry_id)
        self._entries[entry_id] = (place, ordered)
        return entry_id

    def complete(self, entry_id: str, **keys) -> None:
        """Adds keys to an entry that has none of them."""
        place, entry = self._entries[entry_id]
        if set(keys) & set(entry) or not set(keys) <= set(KEYS[entry["entry"]]):
            raise KeyError(f"{entry_id}: {sorted(keys)}")
        order = (*COMMON_HEAD, *KEYS[entry["entry"]], "note")
        self._entries[entry_id] = (place, {key: {**entry, **keys}[key] for key in order if key in entry or key in keys})

    def last_of(self, prefix: str) -> str:
        """The highest id that begins with `prefix`."""
        return max(entry_id for entry_id in self._entries if entry_id.startswith(prefix))

    def entries(self) -> list[dict]:
        return [entry for _, entry in sorted(self._entries.values(), key=lambda pair: pair[0])]

    def lines(self) -> list[str]:
        return [json.dumps(entry, ensure_ascii=False) for entry in self.entries()]
