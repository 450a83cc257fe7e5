// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/written_now.h"

#include <QDateTime>

#include <algorithm>

namespace crownring::screen {

namespace {

const DefectId* defectOf(const Body& body) {
    if (const auto* found = std::get_if<DefectFound>(&body))
        return &found->defect;
    if (const auto* cleared = std::get_if<DefectCleared>(&body))
        return &cleared->defect;
    const auto* deferred = std::get_if<DefectDeferred>(&body);
    return deferred ? &deferred->defect : nullptr;
}

}

std::optional<TimeOfDay> timeOfAct(CivilDate on, CivilDate today) {
    const auto now = QDateTime::currentDateTimeUtc().time();
    return on == today ? std::optional(TimeOfDay(now.hour(), now.minute())) : std::nullopt;
}

bool isYetToCome(const Entry& entry, const Moment& now) {
    return std::holds_alternative<EventReported>(entry.body) && entry.time && now < Moment(entry.on, *entry.time);
}

bool isYetToCome(const Entry& entry) {
    const auto now = QDateTime::currentDateTimeUtc();
    const auto day = CivilDate::fromYearMonthDay(now.date().year(), now.date().month(), now.date().day());
    return day && isYetToCome(entry, Moment(*day, TimeOfDay(now.time().hour(), now.time().minute())));
}

std::optional<TimeOfDay> timeWritten(const Entry& entry, const FleetSheet& sheet, CivilDate today, TimeOfDay now) {
    // Else it would stand before an approval of the evening.
    if (std::holds_alternative<ReleaseRevoked>(entry.body) && !entry.time && entry.on == today &&
        Kind<ReleaseRevoked>::time < now)
        return now;
    const bool isOfComponent =
        std::holds_alternative<ItemState>(entry.body) || std::holds_alternative<CylinderFilled>(entry.body);
    if (isOfComponent && !entry.time && entry.on == today)
        return now;
    const auto* defect = defectOf(entry.body);
    if (!defect || entry.time || entry.on != today)
        return entry.time;
    const auto start = Moment::startOf(today).minutes();
    auto minute = Moment(today, now).minutes() - start;
    for (const auto& item : sheet.items())
        for (const auto& mark : item.defects)
            if (mark.defect == *defect && mark.stamp.at.on() == today)
                minute = std::max(minute, mark.stamp.at.minutes() - start);
    return TimeOfDay(static_cast<int>(minute / 60), static_cast<int>(minute % 60));
}

}
