// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/release_desk.h"

#include "answers/balloon_lines.h"
#include "answers/due.h"
#include "bench/release/owner_rule.h"
#include "bench/release/release_phrase.h"
#include "screen/bench/bench_rows.h"
#include "screen/bench/bench_time.h"
#include "screen/desk/day.h"
#include "screen/desk/due_model.h"
#include "screen/desk/house.h"
#include "screen/desk/notice.h"
#include "screen/wording/wording_rows.h"
#include "words/border.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

bool saysWhoSigns(const QString& heading) {
    return heading == words::said(Phrase{ReleasePhrase::ReleasedBy, {}}) ||
           heading == words::said(Phrase{ReleasePhrase::SignedBy, {}});
}

/// "Tarnwick maintenance manual, revision 4", once for each type on the bench; in work that is no inspection of what it
/// touches alone.
QString manualsOf(const BenchFile& file) {
    QStringList manuals;
    for (const auto& item : certifiedItems(file, Outcome::Released))
        if (const auto* type = file.type(item)) {
            const auto text = ReleaseDesk::tr("%1, revision %2").arg(inward(type->manual), inward(type->revision));
            if (!manuals.contains(text))
                manuals += text;
        }
    return manuals.join(u'\n');
}

}

void ReleaseDesk::setDesk(InspectionDesk* desk) {
    if (m_desk == desk)
        return;
    if (m_desk)
        disconnect(m_desk, nullptr, this, nullptr);
    m_desk = desk;
    if (m_desk)
        connect(m_desk, &InspectionDesk::changed, this, &ReleaseDesk::refresh);
    connect(&m_bounds, &ReleaseBounds::changed, this, &ReleaseDesk::changed, Qt::UniqueConnection);
    refresh();
}

QString ReleaseDesk::cautionText() const { return words::said(Phrase{ReleasePhrase::CautionText, {}}); }

QString ReleaseDesk::signer() const { return m_signer ? inward(m_signer->person.text()) : QString(); }

void ReleaseDesk::setSignerAt(int at) { setSigner(crownring::screen::signerAt(m_people, at)); }

void ReleaseDesk::setSigner(const std::optional<Signer>& signer) {
    m_signer = signer;
    refresh();
}

void ReleaseDesk::setOutcome(int outcome) {
    if (outcome < 0 || outcome >= outcomeCount)
        return;
    m_outcome = outcome;
    refresh();
}
void ReleaseDesk::setManuals(const QString& manuals) {
    m_manuals = manuals;
    refresh();
}
void ReleaseDesk::setLimitations(const QString& limitations) {
    m_limitations = limitations;
    refresh();
}

bool ReleaseDesk::mayBeListed() const { return m_desk && m_desk->file() && isInspection(m_desk->file()->visit()); }

bool ReleaseDesk::mayBeIncomplete() const {
    return m_desk && m_desk->file() && regimeOf(m_desk->file()->visit()) == Regime::PartMl;
}

void ReleaseDesk::toggleOutstanding(const QString& line) {
    if (m_outstanding.removeAll(line) == 0)
        m_outstanding += line;
    refresh();
}

Signing ReleaseDesk::asSigned() const {
    Signing signing;
    signing.outcome = static_cast<Outcome>(m_outcome);
    signing.person = m_signer ? m_signer->person : PersonId();
    if (signing.outcome == Outcome::Abandoned && m_desk) // nobody signs for it; the bench's inspector writes it
        signing.person = PersonId(outward(m_desk->inspector().trimmed()));
    // Until somebody is chosen the words are those of who usually signs.
    const bool european = !m_desk || !m_desk->file() || regimeOf(m_desk->file()->visit()) == Regime::PartMl;
    signing.capacity = m_signer   ? m_signer->capacity
                       : european ? Capacity::IndependentCertifyingStaff
                                  : Capacity::InspectionAuthorization;
    for (const auto& line : m_manuals.split(u'\n', Qt::SkipEmptyParts))
        if (!line.trimmed().isEmpty())
            signing.manuals.push_back(outward(line));
    signing.limitations = outward(m_limitations);
    signing.on = house().day.date();
    for (const auto& line : m_outstanding)
        signing.outstanding.push_back(outward(line));
    if (signing.outcome == Outcome::Incomplete)
        signing.within = m_bounds.within();
    return signing;
}

