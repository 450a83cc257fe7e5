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

Choice choiceOf(const InspectionCard& card) {
    const auto visit = BenchWords::visit(card.visit);
    const auto detail =
        card.outcome
            ? BenchPlace::tr("%1 · %2 on %3").arg(visit, BenchWords::outcome(*card.outcome), inward(card.closed->iso()))
            : BenchPlace::tr("%1 · open since %2").arg(visit, inward(card.opened.iso()));
    return {inward(card.inspection.text()),
            BenchWords::subject(card.balloon, card.items),
            card.revoked ? BenchPlace::tr("%1, withdrawn since").arg(detail) : detail,
            static_cast<int>(card.items.size()),
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
