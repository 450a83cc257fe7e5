// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the inspection desk shows: rows made from the file of an inspection.

#include "bench/release/bench_file.h"
#include "bench/returns/discrepancies.h"
#include "screen/bench/check_line_model.h"
#include "screen/lists/choice_model.h"

#include <QCoreApplication>

namespace crownring::screen {

class BenchRows {
    Q_DECLARE_TR_FUNCTIONS(BenchRows)
};

/// A part of the work: a section of the checklist, on all items that it is about.
struct WorkPart {
    std::string section; ///< empty: of the lines that stand on no list
    bool operator==(const WorkPart&) const = default;
};

/// Why an open line is not settled together with others.
enum class Apart {
    No,
    OwnLook,    ///< it wants one
    Flown,      ///< it is, and not ticked
    Readings,   ///< they settle it
    Equipment,  ///< done with what must be in calibration
    Work,       ///< to be carried out: that nothing was found says nothing of it
    OwnersTask, ///< of a pilot-owner, who did it or did not
    Optional,   ///< nobody has to look there
};

[[nodiscard]] WorkPart partOf(const WorkLine& work);
[[nodiscard]] QString sectionTitle(const Inspection& inspection, const WorkLine& work);
/// All that the line asks for was read, and each reading that speaks passes.
[[nodiscard]] bool isAnswered(const BenchFile& file, const WorkLine& work);
[[nodiscard]] Apart apartOf(const BenchFile& file, const WorkLine& work);
[[nodiscard]] QString apartText(Apart apart);
/// The same of several lines: "2 want a look of their own".
[[nodiscard]] QString apartCount(Apart apart, int lines);
/// Open, and asks for nothing but a look.
[[nodiscard]] bool isOnlyALook(const BenchFile& file, const WorkLine& work);
/// Open until its readings are taken: nobody need look at it before.
[[nodiscard]] bool awaitsReadings(const BenchFile& file, const WorkLine& work);
/// The lines of a part by line, then item: a grid row after row.
[[nodiscard]] std::vector<WorkLine> gridOf(const BenchFile& file, const WorkPart& part);
/// What is not asked for, since the type of an item is not in the record; a line an item.
[[nodiscard]] QString notAskedText(const BenchFile& file);
[[nodiscard]] CheckRow rowOf(const BenchFile& file, const WorkLine& work);
[[nodiscard]] std::vector<std::string> photographsOf(const BenchFile& file, const CheckRow& row);
/// Open defects; `chosen` are those that bar flight.
[[nodiscard]] std::vector<Choice> defectRows(const BenchFile& file);
/// What was on the list that it was closed with, and what of it still stands; empty where it was closed with none.
[[nodiscard]] std::vector<ListedItem> listedOf(const BenchFile& file);
/// Of that what is no defect. label: what; detail: item, whether it is answered; `chosen`: it still stands
[[nodiscard]] std::vector<Choice> listedBesidesRows(const BenchFile& file);
/// Repairs made, parts replaced, defects cleared.
[[nodiscard]] std::vector<Choice> repairRows(const Inspection& inspection);
/// Testers in calibration on the day of the file.
[[nodiscard]] std::vector<Choice> testerRows(const BenchFile& file);
/// Lines of a pilot-owner's list that concern what is in the visit, each once. detail: the rule that lets him do it
[[nodiscard]] std::vector<Choice> ownerTaskRows(const BenchFile& file);

}
