// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a visit means on its days: what it covers, and what falls due before it. What is asked of several items alike
/// stands in one line.

#include "answers/forecast/visit_outlook.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace crownring::words {

class VisitWords {
    Q_DECLARE_TR_FUNCTIONS(VisitWords)

public:
    /// "2027-01-10", "between 2027-01-10 and 2027-03-02"; empty where nothing is foretold
    [[nodiscard]] static QString band(const std::optional<DateBand>& band);
    /// "Annual inspection of ENV-12, BSK-7, due 2027-01-10", "…, due from 2027-01-10 on"
    [[nodiscard]] static QStringList works(const std::vector<VisitWork>& works);
    /// "is due before it: Annual inspection of ENV-12, BSK-7, 2027-01-10 (not covered by it)"
    [[nodiscard]] static QStringList before(const std::vector<LapsesBefore>& before);
};

}
