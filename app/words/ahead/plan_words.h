// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why a visit covers what it covers, and what a plan could not keep.

#include "answers/plan/planned_visits.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::words {

class PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)

public:
    /// "due 2027-03-02; the last open week before it".
    [[nodiscard]] static QString why(const WorkWhy& why);
    /// "lapsed already; made good on 2027-01-22".
    [[nodiscard]] static QString why(const NotKept& kept);
    [[nodiscard]] static QString why(const LeftOutRow& row);
    /// "12.50".
    [[nodiscard]] static QString money(double amount);
};

}
