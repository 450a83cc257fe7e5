// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/rig_up_check.h"

#include "measure/duration_text.h"
#include "screen/desk/due_model.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/in_full.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <tuple>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

/// More than that nobody looks through: a search finds the others.
constexpr std::size_t mostOffered = 100;

bool says(const ItemFacts& item, const QStringList& words) {
    const auto text = QStringList{inward(item.id.text()), Words::kind(item.kind), inward(item.type.value_or("")),
                                  item.balloon ? inward(item.balloon->text()) : RigUpCheck::tr("in the pool"),
                                  inward(item.serial.value_or(""))}
                          .join(u' ');
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}

void RigUpCheck::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &RigUpCheck::look);
    connect(&house().habits, &Habits::mineChanged, this, [this] {
        showBalloons();
        showItems();
        emit kitChanged();
    });
    look();
}

void RigUpCheck::look() {
    const auto before = std::exchange(m_sheet, house().fleet.sheet());
    if (!m_sheet || !m_sheet->mends(before)) {
        showBalloons();
        return changeKit();
    }
    const auto& mended = m_sheet->mend().items;
    for (const auto& item : mended)
        m_items.change(choiceOf(*m_sheet->item(item)));
    if (std::ranges::any_of(mended, [&](const ItemId& item) { return m_kit.contains(item); }))
        check();
}

void RigUpCheck::setWords(const QString& words) {
    if (words == m_words)
        return;
    m_words = words;
    showItems();
    emit kitChanged();
}

void RigUpCheck::setBalloon(const QString& balloon) {
    m_balloon = balloon;
    m_kit.clear();
    if (m_sheet)
        for (const auto* item : m_sheet->itemsOf(Registration(outward(balloon))))
            m_kit.insert(item->id);
    showBalloons();
    changeKit();
}

QString RigUpCheck::kit() const {
    QStringList names;
    for (const auto& item : m_kit)
        names += inward(item.text());
    return names.join(QStringLiteral(", "));
}

void RigUpCheck::setDuration(const QString& duration) {
    if (duration == m_duration)
        return;
    m_duration = duration;
    m_durationProblem.clear();
    m_understood.clear();
    m_flight.use.minutes = Minutes{0};
    if (!duration.trimmed().isEmpty()) {
        const auto minutes = parseDuration(outward(duration), BareNumber::Hours);
        if (minutes) {
            m_flight.use.minutes = *minutes;
            m_understood = inFull(*minutes);
        } else {
            m_durationProblem = Words::problem(minutes.error());
        }
    }
    emit flightChanged();
    check();
}

void RigUpCheck::setPositioning(bool positioning) {
    if (positioning == m_flight.positioning)
        return;
    m_flight.positioning = positioning;
    emit flightChanged();
    check();
}

void RigUpCheck::setCheckFlight(bool checkFlight) {
    if (checkFlight == m_flight.checkFlight)
        return;
    m_flight.checkFlight = checkFlight;
    emit flightChanged();
    check();
}

void RigUpCheck::toggle(const QString& item) {
    const ItemId id(outward(item));
    if (m_kit.erase(id) == 0)
        m_kit.insert(id);
    changeKit();
}

void RigUpCheck::clearKit() {
    m_kit.clear();
    m_balloon.clear();
    showBalloons();
    changeKit();
}

void RigUpCheck::changeKit() {
    showItems();
    emit kitChanged();
    check();
}

Choice RigUpCheck::choiceOf(const ItemFacts& item) const {
    const auto* worst = m_sheet->worstOf(item.id);
    QStringList detail{Words::kind(item.kind)};
    if (item.type)
        detail += inward(*item.type);
    detail += item.balloon ? inward(item.balloon->text()) : tr("in the pool");
    if (item.out)
        detail += words::said(reasonOf(*item.out));
    const auto name = inward(item.id.text());
    return {name,
            name,
            detail.join(QStringLiteral(" · ")),
            -1,
            worst ? static_cast<int>(reckonedAs(worst->state)) : -1,
            m_kit.contains(item.id)};
}

