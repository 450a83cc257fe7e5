// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/wording/wording_desk.h"

#include "acts/adopt_text.h"
#include "answers/bench_file.h"
#include "bench/checklist/checklist.h"
#include "screen/desk/day.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// A person in one of his capacities.
struct Confirmer {
    PersonId person;
    Capacity capacity = Capacity::PilotOwner;
};

QString whoConfirmed(const ConfirmedLine& each) {
    const auto& said = each.confirmation.said;
    const auto capacity = capacityFrom(said.capacity);
    return WordingDesk::tr("%1, %2, %3")
        .arg(inward(said.confirmedBy.text()), capacity ? words::said(termOf(*capacity)) : inward(said.capacity),
             inward(said.licence));
}

QString againstWhat(const ConfirmedLine& each) {
    const auto text = WordingDesk::tr("on %1, against %2")
                          .arg(inward(each.confirmation.on.iso()), inward(each.confirmation.said.against));
    return each.counts ? text
                       : WordingDesk::tr("%1; does not count: the record did not let that person then").arg(text);
}

QString lackingOf(const WordingLine& line) {
    if (line.isText() && !line.adopted)
        return WordingDesk::tr(
            "The program's own wording. No organisation has adopted it, so nothing is signed by it.");
    if (!line.isConfirmed())
        return WordingDesk::tr("Nobody has confirmed it against the current rule, so nothing is signed by it.");
    return {};
}

QString adoptedText(const WordingLine& line) {
    return line.adopted ? WordingDesk::tr("adopted by %1 from %2")
                              .arg(inward(line.adopted->organisation), inward(line.adopted->on.iso()))
                        : QString();
}

QString stateOf(const WordingLine& line) {
    QStringList confirmed;
    for (const auto& each : line.confirmed)
        if (each.counts)
            confirmed +=
                WordingDesk::tr("%1 on %2")
                    .arg(inward(each.confirmation.said.confirmedBy.text()), inward(each.confirmation.on.iso()));
    const auto by = confirmed.isEmpty() ? WordingDesk::tr("not confirmed against the current rule")
                                        : WordingDesk::tr("confirmed by %1").arg(confirmed.join(QStringLiteral("; ")));
    if (!line.isText())
        return by;
    return joined({line.adopted ? adoptedText(line) : WordingDesk::tr("adopted by nobody"), by}, QStringLiteral(" · "));
}

/// Its lines as they are read beside the rule: what is looked at, and the clause that is said to ask it.
QString linesOf(const WordingLine& line) {
    const auto checklist = keptChecklist(line.body);
    if (!checklist)
        return {};
    QStringList lines;
    for (const auto& each : checklist->lines) {
        QStringList sources;
        for (const auto& [regime, source] : each.sources)
            sources += inward(source);
        lines += WordingDesk::tr("%1: %2 (%3)")
                     .arg(inward(each.title), inward(each.lookFor), sources.join(QStringLiteral("; ")));
    }
    return lines.join(u'\n');
}

}

QString WordingDesk::keyOf(const NamedText& named) { return inward(named.id() + " " + named.revision); }

void WordingDesk::movedIn() {
    connect(&house().desk, &RecordDesk::changed, this, &WordingDesk::look);
    connect(&house().day, &Day::changed, this, &WordingDesk::look);
    look();
}

const WordingLine* WordingDesk::line() const {
    const auto found =
        std::ranges::find_if(m_lines, [&](const WordingLine& each) { return keyOf(each.named) == m_key; });
    return found == m_lines.end() ? nullptr : &*found;
}

QString WordingDesk::title() const { return line() ? inward(line()->named.title) : QString(); }

QString WordingDesk::body() const {
    return !line() ? QString() : line()->isText() ? inward(line()->body) : linesOf(*line());
}

QString WordingDesk::source() const {
    if (!line())
        return {};
    const auto known = !line()->isText() ? QString()
                       : line()->read    ? tr("The words were read in this source.")
                       : line()->ships   ? tr("The words are from memory.")
                                         : tr("The organisation's own wording.");
    const auto which = tr("%1, revision %2").arg(inward(line()->named.id()), inward(line()->named.revision));
    return joined({which, inward(line()->source), known, inward(line()->note)}, QStringLiteral(" · "));
}

QString WordingDesk::lacking() const { return line() ? lackingOf(*line()) : QString(); }

QString WordingDesk::adopted() const { return line() ? adoptedText(*line()) : QString(); }

void WordingDesk::setPersonAt(int at) {
    m_personAt = at;
    emit changed();
}

