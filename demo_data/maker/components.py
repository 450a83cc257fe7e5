# SPDX-License-Identifier: GPL-3.0-or-later
"""Four loose cylinders and three relief valves, each with a story; they are on no balloon."""

from datetime import date

from .journal import Journal

OFFICE, WORKSHOP, HOUSE, LOT = "office Ovelmere", "insp. 14", "Tarnwick Test House", "RV-26-2"
CYLINDERS = {"CYL-9001": ("2019-04", 51), "CYL-9002": ("2017-02", 51), "CYL-9003": ("2018-09", 72),
             "CYL-9004": ("2012-06", 51)}
VALVES = {"VLV-1": None, "VLV-2": LOT, "VLV-3": LOT}


def tell(journal: Journal) -> None:
    entered = date(2026, 9, 7)
    for number, (item, (made, litres)) in enumerate(CYLINDERS.items()):
        journal.add("item.entered", f"enter-{item}", entered, by=OFFICE, item=item, kind="cylinder", serial=f"TF{9001 + number}",
                    type="Flask", made=made, vessel={"material": "aluminium", "specification": "EN 13110",
                                                     "water_litres": litres, "tare_kg": 14.5})
    for item, lot in VALVES.items():
        journal.add("item.entered", f"enter-{item}", entered, by=OFFICE, item=item, kind="other", type="Relief valve",
                    serial=f"RV{item[-1]}", made="2026-05", lot=lot,
                    release={"form": "declaration", "number": f"TA-D-{item[-1]}"})
    for programme, items in (("lpg-adr", CYLINDERS), ("cylinder-airworthiness", CYLINDERS), ("relief-valve-life", VALVES)):
        journal.add("programme.adopted", f"adopt-{programme}-loose", entered, by=OFFICE, programme=programme,
                    items=list(items))
    for requirement in ("cylinder.shell", "cylinder.relief-valve"):
        journal.add("requirement.done", f"done-CYL-9004-{requirement}", date(2026, 9, 8), by=WORKSHOP, item="CYL-9004",
                    requirement=requirement, ref="QE-C-9004", signatory=WORKSHOP, licence="QE.145.0014")
    # The valve of one cylinder is exchanged; the lot of the new one is recalled, and it makes way for the old one.
    journal.add("item.fitted", "on-VLV-1", date(2026, 9, 9), by=WORKSHOP, item="VLV-1", to="CYL-9001")
    swap = date(2026, 10, 12)
    journal.add("item.removed", "off-VLV-1", swap, by=WORKSHOP, time="09:00Z", item="VLV-1", **{"from": "CYL-9001"})
    journal.add("item.fitted", "on-VLV-2", swap, by=WORKSHOP, time="09:00Z", item="VLV-2", to="CYL-9001",
                release={"form": "easa-form-1", "number": "QE-145-2211"}, lot=LOT)
    recall = date(2026, 11, 9)
    journal.add("item.removed", "off-VLV-2", recall, by=WORKSHOP, time="10:00Z", item="VLV-2",
                note="lot recalled by its maker", **{"from": "CYL-9001"})
    journal.add("item.state", "state-VLV-2", recall, by=WORKSHOP, time="10:01Z", item="VLV-2", state="quarantined")
    journal.add("item.state", "state-VLV-3", recall, by=WORKSHOP, time="10:02Z", item="VLV-3", state="quarantined")
    journal.add("item.fitted", "on-VLV-1-again", recall, by=WORKSHOP, time="11:00Z", item="VLV-1", to="CYL-9001")
    journal.add("cylinder.filled", "fill-CYL-9001", date(2026, 11, 14), by="pilot 03", item="CYL-9001", level_percent=80)
    # One is at the test house, one was beside a fire and is condemned.
    journal.add("item.state", "state-CYL-9002", date(2026, 11, 16), by=OFFICE, item="CYL-9002", state="away", to=HOUSE)
    journal.add("event.reported", "event-CYL-9003", date(2026, 10, 20), by=OFFICE, item="CYL-9003", event="over-temperature",
                temp_c=190, note="stood beside a burning trailer")
    journal.add("item.state", "state-CYL-9003", date(2026, 10, 23), by=WORKSHOP, item="CYL-9003", state="condemned")
