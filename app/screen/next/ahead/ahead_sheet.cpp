// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/ahead_sheet.h"

#include "answers/due.h"
#include "answers/forecast/projected.h"
#include "words/words.h"

#include <algorithm>
#include <utility>

namespace crownring::screen {

namespace {

Result<Ahead> askedOf(Record& record, CivilDate on, CivilDate today, const std::vector<Registration>& balloons) {
    const auto known = std::min(on, today);
    auto sheet = std::make_shared<AheadSheet>();
    sheet->on = on;
    auto agenda = agendaOf(record, on, addDays(on, AheadSheet::daysTold - 1), known);
    if (!agenda)
        return tl::unexpected(agenda.error());
    sheet->agenda = std::move(*agenda);
    auto planned = plannedFrom(record, on, known);
    if (!planned)
        return tl::unexpected(planned.error());
    sheet->planned = std::move(*planned);
    sheet->weekend = weekendFrom(on);
    sheet->notChecked = balloons.size() - std::min(balloons.size(), AheadSheet::mostChecked);
    auto then = balloonsThen(
        record, {balloons.begin(), balloons.end() - static_cast<std::ptrdiff_t>(sheet->notChecked)}, sheet->weekend);
    if (!then)
        return tl::unexpected(then.error());
    sheet->thatWeekend = std::move(*then);
    auto list = due(record, {}, on);
    if (!list)
        return tl::unexpected(list.error());
    sheet->due = std::move(*list);
    auto bands = projected(record, sheet->due, known);
    if (!bands)
        return tl::unexpected(bands.error());
    sheet->bands = std::move(*bands);
    auto worn = wearAhead(record, sheet->due, known);
    if (!worn)
        return tl::unexpected(worn.error());
    sheet->worn = std::move(*worn);
    return Ahead(std::move(sheet));
}

}

AheadNow::AheadNow(House& house) : m_house(house) {
    connect(&house.desk, &RecordDesk::changed, this, &AheadNow::ask);
    connect(&house.day, &Day::changed, this, &AheadNow::ask);
    connect(&house.habits, &Habits::mineChanged, this, &AheadNow::ask);
    connect(&house.fleet, &Fleet::changed, this, [this] {
        if (!m_sheet) // what balloons there are is known now
            ask();
    });
}

void AheadNow::want(bool wanted) {
    m_wanted += wanted ? 1 : -1;
    if (wanted && m_stale)
        ask();
}

void AheadNow::ask() {
    m_stale = true;
    const auto fleet = m_house.fleet.sheet();
    if (m_wanted == 0 || !fleet)
        return;
    if (m_asking) {
        m_again = true;
        return;
    }
    m_stale = false;
    m_asking = true;
    std::vector<Registration> balloons;
    const auto mine = m_house.habits.looked();
    for (const auto& card : fleet->balloons())
        if (card.inService() && mine.holds(card.balloon))
            balloons.push_back(card.balloon);
    emit changed();
    hear(m_house.desk.ask([on = m_house.day.date(), today = m_house.day.todayDate(), balloons = std::move(balloons)](
                              Record& record) { return askedOf(record, on, today, balloons); }),
         this, [this](const Result<Ahead>& sheet) {
             m_asking = false;
             m_problem = sheet ? QString() : words::Words::problem(sheet.error());
             if (sheet)
                 m_sheet = *sheet;
             if (std::exchange(m_again, false))
                 ask();
             emit changed();
         });
}

}
