// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the map and the chart of an envelope's fabric draw.

#include "screen/envelope/panel_mark.h"
#include "screen/fabric/ageing_curve.h"
#include "screen/fabric/fabric_sight.h"

#include <QCoreApplication>

namespace crownring::screen {

class FabricMarks {
    Q_DECLARE_TR_FUNCTIONS(FabricMarks)

public:
    /// The latest reading at each place, since its panel was put in; and the lot of every panel.
    [[nodiscard]] static std::vector<PanelMark> read(const FabricSight& sight);
    /// What every panel is expected to read when so many hours more are flown.
    [[nodiscard]] static std::vector<PanelMark> expected(const FabricSight& sight, const FabricOutlook& outlook,
                                                         double hoursAhead);
    /// @param outlook null: the readings without a band
    [[nodiscard]] static AgeingCurve curve(const FabricSight& sight, const FabricOutlook* outlook);
};

}