void ReleaseDesk::clear() {
    ++m_turn;
    m_shownFor.clear();
    m_outcome = 0;
    m_signer.reset();
    m_drafted.clear();
    for (auto* text : {&m_manuals, &m_limitations, &m_statement, &m_statementSource, &m_problem, &m_noCheckFlight})
        text->clear();
    m_outstanding.clear();
    m_bounds.clear();
    for (auto* list : {&m_people, &m_optional, &m_refusals, &m_wording, &m_sections, &m_dueNext, &m_ownerRules})
        list->show({});
    m_signing = false;
    m_code.forget();
}

void ReleaseDesk::refresh() {
    const auto inspection = m_desk ? m_desk->inspection() : QString();
    if (m_shownFor != inspection)
        clear(); // nothing of the inspection before stands under this one
    if (!m_desk || !m_desk->file()) {
        m_maySign = false;
        emit changed();
        return;
    }
    const auto& file = *m_desk->file();
    auto proposed = manualsOf(file);
    if (m_shownFor != inspection || m_manuals == m_proposedManuals)
        m_manuals = proposed; // nobody wrote another
    m_shownFor = inspection;
    m_proposedManuals = std::move(proposed);
    showPeople();
    showOptional();
    proposeSigner();
    m_code.ask(signer());
    m_maySign = false;
    emit changed();
    if (file.inspection.closed) {
        m_signing = false;
        m_statement = inward(file.inspection.closed->body.statement);
        m_drafted.clear();
        m_refusals.show({});
        m_wording.show(signedWording(file.inspection.closed->body.confirmed, file.wordings));
        m_sections.show({});
        showDueNext();
        emit changed();
        return;
    }
    using Answer = Result<std::shared_ptr<const ReleaseDraft>>;
    const auto turn = ++m_turn;
    hear(house().desk.ask([id = file.inspection.id, signing = asSigned()](Record& record) -> Answer {
        auto draft = draftRelease(record, id, signing);
        if (!draft)
            return tl::unexpected(draft.error());
        return std::make_shared<const ReleaseDraft>(std::move(*draft));
    }),
         this, [this, turn](const Answer& answer) {
             if (turn != m_turn)
                 return;
             if (answer)
                 takeDraft(**answer);
             else
                 m_problem = Words::problem(answer.error());
             emit changed();
         });
}

void ReleaseDesk::takeDraft(const ReleaseDraft& draft) {
    std::vector<Choice> refusals;
    m_drafted = draft.refusals;
    for (std::size_t i = 0; i < draft.refusals.size(); ++i) {
        const auto& each = draft.refusals[i];
        refusals.push_back({inward(each.line), words::message(each),
                            joined({words::mend(each), inward(each.rule)}, QStringLiteral(" · ")), -1, -1, false,
                            QVariant::fromValue(i)});
    }
    m_maySign = draft.refusals.empty();
    QStringList bars;
    for (const auto& each : draft.noCheckFlight)
        bars += words::said(each);
    m_noCheckFlight = bars.join(u'\n');
    m_refusals.show(std::move(refusals));
    m_statement = draft.statement.because ? words::said(*draft.statement.because) : inward(draft.statement.text);
    m_statementSource = inward(draft.statement.source);
    m_wording.show(draftedWording(draft.wording));
    std::vector<Choice> sections;
    for (const auto& section : draft.sections) {
        QStringList paragraphs;
        for (const auto& each : section.paragraphs)
            paragraphs += words::said(each);
        if (const auto heading = words::said(section.heading); !m_signer && saysWhoSigns(heading))
            paragraphs = {tr("nobody is chosen yet")};
        sections.push_back(
            {words::said(section.heading), words::said(section.heading), paragraphs.join(u'\n'), -1, -1, false});
    }
    m_sections.show(std::move(sections));
}

void ReleaseDesk::showPeople() {
    const auto& file = *m_desk->file();
    const Signatory blank{{}, Capacity::PilotOwner, file.inspection.opened.body.balloon, file.operations, file.on};
    m_people.show(signersOf(file.entitlements, blank, file.visit()));
    std::vector<Choice> rules;
    if (isOfOwnersTasks(file.visit())) {
        const auto listed = regimeOf(file.visit()) == Regime::PartMl ? ownerMayNotRelease() : preventiveMaintenance();
        for (const auto& rule : listed)
            rules.push_back({inward(rule.clause), inward(rule.clause), inward(rule.text), -1, -1, false});
    }
    m_ownerRules.show(std::move(rules));
}

