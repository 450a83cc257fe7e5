// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/day.h"

#include "screen/desk/house.h"
#include "words/border.h"
#include "words/words.h"

#include <QDate>
#include <QLocale>

namespace crownring::screen {

using namespace words;

Day::Day(CivilDate today, QObject* parent) : QObject(parent), m_today(today), m_asked(today) {}

Day* Day::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).day); }

QString Day::asked() const { return inward(m_asked.iso()); }
QString Day::today() const { return inward(m_today.iso()); }

QString Day::distance() const {
    const auto days = daysBetween(m_today, m_asked).value();
    if (days == 0)
        return {};
    return days > 0 ? tr("in %1").arg(Words::days(days)) : tr("%1 ago").arg(Words::days(-days));
}

QString Day::spoken() const {
    const QDate day(m_asked.year(), m_asked.month(), m_asked.day());
    return QLocale().toString(day, QLocale::LongFormat);
}

QString Day::ask(const QString& iso) {
    const auto day = CivilDate::parse(outward(iso));
    if (!day)
        return Words::problem(day.error());
    setAsked(*day);
    return {};
}

void Day::askToday() { setAsked(m_today); }
void Day::stepDays(int days) { setAsked(addDays(m_asked, days)); }
void Day::stepMonths(int months) { setAsked(addMonths(m_asked, months, DayRule::Same)); }

void Day::setAsked(CivilDate day) {
    if (day == m_asked)
        return;
    m_asked = day;
    emit changed();
}

void Day::setToday(CivilDate day) {
    if (day == m_today)
        return;
    const bool follows = isToday();
    m_today = day;
    if (follows)
        m_asked = day;
    emit changed();
}

}
