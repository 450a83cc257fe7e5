# SPDX-License-Identifier: GPL-3.0-or-later
"""The text of README.md: the scenario by hand, the counts from the record itself."""

from collections import Counter

from . import ASKED_ON, FIRST_DAY, LAST_DAY, SEED
from .roster import OPERATORS, ROWS
from .workshop import WEAK_NOTE

TEXT = """\
# The demo fleet

Everything here is invented: the valley, the operators, the maker, the types, the people behind the signatures and the
registrations. The nationality marks `QE` and `QN` belong to no state. No figure here is a limit of a real type.
Crownring keeps records and computes; nothing in this folder says that a balloon is airworthy.

## The scenario
The Ovelmere is a long lake in a valley that is on no map; its west shore flies under European rules, its east shore
under those of the United States. Three operators share the sky above it:

{operators}

The balloons were all built by Tarnwick Aerostat Works: envelopes Sedge 65, Alder 77, Rowan 105, Hornbeam 160 and Great
Lime 210; baskets Creel, Hamper and Pannier; burners Ember; cylinders Flask. Cylinders are a pool: they change places in
the season, go to the test house in winter, and are borrowed for a day by the `kit` of a flight. QE-TERN, QE-FENN and
QN140M have no bottom end and always fly with another balloon's; QE-PEA and QE-POD, QN177P and QN183R take turns with
one. The record runs from {first} to {last} (three checklists were confirmed later, when they were revised); the questions
are asked on {asked}.

What the maker's manuals state of each type (gores, rows, limits with their page), who may sign what, and when each
tester was calibrated stand in the record like everything else; all of these figures and numbers are invented too.
insp. 14 and insp. 21 sign for the rides' maintenance organisation, insp. 09 holds a licence of his own, insp. K3 and
insp. K7 hold inspection authorizations, insp. K5 is a mechanic; pilot 27 is the pilot-owner of QE-WILM and QE-OAK, and
pilot K8 the private pilot who owns QN196R.

Since November 2026 the burners' pilot valves are listed with their serial numbers, for directive OAO-AD 2026-014 binds
burners by them: half of them are bound and were put right, the others are not bound. It takes the place of OAO-AD
2026-009, which four had answered. TAW-SB 26-05 is recommended for the Rowan 105, and nobody has done it yet.

QE-DAWN's pilots weigh their fuel since May 2026; its last three flights burnt about a fifth more than like ones before,
which nobody has reported. In 2025 a coil of it ran dry and its flame touched fabric (one was told to the authority, one to
the maker), in 2026 it was packed wet; all three were inspected. Its basket's runner, weave and rope handles were read
four times.

## The files
| file | what it is | made by |
| --- | --- | --- |
| `fleet.jsonl` | the record, one entry a line, by moment, what is referred to first | `make_fleet.py` |
| `flight_log.csv` | a late sheet to import: semicolons, day.month.year, h:mm, decimal commas | `make_flight_log.py` |
| `stations.json` | stations with their open weeks, for `crownringctl plan` | by hand |
| `evening.igc` | the track of one flight: ten-second fixes, on the ground, aloft, on the ground | `make_track.py` |
| `README.md` | this page | `make_fleet.py` |

Of the 25 rows of the sheet two cannot be read (31 November; a letter in a duration) and one repeats a flight of the
record. The track is QE-HFC's on 2026-11-21: 7 minutes on the ground, 55 aloft from 16:11 UTC, 6 on the ground; it is
written after the FAI's Technical Specification for IGC-approved GNSS Flight Recorders, Appendix A, from memory, without
the signature (G record) of a certified recorder.

    python3 make_fleet.py && python3 make_flight_log.py && python3 make_track.py

Only Python's standard library (3.11) is needed. The seed is {seed}; two runs give the same bytes, and
`make_fleet.py --check` compares without writing. The parts are in `maker/`: `roster` (who flies what), `pool` (how
things come into the record), `sky` (weather and flights), `workshop` (inspections and fabric), `shed` (cylinders and
turns), `manual` (types and their limits), `directives` (what was issued and answered), `papers` (who may sign, which tester is in calibration), `bench` (an
inspection line by line), `inspections` (those of November 2026), `cases` and `components` (what is deliberate), `world` (the state
meanwhile), `journal` (the lines), `check` and `check_bench` (what must hold). The lines of the three inspections come
from `../assets/checklists/hot-air-inspection.json`: when it changes, make the fleet anew.

## How it was made
A day at a time: the morning's work in shed and workshop, then the dawn and the dusk slot if the weather of the day
allows. Each change of state writes its entry, so a stated `clock` agrees with the flights before it, except where
a case below says otherwise. Yearly visits gather in January to March; busy balloons get a 100-hour inspection in the
season. A history dated before {first} stands directly behind the entry of its item. In readings `gore` counts
from 1 around the envelope and `row` from 1 at the mouth upward, the highest row being at the crown. Fabric loses log
strength in proportion to its hours, faster toward the crown; the four envelopes of lot 19-03 lose it faster.
These laws and all odds are our own choice, not measured on any real fabric. Until autumn 2026 an inspection is one
line of the logbook for each item, with five pulls of the fabric; from then on three are written as the bench does it,
each line of the checklist with who settled it and when, and the fabric tested at every place that the manual asks.
No inspection here is sealed, and no photograph is kept.

## What it holds
{counts}

## Deliberate cases, as of {asked}
| where | what |
| --- | --- |
| QE-RYE | inspected 2025-11-04: in the one-month tolerance; certificate and fabric test of 2026-04-20 still run |
| QE-OVG | inspected 2025-11-20: the inspection is in its tolerance, the certificate of the same day has run out |
| QE-OVG | OL-2026-018, opened 2026-11-20: half done; the 13th of 24 grab tests tore at 121 N, which grounds the balloon |
| QE-MIST | OL-2026-017, released 2026-11-19: a burn patched, a relief valve exchanged |
| QN190R | KS-2026-015, annual signed 2026-11-18 with two discrepancies, one of them a danger to flight: pending, it grounds all of it |
| QE-OVA | basket: a minor defect, deferred until 2026-12-20 |
| QE-HFD | burner: a minor defect, deferred until a figure of the burner's clock |
| insp. 12 | entitled until 2026-06-30 only |
| air tester HF | its calibration ended on 2026-04-30 and was not renewed |
| QE-OVE, QE-GLOW | inspected 2025-12-12 and 2025-12-19: nearing |
| QN131M | annual 2025-11-17: good through 2026-11-30, nearing; fabric tested 2026-04-20 |
| QN190R | annual 2025-10-14: lapsed since 2026-10-31 ran out; not flown since 2026-10-11 |
| QE-IVY | inspected 2025-07-16: lapsed; flew on into the tolerance; its envelope came without landings and inflations |
| QE-LOFT | laid up since autumn 2024: lapsed; basket and burner came with unknown clocks |
| QE-NEWT | bought second-hand on 2026-10-05 without papers, and flown: unproven |
| the barn | a basket, a burner and a cylinder entered 2026-09-14 with nothing known: unproven |
| some cylinders | stamp or type missing; transport test overdue on the shelf ("test due, set aside") |
| some hoses | older than the recommended ten years |
| QE-OVF | over-temperature 2023-06-14, closed by the strength test of 2023-06-20 |
| QN126K | over-temperature 2026-09-27: still open, grounded since |
| QE-OAK, QE-OVD | hard landings 2022-08-21 and 2024-05-12, inspected after |
| QE-OVC, QE-OVB | new envelopes 2025-03-17 and 2026-02-09; the old ones lie on the shelf |
| QE-HFB | a correction of a July 2024 flight that was itself voided: the first figure counts |
| QE-PEA, QE-WILM, QN196R | one visit each was late: spring of 2022, 2023 and 2024 |
{weak}| CYL-9001 | a part with a clock of its own: VLV-1 gave way to VLV-2 and came back; filled on 2026-11-14 |
| VLV-2, VLV-3 | lot RV-26-2, recalled on 2026-11-09: both quarantined |
| CYL-9002 | at the test house since 2026-11-16 |
| CYL-9003 | aluminium, at 190 degrees on 2026-10-20: condemned for good |
| VLV-4 | taken out of CYL-9003 after that, so kept apart until it is released by itself |
| BRN-9001 | a spare burner, overhauled 2024-11-18; COI-1 gave way to COI-2 and is unserviceable |
| EXT-1, QRL-1, XPD-1 | an extinguisher, a quick release and a transponder, each with a date of its own |
| CYL-9004 | its transport test ran out in 2022, its airworthiness runs until 2036: it must not be filled |
| QE-LAKE | 2025-08-20: a removal of a cylinder that was not fitted (open question) |
| QE-OVF, QE-OVA | 2026-06-03: a cylinder fitted to the second without removal from the first (open question) |
| QE-HFA | 2026-05-06: a basket's stated clock is lower than the one stated before (open question) |
| QE-DAWN | 2026-11-12: a cylinder removed and refitted on one day without times: it ends removed (open question) |
"""


