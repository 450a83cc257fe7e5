// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/returns/return_desk.h"

#include "answers/discrepancies.h"
#include "bench/release/release_phrase.h"
#include "rules/due/defects.h"
#include "rules/due/lists.h"
#include "screen/desk/day.h"
#include "screen/desk/fleet.h"
#include "screen/desk/house.h"
#include "screen/desk/notice.h"
#include "screen/wording/wording_rows.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QDateTime>
#include <QStringList>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

QString standsOf(const ListCount& count) {
    return count.standing == 0 ? ReturnDesk::tr("all answered; the return to service is not approved")
                               : ReturnDesk::tr("%1 of %2 still stand").arg(count.standing).arg(count.listed);
}

/// "annual inspection on E1, B1 from 2026-06-02": each requirement once.
QString accomplishedBy(const ReturnFile& file) {
    if (file.withdrawn)
        return ReturnDesk::tr("An approval of it was withdrawn: what the inspection did counts no more.");
    QStringList done;
    std::vector<RequirementId> seen;
    for (const auto& work : file.accomplishments) {
        if (std::ranges::find(seen, work.requirement) != seen.end())
            continue;
        seen.push_back(work.requirement);
        QStringList items;
        for (const auto& other : file.accomplishments)
            if (other.requirement == work.requirement)
                items += inward(other.item.text());
        done += ReturnDesk::tr("%1 on %2")
                    .arg(words::said(titleOf(file.then, work.requirement)), items.join(QStringLiteral(", ")));
    }
    const auto from = inward(file.list.closed.at.on().iso());
    return done.isEmpty()
               ? ReturnDesk::tr("The inspection accomplished nothing that would count.")
               : ReturnDesk::tr("Once approved, counts from %1: %2").arg(from, done.join(QStringLiteral("; ")));
}

/// Of the machine, but not before the list was signed.
TimeOfDay approvalTime(const std::optional<TimeOfDay>& closed) {
    const auto now = QDateTime::currentDateTimeUtc().time();
    const TimeOfDay time(now.hour(), now.minute());
    return closed && time < *closed ? *closed : time;
}

}

void ReturnDesk::movedIn() {
    m_code.moveInto(house());
    connect(&house().desk, &RecordDesk::changed, this, [this] {
        look();
        if (!m_inspection.isEmpty() && !m_approving)
            draft(); // a wording may have been confirmed meanwhile
    });
    connect(&house().day, &Day::changed, this, &ReturnDesk::look);
    connect(&house().fleet, &Fleet::changed, this, &ReturnDesk::expect);
    look();
}

void ReturnDesk::setBalloon(const QString& balloon) {
    if (balloon == m_balloon)
        return;
    m_balloon = balloon;
    m_listsKnown = balloon.isEmpty();
    show({});
    expect();
    emit balloonChanged();
    look();
}

void ReturnDesk::expect() {
    const auto before = m_expected;
    m_expected = false;
    if (const auto sheet = house().fleet.sheet(); sheet && !m_balloon.isEmpty())
        m_expected = std::ranges::any_of(sheet->rowsOf(Registration(outward(m_balloon))),
                                         [](const DueRow* row) { return listOf(row->requirement->id).has_value(); });
    if (m_expected != before)
        emit listsChanged();
}

QString ReturnDesk::caution() const { return words::said(Phrase{ReleasePhrase::CautionText, {}}); }
QString ReturnDesk::signer() const { return m_signer ? inward(m_signer->person.text()) : QString(); }

QString ReturnDesk::itemAt(int row) const {
    return row < 0 || row >= static_cast<int>(m_items.size()) ? QString()
                                                              : inward(m_items[static_cast<std::size_t>(row)].text());
}

bool ReturnDesk::isDefect(int row) const {
    return row >= 0 && row < m_listed.count() && defectOf(RequirementId(outward(m_listed.valueAt(row)))).has_value();
}

namespace {

/// What of the list a refusal is about, where readings answer it.
QStringList readingOf(const Refusal& refusal, const Discrepancies& list) {
    for (const auto& each : list.listed) {
        const auto defect = defectOf(each.requirement);
        if (each.stands && each.read && refusal.item == each.item &&
            refusal.line == (defect ? defect->text() : each.requirement.text()))
            return {inward(each.item.text()), inward(each.requirement.text())};
    }
    return {};
}

}

QStringList ReturnDesk::readingOfRefusal(int row) const {
    return row >= 0 && row < static_cast<int>(m_readings.size()) ? m_readings[static_cast<std::size_t>(row)]
                                                                 : QStringList();
}

bool ReturnDesk::isRead(int row) const {
    return row >= 0 && row < static_cast<int>(m_read.size()) && m_read[static_cast<std::size_t>(row)];
}

void ReturnDesk::look() {
    const auto turn = ++m_turn;
    if (m_balloon.isEmpty() || !house().desk.isOpen())
        return show({});
    using Answer = Result<std::vector<Discrepancies>>;
    hear(house().desk.ask([balloon = Registration(outward(m_balloon)), on = house().day.date()](
                              Record& record) -> Answer { return pendingLists(record, balloon, on); }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             m_problem = answer ? QString() : Words::problem(answer.error());
             m_listsKnown = true;
             show(answer.value_or(std::vector<Discrepancies>{}));
             emit changed();
         });
}

