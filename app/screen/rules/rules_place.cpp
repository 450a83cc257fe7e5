// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/rules/rules_place.h"

#include "answers/due.h"
#include "rules/programme/programme.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

template <class Name>
QStringList namesOf(const std::vector<Name>& of) {
    QStringList names;
    for (const auto& each : of)
        names += inward(each.text());
    return names;
}

QString some(const QStringList& names, const QString& text) {
    constexpr qsizetype shown = 12;
    const auto list = names.mid(0, shown).join(QStringLiteral(", "));
    return names.size() > shown ? RulesPlace::tr("%1: %2 … and %3 more").arg(text, list).arg(names.size() - shown)
                                : RulesPlace::tr("%1: %2").arg(text, list);
}

/// The types and serial numbers that it is for; empty where it is for all.
QString boundTo(const Requirement& requirement) {
    QStringList parts;
    for (const auto& type : requirement.types)
        parts += RulesPlace::tr("type %1").arg(inward(type));
    for (const auto& range : requirement.serials)
        parts += Words::serials(range);
    return parts.join(QStringLiteral(" · "));
}

/// The same of a whole programme, where each of its requirements is for some alone.
QString boundTo(const Programme& programme) {
    QStringList parts;
    for (const auto& each : programme.requirements) {
        const auto own = boundTo(each);
        if (own.isEmpty())
            return {};
        if (!parts.contains(own))
            parts += own;
    }
    return parts.join(QStringLiteral("; "));
}

QString whom(const Bound& bound) {
    struct Teller {
        QString operator()(const BoundBalloons& bound) const {
            return some(namesOf(bound.balloons), RulesPlace::tr("what is fitted to"));
        }
        QString operator()(const BoundItems& bound) const {
            return some(namesOf(bound.items), RulesPlace::tr("items"));
        }
        QString operator()(const BoundEverything&) const { return RulesPlace::tr("everything, the pool too"); }
    };
    return std::visit(Teller{}, bound);
}

QString revisionFrom(const Adoption& adoption) {
    return RulesPlace::tr("revision %1 binds from %2")
        .arg(inward(adoption.programme->revision), inward(adoption.stamp.at.on().iso()));
}

/// How many items a requirement binds on the day, and the worst standing among them.
struct Reach {
    int rows = 0;
    int worst = -1;
};

std::map<RequirementId, Reach> reachOf(const FleetSheet& sheet) {
    std::map<RequirementId, Reach> reach;
    for (const auto& row : sheet.rows()) {
        auto& each = reach[row.requirement->id];
        ++each.rows;
        if (isRequired(row.state) && (each.worst < 0 || static_cast<int>(row.state.standing) < each.worst))
            each.worst = static_cast<int>(row.state.standing);
    }
    return reach;
}

}

void RulesPlace::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &RulesPlace::follow);
    look();
}

void RulesPlace::setShown(bool shown) {
    if (shown == m_shown)
        return;
    m_shown = shown;
    emit shownChanged();
    follow();
}

void RulesPlace::follow() {
    if (m_shown && m_sheet != house().fleet.sheet())
        look();
}

void RulesPlace::showProgramme(const QString& programme) {
    m_programme = programme;
    m_requirement.clear();
    look();
}

void RulesPlace::showRequirement(const QString& requirement) {
    m_requirement = requirement;
    look();
}

void RulesPlace::find(const QString& requirement) {
    look();
    for (const auto& programme : m_known)
        for (const auto& each : programme->requirements)
            if (each.id.text() == outward(requirement))
                m_programme = inward(programme->id.text());
    showRequirement(requirement);
}

void RulesPlace::look() {
    const auto before = std::exchange(m_sheet, house().fleet.sheet());
    if (m_sheet) {
        if (m_sheet->mends(before) && m_programme.isEmpty())
            return; // programmes are as they were
        if (m_sheet != before && !m_sheet->mends(before))
            askComing();
        lookAtProgrammes();
        lookAtProgramme();
    }
    emit changed();
}

