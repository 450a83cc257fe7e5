// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a visit means on its days: what it covers, and what falls due before it.

#include "answers/forecast/visit_outlook.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::words {

class VisitWords {
    Q_DECLARE_TR_FUNCTIONS(VisitWords)

public:
    /// "2027-01-10", "between 2027-01-10 and 2027-03-02"; empty where nothing is foretold
    [[nodiscard]] static QString band(const std::optional<DateBand>& band);
    /// "Annual inspection of ENV-12, due 2027-01-10"
    [[nodiscard]] static QString work(const VisitWork& work);
    /// "is due before it: Annual inspection of ENV-12, 2027-01-10"
    [[nodiscard]] static QString before(const LapsesBefore& lapses);
};

}
