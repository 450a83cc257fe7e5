// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pieces that several papers share.

#include "bench/release/release.h"
#include "paper/document.h"
#include "problem/speech.h"
#include "sheets/marks.h"
#include "sheets/sheet_phrase.h"

namespace crownring {

/// An empty paper with its title, record id and caution.
[[nodiscard]] paper::Document blankSheet(const BenchFile& file, SheetPhrase title, const Speech& in);
/// What it was closed with; the day asked and nobody while it is open.
[[nodiscard]] Signing signingOf(const BenchFile& file);
/// What the release is composed of. While it is open nobody has signed and nothing is completed; once it is closed the
/// licence is the one that was signed with, and on a release only what was put off is deferred.
[[nodiscard]] ReleaseFacts factsOf(const BenchFile& file);
/// Says on the paper what it is: a draft of which nothing is signed, or a copy of what was signed in the record, when,
/// by whom and under which seal. How often it was printed before is not counted, so each print is a copy.
void addWhatItIs(paper::Document& document, const BenchFile& file, const Speech& in);
/// The same of one signature.
void addCopyNote(paper::Document& document, const PersonId& signatory, CivilDate on, const std::optional<Seal>& seal,
                 const std::optional<Proof>& proof, const Speech& in);
/// That there was a release after incomplete maintenance, its limitation and what it left outstanding.
void addEarlierRelease(paper::Document& document, const BenchFile& file, const Speech& in);
/// "ENV-1: Annual inspection; BSK-1: Annual inspection".
[[nodiscard]] std::string workText(const BenchFile& file, const std::vector<Work>& work, const Speech& in);
/// What was taken into the work and the visit did not accomplish.
[[nodiscard]] std::vector<Work> workNotDone(const BenchFile& file);

/// What the record says by now against what was signed: that it was withdrawn, or is no longer supported.
void addSince(paper::Document& document, const BenchFile& file, const Speech& in);
/// With what code of the signatory's own it was signed, or that it was with none.
[[nodiscard]] std::string provenText(const std::optional<Proof>& proof, const Speech& in);
[[nodiscard]] paper::Signature signatureOf(const BenchFile& file, const Speech& in);
/// "for 3 s, dry, from inside, 18 °C"; what was written down.
[[nodiscard]] std::string circumstancesText(const TestCircumstances& circumstances, const Speech& in);
[[nodiscard]] paper::Signature signatureOf(const PersonId& signatory, const std::string& capacity,
                                           const std::string& licence, CivilDate on, const Speech& in);
/// Each section of a release as a row, its heading beside what it says, with `further` rows under them; what the
/// aircraft is and what it has flown stand side by side. Who signed stands in the signature, and nowhere else; the
/// caution stands on every page.
void addSections(paper::Document& document, ReleaseFacts facts, std::vector<paper::Fact> further, const Speech& in);
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
    std::string placard{};                  ///< of a deferred one: how it was deactivated and placarded
    std::string deferredBy{};               ///< who wrote the deferral, and when
    bool voided = false;                    ///< taken out of the record
};
[[nodiscard]] std::vector<DefectLine> defectLines(const BenchFile& file, const Speech& in);
/// What stands against flight beside the work is on the list of discrepancies; a release names it as not covered.
[[nodiscard]] bool listsExceptions(const BenchFile& file);
[[nodiscard]] bool hasOpenDefects(const BenchFile& file);
/// The minor defects that a release leaves open and nobody deferred, a line each.
[[nodiscard]] std::string openMinorText(const BenchFile& file, Outcome outcome, const Speech& in);
/// What was found in the visit and taken out of the record, by whom and why, a line each.
[[nodiscard]] std::string takenOutText(const BenchFile& file, const Speech& in);
/// As it was signed; while it is open, as it would be.
void addStatement(paper::Document& document, const BenchFile& file, const ReleaseFacts& facts, const Speech& in);
/// What was to be done when a release after incomplete maintenance was signed.
[[nodiscard]] std::vector<Argument> outstandingOf(const ReleaseIncomplete& release);
/// "bars flight", "minor"
[[nodiscard]] std::string severityText(Severity severity, const Speech& in);

/// "over-temperature, 135 °C, 0:02 h"
[[nodiscard]] std::string eventText(const Occurrence& event, const Speech& in);
/// What happened that the visit answers, and what of its work that made due, a line each.
[[nodiscard]] std::string eventsText(const BenchFile& file, const Speech& in);
/// The same as a table under its heading; nothing where there is none.
void addEvents(paper::Document& document, const BenchFile& file, const Speech& in);
/// The readings to read, a table a test: with words, units and "≥" for a load that was held.
/// @param people who read them and when, as letters
void addReadings(paper::Document& document, const BenchFile& file, Marks& people, const Speech& in);
/// The testers that were used, with the end of their latest calibration up to the day of the file.
[[nodiscard]] paper::Table testersTable(const BenchFile& file, const Speech& in);
/// What corrections changed, key by key; no rows where nothing was corrected.
[[nodiscard]] paper::Table correctionsTable(const BenchFile& file, const Speech& in);

}
