# SPDX-License-Identifier: GPL-3.0-or-later
"""Who flies what: the invented operators, the invented maker's types and the forty balloons.

All names are our own. The marks "QE" and "QN" belong to no state."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Operator:
    name: str
    prefix: str              # of its work orders
    rules: str               # "ml": European rules, "us": United States rules
    office: str              # who signs for the office
    inspectors: tuple[str, ...]
    pilots: tuple[str, ...]
    spare_cylinders: int     # on the shelf at the start


OPERATORS = {
    "rides": Operator("Ovelmere Balloon Rides", "OL", "ml", "office Lakeside", ("insp. 14", "insp. 21"),
                      tuple(f"pilot {n:02}" for n in range(1, 15)), 8),
    "school": Operator("Harrowfell Air School", "HF", "ml", "office Harrowfell", ("insp. 09",),
                       tuple(f"pilot {n:02}" for n in range(20, 34)), 4),
    "shore": Operator("Kestle Shore Aerostats", "KS", "us", "office Kestle Shore", ("insp. K3", "insp. K7"),
                      tuple(f"pilot K{n}" for n in range(1, 13)), 5),
}


@dataclass(frozen=True)
class Size:
    """A type of the invented maker Tarnwick Aerostat Works, and the bottom end that goes with it."""
    envelope: str
    gores: int
    rows: int                # panel rows, 1 at the mouth, the highest at the crown
    basket: str
    burner: str
    cylinders: int
    hoses: int
    fabric_tests: int        # places of the envelope at which its manual wants the strength tested


SIZES = {
    "S": Size("Sedge 65", 12, 14, "Creel 3", "Ember single", 2, 1, 12),
    "A": Size("Alder 77", 16, 16, "Creel 4", "Ember twin", 2, 1, 16),
    "R": Size("Rowan 105", 20, 18, "Hamper 6", "Ember twin", 3, 2, 24),
    "H": Size("Hornbeam 160", 24, 20, "Pannier 10", "Ember triple", 4, 2, 24),
    "L": Size("Great Lime 210", 28, 22, "Pannier 16", "Ember quad", 4, 2, 24),
}

CYLINDER_TYPES = ("Flask 40 steel", "Flask 50 aluminium", "Flask 60 steel")
HOSE_TYPE = "Liquid hose 1.2 m"
INSTRUMENT_TYPE = "Skyglass 2"


@dataclass(frozen=True)
class Row:
    registration: str
    title: str
    operator: str
    size: str
    operations: tuple[str, ...]
    pace: int                # flights a year
    hours: int               # of the envelope when entered; 0 is new
    made: str                # "": unknown
    slot: str                # "MM-DD" of the yearly visit
    entered: str = "2021-01-01"
    host: str | None = None  # flies with that balloon's bottom end, named by the kit of each flight
    swaps_with: str | None = None    # takes turns with that balloon's bottom end, by removals and fittings


HIRE, TEACH, PRIVATE = ("for-hire",), ("instruction",), ("private",)
BOTH = ("for-hire", "instruction")

ROWS = (
    Row("QE-OVA", "Morning Kettle", "rides", "L", HIRE, 86, 0, "2020-11", "02-04"),
    Row("QE-OVB", "Blue Ladle", "rides", "H", HIRE, 80, 62, "2019-10-14", "01-19"),
    Row("QE-OVC", "Plum Lantern", "rides", "H", HIRE, 74, 96, "2019-03-02", "02-23"),
    Row("QE-OVD", "Quiet Drum", "rides", "L", HIRE, 80, 20, "2020-02-20", "03-05"),
    Row("QE-OVE", "Barley Moon", "rides", "R", HIRE, 66, 104, "2018-09", "12-12"),
    Row("QE-OVF", "Tall Harbour", "rides", "H", HIRE, 78, 0, "2020-12-04", "01-28"),
    Row("QE-OVG", "Slate and Honey", "rides", "R", HIRE, 64, 70, "2019-06-11", "11-24"),
    Row("QE-OVH", "Ninth Bell", "rides", "L", HIRE, 88, 0, "2021-03-26", "02-12", "2021-04-06"),
    Row("QE-OVI", "Paper Orchard", "rides", "H", HIRE, 76, 0, "2021-12", "03-12", "2022-02-14"),
    Row("QE-OVJ", "Red Ferryman", "rides", "L", HIRE, 84, 0, "2022-11-30", "02-18", "2023-01-16"),
    Row("QE-LAKE", "Lady of Reeds", "rides", "H", HIRE, 70, 88, "2019-02", "03-18"),
    Row("QE-MIST", "Seven Mists", "rides", "R", HIRE, 62, 46, "2019-11-08", "01-24"),
    Row("QE-DAWN", "First Boat Out", "rides", "L", HIRE, 86, 8, "2020-05-19", "02-27"),
    Row("QE-TERN", "Tern", "rides", "R", HIRE, 61, 55, "2019-08-27", "01-14", host="QE-MIST"),
    Row("QE-GLOW", "Evening Post", "rides", "H", HIRE, 72, 30, "2020-03-11", "12-19"),
    Row("QE-HFA", "Long Slope", "school", "A", TEACH, 66, 85, "2018-04-17", "02-09"),
    Row("QE-HFB", "Second Slope", "school", "A", TEACH, 58, 40, "2019-07", "01-31"),
    Row("QE-HFC", "Chalk Line", "school", "S", TEACH, 52, 12, "2020-06-02", "03-09"),
    Row("QE-HFD", "Blackboard", "school", "R", BOTH, 60, 0, "2021-05-05", "02-16", "2021-05-21"),
    Row("QE-WILM", "Willow Hat", "school", "S", PRIVATE, 18, 120, "2014-05", "03-22"),
    Row("QE-PEA", "Pea", "school", "S", PRIVATE, 14, 61, "2016-08-30", "02-26", swaps_with="QE-POD"),
    Row("QE-POD", "Pod", "school", "S", PRIVATE, 12, 48, "2017-04-21", "03-02"),
    Row("QE-RYE", "Rye and Poppy", "school", "A", PRIVATE, 26, 92, "2015-09-10", "11-09"),
    Row("QE-OAK", "Acorn Post", "school", "A", PRIVATE, 22, 77, "2016-03", "03-27"),
    Row("QE-IVY", "Ivy Clock", "school", "S", PRIVATE, 16, 140, "2012-06", "07-18"),
    Row("QE-FENN", "Fenn", "school", "A", PRIVATE, 24, 33, "2019-05-16", "01-22", host="QE-OAK"),
    Row("QE-LOFT", "Hayloft", "school", "S", PRIVATE, 11, 155, "2011-07-08", "03-14"),
    Row("QE-NEWT", "Newt", "school", "S", PRIVATE, 20, 64, "", "02-20", "2026-10-05"),
    Row("QN114K", "Kestle Queen", "shore", "L", HIRE, 82, 16, "2019-12-12", "01-17"),
    Row("QN118K", "Copper Sound", "shore", "H", HIRE, 78, 0, "2020-10", "02-06"),
    Row("QN126K", "Tin Regatta", "shore", "H", HIRE, 74, 50, "2019-04-09", "02-25"),
    Row("QN131M", "Pier Nine", "shore", "R", HIRE, 68, 81, "2018-12-03", "11-17"),
    Row("QN140M", "Sandglass", "shore", "R", HIRE, 70, 25, "2020-04-28", "03-08", host="QN131M"),
    Row("QN152M", "Salt Lantern", "shore", "L", HIRE, 80, 0, "2022-03-10", "01-26", "2022-04-04"),
    Row("QN163P", "Broad Reach", "shore", "H", BOTH, 76, 0, "2023-02", "02-14", "2023-03-20"),
    Row("QN170P", "Lee Shore", "shore", "A", BOTH, 60, 58, "2018-08-15", "03-03"),
    Row("QN177P", "Small Anchor", "shore", "A", TEACH, 54, 36, "2019-09", "02-11", swaps_with="QN183R"),
    Row("QN183R", "Large Anchor", "shore", "A", PRIVATE, 24, 49, "2018-05-24", "01-30"),
    Row("QN190R", "Driftwood", "shore", "S", PRIVATE, 19, 110, "2013-04", "10-14"),
    Row("QN196R", "Ebb", "shore", "S", PRIVATE, 15, 73, "2016-11-18", "02-22", "2021-06-12"),
)

# Those that start without a bottom end of their own and take turns with another balloon's.
TURN_TAKERS = frozenset(row.swaps_with for row in ROWS if row.swaps_with)

PROGRAMMES = {
    "ml": ("part-ml-hot-air", "lpg-adr", "hoses-recommended", "fabric-strength"),
    "us": ("us-14cfr", "lpg-us-dot", "hoses-recommended", "fabric-strength"),
}
