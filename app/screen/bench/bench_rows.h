// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the inspection desk shows: rows made from the file of an inspection.

#include "bench/release/bench_file.h"
#include "screen/bench/check_line_model.h"
#include "screen/lists/choice_model.h"

#include <QCoreApplication>

namespace crownring::screen {

class BenchRows {
    Q_DECLARE_TR_FUNCTIONS(BenchRows)
};

/// A part of the work: a section of the checklist, and one item where its lines are about one.
struct WorkPart {
    std::string section; ///< empty: of the lines that stand on no list
    std::optional<ItemId> item;
    bool operator==(const WorkPart&) const = default;
};

/// Of one item; a section that is about several kinds of items is gone through as one.
[[nodiscard]] WorkPart partOf(const Inspection& inspection, const WorkLine& work);
[[nodiscard]] QString sectionTitle(const Inspection& inspection, const WorkLine& work);
/// Asks for nothing but a look, or for what is there already.
[[nodiscard]] bool isOnlyALook(const BenchFile& file, const WorkLine& work);
[[nodiscard]] CheckRow rowOf(const BenchFile& file, const WorkLine& work);
[[nodiscard]] std::vector<std::string> photographsOf(const BenchFile& file, const CheckRow& row);
/// Open defects; `chosen` are those that bar flight.
[[nodiscard]] std::vector<Choice> defectRows(const BenchFile& file);
/// Repairs made, parts replaced, defects cleared.
[[nodiscard]] std::vector<Choice> repairRows(const Inspection& inspection);
/// Testers in calibration on the day of the file.
[[nodiscard]] std::vector<Choice> testerRows(const BenchFile& file);

}
