// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pieces that several papers share.

#include "bench/release/release.h"
#include "paper/document.h"
#include "problem/speech.h"
#include "sheets/sheet_phrase.h"

namespace crownring {

/// An empty paper with its title, record id and caution.
[[nodiscard]] paper::Document blankSheet(const BenchFile& file, SheetPhrase title, const Speech& in);
/// What it was closed with; the day asked and nobody while it is open.
[[nodiscard]] Signing signingOf(const BenchFile& file);
/// What the release is composed of. While it is open nobody has signed and nothing is completed; once it is closed the
/// licence is the one that was signed with, and on a release only what was put off is deferred.
[[nodiscard]] ReleaseFacts factsOf(const BenchFile& file);
/// Says on the paper itself that nothing of it is signed; nothing once it is closed.
void addDraftNote(paper::Document& document, const BenchFile& file, const Speech& in);
/// "ENV-1: Annual inspection; BSK-1: Annual inspection".
[[nodiscard]] std::string workText(const BenchFile& file, const std::vector<Work>& work, const Speech& in);
/// What was taken into the work and the visit did not accomplish.
[[nodiscard]] std::vector<Work> workNotDone(const BenchFile& file);

/// What the record says by now against what was signed: that it was withdrawn, or is no longer supported.
void addSince(paper::Document& document, const BenchFile& file, const Speech& in);
[[nodiscard]] paper::Signature signatureOf(const BenchFile& file, const Speech& in);
/// "for 3 s, dry, from inside, 18 °C"; what was written down.
[[nodiscard]] std::string circumstancesText(const TestCircumstances& circumstances, const Speech& in);
[[nodiscard]] std::string placeText(const PanelPlace& place, const Speech& in);
/// "≥ 133.4 N", "98 N", "104 to below 110 °C"
[[nodiscard]] std::string valueText(const ReadingTaken& reading, const Speech& in);
[[nodiscard]] std::string conditionsText(const TestConditions& conditions, const Speech& in);
/// "412:30 h", or that it is not known.
[[nodiscard]] std::string hoursText(const std::optional<Minutes>& time, const Speech& in);
[[nodiscard]] std::string who(const std::string& by, CivilDate on);
/// How something on a list stood when it was signed, and that it is answered since where it is.
[[nodiscard]] std::string answeredText(const BenchFile& file, const ItemId& item, const RequirementId& requirement,
                                       const std::string& state, const Speech& in);
/// What was found, and what has become of it up to the day of the file.
struct DefectLine {
    DefectId defect;
    std::string item, what;
    Severity severity = Severity::Barring;
    std::string state; ///< in words
    bool open = false;
    bool deferred = false;                  ///< open, and may wait
    bool bars = false;                      ///< open, and bars flight on that day
    std::vector<std::string> photographs{}; ///< digests
};
[[nodiscard]] std::vector<DefectLine> defectLines(const BenchFile& file, const Speech& in);
/// What stands against flight beside the work is on the list of discrepancies; a release names it as not covered.
[[nodiscard]] bool listsExceptions(const BenchFile& file);
[[nodiscard]] bool hasOpenDefects(const BenchFile& file);
/// "bars flight", "minor"
[[nodiscard]] std::string severityText(Severity severity, const Speech& in);

/// The readings as a table to read: with words, units and "≥" for a load that was held.
[[nodiscard]] paper::Table readingsToRead(const BenchFile& file, const Speech& in);
/// The testers that were used, with the end of their latest calibration up to the day of the file.
[[nodiscard]] paper::Table testersTable(const BenchFile& file, const Speech& in);
/// What corrections changed, key by key; no rows where nothing was corrected.
[[nodiscard]] paper::Table correctionsTable(const BenchFile& file, const Speech& in);

}
