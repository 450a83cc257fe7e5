# SPDX-License-Identifier: GPL-3.0-or-later
"""What the manuals of the invented maker state: its types, and what a reading on them must reach.

Every figure is our own invention and no limit of a real type."""

from dataclasses import dataclass

from . import FIRST_DAY
from .journal import Journal
from .roster import CYLINDER_TYPES, HOSE_TYPE, INSTRUMENT_TYPE, SIZES

MAKER = "Tarnwick Aerostat Works"


@dataclass(frozen=True)
class Manual:
    title: str
    revision: str

    @property
    def cited(self) -> str:
        return f"{self.title}, revision {self.revision}"


MANUALS = {kind: Manual(f"Tarnwick maintenance manual, {title}", revision) for kind, title, revision in (
    ("envelope", "TM-10 envelopes", "8"), ("basket", "TM-20 baskets", "5"), ("burner", "TM-30 burners", "6"),
    ("cylinder", "TM-40 cylinders", "7"), ("hose", "TM-50 hoses", "3"), ("instrument", "TM-60 instruments", "2"))}

TYPES = {
    "envelope": tuple(size.envelope for size in SIZES.values()),
    "basket": tuple(dict.fromkeys(size.basket for size in SIZES.values())),
    "burner": tuple(dict.fromkeys(size.burner for size in SIZES.values())),
    "cylinder": CYLINDER_TYPES,
    "hose": (HOSE_TYPE,),
    "instrument": (INSTRUMENT_TYPE,),
}
SIZE_OF_ENVELOPE = {size.envelope: size for size in SIZES.values()}

GRAB = {"direction": "warp", "jaw_mm": 25}
AIR = {"pressure_pa": 100, "area_cm2": 20}


@dataclass(frozen=True)
class Limit:
    """A bound on one quantity; `bounds` are the keys of the entry, `page` where the manual states it."""
    kind: str
    quantity: str
    unit: str
    page: int
    passes: str
    bounds: dict
    placed: bool = False     # asked at as many places as the size of the envelope has


LIMITS = (
    Limit("envelope", "grab-strength", "N", 41, "held at the proof load in every place tested",
          {"least": 133.4, "proof": 133.4, **GRAB}, placed=True),
    Limit("envelope", "air-permeability", "mm/s", 44, "at or below the figure in every place tested",
          {"most": 45, **AIR}, placed=True),
    Limit("envelope", "tell-tale", "degC", 38, "the dot of 127 degrees has not turned", {"most": 127}),
    Limit("envelope", "flying-wire-length-difference", "mm", 52, "longest less shortest, under load", {"most": 20}),
    Limit("envelope", "carabiner-wear", "mm", 53, "at the deepest place of the worst one", {"most": 1}),
    Limit("basket", "runner-thickness", "mm", 17, "at the thinnest place", {"least": 12}),
    Limit("basket", "broken-strands", "count", 21, "of the worst wire", {"most": 2}),
    Limit("burner", "burner-leak-test", "kPa", 29, "no bubbles for two minutes at this pressure", {"least": 700}),
    Limit("cylinder", "cylinder-leak-test", "kPa", 14, "no bubbles for two minutes at this pressure", {"least": 700}),
    Limit("cylinder", "relief-valve-age", "year", 18, "from the date stamped on the valve", {"most": 10}),
    Limit("hose", "hose-leak-test", "kPa", 6, "no bubbles for two minutes at this pressure", {"least": 1000}),
    Limit("instrument", "altimeter-error", "m", 9, "at the level of the field", {"least": -15, "most": 15}),
    Limit("instrument", "envelope-thermometer-error", "K", 11, "in boiling water", {"least": -5, "most": 5}),
)


def limits_of(kind: str) -> dict[str, Limit]:
    """The limits of a kind by quantity."""
    return {limit.quantity: limit for limit in LIMITS if limit.kind == kind}


def places_of(type_name: str, quantity: str) -> int:
    """How many readings of a placed quantity an inspection of this envelope asks."""
    tests = SIZE_OF_ENVELOPE[type_name].fabric_tests
    return tests if quantity == "grab-strength" else tests // 2


def publish(journal: Journal) -> None:
    """Writes what the manuals say."""
    for kind, names in TYPES.items():
        manual = MANUALS[kind]
        for name in names:
            slug = name.lower().replace(" ", "-").replace(".", "")
            size = SIZE_OF_ENVELOPE.get(name)
            journal.add("type.described", f"type-{slug}", FIRST_DAY, by=MAKER, type=name, kind=kind,
                        manual=manual.title, revision=manual.revision, gores=size and size.gores,
                        rows=size and size.rows)
            for limit in limits_of(kind).values():
                journal.add("limit.stated", f"limit-{slug}-{limit.quantity}", FIRST_DAY, by=MAKER, type=name,
                            kind=kind, quantity=limit.quantity, unit=limit.unit, passes=limit.passes,
                            places=places_of(name, limit.quantity) if limit.placed else None,
                            source=f"{manual.cited}, page {limit.page}", **limit.bounds)
