// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Invented papers for the tests: the balloon, its people and its figures do not exist.

#include "paper/document.h"

namespace crownring::paper::sample {

inline const char* const caution =
    "Crownring keeps records and computes from stated rules; it does not decide that a balloon is airworthy. The "
    "licensed "
    "person, the competent authority and the manufacturer's current instructions decide.";

inline const char* const recordId = "7f3a91c2-e0b4-4d11-9c55-2a6c0d9e8b17";

inline Document empty() { return {"Inspection report", "", recordId, caution, {}}; }

/// `rows` rows that can each be told: "R001 …".
inline Table longTable(int rows) {
    Table table;
    table.columns = {{"Mark", Align::Left, 1}, {"What was looked for", Align::Left, 4}, {"Load, N", Align::Right, 1.2}};
    for (int row = 1; row <= rows; ++row) {
        const std::string number = std::to_string(row);
        table.rows.push_back(
            {"R" + std::string(3 - number.size(), '0') + number,
             row % 7 == 0 ? "Load tape at the horizontal joint: stitching, abrasion, heat; where it is worn the "
                            "width that is left, measured at the narrowest place"
                          : "Panel seam: stitching",
             std::to_string(180 + row % 40)});
    }
    return table;
}

inline EnvelopeMapFigure map(int gores, int rows, int readings) {
    EnvelopeMapFigure map;
    map.gores = gores;
    map.rows = rows;
    map.caption = "Grab tests on envelope E-1187, warp";
    map.legend = {"Load in N, warp, jaws 25 mm. Limit of the type's data: at least 178 N. Darker: nearer to the limit.",
                  "Tester FT-2, calibrated until 2027-03-31."};
    for (int number = 0; number < readings; ++number) {
        const bool failed = number % 11 == 7;
        map.panels.push_back({1 + number * 5 % gores, rows - number % 4,
                              failed ? "163" : std::to_string(178 + number % 3 * 9),
                              failed ? PanelVerdict::Failed : PanelVerdict::Passed, !failed && number % 3 == 0,
                              failed ? 1.0 : 0.15 * (number % 6)});
    }
    return map;
}

inline Signature signature(const std::string& title) {
    return {title,
            {{"Name", "Ana Müller-Źrebak", false},
             {"Certificate and kind", "3 141 592, mechanic, inspection authorization", false},
             {"Date", "2026-11-25", false},
             {"Place", "", false},
             {"Signature", "", true}}};
}

inline Checks checks(int lines) {
    Checks checks;
    for (int line = 1; line <= lines; ++line)
        checks.lines.push_back(
            {"Crown ring, line " + std::to_string(line) + ": damage, deformation, corrosion; splices of the tapes",
             "14 CFR part 43 appendix D (b)(1)",
             line % 9 == 0    ? CheckMark::NotApplicable
             : line % 13 == 0 ? CheckMark::Open
                              : CheckMark::Done,
             line % 5 == 0 ? "Chafed over 20 mm, within the limit of the manual; defect D-" + std::to_string(line) : "",
             line % 13 == 0 ? "" : "A. Müller"});
    return checks;
}

inline Labels labels(int items) {
    Labels labels;
    for (int item = 1; item <= items; ++item)
        labels.labels.push_back({"Cylinder 900" + std::to_string(item),
                                 "cylinder, type V-30",
                                 {{"Serial no.", "900" + std::to_string(item)},
                                  {"Work done", item % 2 ? "Valve exchanged, leak tested at 10 bar" : "Inspected"}},
                                 item % 2 ? "Released" : "NOT RELEASED",
                                 item % 2 == 0,
                                 "No form of an authority."});
    return labels;
}

/// Every kind of block, several pages.
inline Document everything() {
    Document paper = empty();
    paper.title = "Annual inspection: report and release";
    paper.subtitle = "Balloon N000ZZ · envelope E-1187 with basket B-33, burner 2207 and four cylinders";
    paper.blocks = {Facts{{{"Registration", "N000ZZ"},
                           {"Envelope", "E-1187, type Å-77, made 2017-04"},
                           {"Basket", "B-33"},
                           {"Burner", "2207"},
                           {"Inspected on", "2026-11-25"},
                           {"Total time in service", "412 h 36 min, 389 landings"},
                           {"Maximum tell-tale", "at least 116 °C, below 121 °C"},
                           {"Data used", "Maintenance manual MM-7, revision 12 (2025-09-01)"}},
                          2},
                    Heading{1, "Extent"},
                    Paragraph{"The whole balloon was inspected in the shed and, for the permeability of the upper "
                              "rows, inflated cold. Fabric was "
                              "pulled at 24 places; every reading stands on the map with its place. Straße, façade, "
                              "año, ≥ 178 N, Å, ½, – and — are "
                              "letters that paper must keep.",
                              Emphasis::Plain},
                    Paragraph{"No limit was passed.", Emphasis::Strong},
                    Paragraph{"Copies of the calibration certificates are kept with the record.", Emphasis::Quiet},
                    Heading{2, "Checklist"},
                    checks(24),
                    Heading{1, "Readings"},
                    map(24, 12, 24),
                    longTable(40),
                    Heading{1, "Release"},
                    Statement{"I certify that this aircraft has been inspected in accordance with an annual inspection "
                              "and was determined to be "
                              "in airworthy condition.",
                              "14 CFR 43.11(a)(4)"},
                    signature("Approved for return to service"),
                    labels(3),
                    PageBreak{},
                    Heading{1, "What is due next"},
                    Facts{{{"Annual inspection", "2027-11-30"}, {"100-hour inspection", "at 512 h 36 min"}}, 1},
                    Table{{{"Item", Align::Left, 2}, {"Requirement", Align::Left, 3}, {"Due", Align::Right, 1}},
                          {{"Cylinder 9001", "Requalification", "2031-05"}, {"Cylinder 9002", "Requalification"}},
                          "Computed on the day of the release from the programmes in force."}};
    return paper;
}

}
