# SPDX-License-Identifier: GPL-3.0-or-later
"""Who may sign what, and which testers are in calibration. All numbers are invented."""

from dataclasses import dataclass
from datetime import date, timedelta

from . import FIRST_DAY, LAST_DAY, stream
from .journal import Journal
from .roster import OPERATORS

IA_TERMS = (date(2021, 3, 31), date(2023, 3, 31), date(2025, 3, 31), date(2027, 3, 31))


@dataclass(frozen=True)
class Entitlement:
    operator: str
    person: str
    capacity: str
    licence: str
    since: date = FIRST_DAY
    until: date | None = None
    balloons: tuple[str, ...] = ()


def authorizations(person: str, licence: str) -> tuple[Entitlement, ...]:
    """An inspection authorization, renewed every other year: it ends with the March of each odd year (14 CFR 65.92,
    from memory)."""
    starts = (FIRST_DAY, *(term + timedelta(days=1) for term in IA_TERMS))
    return tuple(Entitlement("shore", person, "inspection-authorization", licence, since, until)
                 for since, until in zip(starts, IA_TERMS))


ENTITLEMENTS = (
    Entitlement("rides", "insp. 14", "organisation-certifying-staff", "QE.CAO.0031 / 14"),
    Entitlement("rides", "insp. 21", "organisation-certifying-staff", "QE.CAO.0031 / 21"),
    Entitlement("rides", "insp. 12", "organisation-certifying-staff", "QE.CAO.0031 / 12", until=date(2026, 6, 30)),
    # A licence lasts five years (66.A.40, from memory).
    Entitlement("school", "insp. 09", "independent-certifying-staff", "QE.66.70409", until=date(2024, 5, 14)),
    Entitlement("school", "insp. 09", "independent-certifying-staff", "QE.66.70409", date(2024, 5, 2),
                date(2029, 5, 1)),
    Entitlement("school", "pilot 27", "pilot-owner", "QE.BFCL.2207", date(2023, 4, 3), None, ("QE-WILM", "QE-OAK")),
    Entitlement("shore", "insp. K3", "mechanic", "QN A&P 330417"),
    Entitlement("shore", "insp. K5", "mechanic", "QN A&P 330952", date(2024, 9, 9)),
    Entitlement("shore", "insp. K7", "mechanic", "QN A&P 330688"),
    *authorizations("insp. K3", "QN A&P 330417 IA"),
    *authorizations("insp. K7", "QN A&P 330688 IA"),
    Entitlement("shore", "pilot K8", "private-pilot", "QN 771208", date(2022, 5, 16), None, ("QN196R",)),
)

# What each operator has, with the month and day on which its calibration ends year by year.
TESTERS = (("grab tester", "fabric tester, 25 mm jaws", (3, 31)),
           ("air tester", "air permeability tester, 20 cm2 head", (4, 30)),
           ("test gauge", "pressure gauge 0 to 1600 kPa", (10, 31)),
           ("reference set", "altimeter, variometer and thermometer", (9, 30)))
# What each measures, over what range; certificates say so from 2025 on, those before did not.
MEASURES = {"grab tester": {"measures": ["grab-strength"], "unit": "N", "from": 50, "to": 600},
            "air tester": {"measures": ["air-permeability"], "unit": "mm/s", "from": 1, "to": 200},
            "test gauge": {"measures": ["burner-leak-test", "cylinder-leak-test", "hose-leak-test", "burner-pressure",
                                        "fuel-pressure-gauge-error", "relief-valve-opening"],
                           "unit": "kPa", "to": 1600},
            "reference set": {"measures": ["altimeter-error", "variometer-error", "envelope-thermometer-error"]}}
SAYING_SINCE = 2025
LAPSED = ("school", "air tester", 2026)      # and the year in which it was not sent in


def tester_name(operator: str, what: str) -> str:
    return f"{what} {OPERATORS[operator].prefix}"


def licence_of(person: str, day: date, capacity: str | None = None) -> str:
    """The number under which a person signs on a day."""
    return next(entry.licence for entry in ENTITLEMENTS
                if entry.person == person and capacity in (None, entry.capacity)
                and entry.since <= day <= (entry.until or day))


TEST_HOUSES = {"test house 3": "approval VK 0077"}


def signed_by(person: str) -> dict:
    """Who signed a paper, and the licence on it; nothing where no licence of theirs is known."""
    licence = TEST_HOUSES.get(person) or next((entry.licence for entry in ENTITLEMENTS if entry.person == person), None)
    return {"signatory": person, "licence": licence} if licence else {}


def entitle(journal: Journal) -> None:
    counts: dict[tuple[str, str], int] = {}
    for entry in ENTITLEMENTS:
        key = (entry.person, entry.capacity)
        counts[key] = counts.get(key, 0) + 1
        name = f"entitled-{entry.person}-{entry.capacity}".replace(". ", "-").replace(" ", "-")
        journal.add("person.entitled", f"{name}-{counts[key]}", entry.since, by=OPERATORS[entry.operator].office,
                    person=entry.person, capacity=entry.capacity, licence=entry.licence,
                    until=entry.until and entry.until.isoformat(),
                    balloons=[*entry.balloons] or None)


def calibrate(journal: Journal) -> None:
    """Each tester goes to the calibration house once a year, some days before it must, and keeps its date."""
    chance = stream("calibration")
    for operator, office in OPERATORS.items():
        for what, description, (month, day) in TESTERS:
            name = tester_name(operator, what)
            slug = name.replace(" ", "-")

            def certify(on: date, until: date) -> None:
                number = f"{slug}-{on.isoformat()}"
                journal.add("tester.calibrated", f"calibrated-{number}", on, by="calibration house 2", tester=name,
                            until=until.isoformat(), what=description,
                            certificate=f"C2-{on.year}-{chance.randrange(100, 1000)}",
                            **({**MEASURES[what], "station": OPERATORS[operator].name}
                               if on.year >= SAYING_SINCE else {}))

            certify(FIRST_DAY, date(FIRST_DAY.year, month, day))
            for year in range(FIRST_DAY.year, LAST_DAY.year + 1):
                on = date(year, month, day) - timedelta(days=chance.randrange(2, 20))
                if (operator, what, year) != LAPSED and on <= LAST_DAY:
                    certify(on, date(year + 1, month, day))
