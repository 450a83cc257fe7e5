// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/record/rebuilding.h"

#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/words.h"

namespace crownring::screen {

void Rebuilding::movedIn() {
    connect(&house().desk, &RecordDesk::opening, this, [this] {
        m_outcome.clear();
        emit changed();
    });
}

void Rebuilding::begin() {
    if (m_running)
        return;
    m_running = true;
    m_failed = false;
    m_outcome = tr("Making every answer anew from the journal …");
    emit changed();
    hear(house().desk.ask([](Record& record) { return record.rebuild(); }), this, [this](const Result<void>& answer) {
        m_running = false;
        m_failed = !answer;
        m_outcome = answer
                        ? tr("Every answer was made anew from the journal. Verify the record to see that all is as it "
                             "was written.")
                        : words::Words::problem(answer.error());
        emit changed();
        if (answer)
            house().desk.written();
    });
}

}
