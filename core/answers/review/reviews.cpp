// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/review/reviews.h"

#include "answers/bench_file.h"
#include "answers/due.h"
#include "bench/checklist/inspection.h"
#include "rules/due/incomplete.h"
#include "rules/due/lists.h"

#include <algorithm>

namespace crownring {

namespace {

/// The requirement that a certificate is kept for.
RequirementId kept() { return *requirementOf(ReviewAct::Review); }

std::optional<CivilDate> lastGoodDay(const Assessment& state) {
    for (const auto& limit : state.limits)
        if (const auto* reach = limit.calendar())
            return reach->due;
    return std::nullopt;
}

/// What the rule gives: the certificate before, and the one that is signed.
void reckon(ReviewFile& file, const Requirement& review, const InForce& inForce, const Entry& signing) {
    const auto& said = std::get<ReviewSigned>(signing.body);
    auto item = *file.envelope;
    const auto stamp = stampOf(signing);
    std::erase_if(item.done, [&](const Accomplishment& each) { return !(each.stamp < stamp); });
    file.current = lastGoodDay(assess(review, item, inForce, signing.on));
    const auto requirement = requirementOf(said.act);
    if (!requirement)
        return;
    item.done.push_back({*requirement, stamp, item.clock, {}, {}, Evidence::Signed});
    const auto after = assess(review, item, inForce, signing.on);
    file.due = lastGoodDay(after);
    if (after.because == Because::RowFull)
        if (const auto* carriedOut = inForce.find(*requirement))
            file.tooOften = carriedOut->atMost;
}

std::string organisationOf(std::span<const Entitlement> entitlements, const InspectionClosed& closed, CivilDate on) {
    const auto capacity = capacityFrom(closed.capacity);
    const auto* held = closed.signatory && capacity ? heldBy(entitlements, *closed.signatory, *capacity, on) : nullptr;
    return held ? held->organisation : std::string();
}

Result<void> readVisit(Books& books, ReviewFile& file, const ReviewSigned& said) {
    if (!said.inspection)
        return {};
    const auto told = books.told({Subject::Inspection, said.inspection->text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    const auto inspection = inspectionFrom(*said.inspection, *told);
    if (!inspection)
        return tl::unexpected(inspection.error());
    const auto& opened = inspection->opened;
    const auto& closed = inspection->closed;
    ReviewVisit visit;
    visit.inspection = inspection->id;
    visit.isPeriodic = visitFrom(opened.body.visit) == Visit::PartMlInspection && opened.body.balloon == said.balloon &&
                       std::ranges::count(opened.body.items, said.item) > 0 &&
                       !(closed && closed->body.outcome == Outcome::Abandoned);
    visit.opened = opened.stamp.at.on();
    if (closed) {
        visit.closed = closed->stamp.at.on();
        visit.signatory = closed->body.signatory;
        visit.performedFor = organisationOf(file.entitlements, closed->body, *visit.closed);
    }
    file.reviewing.visit = std::move(visit);
    const auto facts = books.facts({std::nullopt, opened.body.items}, file.reviewing.on);
    if (!facts)
        return tl::unexpected(facts.error());
    for (const auto& work : workLines(*inspection, *facts))
        if (work.line && work.line->isFor(kept())) {
            file.hasLines = true;
            if (work.state() != LineState::Done)
                file.notDone.push_back(work.line->title);
        }
    return {};
}

/// What the visit answers itself, while it is performed.
bool isOfVisit(const std::vector<Work>& work, const std::optional<InspectionId>& inspection, const DueRow& row) {
    if (!inspection)
        return false;
    if (std::ranges::find(work, Work{row.item->id, row.requirement->id}) != work.end())
        return true;
    return listOf(row.requirement->id) == *inspection || incompleteOf(row.requirement->id) == *inspection;
}

Result<void> readAgainst(Books& books, ReviewFile& file, const ReviewSigned& said) {
    std::vector<Work> work;
    if (file.reviewing.visit && file.reviewing.visit->isPerformedOn(file.reviewing.on)) {
        const auto told = books.told(
            {Subject::Inspection, said.inspection->text(), {kindName<InspectionOpened>()}, CivilDate::last()});
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& line : *told)
            if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body))
                work = opened->work;
    }
    const auto list = due(books, {said.balloon, {}}, file.reviewing.on);
    if (!list)
        return tl::unexpected(list.error());
    for (const auto& row : list->rows)
        if (isRequired(row.state) && row.requirement->force == Force::Mandatory &&
            row.requirement->blocks == Blocks::Flight && row.state.standing <= Standing::Unproven &&
            !isOfReviews(row.requirement->id) && !isOfVisit(work, said.inspection, row))
            file.against.push_back({row.item->id, row.requirement->title, {}});
    return {};
}

Result<void> readReviewed(Books& books, ReviewFile& file, const Entry& signing) {
    const auto told =
        books.told({Subject::Person, file.reviewing.person.text(), {kindName<ReviewSigned>()}, file.reviewing.on});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* other = std::get_if<ReviewSigned>(&nowOf(line).body);
            other && line.entry.id != signing.id && other->reviewer == file.reviewing.person &&
            other->act != ReviewAct::Extension)
            file.reviewing.reviewed.push_back(nowOf(line).on);
    return {};
}

