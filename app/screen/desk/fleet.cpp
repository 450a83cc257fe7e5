// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/fleet.h"

#include "screen/desk/day.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/words.h"

#include <utility>

namespace crownring::screen {

using namespace words;

Fleet::Fleet(const Day& day, RecordDesk& desk) : m_day(day), m_desk(desk) {
    connect(&m_day, &Day::changed, this, &Fleet::askWhole);
    connect(&m_desk, &RecordDesk::changed, this, &Fleet::askAgain);
    connect(&m_desk, &RecordDesk::opening, this, &Fleet::forget);
}

Fleet* Fleet::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).fleet); }

std::shared_ptr<const words::Titles> Fleet::titles() const {
    return m_sheet ? m_sheet->titles() : std::make_shared<const words::Titles>();
}

bool Fleet::empty() const { return m_sheet && m_sheet->isEmpty(); }

/// What was written while an answer is under way is asked for after it.
void Fleet::askAgain() {
    if (m_asking)
        m_again = true;
    else if (m_kept)
        askMend();
    else
        askWhole();
}

void Fleet::askWhole() {
    m_kept = false;
    if (!m_desk.isOpen())
        return;
    const auto turn = ++m_turn;
    setAsking(true);
    hear(m_desk.ask([on = m_day.date()](Record& record) { return FleetSheet::listed(record, on); }), this,
         [this, turn](const Result<Sheet>& list) {
             if (turn != m_turn)
                 return;
             if (!list)
                 return fail(list.error());
             m_list = *list;
             emit listed();
             hear(m_desk.ask([list = *list](Record& record) { return FleetSheet::governed(list, record); }), this,
                  [this, turn](const Result<Sheet>& sheet) {
                      if (turn != m_turn)
                          return;
                      if (!sheet)
                          return fail(sheet.error());
                      take(*sheet);
                  });
         });
}

void Fleet::askMend() {
    const auto turn = ++m_turn;
    setAsking(true);
    hear(m_desk.ask([sheet = m_sheet](Record& record) { return FleetSheet::mended(sheet, record); }), this,
         [this, turn](const Result<Sheet>& sheet) {
             if (turn != m_turn)
                 return;
             if (!sheet)
                 return fail(sheet.error());
             if (!*sheet)
                 return askWhole();
             take(*sheet);
         });
}

/// Another record takes the place of this one: what is under way is of the old one.
void Fleet::forget() {
    ++m_turn;
    m_kept = m_again = false;
    setAsking(false);
}

void Fleet::take(const Sheet& sheet) {
    m_problem.clear();
    m_kept = true;
    if (sheet != m_sheet) {
        m_list = m_sheet = sheet;
        emit listed();
        emit changed();
    }
    finish();
}

void Fleet::finish() {
    setAsking(false);
    if (std::exchange(m_again, false))
        askAgain();
}

void Fleet::fail(const Problem& problem) {
    m_problem = Words::problem(problem);
    m_kept = false;
    emit changed();
    finish();
}

void Fleet::setAsking(bool asking) {
    if (m_asking == asking)
        return;
    m_asking = asking;
    emit askingChanged();
}

}