def table(head: str, counter: Counter) -> str:
    rows = "\n".join(f"| {name} | {count} |" for name, count in sorted(counter.items()))
    return f"| {head} | count |\n| --- | ---: |\n{rows}"


def readme(entries: list[dict]) -> str:
    """The page for this record."""
    flights = [entry for entry in entries if entry["entry"] == "flight.logged"]
    done = [entry for entry in entries if entry["entry"] == "requirement.done"]
    items = [entry for entry in entries if entry["entry"] == "item.entered"]
    torn = sorted({(entry["item"], entry["on"]) for entry in entries if entry.get("note") == WEAK_NOTE})
    weak = "".join(f"| {name} | a grab test of {day} tore below the proof load: not flown since |\n"
                   for name, day in torn)
    operators = "\n".join(
        f"- **{office.name}** ({'QE-' if office.rules == 'ml' else 'QN'} marks, "
        f"{sum(row.operator == key for row in ROWS)} balloons)" for key, office in OPERATORS.items())
    counts = "\n\n".join((
        f"{len(entries)} entries, {len(ROWS)} balloons, {len(items)} items.",
        table("entry", Counter(entry["entry"] for entry in entries)),
        table("item", Counter(entry["kind"] for entry in items)),
        table("flights in", Counter(entry["on"][:4] for entry in flights)),
        table("requirement done", Counter(entry["requirement"] for entry in done)),
        table("reading taken", Counter(entry["quantity"] for entry in entries if entry["entry"] == "reading.taken")),
    ))
    return TEXT.format(operators=operators, counts=counts, weak=weak, seed=SEED,
                       first=FIRST_DAY, last=LAST_DAY, asked=ASKED_ON)