Result<void> readEnvelope(Books& books, ReviewFile& file, const Entry& signing) {
    const auto& said = std::get<ReviewSigned>(signing.body);
    auto facts = books.facts({std::nullopt, {said.item}}, signing.on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty())
        return {};
    file.envelope = std::move(facts->front());
    file.reviewing.operations = file.envelope->operations;
    const auto obligations = obligationsOn(books, signing.on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    const auto& inForce = obligations->of(said.item, file.envelope->balloon);
    if (const auto* review = inForce.find(kept()); review && binds(*review, *file.envelope)) {
        file.isAsked = true;
        reckon(file, *review, inForce, signing);
    }
    return {};
}

}

Result<ReviewFile> reviewFile(Books& books, const Entry& signing) {
    const auto& said = std::get<ReviewSigned>(signing.body);
    ReviewFile file;
    file.reviewing.person = said.reviewer;
    file.reviewing.capacity = capacityFrom(said.capacity).value_or(Capacity::PilotOwner);
    file.reviewing.act = said.act;
    file.reviewing.balloon = said.balloon;
    file.reviewing.on = signing.on;
    auto entitlements = entitlementsOn(books, signing.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    file.entitlements = std::move(*entitlements);
    auto wordings = wordingBook(books, signing.on);
    if (!wordings)
        return tl::unexpected(wordings.error());
    file.wordings = std::move(*wordings);
    file.authorisation = authorisationOf(file.entitlements, said.reviewer, file.reviewing.capacity, signing.on);
    const auto read = readEnvelope(books, file, signing)
                          .and_then([&] { return readReviewed(books, file, signing); })
                          .and_then([&] { return readVisit(books, file, said); })
                          .and_then([&] { return readAgainst(books, file, said); });
    if (!read)
        return tl::unexpected(read.error());
    return file;
}

Result<std::vector<Entry>> signedReviews(Books& books, const std::optional<Registration>& balloon, CivilDate on) {
    const auto told = books.told(
        {Subject::Balloon, balloon ? std::optional(balloon->text()) : std::nullopt, {kindName<ReviewSigned>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entry> reviews;
    for (const auto& line : *told)
        if (std::holds_alternative<ReviewSigned>(nowOf(line).body))
            reviews.push_back(nowOf(line));
    std::ranges::reverse(reviews);
    return reviews;
}

Result<std::optional<ItemId>> envelopeOf(Books& books, const Registration& balloon, CivilDate on) {
    const auto facts = books.facts({balloon, {}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    for (const auto& item : *facts)
        if (item.kind == ItemKind::Envelope)
            return item.id;
    return std::nullopt;
}

Result<std::optional<CivilDate>> latestExpiry(Books& books, const ItemId& item, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    const auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    const auto balloon = facts->empty() ? std::nullopt : facts->front().balloon;
    const auto* review = obligations->of(item, balloon).find(kept());
    if (!review)
        return std::nullopt;
    auto latest = on;
    for (const auto& limit : review->limits)
        if (limit.clock == ClockName::Months)
            latest = addMonths(on, limit.every, limit.day);
    for (const auto& [clock, length] : review->window)
        latest = clock == ClockName::Months ? addMonths(latest, length, DayRule::Same) : addDays(latest, length);
    return latest;
}

}
