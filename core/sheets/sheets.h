// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An inspection as papers. One that is not closed says DRAFT in its title and bears no signature. Every paper carries
/// the inspection's name as record id, and the caution. All are said in one language, `in`.

#include "bench/release/bench_file.h"
#include "paper/document.h"
#include "problem/speech.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string_view>
#include <vector>

namespace crownring {

/// All that was done: lines, readings, defects, repairs, parts; and what corrections changed, both wordings.
[[nodiscard]] paper::Document inspectionReport(const BenchFile& file, const Speech& in);
/// The release: what the rule asks for, the statement as signed, room for a signature.
[[nodiscard]] paper::Document releasePaper(const BenchFile& file, const Speech& in);
/// One compact entry for the logbook.
[[nodiscard]] paper::Document logbookPage(const BenchFile& file, const Speech& in);
/// The envelope unrolled, one map for each series and direction that was read at places; a remark where there is none.
[[nodiscard]] paper::Document envelopeMapPage(const BenchFile& file, const Speech& in);
/// The signed and dated list for the owner (14 CFR 43.11(b), read).
[[nodiscard]] paper::Document discrepancyList(const BenchFile& file, const Speech& in);

enum class SheetKind { Report, Release, Logbook, Map, Discrepancies };
[[nodiscard]] std::string_view sheetName(SheetKind kind);
[[nodiscard]] std::optional<SheetKind> sheetFrom(std::string_view name);
[[nodiscard]] paper::Document sheet(SheetKind kind, const BenchFile& file, const Speech& in);
/// Those that an inspection has: a list of discrepancies only with one, a map only with readings at places of the
/// envelope, nothing but a report (and map) of a visit that was abandoned.
[[nodiscard]] std::vector<SheetKind> sheetsOf(const BenchFile& file);
/// Several as one document, each beginning on a page of its own under its own title; one stays as it is.
[[nodiscard]] paper::Document bound(const std::vector<paper::Document>& documents, const Speech& in);

/// The lines and the readings, for a spreadsheet: a column a key, all digits, a load that was held in `held_at`.
[[nodiscard]] paper::Table linesTable(const BenchFile& file);
[[nodiscard]] paper::Table readingsTable(const BenchFile& file, const Speech& in);
/// All of it, for another program; the keys are stable.
[[nodiscard]] nlohmann::ordered_json inspectionJson(const BenchFile& file, const Speech& in);

}
