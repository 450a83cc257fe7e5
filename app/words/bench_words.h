// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Words of the bench that the screen shows.

#include "bench/release/bench_file.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::words {

class BenchWords {
    Q_DECLARE_TR_FUNCTIONS(BenchWords)

public:
    [[nodiscard]] static QString visit(std::string_view visit);
    [[nodiscard]] static QString outcome(Outcome outcome, bool releases);
    [[nodiscard]] static QString quantity(std::string_view quantity);
    [[nodiscard]] static QString judgement(Judgement judgement);
    /// "held at 133.4 N", "98 N", "at least 127, below 132 °C"
    [[nodiscard]] static QString value(const ReadingTaken& reading);
    /// "QE-OVA, Morning Kettle", or the names of loose items.
    [[nodiscard]] static QString subject(const std::optional<Registration>& balloon, const std::vector<ItemId>& items);
    [[nodiscard]] static QString figure(double value);
};

}
