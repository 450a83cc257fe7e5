// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/bench_place.h"

#include "answers/supported.h"
#include "screen/desk/house.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

using State = BenchPlace::State;

/// How many of the latest releases are asked about: what counts today was released in the last years.
constexpr std::size_t releasesAsked = 60;

State stateOf(const InspectionCard& card, bool unsupported) {
    if (!card.outcome)
        return State::Open;
    if (card.isPending())
        return State::Pending;
    if (card.revoked)
        return State::Withdrawn;
    if (unsupported)
        return State::Unsupported;
    switch (*card.outcome) {
    case Outcome::Released:
        return State::Released;
    case Outcome::Discrepancies:
        return State::Listed;
    case Outcome::Abandoned:
        return State::Abandoned;
    case Outcome::Incomplete:
        return State::Open;
    }
    return State::Open;
}

QString stateText(const InspectionCard& card, bool unsupported) {
    if (!card.outcome && card.incomplete)
        return BenchPlace::tr("open since %1, released after incomplete maintenance on %2")
            .arg(inward(card.opened.iso()), inward(card.incomplete->iso()));
    if (!card.outcome)
        return BenchPlace::tr("open since %1").arg(inward(card.opened.iso()));
    const auto outcome =
        BenchPlace::tr("%1 on %2").arg(BenchWords::outcome(*card.outcome, card.releases()), inward(card.closed->iso()));
    if (card.isPending())
        return card.revoked ? BenchPlace::tr("%1; pending: the approval of the return was withdrawn").arg(outcome)
                            : BenchPlace::tr("%1; pending: the return to service is not approved").arg(outcome);
    if (card.revoked)
        return BenchPlace::tr("withdrawn; had been %1").arg(outcome);
    const auto all =
        card.approved
            ? BenchPlace::tr("%1; return to service approved on %2").arg(outcome, inward(card.approved->iso()))
            : outcome;
    return unsupported ? BenchPlace::tr("%1; no longer supported by the record").arg(all) : all;
}

Choice choiceOf(const InspectionCard& card, bool unsupported) {
    return {inward(card.inspection.text()),
            BenchWords::subject(card.balloon, card.items),
            BenchPlace::tr("%1 · %2").arg(stateText(card, unsupported), card.ofItsVisit ? BenchWords::visit(card.visit)
                                                                                        : BenchPlace::tr("other work")),
            static_cast<int>(stateOf(card, unsupported)),
            -1,
            !card.outcome};
}

}

void BenchPlace::movedIn() {
    connect(&house().desk, &RecordDesk::changed, this, &BenchPlace::askAgain);
    connect(&house().day, &Day::changed, this, &BenchPlace::askAgain);
    askAgain();
}

void BenchPlace::askAgain() {
    if (!house().desk.isOpen())
        return;
    using Answer = Result<std::vector<InspectionCard>>;
    const auto turn = ++m_turn;
    hear(house().desk.ask([on = house().day.date()](Record& record) -> Answer { return inspectionsOn(record, on); }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             m_ready = true;
             m_problem = answer ? QString() : Words::problem(answer.error());
             m_cards = answer.value_or(std::vector<InspectionCard>{});
             show();
             askSupport();
         });
}

void BenchPlace::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    emit shownChanged();
    askSupport();
}

void BenchPlace::askSupport() {
    if (!m_shown || !m_ready || std::exchange(m_supportAsked, m_turn) == m_turn)
        return;
    using Answer = Result<std::vector<InspectionId>>;
    hear(house().desk.ask([on = house().day.date()](Record& record) -> Answer {
        return unsupportedReleases(record, std::nullopt, on, releasesAsked);
    }),
         this, [this, turn = m_turn](const Answer& answer) {
             if (turn != m_turn || !answer || *answer == m_unsupported)
                 return;
             m_unsupported = *answer;
             show();
         });
}

void BenchPlace::show() {
    std::vector<Choice> rows;
    m_openCount = 0;
    for (const auto& card : m_cards) {
        const bool unsupported = std::ranges::find(m_unsupported, card.inspection) != m_unsupported.end();
        rows.push_back(choiceOf(card, unsupported));
        m_openCount += card.outcome ? 0 : 1;
    }
    m_inspections.show(std::move(rows));
    emit listed();
}

}