void ReleaseDesk::showOptional() {
    std::vector<Choice> lines;
    for (const auto& work : workLines(m_desk->file()->inspection, m_desk->file()->items)) {
        if (!work.line || work.line->required || work.state() != LineState::Open)
            continue;
        const auto id = inward(work.line->id);
        if (std::ranges::find(lines, id, &Choice::value) == lines.end())
            lines.push_back({id, inward(work.line->title), {}, -1, -1, m_outstanding.contains(id)});
    }
    m_optional.show(std::move(lines));
}

/// Who inspects at this bench, where the record lets that person sign it; anybody else is chosen.
void ReleaseDesk::proposeSigner() {
    if (m_signer || m_desk->inspector().isEmpty())
        return;
    for (const auto& each : m_people.choices())
        if (each.chosen && each.value == m_desk->inspector().trimmed()) {
            m_signer = each.of.value<Signer>();
            return;
        }
}

void ReleaseDesk::sign() {
    if (!maySign() || !m_desk || !m_desk->isOpen())
        return;
    const bool isSigned = asSigned().outcome != Outcome::Abandoned;
    if (isSigned && !m_code.isReady()) {
        m_problem = tr("A code of the signatory's own is asked for first.");
        emit changed();
        return;
    }
    m_signing = true;
    m_problem.clear();
    emit changed();
    using Answer = Results<Receipt>;
    const auto& inspection = m_desk->file()->inspection;
    hear(house().desk.ask([id = inspection.id, signing = asSigned(), time = benchTime(&inspection, asSigned().on),
                           code = isSigned ? m_code.said() : SaidCode()](Record& record) -> Answer {
        return crownring::sign(record, record, id, signing, time, code);
    }),
         this, [this, of = m_shownFor](const Answer& answer) {
             if (of == m_shownFor) {
                 m_signing =
                     answer.has_value() && asSigned().outcome != Outcome::Incomplete; // until it shows as signed
                 m_problem = answer ? QString() : Words::problems(answer.error());
             }
             emit changed();
             if (!answer)
                 return m_code.lookAgain(); // what was typed stays
             m_code.forget();
             m_code.lookAgain();
             if (std::exchange(m_outcome, 0) == 3) // what was signed is not signed again by the next tap
                 m_limitations.clear();            // they were of that release
             m_outstanding.clear();
             m_bounds.clear();
             house().notice.tell(tr("Signed. What follows from it is being worked out."));
             house().desk.written();
             emit signedNow();
         });
}

void ReleaseDesk::showDueNext() {
    struct Next {
        std::shared_ptr<const DueList> due;
        std::vector<const DueRow*> rows; ///< into it, as they come
    };
    using Answer = Result<Next>;
    hear(house().desk.ask(
             [items = m_desk->file()->inspection.opened.body.items, on = house().day.date()](Record& record) -> Answer {
                 auto list = due(record, {std::nullopt, items}, on, Outside::AsInService);
                 if (!list)
                     return tl::unexpected(list.error());
                 const auto kept = std::make_shared<const DueList>(std::move(*list));
                 return dueAsItComes(record, *kept).map([&](std::vector<const DueRow*>&& rows) {
                     return Next{kept, std::move(rows)};
                 });
             }),
         this, [this](const Answer& answer) {
             std::vector<Choice> rows;
             for (const auto* each : answer ? answer->rows : std::vector<const DueRow*>())
                 if (const auto& row = *each; row.state.standing != Standing::Closed && isRequired(row.state))
                     rows.push_back({inward(row.item->id.text()), words::said(row.requirement->title),
                                     joined({inward(row.item->id.text()), DueTexts::due(row), DueTexts::left(row),
                                             Words::standing(row.state)},
                                            QStringLiteral(" · ")),
                                     -1, static_cast<int>(reckonedAs(row.state)), false,
                                     inward(row.requirement->id.text())});
             m_dueNext.show(std::move(rows));
         });
}

}
