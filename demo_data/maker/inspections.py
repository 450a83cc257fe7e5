# SPDX-License-Identifier: GPL-3.0-or-later
"""What the bench did in November 2026: one inspection released, one signed with discrepancies, one half done, and
two defects that wait."""

from datetime import date, timedelta

from .bench import Inspection
from .papers import licence_of
from .workshop import WEAK_NOTE, Workshop
from .world import INSPECTED_KINDS, Item, World

RELEASED = "QE-MIST"                 # whose next booked inspection from BENCH_DAY on is written line by line
BENCH_DAY = date(2026, 11, 1)
DISCREPANT = ("QN190R", date(2026, 11, 17))
FABRIC = "fabric.strength-test"                 # which that envelope, of the same visit, is past
HALF_DONE = ("QE-OVG", date(2026, 11, 20))

# The wording of AMC M.A.801(e)1 with "Part-ML" (from memory), and that of 14 CFR 43.11(a)(5).
RELEASE_ML = ("Certifies that the work specified except as otherwise specified was carried out in accordance with "
              "Part-ML and in respect to that work the aircraft is considered ready for release to service.")
DISCREPANCIES_US = ("I certify that this aircraft has been inspected in accordance with annual inspection and a list "
                    "of discrepancies and unairworthy items dated {day} has been provided for the aircraft owner or "
                    "operator.")