void RulesPlace::askComing() {
    const auto turn = ++m_turn;
    m_coming.clear();
    hear(house().desk.ask([on = m_sheet->on()](Record& record) -> Result<std::vector<Adoption>> {
        const auto all = obligationsOn(record, CivilDate::last());
        if (!all)
            return tl::unexpected(all.error());
        std::vector<Adoption> coming;
        for (const auto& adoption : all->adoptions())
            if (adoption.stamp.at.on() > on)
                coming.push_back(adoption);
        return coming;
    }),
         this, [this, turn](const Result<std::vector<Adoption>>& coming) {
             if (turn != m_turn || !coming || coming->empty())
                 return;
             m_coming = *coming;
             lookAtProgrammes();
             lookAtProgramme();
             emit changed();
         });
}

void RulesPlace::lookAtProgrammes() {
    std::map<ProgrammeId, std::shared_ptr<const Programme>> inForce;
    std::map<ProgrammeId, int> times;
    for (const auto& adoption : m_sheet->adoptions()) {
        inForce[adoption.programme->id] = adoption.programme;
        ++times[adoption.programme->id];
    }
    std::map<ProgrammeId, const Adoption*> coming; // the first of each
    for (const auto& adoption : m_coming)
        coming.emplace(adoption.programme->id, &adoption);
    m_known.clear();
    std::vector<Choice> choices;
    for (const auto& [id, programme] : inForce) {
        m_known.push_back(programme);
        const auto adopted = times[id] == 1 ? tr("adopted once") : tr("adopted %1 times").arg(times[id]);
        const auto later = coming.find(id);
        choices.push_back({inward(id.text()), words::said(programme->title),
                           joined({tr("in force · revision %1 · %2").arg(inward(programme->revision), adopted),
                                   later == coming.end() ? QString() : revisionFrom(*later->second)},
                                  QStringLiteral(" · ")),
                           static_cast<int>(programme->requirements.size()), -1, inward(id.text()) == m_programme});
    }
    for (const auto& [id, adoption] : coming)
        if (!inForce.contains(id)) {
            m_known.push_back(adoption->programme);
            choices.push_back({inward(id.text()), words::said(adoption->programme->title), revisionFrom(*adoption),
                               static_cast<int>(adoption->programme->requirements.size()), -1,
                               inward(id.text()) == m_programme});
        }
    for (const auto& text : shelf())
        if (auto programme = programmeFrom(text);
            programme && !inForce.contains(programme->id) && !coming.contains(programme->id)) {
            m_known.push_back(std::make_shared<const Programme>(std::move(*programme)));
            const auto& shelved = *m_known.back();
            choices.push_back({inward(shelved.id.text()), words::said(shelved.title),
                               tr("on the shelf, binds nothing yet · revision %1").arg(inward(shelved.revision)),
                               static_cast<int>(shelved.requirements.size()), -1,
                               inward(shelved.id.text()) == m_programme});
        }
    m_programmes.show(std::move(choices));
    m_inForce = inForce.contains(ProgrammeId(outward(m_programme)));
}

