# SPDX-License-Identifier: GPL-3.0-or-later
"""What must hold of inspections, defects, entitlements and calibrations in the finished record; read from its lines
alone, independent of how they were made."""

from collections import defaultdict

REGIMES = {"part-ml-inspection": "part-ml", "us-annual": "us-14cfr"}
CAPACITIES = {"part-ml-inspection": {"independent-certifying-staff", "organisation-certifying-staff"},
              "us-annual": {"inspection-authorization", "repair-station", "manufacturer"}}
OTHER_CAPACITIES = {"pilot-owner", "mechanic", "private-pilot"}
QUANTITIES = {"grab-strength", "strip-strength", "tear-strength", "air-permeability", "permeability-time", "tell-tale", "crown-line-length",
              "control-line-length", "vent-overlap", "flying-wire-length-difference", "carabiner-wear",
              "broken-strands", "runner-thickness", "wicker-break", "rope-handle-diameter", "burner-leak-test", "burner-pressure",
              "fuel-pressure-gauge-error", "hose-leak-test", "cylinder-leak-test", "relief-valve-age",
              "relief-valve-opening", "cylinder-dent-depth", "altimeter-error", "variometer-error",
              "envelope-thermometer-error", "battery-voltage"}
SERIES = ("direction", "jaw_mm", "pressure_pa", "area_cm2")      # what makes readings comparable