class Inspections:
    def __init__(self, world: World, workshop: Workshop) -> None:
        self.world, self.workshop = world, workshop

    def plan(self) -> None:
        self.world.plan(BENCH_DAY, lambda on: self.workshop.on_the_bench.update({RELEASED: self._released}))
        self.world.plan(DISCREPANT[1], self._discrepancies)
        self.world.plan(HALF_DONE[1], self._half_done)
        self.world.plan(date(2026, 11, 8), self._waits_for_a_day)
        self.world.plan(date(2026, 10, 27), self._waits_for_hours)

    def _work(self, registration: str, inspection: str, fabric: bool) -> list[dict]:
        parts = self.world.fitted(registration, *INSPECTED_KINDS)
        work = [{"item": item.id, "requirement": inspection} for item in parts]
        envelopes = [item for item in parts if item.kind == "envelope"] if fabric else []
        return work + [{"item": item.id, "requirement": "fabric.strength-test"} for item in envelopes]

    # -- released --------------------------------------------------------------------------------------------------
    def _released(self, day: date, order: str) -> None:
        """Two inspectors in one day; a burn through a panel is found and patched, a relief valve is exchanged."""
        first, second = "insp. 14", "insp. 21"
        bench = Inspection(self.world, order, "part-ml-inspection", RELEASED, day, first,
                           self._work(RELEASED, "ml.inspection", fabric=True))
        valve = bench.item("cylinder", 1)
        bench.worn["relief-valve-age", valve.id] = 10
        bench.findings.update({"envelope.panels": "burn hole in gore 7, row 2"})
        bench.work_through(bench.lines("papers", "inflated", "envelope", "rigging"), first, day)
        bench.work_through(bench.lines("basket", "instruments", "burner", "cylinders", "hoses"), second, day)
        bench.turn_to(second, day)
        bench.write("part.replaced", f"part-{order}-1", second, day, item=valve.id, part="pressure relief valve",
                    removed_serial="RV-1184", fitted_serial="RV-2760", release_document="EASA Form 1, VK-2026-0418",
                    note="stamped 2016, at the end of its ten years")
        bench.work_through(bench.lines("fuel-system"), second, day)
        self._burn(bench, first, day)
        bench.work_through(bench.lines("closing", "further-work"), first, day)
        self._accomplish(bench, day, first)
        bench.close("released", first, day, RELEASE_ML, "organisation-certifying-staff", licence_of(first, day),
                    limitations="none")

    def _burn(self, bench: Inspection, by: str, day: date) -> None:
        envelope, place = bench.item("envelope"), {"gore": 7, "row": 2}
        defect = bench.find(1, envelope, "envelope.panels", "burn hole, 45 x 30 mm, beside the load tape", "deferrable",
                            by, day, **place)
        bench.turn_to(by, day)
        bench.write("repair.made", f"repair-{bench.name}-1", by, day, item=envelope.id, defect=defect, **place,
                    method="TM-10, chapter 6, sewn patch", width_mm=160, height_mm=140, lot="25-02")
        bench.write("defect.cleared", f"cleared-{bench.name}-1", by, day, defect=defect, item=envelope.id,
                    what="patched on both sides of the tape, tape untouched", ref=bench.name)

    def _accomplish(self, bench: Inspection, day: date, signatory: str) -> None:
        for piece in bench.work:
            item = self.world.items[piece["item"]]
            self.world.done(item, piece["requirement"], day, signatory, stated=True, ref=bench.name)
            if piece["requirement"] == "ml.inspection":
                item.inspected = (day, item.clock[0])
            self.world.ground(item.id, day)
        self.world.ground(bench.registration, day)

    # -- signed with a list of discrepancies -----------------------------------------------------------------------
    def _discrepancies(self, day: date) -> None:
        """An annual of two days: a basket wire bars the approval for return to service, so nothing is accomplished."""
        registration, by, second_day = DISCREPANT[0], "insp. K3", day + timedelta(days=1)
        bench = Inspection(self.world, self.workshop.work_order("shore", day), "us-annual", registration, day, by,
                           self._work(registration, "us.annual", fabric=False))
        basket = bench.item("basket")
        bench.worn["broken-strands", basket.id] = 5
        bench.findings.update({"basket.wires": "wire 2 frayed", "basket.handles": "outer rope frayed"})
        bench.work_through(bench.lines("papers", "inflated", "envelope", "rigging", "basket"), by, day)
        bench.find(1, basket, "basket.wires", "basket wire 2: five broken strands at the lower thimble", "grounding",
                   by, day, reading=bench.last_reading("broken-strands", basket))
        bench.find(2, basket, "basket.handles", "outer rope handle frayed", "minor", by, day)
        bench.work_through(bench.lines("instruments", "burner", "cylinders", "hoses", "fuel-system", "closing"), by,
                           second_day)
        bench.close("discrepancies", by, second_day, DISCREPANCIES_US.format(day=second_day.isoformat()),
                    "inspection-authorization", licence_of(by, day, "inspection-authorization"),
                    excepted=[{"item": bench.item("envelope").id, "requirement": FABRIC, "title": "Fabric strength test",
                               "standing": "lapsed"}])

    # -- half done -------------------------------------------------------------------------------------------------
    def _half_done(self, day: date) -> None:
        """The pulling stops at the thirteenth place, where the fabric tears; the second inspector is at the burner."""
        registration, first, second = HALF_DONE[0], "insp. 14", "insp. 21"
        bench = Inspection(self.world, self.workshop.work_order("rides", day), "part-ml-inspection", registration, day,
                           first, self._work(registration, "ml.inspection", fabric=True))
        lines = bench.lines("papers", "inflated", "envelope")
        test = next(index for index, (line, _) in enumerate(lines) if line["id"] == "envelope.grab-test")
        bench.work_through(lines[:test], first, day)
        bench.work_through([*bench.lines("basket"), *bench.lines("burner")[:6]], second, day)
        line, envelope = lines[test]
        next_day = day + timedelta(days=1)
        reading = bench.pull(line, envelope, first, next_day, tears=(13, 121), note=WEAK_NOTE)
        bench.find(1, envelope, line["id"], "fabric tore at 121 N", "grounding", first, next_day,
                   reading=reading["id"], gore=reading["gore"], row=reading["row"])

    # -- defects that wait -----------------------------------------------------------------------------------------
    def _waits_for_a_day(self, day: date) -> None:
        basket = self.world.fitted("QE-OVA", "basket")[0]
        self._defer(basket, day, "QE-OVA/2026/1", "rawhide worn through at one corner", "pilot 03", "insp. 14",
                    "rawhide on order; the floor is sound", until="2026-12-20")

    def _waits_for_hours(self, day: date) -> None:
        burner = self.world.fitted("QE-HFD", "burner")[0]
        self._defer(burner, day, "QE-HFD/2026/1", "igniter of the left burner weak", "pilot 25", "insp. 09",
                    "the right one and the striker light it", until_minutes=burner.clock[0] + 900)

    def _defer(self, item: Item, day: date, defect: str, what: str, pilot: str, inspector: str, reason: str,
               **until) -> None:
        add = self.world.journal.add
        slug = defect.replace("/", "-")
        add("defect.found", f"found-{slug}", day, by=pilot, defect=defect, item=item.id, what=what, severity="minor")
        add("defect.deferred", f"deferred-{slug}", day, by=inspector, defect=defect, item=item.id, reason=reason,
            agreed_by=inspector, **until)
