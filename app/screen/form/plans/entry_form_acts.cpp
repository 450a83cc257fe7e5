// SPDX-License-Identifier: GPL-3.0-or-later

/// Forms of what is done with many items at once, and of directives, of which it is said before whom they bind.

#include "acts/directives.h"
#include "answers/bench_file.h"
#include "answers/parts/components.h"
#include "record/entry_json.h"
#include "screen/desk/house.h"
#include "screen/form/entry_form.h"
#include "screen/form/plans/component_form.h"
#include "screen/form/plans/directive_form.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

Result<std::shared_ptr<const DirectivesKnown>> directivesKnown(Record& record, CivilDate on) {
    auto issued = directivesIssued(record, on);
    if (!issued)
        return tl::unexpected(issued.error());
    auto entitlements = entitlementsOn(record, on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    auto lives = livesOn(*issued, on);
    return std::make_shared<const DirectivesKnown>(
        DirectivesKnown{std::move(*issued), std::move(lives), std::move(*entitlements)});
}

/// One answer for all of `items`; nothing where it does not read as an entry.
Result<FormAct> answered(nlohmann::json said) {
    AnsweringMany answering;
    for (const auto& item : said.at("items"))
        answering.items.emplace_back(item.get<std::string>());
    said.erase("items");
    said["item"] = answering.items.front().text();
    auto entry = entryFrom(said);
    if (!entry)
        return tl::unexpected(entry.error());
    answering.answer = std::get<DirectiveAnswered>(entry->body);
    answering.note = entry->note;
    answering.day = entry->on;
    answering.by = entry->by;
    return FormAct{[answering](Record& record) { return answerForMany(record, record, answering); },
                   EntryForm::tr("%1 is answered for %n items", nullptr, static_cast<int>(answering.items.size()))
                       .arg(inward(answering.answer.directive.text()))};
}

}

void EntryForm::beginFor(const QString& kind, const QStringList& items, const QVariantMap& given,
                         const QString& about) {
    FormSubject subject;
    for (const auto& item : items)
        subject.items.push_back(outward(item));
    if (subject.items.empty())
        return;
    if (outward(kind) != ComponentForm::returned)
        return beginMany(kind, subject, given, about);
    // Under which rules it was is known by where it was before it went.
    using Answer = Result<std::map<ItemId, Registration>>;
    hear(house().desk.ask(
             [items = std::vector<ItemId>(subject.items.begin(), subject.items.end()),
              on = house().day.todayDate()](Record& record) -> Answer { return lastBalloons(record, items, on); }),
         this, [this, kind, subject, given, about](const Answer& balloons) {
             auto known = subject;
             if (balloons)
                 known.lastOn = *balloons;
             beginMany(kind, known, given, about);
         });
}

void EntryForm::beginMany(const QString& kind, FormSubject subject, const QVariantMap& given, const QString& about) {
    const auto sheet = house().fleet.sheet();
    if (!sheet)
        return;
    QStringList items;
    for (const auto& item : subject.items)
        items += inward(item);
    subject.item = subject.items.front();
    prepare(outward(kind), subject);
    m_writing.given = {{"items", subject.items}};
    for (auto at = given.begin(); at != given.end(); ++at)
        m_writing.given[outward(at.key())] = outward(at.value().toString());
    if (m_writing.given.contains("inspection"))
        m_fields.propose("by", house().habits.inspector()); // who writes at the bench
    m_about = joined({about, ComponentForm::named(items, *sheet)}, QStringLiteral("\n"));
    announce();
}

bool EntryForm::isAct() const { return isOpen() && m_amends.empty() && m_writing.given.contains("items"); }

void EntryForm::saveAct() {
    const auto sheet = house().fleet.sheet();
    const auto said = m_writing.gathered(m_fields);
    if (!said || !sheet) {
        tellMarked();
        emit changed();
        return;
    }
    auto object = *said;
    if (m_writing.kind == ComponentForm::returned)
        object["done"] = ComponentForm::doneOnEach(m_fields, *sheet);
    auto act = m_writing.kind == kindName<DirectiveAnswered>()
                   ? answered(object)
                   : Result<FormAct>(ComponentForm::act(m_writing.kind, object, *sheet, house().day.todayDate()));
    if (!act)
        return tell({act.error()});
    house().habits.setPerson(m_fields.value("by").trimmed());
    m_saving = true;
    emit changed();
    hear(house().desk.ask([run = act->run](Record& record) { return run(record); }), this,
         [this, told = act->said, by = m_fields.value("by")](const Results<Receipt>& receipt) {
             m_saving = false;
             if (!receipt)
                 return tell(receipt.error());
             cancel();
             emit saved();
             house().notice.tellWritten(tr("Written: %1").arg(told), receipt->ids, by);
             house().desk.written();
         });
}

void EntryForm::askDirectives() {
    if (!DirectiveForm::known(m_writing.kind))
        return;
    using Answer = Result<std::shared_ptr<const DirectivesKnown>>;
    hear(house().desk.ask(
             [on = house().day.todayDate()](Record& record) -> Answer { return directivesKnown(record, on); }),
         this, [this, turn = m_turn](const Answer& known) {
             if (turn != m_turn || !known)
                 return;
             m_known = *known;
             offerKnown();
         });
}

void EntryForm::offerKnown() {
    if (!m_known)
        return;
    const auto named = [this](const char* key) {
        return m_writing.given.contains(key) ? m_writing.given.at(key).get<std::string>()
                                             : outward(m_fields.value(key));
    };
    DirectiveForm::offer(m_fields, *m_known, named("directive"), named("revision"));
    DirectiveForm::showAsked(m_writing.kind, m_fields);
    emit changed();
}

void EntryForm::followDirective(std::string_view key) {
    DirectiveForm::showAsked(m_writing.kind, m_fields);
    if (key == "by" || key == "answer")
        offerKnown();
    if (m_writing.kind != kindName<DirectiveIssued>())
        return;
    if (key == "directive")
        m_fields.propose("source", m_fields.value("directive")); // the directive itself, unless another says it
    askBound();
}

/// Before anything is posted.
void EntryForm::askBound() {
    const auto take = [this](const QString& bound) {
        m_boundSaid = bound;
        const auto follows = joined({DirectiveForm::saidBack(m_fields), bound}, QStringLiteral("\n"));
        if (follows == m_follows)
            return;
        m_follows = follows;
        emit changed();
    };
    const auto applies = DirectiveForm::applies(m_fields);
    if (applies && applies == m_boundBy)
        return take(m_boundSaid);
    m_boundBy = applies;
    const auto turn = ++m_boundTurn;
    if (!applies)
        return take({});
    using Answer = Result<std::vector<BoundItem>>;
    hear(house().desk.ask([applies = *applies, on = house().day.todayDate()](Record& record) -> Answer {
        return wouldBind(record, applies, on);
    }),
         this, [this, turn, take](const Answer& bound) {
             if (turn == m_boundTurn)
                 take(bound ? DirectiveForm::follows(*bound) : Words::problem(bound.error()));
         });
}

}
