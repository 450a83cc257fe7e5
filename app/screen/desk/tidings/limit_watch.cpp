// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/tidings/limit_watch.h"

#include "screen/desk/due_model.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QCryptographicHash>

#include <algorithm>
#include <vector>

namespace crownring::screen {

using namespace words;

namespace {

/// Whose words those are that count.
struct LimitWords {
    Q_DECLARE_TR_FUNCTIONS(LimitWords)
};

struct Near {
    Registration balloon;
    const DueRow* row = nullptr;
};

/// Of all that is in service and looked at, worst first.
std::vector<Near> nearIn(const FleetSheet& sheet, const Mine& looked) {
    std::vector<Near> near;
    for (const auto& card : sheet.balloons())
        if (const auto* row = sheet.headlineOf(card.balloon).row; row && card.inService() && looked.holds(card.balloon))
            if (row->state.standing <= Standing::Nearing)
                near.push_back({card.balloon, row});
    std::ranges::stable_sort(near, {}, [](const Near& each) { return each.row->state.standing; });
    return near;
}

/// The same for the same thing, and for nothing else.
QString keyOf(const Near& near) {
    constexpr qsizetype longEnough = 12;
    const auto parts = {inward(near.balloon.text()), inward(near.row->item->id.text()),
                        inward(near.row->requirement->id.text()),
                        QString::number(static_cast<int>(near.row->state.standing)), DueTexts::due(*near.row)};
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const auto& part : parts)
        hash.addData(part.toUtf8() + '\0');
    return QString::fromLatin1(hash.result().toBase64().left(longEnough));
}

/// "QE-OVA: nearing, Annual inspection, envelope ENV-101, 9 days"
QString lineOf(const Near& near) {
    const auto& row = *near.row;
    return LimitWatch::tr("%1: %2").arg(
        inward(near.balloon.text()),
        joined({Words::standing(row.state), said(row.requirement->title),
                LimitWatch::tr("%1 %2").arg(Words::kind(row.item->kind), inward(row.item->id.text())),
                DueTexts::left(row)},
               QStringLiteral(", ")));
}

Tiding tidingOf(const std::vector<Near>& near) {
    constexpr std::size_t mostLines = 2;
    const auto lines = near.size() > mostLines ? mostLines - 1 : near.size();
    QStringList text;
    for (std::size_t nth = 0; nth < lines; ++nth)
        text += lineOf(near[nth]);
    if (lines < near.size())
        text += LimitWords::tr("and %n balloons more", nullptr, static_cast<int>(near.size() - lines));
    return {LimitWords::tr("By the record, %n balloons are near a limit or past it", nullptr,
                           static_cast<int>(near.size())),
            text.join(u'\n')};
}

}

LimitWatch::LimitWatch(House& house, Herald& herald, std::function<void()> followed)
    : m_house(house), m_herald(herald), m_followed(std::move(followed)) {
    connect(&house.fleet, &Fleet::changed, this, &LimitWatch::look);
    // While it is asked for, the sheet may still be of the record before.
    connect(&house.habits, &Habits::changed, this, [this] {
        if (!m_house.fleet.asking())
            look();
    });
}

void LimitWatch::look() {
    const auto& sheet = m_house.fleet.sheet();
    const auto today = m_house.day.todayDate();
    const auto& desk = m_house.desk;
    if (!m_house.habits.tellsLimits() || !sheet || sheet->on() != today || !m_house.fleet.problem().isEmpty() ||
        !desk.isOpen() || desk.isDamaged() || desk.isBrought())
        return;
    const std::pair looked(desk.location(), today);
    if (m_looked == looked)
        return;
    m_looked = looked;
    auto near = nearIn(*sheet, m_house.habits.looked());
    auto told = m_house.habits.told();
    std::erase_if(near, [&](const Near& each) { return told.contains(keyOf(each)); });
    if (near.empty())
        return;
    for (const auto& each : near)
        told += keyOf(each);
    m_herald.say(
        tidingOf(near),
        [this, record = desk.location(), told](bool said) {
            if (said && record == m_house.desk.location())
                m_house.habits.setTold(told);
        },
        m_followed);
}

}
