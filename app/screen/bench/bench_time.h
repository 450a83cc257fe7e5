// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bench/checklist/inspection.h"

#include <QDateTime>

#include <algorithm>

namespace crownring::screen {

/// The minute in which something is written on the bench: now, in UTC, and never before what was said there that day.
[[nodiscard]] inline TimeOfDay benchTime(const Inspection* inspection, CivilDate on) {
    const auto now = QDateTime::currentDateTimeUtc().time();
    auto minute = std::int64_t{now.hour()} * 60 + now.minute();
    const auto heed = [&](const auto& all) {
        for (const auto& said : all)
            if (said.stamp.at.on() == on)
                minute = std::max(minute, said.stamp.at.minutes() - Moment::startOf(on).minutes());
    };
    if (inspection) {
        heed(inspection->lines);
        heed(inspection->readings);
        heed(inspection->found);
        heed(inspection->deferred);
        heed(inspection->cleared);
        heed(inspection->repairs);
        heed(inspection->parts);
        heed(inspection->performed);
        if (const auto& released = inspection->incomplete; released && released->stamp.at.on() == on)
            minute = std::max(minute, released->stamp.at.minutes() - Moment::startOf(on).minutes());
    }
    return {static_cast<int>(minute / 60), static_cast<int>(minute % 60)};
}

}
