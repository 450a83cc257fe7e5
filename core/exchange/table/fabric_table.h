// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A bare table of fabric tests as CSV, one pull a row, with the columns
///
///     envelope,lot,fabric,hours,row,dose,load,outcome
///
/// `hours` flown on the fabric, `row` from 0 at the mouth to 1 at the crown, `dose` in equivalent hours of
/// over-temperature, `load` in one unit throughout, `outcome` "held" or "broke". An empty envelope is a coupon of new
/// fabric. The panels of one envelope that are of one lot are a set.

#include "fabric/likelihood/fleet.h"
#include "fabric/outlook/life.h"
#include "problem/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace crownring {

struct FabricTable {
    std::vector<std::string> fabrics;
    std::vector<std::string> lots;
    std::vector<std::string> envelopes;
    std::vector<std::size_t> envelopeOfSet;
    std::vector<PlaceUse> useOfSet; ///< as of the latest pull on it; nothing is expected of hours to come
    FabricFleet fleet;
};

/// FileUnreadable as `readCsv` says; CsvNoHeader for a column that is missing or there twice; CsvBadRow with line and
/// column for each row that cannot be read: hours or dose below zero, a row outside 0 to 1, a load that is not above
/// zero, an outcome that is neither, a coupon that has flown, a load more than 20 times off the middle of its fabric's.
[[nodiscard]] Results<FabricTable> readFabricTable(std::string_view bytes, const std::string& file);

}
