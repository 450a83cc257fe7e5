// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/discrepancies.h"

#include "answers/bench_file.h"
#include "answers/defects/who_clears.h"
#include "answers/directives/told.h"
#include "answers/due.h"
#include "answers/fabric_marks.h"
#include "bench/checklist/further_line.h"
#include "bench/checklist/inspection.h"
#include "bench/release/accomplished.h"
#include "problem/faults/release_fault.h"
#include "rules/due/defects.h"
#include "rules/due/lists.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// What decides whether an inspection's list is pending.
const std::vector<std::string_view>& ofTheMatter() {
    static const std::vector<std::string_view> kinds{kindName<InspectionOpened>(), kindName<InspectionClosed>(),
                                                     kindName<ReturnApproved>(), kindName<ReleaseRevoked>()};
    return kinds;
}

/// How items stand on a day, asked once for what is on a list.
class Standings {
public:
    Standings(Books& books, const Obligations& obligations, CivilDate on)
        : m_books(books), m_obligations(obligations), m_on(on) {}

    /// @param before where the time of the day is known: what was cleared at a later one does not count yet
    Result<void> read(const std::vector<ItemId>& items, const std::optional<Moment>& before) {
        auto facts = m_books.facts({std::nullopt, items}, m_on);
        if (!facts)
            return tl::unexpected(facts.error());
        if (const auto barred = barClearings(m_books, *facts); !barred)
            return barred;
        auto fabric = fabricMarks(m_books, {std::nullopt, items}, *facts, m_on);
        if (!fabric)
            return tl::unexpected(fabric.error());
        auto directives = directiveMarks(m_books, *facts, {m_on, {}});
        if (!directives)
            return tl::unexpected(directives.error());
        m_items = std::move(*facts);
        m_fabric = std::move(*fabric);
        m_directives = std::move(*directives);
        if (before)
            for (auto& item : m_items)
                std::erase_if(item.defects, [&](const DefectMark& mark) { return isLaterClearing(mark, *before); });
        return {};
    }
    /// Nobody has answered it since the list was signed. What cannot be looked up stands.
    [[nodiscard]] bool stands(const ListedItem& listed, const Stamp& signedAt) const {
        const auto item = std::ranges::find(m_items, listed.item, &ItemFacts::id);
        if (item == m_items.end())
            return true;
        // A part that was replaced and put out of service bars nobody's flight.
        if (item->out && !item->out->with)
            return false;
        if (const auto defect = defectOf(listed.requirement))
            return std::ranges::any_of(openDefects(*item),
                                       [&](const OpenDefect& each) { return each.found->defect == *defect; });
        if (const auto list = listOf(listed.requirement))
            return std::ranges::find(item->lists, *list, &PendingList::inspection) != item->lists.end();
        if (directiveOf(listed.requirement))
            return barsByDirective(*item, listed.requirement);
        return barsByFabric(*item, listed.requirement) || barsByRule(*item, listed.requirement, signedAt);
    }

