// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/month_leaf.h"

#include "screen/desk/house.h"
#include "screen/form/form_field.h"
#include "words/border.h"
#include "words/in_full.h"

#include <QDate>
#include <QLocale>

namespace crownring::screen {

using namespace words;

namespace {

constexpr int daysOfAWeek = 7;
constexpr int weeksInLeaf = 6;

CivilDate firstOfMonth(CivilDate day) { return addDays(day, 1 - day.day()); }

/// 1 is Monday, as QLocale counts.
int weekdayOf(CivilDate day) { return QDate(day.year(), day.month(), day.day()).dayOfWeek(); }

}

void MonthLeaf::show(const QString& written) {
    m_chosen = readDate(outward(written), dateOrderHere());
    m_first = firstOfMonth(m_chosen.value_or(house().day.todayDate()));
    emit changed();
}

void MonthLeaf::step(int months) {
    m_first = addMonths(m_first, months, DayRule::Same);
    emit changed();
}

QString MonthLeaf::title() const {
    return QLocale().toString(QDate(m_first.year(), m_first.month(), 1), QStringLiteral("MMMM yyyy"));
}

QStringList MonthLeaf::weekdays() const {
    QStringList names;
    const int first = QLocale().firstDayOfWeek();
    for (int at = 0; at < daysOfAWeek; ++at)
        names += QLocale().standaloneDayName((first + at - 1) % daysOfAWeek + 1, QLocale::ShortFormat);
    return names;
}

QVariantList MonthLeaf::days() const {
    const int before = (weekdayOf(m_first) - QLocale().firstDayOfWeek() + daysOfAWeek) % daysOfAWeek;
    QVariantList days;
    for (int at = 0; at < weeksInLeaf * daysOfAWeek; ++at) {
        const auto day = addDays(m_first, at - before);
        days += QVariantMap{{QStringLiteral("iso"), inward(day.iso())},
                            {QStringLiteral("number"), day.day()},
                            {QStringLiteral("spoken"), inFull(day)},
                            {QStringLiteral("inMonth"), day.month() == m_first.month()},
                            {QStringLiteral("today"), day == house().day.todayDate()},
                            {QStringLiteral("chosen"), day == m_chosen}};
    }
    return days;
}

}
