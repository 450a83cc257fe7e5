// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Says on the desktop, at the start and once each day after, which balloons have come near what governs them, or past
/// it. Nothing is said twice: a thing is what governs a balloon, its limit and how that stands. It is of today, of the
/// user's own record and the balloons that he looks at, and of nothing while the record is not intact.

#include "civil/civil_date.h"
#include "screen/desk/tidings/herald.h"

#include <QCoreApplication>
#include <QObject>
#include <QStringList>

#include <optional>
#include <utility>

namespace crownring::screen {

struct House;

class LimitWatch : public QObject {
    Q_OBJECT

public:
    /// @param followed the user wants to see what comes next
    /// @pre house and herald live longer
    LimitWatch(House& house, Herald& herald, std::function<void()> followed);

private:
    void look();

    House& m_house;
    Herald& m_herald;
    std::function<void()> m_followed;
    std::optional<std::pair<QString, CivilDate>> m_looked; ///< at which record, on which day
};

}