    /// A bare statement does not answer it: a reading found it, or it is a test of fabric.
    [[nodiscard]] bool isRead(const ListedItem& listed) const {
        const auto item = std::ranges::find(m_items, listed.item, &ItemFacts::id);
        if (item == m_items.end())
            return false;
        if (const auto defect = defectOf(listed.requirement))
            return std::ranges::any_of(item->defects,
                                       [&](const DefectMark& mark) { return mark.defect == *defect && mark.failed; });
        const auto marks = m_fabric.find(item->id);
        if (marks != m_fabric.end() && std::ranges::any_of(marks->second, [&](const FabricMark& mark) {
                return fabricRequirementId(mark) == listed.requirement;
            }))
            return true;
        const auto* requirement = m_obligations.of(item->id, item->balloon).find(listed.requirement);
        return requirement && isTestOfFabric(*requirement, item->kind);
    }

private:
    [[nodiscard]] static bool isLaterClearing(const DefectMark& mark, Moment before) {
        const auto at = mark.stamp.at;
        return mark.kind == DefectMark::Kind::Cleared && before < at &&
               at != Moment(at.on(), Kind<DefectCleared>::time);
    }
    [[nodiscard]] bool barsByFabric(const ItemFacts& item, const RequirementId& requirement) const {
        const auto marks = m_fabric.find(item.id);
        return marks != m_fabric.end() && std::ranges::any_of(marks->second, [&](const FabricMark& mark) {
                   return fabricRequirementId(mark) == requirement && assessFabric(mark).standing <= Standing::Unproven;
               });
    }
    [[nodiscard]] bool barsByDirective(const ItemFacts& item, const RequirementId& requirement) const {
        const auto marks = m_directives.find(item.id);
        return marks != m_directives.end() && std::ranges::any_of(marks->second, [&](const DirectiveMark& mark) {
                   return directiveRequirementId(mark.directive) == requirement && !mark.recommended &&
                          assessDirective(mark).standing <= Standing::Unproven;
               });
    }
    /// @param by the least that shows it
    [[nodiscard]] static bool isDoneSince(const ItemFacts& item, std::span<const RequirementId> any,
                                          const Stamp& signedAt, Evidence by = Evidence::Stated) {
        return std::ranges::any_of(item.done, [&](const Accomplishment& done) {
            return signedAt < done.stamp && done.evidence <= by &&
                   std::ranges::find(any, done.requirement) != any.end();
        });
    }
    [[nodiscard]] bool barsByRule(const ItemFacts& item, const RequirementId& id, const Stamp& signedAt) const {
        const auto& set = m_obligations.of(item.id, item.balloon);
        const auto* requirement = set.find(id);
        // To take it off its balloon, or to withdraw the programme, does no work.
        if (!requirement || !binds(*requirement, item))
            return !isDoneSince(item, {&id, 1}, signedAt);
        if (requirement->force != Force::Mandatory || requirement->blocks != Blocks::Flight)
            return false;
        // A test is its readings: a visit of the record shows them, or whoever signed the paper answers for them.
        if (isTestOfFabric(*requirement, item.kind) && !isDoneSince(item, {&id, 1}, signedAt, Evidence::Paper) &&
            !isDoneSince(item, requirement->satisfiedBy, signedAt, Evidence::Paper))
            return true;
        // What went with the inspection stands by no limit of its own.
        if (std::ranges::any_of(requirement->limits, [](const Limit& limit) { return !limit.with.empty(); }) &&
            !isDoneSince(item, {&id, 1}, signedAt) && !isDoneSince(item, requirement->satisfiedBy, signedAt))
            return true;
        const auto state = assess(*requirement, item, set, m_on);
        return isRequired(state) && state.standing <= Standing::Unproven;
    }

    Books& m_books;
    const Obligations& m_obligations;
    CivilDate m_on;
    std::vector<ItemFacts> m_items;
    FabricMarks m_fabric;
    DirectiveMarks m_directives;
};

/// @pre the inspection was closed with a list
Result<Discrepancies> listOn(Books& books, const Inspection& inspection, const Obligations& obligations, CivilDate on,
                             const std::optional<Moment>& before = {}) {
    const auto& opened = inspection.opened.body;
    Discrepancies list{inspection.id, inspection.closed->stamp, opened.items, opened.balloon, {}};
    const auto then = itemsAtSignature(books, inspection);
    if (!then)
        return tl::unexpected(then.error());
    list.listed = listedIn(inspection.closed->body, *then);
    Standings standings(books, obligations, on);
    if (const auto read = standings.read(opened.items, before); !read)
        return tl::unexpected(read.error());
    for (auto& each : list.listed) {
        each.stands = standings.stands(each, list.closed);
        each.read = standings.isRead(each);
    }
    return list;
}

bool isOfAList(const Inspection& inspection) {
    return inspection.closed && inspection.closed->body.outcome == Outcome::Discrepancies;
}

