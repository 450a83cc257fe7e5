// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is stated ahead, as sentences of the trade.

#include "record/entry.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace crownring::words {

class PlanSentences {
    Q_DECLARE_TR_FUNCTIONS(PlanSentences)

public:
    /// "QE-OVA is planned to fly 3 flights a week from 2026-12-24 to 2027-01-06"
    [[nodiscard]] static QString of(const UsePlanned& e);
    /// "QE-OVA is planned to fly 4 h 10 min"
    [[nodiscard]] static QString of(const FlightPlanned& e);
    /// @param works what it covers, each in words
    [[nodiscard]] static QString of(const VisitPlanned& e, const QStringList& works);
    /// "from 2026-12-24 to 2027-01-06", "on 2026-12-24", "from 2026-12-24 on"
    [[nodiscard]] static QString days(CivilDate from, std::optional<CivilDate> to);
};

}
