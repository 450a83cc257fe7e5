// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/moment.h"

#include "civil/padded.h"
#include "problem/faults/written_fault.h"

namespace crownring {

Result<TimeOfDay> TimeOfDay::parse(std::string_view text) {
    const auto digit = [&](std::size_t at) { return text[at] >= '0' && text[at] <= '9' ? text[at] - '0' : -1000; };
    if (text.size() == 6 && text[2] == ':' && text[5] == 'Z') {
        const int hour = digit(0) * 10 + digit(1);
        const int minute = digit(3) * 10 + digit(4);
        if (hour >= 0 && hour < 24 && minute >= 0 && minute < 60)
            return TimeOfDay(hour, minute);
    }
    return problem(WrittenFault::NotATimeOfDay, {text});
}

std::string TimeOfDay::iso() const { return padded(m_minutes / 60, 2) + ":" + padded(m_minutes % 60, 2) + "Z"; }

CivilDate Moment::on() const {
    const auto days = m_minutes >= 0 ? m_minutes / 1440 : (m_minutes - 1439) / 1440;
    return CivilDate::fromDayNumber(days);
}

}
