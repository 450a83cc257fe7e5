# SPDX-License-Identifier: GPL-3.0-or-later
"""Loose cylinders with their relief valves, a burner with its coil, an extinguisher, a quick release and a transponder,
each with a story; they are on no balloon."""

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
    _tell_of_valve_from_the_fire(journal)
    _tell_of_burner(journal)
    _tell_of_equipment(journal)


def _tell_of_valve_from_the_fire(journal: Journal) -> None:
    """Nobody has to say that it is kept apart: it came out of the cylinder that was too hot."""
    journal.add("item.entered", "enter-VLV-4", date(2026, 9, 7), by=OFFICE, item="VLV-4", kind="other", type="Relief valve",
                serial="RV4", made="2024-05", release={"form": "faa-8130-3", "number": "QN-8130-77"})
    journal.add("item.fitted", "on-VLV-4", date(2026, 9, 9), by=WORKSHOP, item="VLV-4", to="CYL-9003")
    journal.add("item.removed", "off-VLV-4", date(2026, 10, 21), by=WORKSHOP, time="11:00Z", item="VLV-4",
                **{"from": "CYL-9003"})


def _tell_of_burner(journal: Journal) -> None:
    """A spare burner that was overhauled, and one of whose coils was exchanged for another with its form."""
    journal.add("item.entered", "enter-BRN-9001", date(2026, 9, 7), by=OFFICE, item="BRN-9001", kind="burner", type="Ember",
                serial="TA9001", made="2014-03", brought_forward={"minutes": 52_300, "landings": 790, "inflations": 845})
    for number, (item, form) in enumerate((("COI-1", "owner-accepted"), ("COI-2", "easa-form-1")), 1):
        journal.add("item.entered", f"enter-{item}", date(2026, 9, 7), by=OFFICE, item=item, kind="other", type="Coil",
                    serial=f"CO{number}", lot=f"CO-2{number}", release={"form": form, "number": f"QE-145-30{number}"})
    journal.add("item.fitted", "on-COI-1", date(2026, 9, 8), by=WORKSHOP, item="COI-1", to="BRN-9001")
    journal.add("programme.adopted", "adopt-burner-service-loose", date(2026, 9, 7), by=OFFICE, programme="burner-service",
                items=["BRN-9001"])
    for requirement, day, minutes in (("burner.overhaul", date(2024, 11, 18), 44_900),
                                      ("burner.service", date(2024, 11, 18), 44_900),
                                      ("burner.leak-test", date(2026, 9, 21), 52_300)):
        journal.add("requirement.done", f"done-BRN-9001-{requirement}", day, by=WORKSHOP, item="BRN-9001",
                    filed=date(2026, 9, 7) if day < date(2026, 9, 7) else None, requirement=requirement, clock={"minutes": minutes}, ref=f"QE-B-{day:%y%j}", signatory=WORKSHOP,
                    licence="QE.145.0014")
    swap = date(2026, 9, 20)
    journal.add("item.removed", "off-COI-1", swap, by=WORKSHOP, time="09:00Z", item="COI-1", **{"from": "BRN-9001"})
    journal.add("item.state", "state-COI-1", swap, by=WORKSHOP, time="09:01Z", item="COI-1", state="unserviceable")
    journal.add("parts.listed", "parts-BRN-9001", date(2026, 11, 5), by=OFFICE, item="BRN-9001",
                parts=[{"part": "pilot-valve", "type": "PV-1", "serial": "S0311", "whole": True}], whole=True,
                source="seen on the valve's plate")
    journal.add("item.fitted", "on-COI-2", swap, by=WORKSHOP, time="09:30Z", item="COI-2", to="BRN-9001")


def _tell_of_equipment(journal: Journal) -> None:
    """What a maker or a rule gives a date of its own."""
    entered = date(2026, 9, 7)
    for item, kind, type_name, made, programme in (
            ("EXT-1", "other", "Fire extinguisher", "2021-02", "extinguisher"),
            ("QRL-1", "other", "Quick release", "2025-03", "quick-release"),
            ("XPD-1", "instrument", "Transponder", "2022-06", "transponder-us")):
        journal.add("item.entered", f"enter-{item}", entered, by=OFFICE, item=item, kind=kind, type=type_name,
                    serial=f"TQ{item[:3]}", made=made)
        journal.add("programme.adopted", f"adopt-{programme}-loose", entered, by=OFFICE, programme=programme, items=[item])
    for item, requirement, day in (("EXT-1", "extinguisher.check", date(2025, 12, 3)),
                                   ("XPD-1", "us.transponder-test", date(2025, 6, 10))):
        journal.add("requirement.done", f"done-{item}-{requirement}", day, by=WORKSHOP, item=item, requirement=requirement,
                    filed=entered, ref=f"QE-E-{day:%y%j}", signatory=WORKSHOP, licence="QE.145.0014")
