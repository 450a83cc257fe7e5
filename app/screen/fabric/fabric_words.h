// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is known of fabric, in words that a rigger understands.

#include "screen/fabric/fabric_sight.h"
#include "screen/lists/choice_model.h"

#include <QCoreApplication>

namespace crownring::screen {

class FabricWords {
    Q_DECLARE_TR_FUNCTIONS(FabricWords)

public:
    [[nodiscard]] static QString channel(const FabricChannel& channel);
    [[nodiscard]] static QString unit(const FabricChannel& channel);
    /// "142 N"
    [[nodiscard]] static QString value(const FabricChannel& channel, double value);
    [[nodiscard]] static QString value(const FabricChannel& channel, const Figure& figure);
    /// "held at 142 N", "142 N"
    [[nodiscard]] static QString reading(const FabricChannel& channel, const FollowedReading& reading);
    /// "at least 133 N", "at most 45 mm/s"
    [[nodiscard]] static QString limit(const FabricChannel& channel, const Figure& limit);
    /// "3 %", "under 1 %"
    [[nodiscard]] static QString chance(double chance);
    /// "panels of lot A-17", "panel at gore 3, row 12, lot B-2"
    [[nodiscard]] static QString panels(const FabricRecord& record, const FollowedSet& set);

    [[nodiscard]] static std::vector<Choice> answers(const FabricSight& sight, const FabricOutlook& outlook);
    [[nodiscard]] static std::vector<Choice> sets(const FabricSight& sight, const FabricOutlook& outlook);
    [[nodiscard]] static std::vector<Choice> pulls(const FabricSight& sight, const FabricOutlook& outlook);
    /// What no number may be read without; empty where they may stand alone.
    [[nodiscard]] static QString ground(const ForecastGrounds& grounds);
    [[nodiscard]] static QString fitted(const FabricOutlook& outlook);
    [[nodiscard]] static QString leftOut(const FabricSight& sight);
    /// That it is no substitute for the test.
    [[nodiscard]] static QString noSubstitute();
};

}
