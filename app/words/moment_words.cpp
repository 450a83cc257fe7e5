// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/moment_words.h"

#include "words/border.h"

namespace crownring::words {

QString momentSaid(Moment at) {
    constexpr int minutesOfHour = 60;
    const auto minute = static_cast<int>(at.minutes() - Moment::startOf(at.on()).minutes());
    const auto time = TimeOfDay(minute / minutesOfHour, minute % minutesOfHour).iso();
    return QStringLiteral("%1 %2 UTC").arg(inward(at.on().iso()), inward(time.substr(0, 5)));
}

}
