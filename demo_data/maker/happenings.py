# SPDX-License-Identifier: GPL-3.0-or-later
"""What happened to QE-DAWN and to whom it was told: fuel that its log weighs, events of single items, a basket that wears.

It is written over the record that is lived through already: nothing of it changes what flew."""

from datetime import date
from random import Random

from .journal import Journal
from .world import World

BALLOON, OFFICE, PILOT, WORKSHOP = "QE-DAWN", "office Lakeside", "pilot 03", "insp. 14"
WEIGHED_FROM = "2026-05-01"
WORN = {  # quantity, unit, place: what was read at each look
    ("runner-thickness", "mm", "runner-2"): (19.6, 18.4, 17.5, 16.1),
    ("wicker-break", "mm", "short-side-1"): (20, 45, 60, 85),
    ("rope-handle-diameter", "mm", "rim"): (19.8, 19.7, 19.8, 19.6),
}
LOOKED = (date(2025, 4, 6), date(2025, 9, 28), date(2026, 4, 12), date(2026, 9, 27))
NORMALS = (1, 2, 5, 9, 14, 18, 20, 19, 15, 10, 5, 2)   # degrees Celsius at flying hours, month by month


def weigh(journal: Journal) -> None:
    """From May on the pilots weigh the cylinders; the last three flights burnt a fifth more."""
    chance = Random(26)
    flown = [entry for entry in journal.entries() if entry["entry"] == "flight.logged" and entry["balloon"] == BALLOON
             and entry["on"] >= WEIGHED_FROM and not entry.get("tethered")]
    voided = {entry["voids"] for entry in journal.entries() if entry["entry"] == "entry.voided"}
    flown = [entry for entry in flown if entry["id"] not in voided]
    for at, entry in enumerate(flown):
        last = at >= len(flown) - 3
        outside = NORMALS[int(entry["on"][5:7]) - 1] + chance.randrange(-2, 3)
        load = chance.randrange(33, 39) * 10
        rate = (1.2 if last else 1.0) * (31 + 0.35 * outside / 2) * (0.6 + load / 900) * chance.gauss(1, 0.03)
        journal.complete(entry["id"], fuel_kg=round(rate * entry["minutes"] / 60, 1), oat_c=outside, load_kg=load)


def happen(journal: Journal, world: World) -> None:
    weigh(journal)
    burner = world.fitted(BALLOON, "burner")[0]
    envelope = world.fitted(BALLOON, "envelope")[0]
    basket = world.fitted(BALLOON, "basket")[0]
    journal.add("programme.adopted", "adopt-event-inspections-dawn", date(2025, 1, 7), by=OFFICE,
                programme="event-inspections", balloons=[BALLOON])
    stories = (("coil-run-dry", burner, date(2025, 6, 9), 2, None), ("flame-contact", envelope, date(2025, 8, 2), 3, None),
               ("packed-wet", envelope, date(2026, 6, 14), 2, 660))
    for event, item, day, after, minutes in stories:
        journal.add("event.reported", f"event-{event}", day, time="19:40Z", by=PILOT, item=item.id, event=event,
                    minutes=minutes)
        done = date.fromordinal(day.toordinal() + after)
        journal.add("requirement.done", f"done-{event}", done, by=WORKSHOP, item=item.id, requirement=f"event.{event}",
                    ref=f"OL-WO {day:%y}-{day.timetuple().tm_yday}", signatory=WORKSHOP, licence="QE.CAO.0031 / 14")
    journal.add("event.notified", "told-flame-contact", date(2025, 8, 3), time="08:15Z", by=OFFICE, item=envelope.id,
                event="event-flame-contact", to="authority", ref="OAO 25-0311")
    journal.add("event.notified", "told-coil", date(2025, 6, 10), by=OFFICE, item=burner.id, event="event-coil-run-dry",
                to="holder", ref="TAW 25-17")
    for (quantity, unit, place), read in WORN.items():
        for day, value in zip(LOOKED, read):
            journal.add("reading.taken", f"wear-{quantity}-{day}", day, by=WORKSHOP, item=basket.id, quantity=quantity,
                        value=value, unit=unit, place=place)
