// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the reading desk shows: rows and marks made from the file of an inspection.

#include "bench/release/asked_series.h"
#include "bench/release/bench_file.h"
#include "screen/envelope/panel_mark.h"
#include "screen/lists/choice_model.h"

#include <QCoreApplication>

namespace crownring::screen {

class ReadingRows {
    Q_DECLARE_TR_FUNCTIONS(ReadingRows)
};

/// "12 of 24"
[[nodiscard]] QString progressText(const ReadingCount& count);
/// "at least 133.4 N; held at the proof load …", one a line.
[[nodiscard]] QString limitsText(std::span<const StatedLimit> limits);
/// All that lines ask for, in the order given. Each stands for an `AskedFor`.
[[nodiscard]] std::vector<Choice> seriesRows(std::span<const AskedSeries> asked, const AskedFor& current);
[[nodiscard]] std::vector<PanelMark> panelMarks(const BenchFile& file, const ItemId& item, const std::string& quantity);
/// Latest first; `chosen` are those that fail.
[[nodiscard]] std::vector<Choice> takenRows(const BenchFile& file, const ItemId& item, const std::string& quantity);

}
