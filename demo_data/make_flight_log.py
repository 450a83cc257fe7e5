#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes flight_log.csv: a pilot's sheet that reached the office late, as an example for the import.

Semicolons, day.month.year, durations h:mm, decimal commas; UTF-8. Besides the good rows there are two that an import
must refuse (a day that does not exist, a duration that cannot be read) and one that repeats a flight of fleet.jsonl.
Run it after make_fleet.py: no other row falls on a day on which the record already has a flight of that balloon."""

import json
from datetime import date, timedelta
from pathlib import Path
from random import Random

SEED = 20261026
GOOD_ROWS = 22
FIRST = date(2026, 10, 26)
DAYS = 29                            # through 2026-11-23
BALLOONS = ("QE-HFA", "QE-HFB", "QE-HFC", "QE-HFD", "QE-OAK", "QE-WILM", "QE-OVC")
HEAD = "Date;Balloon;Take-off (UTC);Duration;Landings;Envelope temperature (°C);Pilot;Remarks"
BAD_ROWS = (
    (date(2026, 11, 14), "14.11.2026;QE-HFC;07:55;1:7O;1;;pilot 24;letter O in the duration"),
    (date(2026, 11, 30), "31.11.2026;QE-HFB;07:40;0:52;1;84,5;pilot 21;"),
)
TRACKED = ("QE-HFC", "2026-11-21")   # the flight of evening.igc
HERE = Path(__file__).resolve().parent


def recorded_flights() -> list[dict]:
    entries = map(json.loads, (HERE / "fleet.jsonl").read_text(encoding="utf-8").splitlines())
    return [entry for entry in entries if entry["entry"] == "flight.logged" and entry["balloon"] in BALLOONS]


def row(day: date, balloon: str, time: str, minutes: int, *rest: object) -> str:
    """One line; `rest`: landings, envelope temperature, pilot, remark."""
    return ";".join((f"{day:%d.%m.%Y}", balloon, time, f"{minutes // 60}:{minutes % 60:02}", *map(str, rest)))


def sheet() -> list[str]:
    """The rows under the head, by day; the bad ones stand where their day would."""
    chance = Random(SEED)
    recorded = recorded_flights()
    taken = {(entry["balloon"], entry["on"]) for entry in recorded} | {TRACKED}
    free = [(FIRST + timedelta(days=offset), balloon) for offset in range(DAYS) for balloon in BALLOONS
            if (balloon, (FIRST + timedelta(days=offset)).isoformat()) not in taken]
    rows = []
    for day, balloon in sorted(chance.sample(free, GOOD_ROWS)):
        minutes = chance.randrange(36, 88)
        dawn = chance.random() < 0.6
        start = chance.randrange(8 * 60 + 10, 9 * 60) if dawn else chance.randrange(15 * 60, 16 * 60 + 10)
        temperature = f"{chance.uniform(74, 97):.1f}".replace(".", ",") if chance.random() < 0.7 else ""
        landings = chance.randrange(2, 4) if chance.random() < 0.2 else 1
        remark = "training" if landings > 1 else ""
        rows.append((day, row(day, balloon, f"{start // 60:02}:{start % 60:02}", minutes, landings, temperature,
                              f"pilot {chance.randrange(20, 34)}", remark)))
    again = next(entry for entry in recorded if entry["on"] >= FIRST.isoformat() and "time" in entry)
    day = date.fromisoformat(again["on"])
    rows.append((day, row(day, again["balloon"], again["time"][:5], again["minutes"], again.get("landings", 1), "",
                          again["by"], "already in the record")))
    return [text for _, text in sorted([*rows, *BAD_ROWS])]


if __name__ == "__main__":
    (HERE / "flight_log.csv").write_bytes("\n".join((HEAD, *sheet(), "")).encode("utf-8"))
