// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/returns/release_bounds.h"

#include "exchange/text/written_date.h"
#include "measure/duration_text.h"
#include "words/border.h"
#include "words/in_full.h"
#include "words/words.h"

#include <QStringList>

namespace crownring::screen {

using namespace words;

void ReleaseBounds::set(QString& field, const QString& written) {
    if (field == written)
        return;
    field = written;
    read();
    emit changed();
}

void ReleaseBounds::clear() {
    for (auto* text : {&m_until, &m_aloft, &m_flights})
        text->clear();
    read();
    emit changed();
}

void ReleaseBounds::read() {
    m_within = {};
    m_problem.clear();
    if (const auto text = m_until.trimmed(); !text.isEmpty()) {
        m_within.until = readDate(outward(text), DateOrder::DayMonthYear);
        if (!m_within.until)
            m_problem = tr("That is no date: %1").arg(text);
    }
    if (const auto text = m_aloft.trimmed(); !text.isEmpty()) {
        if (const auto minutes = parseDuration(outward(text), BareNumber::Hours); !minutes)
            m_problem = Words::problem(minutes.error());
        else if (minutes->value() > 0)
            m_within.minutes = *minutes;
    }
    if (const auto text = m_flights.trimmed(); !text.isEmpty()) {
        bool read = false;
        const auto flights = text.toLongLong(&read);
        if (read && flights > 0)
            m_within.flights = flights;
        else
            m_problem = tr("That is no number of flights: %1").arg(text);
    }
}

QString ReleaseBounds::understood() const {
    QStringList said;
    if (m_within.until)
        said += tr("until %1").arg(inward(m_within.until->iso()));
    if (m_within.minutes)
        said += tr("%1 in all").arg(inFull(*m_within.minutes));
    if (m_within.flights)
        said += tr("flights: %1").arg(*m_within.flights);
    return said.join(QStringLiteral(", "));
}

}
