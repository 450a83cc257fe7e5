// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a plan of visits costs and is worth, why a visit covers what it covers, what could not be kept.

#include "answers/plan/already_planned.h"
#include "answers/plan/planned_visits.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace crownring::words {

class PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)

public:
    /// What it costs, what it saves, the chance that it takes, how near it is to the least: a sentence each.
    /// @param risk the chance that was allowed
    [[nodiscard]] static QStringList worth(const FleetVisits& plan, double risk);
    /// Said instead of a plan that is not proven (`isProven`).
    [[nodiscard]] static QString unproven();
    /// "Annual inspection of ENV-12".
    [[nodiscard]] static QString named(const PlannedRow& row);
    /// "due 2027-03-02; the last open week before it".
    [[nodiscard]] static QString why(const WorkWhy& why);
    /// "Annual inspection of ENV-12, BSK-7: due 2027-03-02; the last week for it before that": alike things in one
    /// line.
    [[nodiscard]] static QStringList covers(const std::vector<PlacedWork>& works);
    /// "lapsed already; made good on 2027-01-22".
    [[nodiscard]] static QString why(const NotKept& kept);
    [[nodiscard]] static QString why(const LeftOutRow& row);
    /// "no station is called so".
    [[nodiscard]] static QString why(LooseVisit::Why why);
    /// "QE-OVA at Shed, 2027-01-11 to 2027-01-15".
    [[nodiscard]] static QString named(const VisitPlanned& visit);
    /// "12.50".
    [[nodiscard]] static QString money(double amount);
    /// Of a hundred, rounded up: "0.31".
    [[nodiscard]] static QString percent(double part);
};

}
