// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What lies ahead of the fleet on the day asked, as plain values: dues with their bands, what is planned, the agenda.
/// Asked on the record's thread while somebody looks at it, and again after each word of the record.

#include "answers/forecast/agenda.h"
#include "answers/forecast/wear_ahead.h"
#include "answers/forecast/weekend.h"
#include "forecast/dates.h"
#include "screen/desk/house.h"

#include <QObject>

#include <memory>
#include <vector>

namespace crownring::screen {

struct AheadSheet {
    CivilDate on;
    Agenda agenda;   ///< of `daysTold` days
    Planned planned; ///< all that is planned from that day on
    std::vector<CivilDate> weekend;
    std::vector<BalloonThen> thatWeekend; ///< of at most `mostChecked` balloons
    std::size_t notChecked = 0;
    DueList due;                                ///< of the whole fleet
    std::vector<std::optional<DateBand>> bands; ///< of its rows
    std::vector<WearAhead> worn;                ///< of its items

    static constexpr int daysTold = 14;
    static constexpr std::size_t mostChecked = 80;
};
using Ahead = std::shared_ptr<const AheadSheet>;

/// One for the house.
class AheadNow : public QObject {
    Q_OBJECT

public:
    explicit AheadNow(House& house);

    /// Somebody looks at it, or no longer.
    void want(bool wanted);
    [[nodiscard]] const Ahead& sheet() const { return m_sheet; }
    [[nodiscard]] const QString& problem() const { return m_problem; }
    /// What is shown is from before the last word of the record.
    [[nodiscard]] bool isRenewing() const { return m_sheet && (m_asking || m_stale); }

signals:
    void changed();

private:
    void ask();

    House& m_house;
    Ahead m_sheet;
    QString m_problem;
    int m_wanted = 0;
    bool m_stale = true;
    bool m_asking = false;
    bool m_again = false;
};

}