void ReturnDesk::show(const std::vector<Discrepancies>& lists) {
    std::vector<Choice> rows;
    std::vector<Choice> listed;
    m_items.clear();
    m_read.clear();
    for (const auto& list : lists) {
        const auto count = list.count();
        rows.push_back({inward(list.inspection.text()), words::said(titleOfList(list.inspection)), standsOf(count),
                        count.standing, -1, false});
        for (const auto& each : list.listed) {
            listed.push_back({inward(each.requirement.text()), words::said(each.what),
                              joined({inward(each.item.text()), each.stands ? tr("still stands") : tr("answered"),
                                      inward(list.inspection.text())},
                                     QStringLiteral(" · ")),
                              -1, -1, each.stands,
                              QString(inward(list.inspection.text()) + u'/' + inward(each.item.text()))});
            m_items.push_back(each.item);
            m_read.push_back(each.read);
        }
    }
    m_lists.show(std::move(rows));
    m_listed.show(std::move(listed));
    emit listsChanged();
}

void ReturnDesk::begin(const QString& inspection) {
    m_inspection = inspection;
    m_signer.reset();
    m_people.show({});
    m_refusals.show({});
    m_wording.show({});
    for (auto* text : {&m_statement, &m_statementSource, &m_accomplished, &m_problem})
        text->clear();
    m_approving = false;
    m_peopleKnown = false;
    m_code.ask({});
    draft();
}

void ReturnDesk::setSignerAt(int at) {
    m_signer = crownring::screen::signerAt(m_people, at);
    m_code.ask(signer());
    draft();
}

Approving ReturnDesk::asApproved() const {
    const auto usual = m_european ? Capacity::IndependentCertifyingStaff : Capacity::InspectionAuthorization;
    return {m_signer ? m_signer->person : PersonId(), m_signer ? m_signer->capacity : usual, house().day.date()};
}

void ReturnDesk::draft() {
    const auto turn = ++m_draftTurn;
    m_mayApprove = false;
    emit changed();
    using Answer = Result<std::shared_ptr<const ReturnDraft>>;
    hear(house().desk.ask(
             [id = InspectionId(outward(m_inspection)), approving = asApproved()](Record& record) -> Answer {
                 auto drafted = draftReturn(record, id, approving);
                 if (!drafted)
                     return tl::unexpected(drafted.error());
                 return std::make_shared<const ReturnDraft>(std::move(*drafted));
             }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_draftTurn)
                 return;
             m_peopleKnown = true;
             if (answer)
                 takeDraft(**answer);
             else
                 m_problem = Words::problem(answer.error());
             emit changed();
         });
}

void ReturnDesk::takeDraft(const ReturnDraft& draft) {
    const auto& file = draft.file;
    m_european = regimeOf(file.then.visit()) == Regime::PartMl;
    const Signatory blank{{}, Capacity::PilotOwner, file.list.balloon, file.operations, house().day.date()};
    m_people.show(approversOf(file.entitlements, blank, file.then.visit()));
    std::vector<Choice> refusals;
    m_readings.clear();
    for (const auto& each : draft.refusals) {
        if (each.kind == Refusal::Kind::Signatory && !m_signer)
            continue; // that nobody is chosen yet the field says
        m_readings.push_back(readingOf(each, file.list));
        refusals.push_back({inward(each.line), words::message(each),
                            joined({words::mend(each), inward(each.rule)}, QStringLiteral(" · ")), -1, -1, false,
                            QVariant::fromValue(refusals.size())});
    }
    m_mayApprove = draft.refusals.empty();
    m_refusals.show(std::move(refusals));
    m_wording.show(draftedWording(draft.wording));
    m_statement = draft.statement.because ? words::said(*draft.statement.because) : inward(draft.statement.text);
    m_statementSource = inward(draft.statement.source);
    m_accomplished = accomplishedBy(file);
    m_closedAt = file.list.closed.at.on() == house().day.date() ? file.time : std::nullopt;
}

void ReturnDesk::approve() {
    if (!mayApprove())
        return;
    if (!m_code.isReady()) {
        m_problem = tr("A code of the signatory's own is asked for first.");
        emit changed();
        return;
    }
    m_approving = true;
    m_problem.clear();
    emit changed();
    using Answer = Results<Receipt>;
    hear(house().desk.ask([id = InspectionId(outward(m_inspection)), approving = asApproved(),
                           time = approvalTime(m_closedAt), code = m_code.said()](Record& record) -> Answer {
        return approveReturn(record, record, id, approving, time, code);
    }),
         this, [this](const Answer& answer) {
             m_approving = false;
             m_problem = answer ? QString() : Words::problems(answer.error());
             emit changed();
             if (!answer)
                 return m_code.lookAgain(); // what was typed stays
             m_code.forget();
             house().notice.tell(tr("The return to service is approved. What follows from it is being worked out."));
             house().desk.written();
             emit approvedNow();
         });
}

}
