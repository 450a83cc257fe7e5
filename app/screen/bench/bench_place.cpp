// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/bench_place.h"

#include "answers/bench_file.h"
#include "screen/desk/house.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

namespace {

using State = BenchPlace::State;

State stateOf(const InspectionCard& card) {
    if (!card.outcome)
        return State::Open;
    if (card.revoked)
        return State::Withdrawn;
    switch (*card.outcome) {
    case Outcome::Released:
        return State::Released;
    case Outcome::Discrepancies:
        return State::Listed;
    case Outcome::Abandoned:
        return State::Abandoned;
    }
    return State::Open;
}

QString stateText(const InspectionCard& card) {
    if (!card.outcome)
        return BenchPlace::tr("open since %1").arg(inward(card.opened.iso()));
    const auto outcome =
        BenchPlace::tr("%1 on %2")
            .arg(BenchWords::outcome(*card.outcome, card.balloon.has_value()), inward(card.closed->iso()));
    return card.revoked ? BenchPlace::tr("withdrawn; had been %1").arg(outcome) : outcome;
}

Choice choiceOf(const InspectionCard& card) {
    return {inward(card.inspection.text()),
            BenchWords::subject(card.balloon, card.items),
            BenchPlace::tr("%1 · %2").arg(stateText(card), card.ofItsVisit ? BenchWords::visit(card.visit)
                                                                           : BenchPlace::tr("other work")),
            static_cast<int>(stateOf(card)),
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
             std::vector<Choice> rows;
             m_openCount = 0;
             if (answer)
                 for (const auto& card : *answer) {
                     rows.push_back(choiceOf(card));
                     m_openCount += card.outcome ? 0 : 1;
                 }
             m_inspections.show(std::move(rows));
             emit listed();
         });
}

}
