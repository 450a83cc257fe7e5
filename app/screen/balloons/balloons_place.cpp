// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/balloons_place.h"

#include "answers/supported.h"
#include "screen/desk/house.h"

#include <QtConcurrent>

#include <utility>

namespace crownring::screen {

void BalloonsPlace::movedIn() {
    m_sieve.mine = house().habits.looked();
    connect(&house().fleet, &Fleet::changed, this, &BalloonsPlace::look);
    connect(&house().habits, &Habits::mineChanged, this, [this] {
        if (m_sieve.mine == house().habits.looked())
            return;
        m_sieve.mine = house().habits.looked();
        seek();
    });
    look();
}

void BalloonsPlace::setWords(const QString& words) {
    auto next = words.split(u' ', Qt::SkipEmptyParts);
    if (next == m_sieve.words)
        return;
    m_sieve.words = std::move(next);
    seek();
}

void BalloonsPlace::setPoolOnly(bool poolOnly) {
    if (std::exchange(m_sieve.poolOnly, poolOnly) != poolOnly)
        seek();
}

void BalloonsPlace::setOutOfService(bool outOfService) {
    if (std::exchange(m_sieve.outOfService, outOfService) != outOfService)
        seek();
}

void BalloonsPlace::look() {
    const auto& sheet = house().fleet.sheet();
    if (m_seeking)
        m_since.push_back(sheet);
    else if (sheet && sheet->mends(m_sheet))
        mend(sheet);
    else
        seek();
}

/// Off the screen's thread: a register of ten thousand balloons takes longer than a frame.
void BalloonsPlace::seek() {
    emit changed();
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return;
    m_since.clear();
    m_seeking = true;
    hear(QtConcurrent::run([sheet, sieve = m_sieve] { return sought(*sheet, sieve); }), this,
         [this, turn = ++m_turn, sheet](const Sought& found) {
             if (turn == m_turn)
                 take(sheet, found);
         });
}

void BalloonsPlace::take(const Sheet& sheet, const Sought& found) {
    m_seeking = false;
    m_sheet = sheet;
    m_balloonsOut = found.balloonsOut;
    m_itemsOut = found.itemsOut;
    m_balloonsBeside = found.balloonsBeside;
    m_itemsBeside = found.itemsBeside;
    m_balloons.show(sheet, found.balloons);
    m_items.show(sheet, found.items);
    askSupport();
    for (const auto& next : std::exchange(m_since, {})) {
        if (!next || !next->mends(m_sheet))
            return seek();
        mend(next);
    }
    emit changed();
}

/// What is sought is as it was.
void BalloonsPlace::mend(const Sheet& sheet) {
    m_balloons.mend(sheet);
    m_items.mend(sheet);
    m_sheet = sheet;
    askSupport();
    emit changed();
}

void BalloonsPlace::setShown(bool shown) {
    if (std::exchange(m_shown, shown) == shown)
        return;
    emit shownChanged();
    askSupport();
}

/// Once for each state of the record, and while nobody looks not at all: the gate is asked again for each release.
void BalloonsPlace::askSupport() {
    if (!m_shown || !m_sheet || std::exchange(m_supportAsked, m_sheet) == m_sheet)
        return;
    using Answer = Result<LostReleases>;
    hear(house().desk.ask([on = house().day.date()](Record& record) -> Answer {
        return unsupportedByBalloon(record, on, latestOfTheFleet);
    }),
         this, [this](const Answer& answer) {
             if (answer)
                 m_balloons.tell(*answer);
         });
}

}