void RigUpCheck::showItems() {
    if (!m_sheet)
        return;
    struct Offer {
        bool later; ///< not what is searched for
        bool left;  ///< not chosen
        const ItemFacts* item;
        bool operator<(const Offer& other) const {
            return std::tie(later, left, item->kind, item->id) <
                   std::tie(other.later, other.left, other.item->kind, other.item->id);
        }
    };
    const auto words = m_words.split(u' ', Qt::SkipEmptyParts);
    const auto mine = house().habits.looked();
    std::vector<Offer> offers;
    for (const auto& item : m_sheet->items()) {
        const bool found = !words.isEmpty() && says(item, words);
        const bool chosen = m_kit.contains(item.id);
        const bool offered = !item.out && (!item.balloon || mine.holds(item.balloon)); // the pool is for all
        if (found || chosen || (words.isEmpty() && offered))
            offers.push_back({!words.isEmpty() && !found, !chosen, &item});
    }
    const auto shown = std::min(offers.size(), m_kit.size() + mostOffered);
    std::partial_sort(offers.begin(), offers.begin() + static_cast<std::ptrdiff_t>(shown), offers.end());
    m_leftOut = static_cast<int>(offers.size() - shown);
    offers.resize(shown);
    std::vector<Choice> items;
    for (const auto& offer : offers)
        items.push_back(choiceOf(*offer.item));
    m_items.show(std::move(items));
}

void RigUpCheck::showBalloons() {
    if (!m_sheet)
        return;
    std::vector<Choice> balloons;
    const auto mine = house().habits.looked();
    for (const auto& card : m_sheet->balloons())
        if (card.inService() && mine.holds(card.balloon))
            balloons.push_back({inward(card.balloon.text()), inward(card.balloon.text()), inward(card.title), -1, -1,
                                m_balloon == inward(card.balloon.text())});
    m_balloons.show(std::move(balloons));
}

void RigUpCheck::check() {
    const auto turn = ++m_turn;
    // The answer to another question must not stand beside this kit, not for a moment.
    m_answered = false;
    m_problem.clear();
    m_limitations.clear();
    emit answerChanged();
    if (m_kit.empty() || !m_durationProblem.isEmpty())
        return;
    using Answer = Result<std::shared_ptr<const RigUpAnswer>>;
    const std::vector<ItemId> kit(m_kit.begin(), m_kit.end());
    hear(house().desk.ask([kit, on = house().day.date(), flight = m_flight](Record& record) -> Answer {
        auto answer = checkRigUp(record, kit, on, flight);
        if (!answer)
            return tl::unexpected(answer.error());
        return std::make_shared<const RigUpAnswer>(std::move(*answer));
    }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             m_answered = answer.has_value();
             m_problem = answer ? QString() : Words::problem(answer.error());
             if (answer)
                 take(**answer);
             emit answerChanged();
         });
}

void RigUpCheck::take(const RigUpAnswer& answer) {
    m_mayFly = answer.verdict.mayFly;
    QStringList limitations;
    for (const auto& each : answer.limitations)
        limitations += inward(each);
    m_limitations = limitations.isEmpty() ? QString()
                                          : tr("A check flight alone, within the limitation of its release: %1")
                                                .arg(limitations.join(QStringLiteral("; ")));
    std::vector<ReasonLine> reasons;
    for (const auto& reason : answer.verdict.reasons) {
        auto line = reasonLine(reason, m_flight);
        // One row may say no for two reasons; on the screen it is one, with both texts.
        const auto same =
            std::find_if(reasons.begin(), reasons.end(), [&](const auto& have) { return have.sameAs(line); });
        if (same == reasons.end())
            reasons.push_back(std::move(line));
        else
            same->text += u' ' + line.text;
    }
    m_reasons.show(std::move(reasons));
    std::vector<ReasonLine> notes;
    for (const auto& use : answer.verdict.tolerances)
        notes.push_back(toleranceLine(use, m_flight));
    for (const auto* row : answer.verdict.notes)
        notes.push_back(noteLine(*row));
    m_notes.show(std::move(notes));
    if (const auto* row = answer.verdict.governs) {
        const auto left = DueTexts::left(*row);
        m_governs = left.isEmpty() ? tr("What governs: %1, %2 (%3).")
                                         .arg(DueTexts::where(*row), words::said(row->requirement->title),
                                              Words::standing(row->state))
                                   : tr("What governs: %1, %2 (%3, %4).")
                                         .arg(DueTexts::where(*row), words::said(row->requirement->title),
                                              Words::standing(row->state), left);
    } else {
        m_governs = tr("Nothing in the record binds this kit. Adopt a programme for it in Rules.");
    }
}

QString RigUpCheck::headline() const {
    if (!m_answered)
        return {};
    return m_mayFly ? tr("By the record, nothing stands against it") : tr("By the record: no");
}

}
