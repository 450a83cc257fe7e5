# SPDX-License-Identifier: GPL-3.0-or-later
"""What is planned for the days after the last one: flights of two weekends, visits, a winter pause, a festival, a sale."""

from datetime import date

from . import LAST_DAY
from .journal import Journal
from .roster import OPERATORS
from .world import INSPECTED_KINDS, World

# Of QE-OVA less is left than both of its flights need.
FLIGHTS = (("QE-DAWN", date(2026, 11, 28), 60), ("QE-MIST", date(2026, 11, 28), 75), ("QE-OVA", date(2026, 11, 28), 65),
           ("QN114K", date(2026, 11, 28), 70), ("QE-LOFT", date(2026, 11, 29), 45), ("QE-OVA", date(2026, 11, 29), 70),
           ("QE-GLOW", date(2026, 12, 5), 60), ("QN118K", date(2026, 12, 5), 90), ("QE-OVE", date(2026, 12, 6), 65))
# The annual of QN131M is due before it comes in.
VISITS = (("QE-OVA", "Ovelmere workshop", date(2026, 12, 1), date(2026, 12, 3), "ml.inspection", True),
          ("QN131M", "Kestle Shore shed", date(2026, 12, 7), date(2026, 12, 9), "us.annual", False),
          ("QE-LAKE", "Ovelmere workshop", date(2026, 12, 9), date(2026, 12, 10), "ml.inspection", False),
          ("QE-OVE", "Ovelmere workshop", date(2026, 12, 10), date(2026, 12, 11), "ml.inspection", True),
          ("QE-HFB", "Harrowfell hangar", date(2027, 1, 18), date(2027, 1, 20), "ml.inspection", True))
USES = (({"balloon": "QE-HFA"}, date(2026, 12, 14), date(2027, 2, 28), {"times": 0}, "winter pause of the school"),
        ({"balloon": "QE-OVB"}, date(2027, 1, 15), date(2027, 1, 24), {"flights_a_week": 9}, "snow festival"),
        ({"balloon": "QE-TERN"}, date(2027, 2, 1), None, {"times": 0}, "to be sold"))


def plan(journal: Journal, world: World) -> None:
    for registration, on, minutes in FLIGHTS:
        office = OPERATORS[world.balloons[registration].operator].office
        journal.add("flight.planned", f"plan-{registration}-{on.isoformat()}", on, by=office, balloon=registration, minutes=minutes)
    for registration, station, first, last, requirement, review in VISITS:
        balloon = world.balloons[registration]
        items = world.fitted(registration, *INSPECTED_KINDS)
        covers = [{"item": item.id, "requirement": requirement} for item in items]
        if review:
            covers += [{"item": item.id, "requirement": "ml.arc-review"} for item in items if item.kind == "envelope"]
        journal.add("visit.planned", f"visit-{registration}-{first.isoformat()}", LAST_DAY, by=OPERATORS[balloon.operator].office,
                    balloon=registration, station=station, to=last.isoformat(), covers=covers, **{"from": first.isoformat()})
    for subject, first, last, pace, why in USES:
        office = OPERATORS[world.balloons[subject["balloon"]].operator].office
        journal.add("use.planned", f"use-{subject['balloon']}-{first.isoformat()}", LAST_DAY, by=office, note=why, **subject,
                    **{"from": first.isoformat()}, to=last and last.isoformat(), **pace)
