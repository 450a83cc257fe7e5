// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An inspection as papers. One that is not closed says DRAFT in its title and bears no signature; one that is says of
/// what it is a copy. Every paper carries the inspection's name as record id, and the caution. All are said in one
/// language, `in`.

#include "bench/release/bench_file.h"
#include "paper/document.h"
#include "problem/speech.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// All that was done: lines, readings, defects, repairs, parts; and what corrections changed, both wordings.
[[nodiscard]] paper::Document inspectionReport(const BenchFile& file, const Speech& in);
/// The release: what the rule asks for, the statement as signed, room for a signature; of a visit of components a
/// certificate under a title of its own. It is made to stand on one page.
[[nodiscard]] paper::Document releasePaper(const BenchFile& file, const Speech& in);
/// The release after incomplete maintenance, as of its signature: signed, although the visit may be open; a remark
/// where there was none.
[[nodiscard]] paper::Document incompleteRelease(const BenchFile& file, const Speech& in);
/// To hang on what was worked on: a label an item, which says whether it is released.
[[nodiscard]] paper::Document labelSheet(const BenchFile& file, const Speech& in);
[[nodiscard]] paper::Label labelOf(const BenchFile& file, const ItemFacts& item, const Speech& in);
/// One compact entry for the logbook.
[[nodiscard]] paper::Document logbookPage(const BenchFile& file, const Speech& in);
/// The envelope unrolled, one map for each series and direction that was read at places; a remark where there is none.
[[nodiscard]] paper::Document envelopeMapPage(const BenchFile& file, const Speech& in);
/// The signed and dated list for the owner (14 CFR 43.11(b), read).
[[nodiscard]] paper::Document discrepancyList(const BenchFile& file, const Speech& in);

enum class SheetKind {
    Report,
    Release,
    Logbook,
    Map,
    Discrepancies,
    Incomplete,
    Component, ///< the release of components, by a name of its own
    Labels,
};
[[nodiscard]] std::string_view sheetName(SheetKind kind);
/// All of them, for whoever asks for one by name.
[[nodiscard]] std::vector<std::string> sheetNames();
[[nodiscard]] std::optional<SheetKind> sheetFrom(std::string_view name);
[[nodiscard]] paper::Document sheet(SheetKind kind, const BenchFile& file, const Speech& in);
/// Those that an inspection has: a list of discrepancies only with one, a map only with readings at places of the
/// envelope, labels of items that are on no balloon, nothing but a report (and map, and labels that say so) of a visit
/// that was abandoned.
[[nodiscard]] std::vector<SheetKind> sheetsOf(const BenchFile& file);
/// Several as one document, each beginning on a page of its own under its own title; one stays as it is.
[[nodiscard]] paper::Document bound(const std::vector<paper::Document>& documents, const Speech& in);

/// The lines and the readings, for a spreadsheet: a column a key, all digits, a load that was held in `held_at`.
[[nodiscard]] paper::Table linesTable(const BenchFile& file);
[[nodiscard]] paper::Table readingsTable(const BenchFile& file, const Speech& in);
/// Null where it was signed without a code of the signatory's own.
[[nodiscard]] nlohmann::ordered_json proofJson(const std::optional<Proof>& proof);
/// All of it, for another program; the keys are stable.
[[nodiscard]] nlohmann::ordered_json inspectionJson(const BenchFile& file, const Speech& in);

}
