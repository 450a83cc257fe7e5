// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The words and figures that the screen shows, translated. Core speaks in values; this is where they become text.

#include "problem/problem.h"
#include "rules/due/due_list.h"
#include "rules/due/reckoned.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::words {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)

public:
    [[nodiscard]] static QString standing(Reckoned reckoned);
    [[nodiscard]] static QString standing(Standing standing) { return Words::standing(reckonedAs(standing)); }
    /// The word beside the gauge: what the row is reckoned as.
    [[nodiscard]] static QString standing(const Assessment& state);
    [[nodiscard]] static QString kind(ItemKind kind);
    [[nodiscard]] static QString kinds(ItemKind kind);
    [[nodiscard]] static QString action(Action action);
    [[nodiscard]] static QString clock(ClockName clock);
    [[nodiscard]] static QString event(const std::string& event);
    /// "for hire"; what nobody knows, as it is written.
    [[nodiscard]] static QString operation(const std::string& operation);
    [[nodiscard]] static QString service(ServiceState state);
    [[nodiscard]] static QString releaseForm(ReleaseForm form);
    [[nodiscard]] static QString vesselMaterial(VesselMaterial material);

    [[nodiscard]] static QString days(std::int64_t days);
    [[nodiscard]] static QString months(std::int64_t months);
    /// "9:24 h".
    [[nodiscard]] static QString hours(std::int64_t minutes);
    [[nodiscard]] static QString landings(std::int64_t landings);
    [[nodiscard]] static QString inflations(std::int64_t inflations);
    /// An amount on a clock with its unit: "100:00 h", "12 months".
    [[nodiscard]] static QString amount(ClockName clock, std::int64_t amount);
    /// What is left or past: "31 days", "2:10 h past"; empty when unknown.
    [[nodiscard]] static QString left(const LimitState& limit);
    [[nodiscard]] static QString toleranceLeft(const LimitState& limit);
    /// When it was done last, and when it is due: "2026-12-26", "412:30 h"; empty when unknown.
    [[nodiscard]] static QString last(const LimitState& limit);
    [[nodiscard]] static QString due(const LimitState& limit);
    /// "412:30 h, 301 landings, 288 inflations"; what is unknown says so.
    [[nodiscard]] static QString figures(const Figures& figures);
    [[nodiscard]] static QString limit(const Limit& limit);
    [[nodiscard]] static QString limits(const Requirement& requirement);
    /// "serial numbers 100 to 250".
    [[nodiscard]] static QString serials(const SerialRange& range);
    [[nodiscard]] static QString because(const Assessment& state);
    /// Of a defect it says, too, whether it can wait.
    [[nodiscard]] static QString because(const DueRow& row);

    /// What, where and the mend, in one text.
    [[nodiscard]] static QString problem(const Problem& problem);
    [[nodiscard]] static QString problems(const std::vector<Problem>& problems);

private:
    [[nodiscard]] static QString left(ClockName unit, std::int64_t left, const QString& none);
};

/// The earliest date on which a calendar limit of the row runs out, tolerance not counted.
[[nodiscard]] std::optional<CivilDate> calendarDue(const Assessment& state);

}
