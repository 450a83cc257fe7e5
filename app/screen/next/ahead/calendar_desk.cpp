// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/calendar_desk.h"

#include "acts/post.h"
#include "answers/forecast/visit_outlook.h"
#include "screen/next/ahead/agenda_model.h"
#include "words/ahead/visit_words.h"
#include "words/border.h"
#include "words/words.h"

#include <QDate>
#include <QLocale>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

CivilDate monthOf(CivilDate day) { return addDays(day, 1 - day.day()); }

}

void CalendarDesk::movedIn() {
    m_span.first = monthOf(house().day.date());
    connect(&house().one<AheadNow>(), &AheadNow::changed, this, &CalendarDesk::look);
    connect(&house().one<FabricNow>(), &FabricNow::changed, this, &CalendarDesk::show);
    if (m_shown)
        house().one<AheadNow>().want(true);
    look();
}

void CalendarDesk::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    house().one<AheadNow>().want(shown);
    wantFabric();
    emit shownChanged();
    if (shown)
        look();
}

/// It is told of one balloon only, and costs some seconds of work.
void CalendarDesk::wantFabric() { house().one<FabricNow>().want(m_shown && !m_balloon.isEmpty()); }

bool CalendarDesk::isRenewing() const { return house().one<AheadNow>().isRenewing(); }

QString CalendarDesk::problem() const { return house().one<AheadNow>().problem(); }

void CalendarDesk::look() {
    const auto& sheet = house().one<AheadNow>().sheet();
    if (sheet != m_sheet && m_shown) {
        m_sheet = sheet;
        if (!m_turned && monthOf(m_sheet->on) != m_span.first) {
            m_span.first = monthOf(m_sheet->on);
            emit spanChanged();
        }
        if (!m_moving.isEmpty() && !visit(m_moving))
            leaveIt();
        show();
    }
    emit changed();
}

void CalendarDesk::show() {
    if (!m_sheet)
        return;
    const auto only = m_balloon.isEmpty() ? std::nullopt : std::optional(Registration(outward(m_balloon)));
    m_lines.show(calendarLines(*m_sheet, house().one<FabricNow>().of(m_sheet), m_span, only));
}

void CalendarDesk::setBalloon(const QString& balloon) {
    if (balloon == m_balloon)
        return;
    m_balloon = balloon;
    wantFabric();
    show();
    emit changed();
}

void CalendarDesk::setMonths(int months) {
    if (months == m_span.months || months < 1)
        return;
    m_span.months = months;
    show();
    emit spanChanged();
    emit proposalChanged();
}

void CalendarDesk::turn(int months) {
    m_turned = true;
    m_span.first = addMonths(m_span.first, months, DayRule::Same);
    show();
    emit spanChanged();
    emit proposalChanged();
}

void CalendarDesk::turnToNow() {
    m_turned = false;
    m_span.first = monthOf(house().day.date());
    show();
    emit spanChanged();
    emit proposalChanged();
}

QStringList CalendarDesk::monthNames() const {
    QStringList names;
    for (int nth = 0; nth < m_span.months; ++nth) {
        const auto month = addMonths(m_span.first, nth, DayRule::Same);
        const QDate date(month.year(), month.month(), 1);
        names +=
            QLocale().toString(date, nth == 0 || month.month() == 1 ? QStringLiteral("MMM yy") : QStringLiteral("MMM"));
    }
    return names;
}

QList<double> CalendarDesk::monthsAt() const {
    QList<double> places;
    for (int nth = 0; nth < m_span.months; ++nth)
        places += m_span.at(addMonths(m_span.first, nth, DayRule::Same));
    return places;
}

double CalendarDesk::todayAt() const { return m_sheet ? m_span.at(m_sheet->on) : -1; }

int CalendarDesk::days() const { return static_cast<int>(daysBetween(m_span.first, m_span.end()).value()); }

const VisitAhead* CalendarDesk::visit(const QString& entry) const {
    if (!m_sheet)
        return nullptr;
    const auto& visits = m_sheet->planned.visits;
    const auto found =
        std::ranges::find(visits, EntryId(outward(entry)), [](const VisitAhead& each) { return each.stated.id; });
    return found == visits.end() ? nullptr : &*found;
}

QString CalendarDesk::writer() const { return house().habits.person(); }

void CalendarDesk::move(const QString& entry, int days) {
    const auto* planned = visit(entry);
    if (!planned || m_saving || days == 0)
        return;
    const auto& was = m_moving == entry && m_movedTo ? *m_movedTo : planned->visit;
    auto to = addDays(was.from, days);
    to = std::max(to, m_sheet->on); // nothing is planned for days that are over
    m_moving = entry;
    m_movedTo = movedTo(planned->visit, to);
    m_means.clear();
    const auto outlook = outlookOf(planned->visit, m_sheet->due.rows, m_sheet->bands, m_movedTo->from);
    for (const auto& line : VisitWords::works(outlook.covers))
        m_means += tr("covers %1").arg(line);
    m_means += VisitWords::before(outlook.before);
    if (outlook.before.empty())
        m_means += tr("nothing that binds is due before it");
    m_proposal = tr("%1 at %2: %3 instead of %4")
                     .arg(inward(planned->visit.balloon.text()), inward(planned->visit.station),
                          daysText(m_movedTo->from, m_movedTo->to, m_sheet->on),
                          daysText(planned->visit.from, planned->visit.to, m_sheet->on));
    emit proposalChanged();
}

void CalendarDesk::leaveIt() {
    m_moving.clear();
    m_movedTo.reset();
    m_proposal.clear();
    m_means.clear();
    emit proposalChanged();
}

void CalendarDesk::moveIt(const QString& by) {
    if (!m_movedTo || m_saving || by.trimmed().isEmpty())
        return;
    Entry entry;
    entry.on = house().day.todayDate();
    entry.by = outward(by.trimmed());
    entry.body = EntryCorrected{EntryId(outward(m_moving)),
                                nlohmann::json{{"from", m_movedTo->from.iso()}, {"to", m_movedTo->to.iso()}}.dump()};
    house().habits.setPerson(by.trimmed());
    m_saving = true;
    emit proposalChanged();
    hear(house().desk.ask([entry](Record& record) { return postOne(record, record, entry); }), this,
         [this](const Results<Receipt>& receipt) {
             m_saving = false;
             if (!receipt) {
                 house().notice.tellTrouble(Words::problems(receipt.error()));
                 return emit proposalChanged();
             }
             house().notice.tellWritten(tr("Moved: %1").arg(m_proposal), receipt->ids, writer());
             leaveIt();
             house().desk.written();
         });
}

}
