// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/notice.h"

#include "acts/post.h"
#include "screen/desk/day.h"
#include "screen/desk/house.h"
#include "screen/desk/record_desk.h"
#include "words/border.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

namespace {

/// Undoing a void voids the void; an entry written last is taken back first.
std::vector<NumberedEntry> voidsOf(const std::vector<EntryId>& written, CivilDate on, const std::string& by) {
    std::vector<NumberedEntry> voids;
    for (auto id = written.rbegin(); id != written.rend(); ++id)
        voids.push_back({{.id = {},
                          .on = on,
                          .time = {},
                          .by = by,
                          .note = {},
                          .body = EntryVoided{*id, std::string(voidReasonName(VoidReason::Undone))}},
                         0});
    return voids;
}

}

Notice::Notice(const Day& day, RecordDesk& desk) : m_day(day), m_desk(desk) {
    m_timer.setSingleShot(true);
    m_timer.setInterval(10'000);
    connect(&m_timer, &QTimer::timeout, this, &Notice::dismiss);
}

Notice* Notice::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).notice); }

void Notice::tell(const QString& text) { show(text, false, {}, {}); }

void Notice::tellWritten(const QString& text, const std::vector<EntryId>& written, const QString& by) {
    show(text, false, written, by);
}

void Notice::tellTrouble(const QString& text) { show(text, true, {}, {}); }

void Notice::show(const QString& text, bool trouble, std::vector<EntryId> written, const QString& by) {
    m_text = text;
    m_trouble = trouble;
    m_written = std::move(written);
    m_by = by;
    emit changed();
    if (trouble)
        m_timer.stop(); // what went wrong stays until it was read
    else
        m_timer.start();
}

void Notice::undo() {
    if (m_written.empty())
        return;
    auto voids = voidsOf(m_written, m_day.todayDate(), outward(m_by));
    dismiss();
    hear(m_desk.ask([voids](Record& record) { return post(record, record, voids, {}); }), this,
         [this](const Results<Receipt>& answer) {
             if (!answer)
                 return tellTrouble(Words::problems(answer.error()));
             tell(tr("Undone. The record keeps the entry and the void of it."));
             m_desk.written();
         });
}

void Notice::dismiss() {
    m_timer.stop();
    m_text.clear();
    m_written.clear();
    m_trouble = false;
    emit changed();
}

}
