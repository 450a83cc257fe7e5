// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A month to pick a day from: six weeks, in the order of the user's language.

#include "civil/civil_date.h"
#include "screen/desk/resident.h"

#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class MonthLeaf : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// "November 2026"
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QStringList weekdays READ weekdays NOTIFY changed FINAL)
    /// {iso, number, spoken, inMonth, today, chosen}
    Q_PROPERTY(QVariantList days READ days NOTIFY changed FINAL)

public:
    using Resident::Resident;

    /// @param written a day as it stands in a field; today's month where it is none
    Q_INVOKABLE void show(const QString& written);
    Q_INVOKABLE void step(int months);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QStringList weekdays() const;
    [[nodiscard]] QVariantList days() const;

signals:
    void changed();

private:
    CivilDate m_first; ///< of the month
    std::optional<CivilDate> m_chosen;
};

}