void WordingDesk::show(const QString& key) {
    m_key = key;
    m_problem.clear();
    m_personAt = -1;
    showPeople();
    showLists();
    emit changed();
}

void WordingDesk::look() {
    const auto turn = ++m_turn;
    if (!house().desk.isOpen())
        return;
    struct Found {
        std::vector<WordingLine> lines;
        std::vector<Entitlement> entitlements;
    };
    using Answer = Result<std::shared_ptr<const Found>>;
    hear(house().desk.ask([on = house().day.date()](Record& record) -> Answer {
        auto lines = wordingsOn(record, on);
        if (!lines)
            return tl::unexpected(lines.error());
        auto entitlements = entitlementsOn(record, on);
        if (!entitlements)
            return tl::unexpected(entitlements.error());
        return std::make_shared<const Found>(Found{std::move(*lines), std::move(*entitlements)});
    }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             if (!answer) {
                 m_problem = Words::problem(answer.error());
                 emit changed();
                 return;
             }
             m_lines = (*answer)->lines;
             m_entitlements = (*answer)->entitlements;
             showPeople();
             showLists();
             emit changed();
         });
}

void WordingDesk::showLists() {
    std::vector<Choice> texts;
    for (const auto& each : m_lines)
        texts.push_back({keyOf(each.named),
                         tr("%1, revision %2").arg(inward(each.named.title), inward(each.named.revision)),
                         stateOf(each), each.isConfirmed() ? 1 : 0, -1, false});
    m_texts.show(std::move(texts));
    std::vector<Choice> confirmations;
    if (line())
        for (const auto& each : line()->confirmed)
            confirmations.push_back(
                {inward(each.confirmation.entry.text()), whoConfirmed(each), againstWhat(each), -1, -1, each.counts});
    m_confirmations.show(std::move(confirmations));
}

void WordingDesk::showPeople() {
    std::vector<Choice> people;
    const auto on = house().day.date();
    if (line())
        for (const auto& each : m_entitlements) {
            if (barOfConfirming(each.capacity, line()->visits) ||
                notHeld(m_entitlements, each.person, each.capacity, on))
                continue;
            Choice choice{inward(each.person.text()),
                          tr("%1, %2").arg(inward(each.person.text()), words::said(termOf(each.capacity))),
                          inward(each.licence),
                          -1,
                          -1,
                          true,
                          QVariant::fromValue(Confirmer{each.person, each.capacity})};
            const auto isSame = [&](const Choice& other) { return other.label == choice.label; };
            if (std::ranges::none_of(people, isSame)) // renewed, it is entered again
                people.push_back(std::move(choice));
        }
    if (m_personAt >= static_cast<int>(people.size()))
        m_personAt = -1;
    m_people.show(std::move(people));
}

void WordingDesk::write(const std::function<Results<Receipt>(Record&)>& act, bool confirming) {
    m_writing = true;
    m_problem.clear();
    emit changed();
    using Answer = Results<Receipt>;
    hear(house().desk.ask([act](Record& record) -> Answer { return act(record); }), this,
         [this, confirming](const Answer& answer) {
             m_writing = false;
             if (!answer) {
                 m_problem = Words::problem(answer.error().front());
             } else {
                 m_personAt = -1;
                 look();
                 if (confirming)
                     emit confirmedNow();
             }
             emit changed();
         });
}

void WordingDesk::adopt(const QString& organisation, const QString& body, const QString& revision) {
    if (!mayBeAdopted() || m_writing)
        return;
    const auto text = statementTextFrom(*line()->named.text);
    auto adopting = asShipped(*text, outward(organisation.trimmed()));
    if (!body.trimmed().isEmpty()) {
        adopting.body = outward(body.trimmed());
        adopting.revision = outward(revision.trimmed());
        adopting.source.clear();
    }
    m_key = keyOf(named(wordingOf(adopting)));
    write([adopting, on = house().day.date()](
              Record& record) { return adoptTexts(record, record, {adopting}, on, adopting.organisation); },
          false);
}

void WordingDesk::confirm(const QString& against) {
    if (!mayBeConfirmed() || m_writing || m_personAt < 0 || m_personAt >= m_people.count())
        return;
    const auto by = m_people.choices()[static_cast<std::size_t>(m_personAt)].of.value<Confirmer>();
    write([named = line()->named,
           confirming = Confirming{outward(against.trimmed()), by.person, by.capacity, house().day.date()}](
              Record& record) { return confirmTexts(record, record, {named}, confirming); },
          true);
}

}

Q_DECLARE_METATYPE(crownring::screen::Confirmer)