class BenchReader:
    """Follows the bench through the entries; `require` notes a broken promise."""

    def __init__(self, require) -> None:
        self._require = require
        self._types: dict[str, tuple[str, str]] = {}          # item: kind and type
        self._limits: dict[tuple[str, str], list[dict]] = defaultdict(list)
        self._entitled: dict[str, list[dict]] = defaultdict(list)
        self._calibrated: dict[str, list[dict]] = defaultdict(list)
        self._sheets: dict[str, dict] = {}                    # inspection: its opening
        self._settled: dict[str, dict] = defaultdict(dict)    # inspection: state by line and item
        self._readings: dict[str, dict] = {}
        self._open: dict[str, dict] = {}                      # defects
        self._closed: set[str] = set()

    def read(self, entry: dict) -> None:
        kind = entry["entry"]
        if kind == "item.entered":
            self._types[entry["item"]] = (entry["kind"], entry.get("type", ""))
        if kind in ("reading.taken", "limit.stated"):
            self._require(entry["quantity"] in QUANTITIES, "quantity", entry)
        if "inspection" in entry and kind != "inspection.opened":
            self._belongs(entry)
        if "tester" in entry and kind != "tester.calibrated":
            self._require(holds_on(self._calibrated[entry["tester"]], entry["on"]), "tester out of calibration", entry)
        step = getattr(self, "_" + kind.replace(".", "_"), None)
        if step:
            step(entry)

    def _belongs(self, entry: dict) -> None:
        """What is said in an inspection is about its items and lines, and said before it is closed."""
        sheet = self._sheets.get(entry["inspection"])
        self._require(sheet is not None and entry["inspection"] not in self._closed, "inspection not open", entry)
        if sheet is None:
            return
        self._require(entry.get("item", sheet["items"][0]) in sheet["items"], "not in this inspection", entry)
        lines = {line["id"]: line for line in sheet["checklist"]["lines"]}
        if "line" in entry:
            self._require(entry["line"] in lines, "no line of the checklist", entry)
            kinds = lines[entry["line"]]["kinds"]
            kind = self._types[entry["item"]][0] if "item" in entry else None
            self._require(kind in kinds if kinds else kind is None, "line of another kind", entry)

    # -- what a release rests on -----------------------------------------------------------------------------------
    def _limit_stated(self, entry: dict) -> None:
        self._require("least" in entry or "most" in entry, "limit without a bound", entry)
        self._limits[entry["kind"], entry["type"]].append(entry)

    def _person_entitled(self, entry: dict) -> None:
        known = entry["capacity"] in OTHER_CAPACITIES.union(*CAPACITIES.values())
        self._require(known, "capacity", entry)
        self._entitled[entry["person"]].append(entry)

    def _tester_calibrated(self, entry: dict) -> None:
        self._require(entry["on"] < entry["until"], "calibrated for no time", entry)
        self._calibrated[entry["tester"]].append(entry)

    # -- in the inspection -----------------------------------------------------------------------------------------
    def _inspection_opened(self, entry: dict) -> None:
        self._require(entry["visit"] in REGIMES and entry["inspection"] not in self._sheets, "visit", entry)
        self._require({piece["item"] for piece in entry["work"]} <= set(entry["items"]), "work on other items", entry)
        self._sheets[entry["inspection"]] = entry

    def _line_settled(self, entry: dict) -> None:
        self._require(entry["state"] in ("done", "not-applicable", "open"), "state", entry)
        self._settled[entry["inspection"]][entry["line"], entry.get("item")] = entry["state"]

    def _reading_taken(self, entry: dict) -> None:
        self._require(("value" in entry) != ("held_at" in entry), "value or load held", entry)
        self._require(entry.get("below", 1e9) > entry.get("value", 0), "step", entry)
        self._readings[entry["id"]] = entry

    def _defect_found(self, entry: dict) -> None:
        self._require(entry["severity"] in ("grounding", "deferrable", "minor") and entry["defect"] not in self._open, "defect", entry)
        self._require(entry.get("reading", entry["id"]) in {*self._readings, entry["id"]}, "no such reading", entry)
        self._open[entry["defect"]] = entry

    def _defect_deferred(self, entry: dict) -> None:
        self._require("until" in entry or "until_minutes" in entry, "deferred without an end", entry)
        self._require(entry["defect"] in self._open, "no such defect", entry)
        self._require(holds_on(self._entitled[entry["agreed_by"]], entry["on"]), "not entitled", entry)

    def _defect_cleared(self, entry: dict) -> None:
        self._require(self._open.pop(entry["defect"], None) is not None, "no such defect", entry)

    # -- the end ---------------------------------------------------------------------------------------------------
    def _inspection_closed(self, entry: dict) -> None:
        name, sheet = entry["inspection"], self._sheets[entry["inspection"]]
        rights = [right for right in self._entitled[entry["signatory"]]
                  if (right["capacity"], right["licence"]) == (entry["capacity"], entry["licence"])]
        self._require(entry["capacity"] in CAPACITIES[sheet["visit"]] and holds_on(rights, entry["on"]),
                      "not entitled", entry)
        barring = [defect for defect in self._open.values()
                   if defect["item"] in sheet["items"] and defect["severity"] != "minor"]
        self._require(bool(barring) == (entry["outcome"] == "discrepancies"), "open barring defect", entry)
        missing = {place for place in self._asked(sheet) if self._settled[name].get(place, "open") == "open"}
        self._require(not missing, f"lines not settled {sorted(map(str, missing))[:3]}", entry)
        for item in sheet["items"]:
            for limit in self._limits[self._types[item]]:
                self._judge(entry, item, limit)
        self._closed.add(name)

    def _asked(self, sheet: dict) -> set[tuple[str, str | None]]:
        """Every line that this inspection needs, with its item."""
        places = set()
        for line in sheet["checklist"]["lines"]:
            wanted = {piece["item"] for piece in sheet["work"]
                      if piece["requirement"] in line.get("only_with", (piece["requirement"],))}
            if line["kinds"]:
                places |= {(line["id"], item) for item in sheet["items"]
                           if self._types[item][0] in line["kinds"] and (item in wanted or "only_with" not in line)}
            elif wanted:
                places.add((line["id"], None))
        return places

    def _judge(self, entry: dict, item: str, limit: dict) -> None:
        """As many readings as the manual asks, in its series; those that fail have a defect."""
        readings = [reading for reading in self._readings.values()
                    if reading.get("inspection") == entry["inspection"] and reading["item"] == item
                    and reading["quantity"] == limit["quantity"]
                    and all(reading.get(key) == limit.get(key) for key in SERIES)]
        places = {(reading.get("gore"), reading.get("row")) for reading in readings}
        what = f"{limit['quantity']} of {item}"
        self._require(len(places) >= limit.get("places", 1), f"too few readings, {what}", entry)
        named = {defect.get("reading") for defect in self._open.values()}
        for reading in readings:
            figure, top = reading.get("value", reading.get("held_at")), reading.get("below", reading.get("value", 0))
            passes = limit.get("least", figure) <= figure and top <= limit.get("most", top)
            self._require(passes or reading["id"] in named, f"failed and passed over, {what}", entry)


def holds_on(entries: list[dict], day: str) -> bool:
    return any(entry["on"] <= day <= entry.get("until", day) for entry in entries)