void RulesPlace::lookAtProgramme() {
    const auto at = std::find_if(m_known.begin(), m_known.end(),
                                 [this](const auto& each) { return each->id.text() == outward(m_programme); });
    m_open = at == m_known.end() ? nullptr : *at;
    std::vector<Choice> requirements;
    std::vector<Choice> adoptions;
    m_bindsFrom.clear();
    if (m_open) {
        auto reach = reachOf(*m_sheet);
        auto all = m_sheet->adoptions();
        all.insert(all.end(), m_coming.begin(), m_coming.end());
        const auto later = std::ranges::find(m_coming, m_open->id, [](const auto& each) { return each.programme->id; });
        if (!m_inForce && later != m_coming.end())
            m_bindsFrom = inward(later->stamp.at.on().iso());
        const auto ahead = m_bindsFrom.isEmpty() ? std::map<RequirementId, QStringList>() : willBind(all);
        for (const auto& each : m_open->requirements) {
            const auto id = inward(each.id.text());
            const auto coming = ahead.find(each.id);
            const bool binds = coming != ahead.end();
            requirements.push_back(
                {id, words::said(each.title),
                 joined({Words::limits(each), boundTo(each),
                         binds ? some(coming->second, tr("from %1 it binds").arg(m_bindsFrom)) : QString()},
                        QStringLiteral(" · ")),
                 binds ? static_cast<int>(coming->second.size()) : reach[each.id].rows, reach[each.id].worst,
                 id == m_requirement});
        }
        for (auto each = all.rbegin(); each != all.rend(); ++each)
            if (each->programme->id == m_open->id)
                adoptions.push_back(
                    {inward(each->stamp.id.text()), tr("from %1").arg(inward(each->stamp.at.on().iso())),
                     joined({whom(each->bound), boundTo(*each->programme)}, QStringLiteral(" · ")), -1, -1, false});
    }
    m_requirements.show(std::move(requirements));
    m_adoptions.show(std::move(adoptions));

    DueRows rows;
    if (!m_requirement.isEmpty())
        for (const auto* row : m_sheet->rows().pointers())
            if (row->requirement->id.text() == outward(m_requirement))
                rows.push_back(row);
    m_bound.show(m_sheet, rows);
}

std::map<RequirementId, QStringList> RulesPlace::willBind(const std::vector<Adoption>& all) const {
    const Obligations obligations(all);
    std::map<RequirementId, QStringList> bound;
    for (const auto& item : m_sheet->items()) {
        if (item.out)
            continue;
        for (const auto& held : obligations.of(item.id, item.balloon).all())
            if (held.programme->id == m_open->id && binds(*held.requirement, item))
                bound[held.requirement->id] +=
                    held.requirement->serials.empty() || item.serial
                        ? inward(item.id.text())
                        : tr("%1 (its serial number is not recorded)").arg(inward(item.id.text()));
    }
    return bound;
}

const Requirement* RulesPlace::chosen() const {
    if (!m_open)
        return nullptr;
    const auto at = std::find_if(m_open->requirements.begin(), m_open->requirements.end(),
                                 [this](const auto& each) { return each.id.text() == outward(m_requirement); });
    return at == m_open->requirements.end() ? nullptr : &*at;
}

QString RulesPlace::title() const { return m_open ? words::said(m_open->title) : QString(); }
QString RulesPlace::note() const { return m_open ? words::said(m_open->note) : QString(); }

QString RulesPlace::about() const {
    return m_open ? tr("Revision %1 · %2").arg(inward(m_open->revision), words::said(m_open->source)) : QString();
}

QString RulesPlace::requirementTitle() const { return chosen() ? words::said(chosen()->title) : QString(); }
QString RulesPlace::requirementSource() const { return chosen() ? words::said(chosen()->source) : QString(); }
QString RulesPlace::requirementRule() const { return chosen() ? Words::limits(*chosen()) : QString(); }
QString RulesPlace::requirementNote() const { return chosen() ? words::said(chosen()->note) : QString(); }

QString RulesPlace::requirementFacts() const {
    const auto* requirement = chosen();
    if (requirement == nullptr)
        return {};
    QStringList facts{Words::action(requirement->action)};
    QStringList kinds;
    for (const auto kind : requirement->kinds)
        kinds += Words::kinds(kind);
    if (!kinds.isEmpty())
        facts += kinds.join(tr(", "));
    if (const auto only = boundTo(*requirement); !only.isEmpty())
        facts += only;
    facts += requirement->force == Force::Mandatory ? tr("mandatory") : tr("recommended, never grounds");
    if (requirement->blocks == Blocks::Filling)
        facts += tr("stands against filling, not against flight");
    for (const auto& operation : requirement->operations)
        facts += tr("only for operation: %1").arg(Words::operation(operation));
    return facts.join(QStringLiteral(" · "));
}

}
