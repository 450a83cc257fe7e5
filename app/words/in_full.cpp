// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/in_full.h"

#include "words/border.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

namespace crownring::words {

namespace {

class InFull {
    Q_DECLARE_TR_FUNCTIONS(InFull)

public:
    static QString hours(int count) { return tr("%n hours", nullptr, count); }
    static QString minutes(int count) { return tr("%n minutes", nullptr, count); }
};

QDate dateOf(CivilDate day) { return {day.year(), day.month(), day.day()}; }

}

QString inFull(Minutes minutes) {
    const auto hours = static_cast<int>(minutes.value() / 60);
    const auto rest = static_cast<int>(minutes.value() % 60);
    return joined(
        {hours > 0 || rest == 0 ? InFull::hours(hours) : QString(), rest > 0 ? InFull::minutes(rest) : QString()},
        QStringLiteral(" "));
}

QString inFull(CivilDate day) { return QLocale().toString(dateOf(day), QLocale::LongFormat); }

QString inFull(const DayOrMonth& made) {
    return made.isMonth() ? QLocale().toString(dateOf(made.lastDay()), QStringLiteral("MMMM yyyy"))
                          : inFull(made.lastDay());
}

}
