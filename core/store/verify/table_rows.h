// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rows of a projection as texts that do not depend on how names are numbered, nor on the engine, so that those of
/// a record can be held against those of a replay.

#include "store/connection/connection.h"

#include <array>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

/// Number of a name to its sort and text.
using NameTexts = std::unordered_map<std::int64_t, std::string>;
[[nodiscard]] NameTexts nameTexts(const Connection& connection);

/// Equal for equal sets of rows, whatever their order: the sum of a digest of each.
struct TableDigest {
    std::int64_t rows = 0;
    std::array<std::uint64_t, 2> sum{};
    bool operator==(const TableDigest&) const = default;
};

struct ProjectedRow {
    std::string text;  ///< "at=8:29000000 entry_id=… minutes=2:60": no two rows have the same
    std::string entry; ///< the id of the entry behind it; empty where the table names none
    auto operator<=>(const ProjectedRow&) const = default;
};

/// As people read it: "item ENV-1, minutes 60"; what is empty is left out.
[[nodiscard]] std::string plainly(const ProjectedRow& row);
[[nodiscard]] TableDigest digestOf(const Connection& connection, const std::string& table, const NameTexts& names);
/// Sorted.
[[nodiscard]] std::vector<ProjectedRow> rowsOf(const Connection& connection, const std::string& table,
                                               const NameTexts& names);

}