Result<Inspection> matterOf(Books& books, const InspectionId& id) {
    const auto told = books.told({Subject::Inspection, id.text(), ofTheMatter(), CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    auto inspection = inspectionFrom(id, *told);
    if (inspection && !isOfAList(*inspection))
        return problem(ReleaseFault::ListAnswered, {id});
    return inspection;
}

Result<Discrepancies> listOn(Books& books, const InspectionId& id, const Obligations& obligations, CivilDate on) {
    const auto inspection = matterOf(books, id);
    if (!inspection)
        return tl::unexpected(inspection.error());
    return listOn(books, *inspection, obligations, on);
}

}

Result<Discrepancies> discrepancies(Books& books, const InspectionId& inspection, CivilDate on) {
    const auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    return listOn(books, inspection, *obligations, on);
}

Result<std::vector<Discrepancies>> pendingLists(Books& books, const std::optional<Registration>& balloon,
                                                CivilDate on) {
    const auto cards = inspectionsOn(books, on);
    if (!cards)
        return tl::unexpected(cards.error());
    const auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    std::vector<Discrepancies> lists;
    for (const auto& card : *cards) {
        if (!card.isPending() || (balloon && card.balloon != balloon))
            continue;
        auto list = listOn(books, card.inspection, *obligations, on);
        if (!list)
            return tl::unexpected(list.error());
        lists.push_back(std::move(*list));
    }
    return lists;
}

Result<void> countLists(Books& books, std::vector<ItemFacts>& items, const Obligations& obligations, CivilDate on) {
    std::map<InspectionId, ListCount> known;
    for (auto& item : items)
        for (auto& pending : item.lists) {
            if (!known.contains(pending.inspection)) {
                const auto list = listOn(books, pending.inspection, obligations, on);
                if (!list)
                    return tl::unexpected(list.error());
                known.emplace(pending.inspection, list->count());
            }
            pending.count = known.at(pending.inspection);
        }
    return {};
}

Result<ReturnFile> returnFile(Books& books, const InspectionId& id, CivilDate on, const Entry* approval) {
    auto told = books.told({Subject::Inspection, id.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    if (approval)
        std::erase_if(*told, [&](const JournalLine& line) { return line.entry.id == approval->id; });
    const auto inspection = inspectionFrom(id, *told);
    if (!inspection)
        return tl::unexpected(inspection.error());
    if (!isOfAList(*inspection))
        return problem(ReleaseFault::ListAnswered, {id});
    const auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    auto list = listOn(books, *inspection, *obligations, on,
                       approval && approval->time ? std::optional(momentOf(*approval)) : std::nullopt);
    if (!list)
        return tl::unexpected(list.error());
    ReturnFile file;
    file.list = std::move(*list);
    file.pending = inspection->isPending();
    file.withdrawn = inspection->revoked.has_value();
    for (const auto& line : *told)
        if (line.entry.id == inspection->closed->id)
            file.time = nowOf(line).time;
    auto then = benchFileAtSignature(books, *inspection);
    auto entitlements = entitlementsOn(books, on);
    const auto cards = books.balloons(on);
    if (!then || !entitlements || !cards)
        return tl::unexpected(!then ? then.error() : !entitlements ? entitlements.error() : cards.error());
    file.then = std::move(*then);
    file.unsupported = refusals(file.then, signingOf(*inspection->closed));
    for (const auto& each : inspection->closed->body.clocks) // as they were signed for
        if (const auto item = std::ranges::find(file.then.items, each.item, &ItemFacts::id);
            item != file.then.items.end())
            item->clock = each.clock;
    file.entitlements = std::move(*entitlements);
    auto wordings = wordingBook(books, on);
    if (!wordings)
        return tl::unexpected(wordings.error());
    file.wordings = std::move(*wordings);
    for (const auto& card : *cards)
        if (card.balloon == file.list.balloon)
            file.operations = card.operations;
    if (!file.withdrawn)
        file.accomplishments = accomplishments(file.then);
    return file;
}

}
