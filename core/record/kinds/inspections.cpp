// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/inspections.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<lineStateCount> lineStates = {"open", "done", "not-applicable"};
constexpr Words<whyNotCount> whyNots = {"not-fitted", "not-asked", "other"};
constexpr std::array<std::string_view, 3> exceptions = {"spent", "lapsed", "unproven"};
constexpr std::int64_t mostMinutesAloft = 100'000, mostFlights = 1000;
constexpr Words<outcomeCount> outcomes = {"released", "discrepancies", "abandoned", "incomplete"};

std::vector<ItemId> itemsOf(const std::vector<Work>& works) {
    std::vector<ItemId> items;
    for (const auto& work : works)
        items.push_back(work.item);
    return items;
}

std::optional<std::string> exceptionFrom(std::string_view standing) {
    const auto* found = std::ranges::find(exceptions, standing);
    return found == exceptions.end() ? std::nullopt : std::optional(std::string(*found));
}

std::optional<Outcome> closingFrom(std::string_view name) {
    const auto outcome = outcomeFrom(name);
    return outcome == Outcome::Incomplete ? std::nullopt : outcome;
}

SignedClock readSignedClock(ObjectReader& reader) {
    SignedClock signedFor{reader.name<ItemId>("item"), {}};
    const auto read = [&]<class C>(std::string_view key, std::optional<C>& figure) {
        if (const auto value = reader.optionalCount(key, 0, largestCount))
            figure = C(*value);
    };
    read("minutes", signedFor.clock.minutes);
    read("landings", signedFor.clock.landings);
    read("inflations", signedFor.clock.inflations);
    return signedFor;
}

json signedClockJson(const SignedClock& signedFor) {
    json clock = {{"item", signedFor.item.text()}};
    const auto write = [&](const char* key, const auto& figure) {
        if (figure)
            clock[key] = figure->value();
    };
    write("minutes", signedFor.clock.minutes);
    write("landings", signedFor.clock.landings);
    write("inflations", signedFor.clock.inflations);
    return clock;
}

/// Each of the reasons says what it needs to be looked up again: a page, or words.
void readWhyNot(ObjectReader& reader, LineSettled& line) {
    if (reader.has("why"))
        line.why = reader.word("why", whyNotFrom, "not-fitted, not-asked, other");
    line.page = reader.optionalText("page");
    if (line.why && line.state != LineState::NotApplicable)
        reader.refuse("why", EntryFault::WhyOfWhatApplies);
    if (line.page.empty() != (line.why != WhyNot::NotAsked))
        reader.refuse("page", EntryFault::PageOfNotAsked);
    if (line.why == WhyNot::Other && isBlank(line.finding))
        reader.refuse("finding", EntryFault::OtherInWords);
}

Seal readSeal(ObjectReader& reader) {
    Seal seal;
    if (auto entries = reader.optionalNames<EntryId>("entries"))
        seal.entries = std::move(*entries);
    else
        reader.refuse("entries", EntryFault::SealOverNothing);
    seal.digest = reader.text("digest");
    checkDigest(reader, "digest", seal.digest);
    return seal;
}

void writeSeal(json& into, const std::optional<Seal>& seal) {
    if (seal)
        into["seal"] = {{"entries", namesOf(seal->entries)}, {"digest", seal->digest}};
}

Work readWork(ObjectReader& reader) { return {reader.name<ItemId>("item"), reader.name<RequirementId>("requirement")}; }

void writeWork(json& into, const char* key, const std::vector<Work>& works) {
    for (const auto& work : works)
        into[key].push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
}

}

std::string_view lineStateName(LineState state) { return lineStates[static_cast<std::size_t>(state)]; }
std::optional<LineState> lineStateFrom(std::string_view name) { return among<LineState>(lineStates, name); }
std::string_view whyNotName(WhyNot why) { return whyNots[static_cast<std::size_t>(why)]; }
std::optional<WhyNot> whyNotFrom(std::string_view name) { return among<WhyNot>(whyNots, name); }
std::string_view outcomeName(Outcome outcome) { return outcomes[static_cast<std::size_t>(outcome)]; }
std::optional<Outcome> outcomeFrom(std::string_view name) { return among<Outcome>(outcomes, name); }

std::vector<ItemId> itemsOfWork(const InspectionOpened& opened) { return itemsOf(opened.work); }

std::vector<ItemId> itemsCovered(const ReleaseIncomplete& release) { return itemsOf(release.covers); }

InspectionOpened Kind<InspectionOpened>::read(ObjectReader& reader) {
    InspectionOpened body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.visit = reader.slug("visit");
    if (auto items = reader.optionalNames<ItemId>("items"))
        body.items = std::move(*items);
    else
        reader.refuse("items", EntryFault::NothingInspected);
    body.balloon = reader.optionalName<Registration>("balloon");
    reader.objects("work", [&](ObjectReader& inner) { body.work.push_back(readWork(inner)); });
    body.checklist = reader.optionalObjectText("checklist");
    body.order = reader.optionalText("order");
    return body;
}

void Kind<InspectionOpened>::write(json& into, const InspectionOpened& body) {
    into["inspection"] = body.inspection.text();
    into["visit"] = body.visit;
    into["items"] = namesOf(body.items);
    writeName(into, "balloon", body.balloon);
    writeWork(into, "work", body.work);
    if (!body.checklist.empty())
        into["checklist"] = json::parse(body.checklist);
    writeText(into, "order", body.order);
}

LineSettled Kind<LineSettled>::read(ObjectReader& reader) {
    LineSettled body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.line = reader.saying("line");
    body.item = reader.optionalName<ItemId>("item");
    body.state = reader.word("state", lineStateFrom, "open, done, not-applicable");
    body.finding = reader.optionalText("finding");
    body.tester = reader.optionalName<TesterId>("tester");
    body.photographs = readPhotographs(reader);
    readWhyNot(reader, body);
    return body;
}

void Kind<LineSettled>::write(json& into, const LineSettled& body) {
    into["inspection"] = body.inspection.text();
    into["line"] = body.line;
    writeName(into, "item", body.item);
    into["state"] = lineStateName(body.state);
    writeText(into, "finding", body.finding);
    writeName(into, "tester", body.tester);
    if (body.why)
        into["why"] = whyNotName(*body.why);
    writeText(into, "page", body.page);
    writePhotographs(into, body.photographs);
}

InspectionClosed Kind<InspectionClosed>::read(ObjectReader& reader) {
    InspectionClosed body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.outcome = reader.word("outcome", closingFrom, "released, discrepancies, abandoned");
    body.statement = reader.optionalText("statement");
    body.signatory = reader.optionalName<PersonId>("signatory");
    body.capacity = reader.optionalSlug("capacity");
    body.licence = reader.optionalText("licence");
    body.manuals = reader.optionalTexts("manuals");
    body.limitations = reader.optionalText("limitations");
    reader.objects("clocks", [&](ObjectReader& inner) { body.clocks.push_back(readSignedClock(inner)); });
    reader.objects("excepted", [&](ObjectReader& inner) {
        body.excepted.push_back({inner.name<ItemId>("item"), inner.name<RequirementId>("requirement"),
                                 inner.text("title"),
                                 inner.word("standing", exceptionFrom, "spent, lapsed, unproven")});
    });
    reader.object("seal", [&](ObjectReader& inner) { body.seal = readSeal(inner); });
    body.proof = readProof(reader);
    body.confirmed = readConfirmed(reader);
    if (body.outcome != Outcome::Abandoned && !body.signatory)
        reader.refuse("signatory", EntryFault::NobodySigns);
    return body;
}

void Kind<InspectionClosed>::write(json& into, const InspectionClosed& body) {
    into["inspection"] = body.inspection.text();
    into["outcome"] = outcomeName(body.outcome);
    writeText(into, "statement", body.statement);
    writeName(into, "signatory", body.signatory);
    writeText(into, "capacity", body.capacity);
    writeText(into, "licence", body.licence);
    if (!body.manuals.empty())
        into["manuals"] = body.manuals;
    writeText(into, "limitations", body.limitations);
    for (const auto& each : body.clocks)
        into["clocks"].push_back(signedClockJson(each));
    for (const auto& each : body.excepted)
        into["excepted"].push_back({{"item", each.item.text()},
                                    {"requirement", each.requirement.text()},
                                    {"title", each.title},
                                    {"standing", each.standing}});
    writeSeal(into, body.seal);
    writeProof(into, body.proof);
    writeConfirmed(into, body.confirmed);
}

ReleaseIncomplete Kind<ReleaseIncomplete>::read(ObjectReader& reader) {
    ReleaseIncomplete body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.statement = reader.optionalText("statement");
    body.signatory = reader.name<PersonId>("signatory");
    body.capacity = reader.slug("capacity");
    body.licence = reader.optionalText("licence");
    body.manuals = reader.optionalTexts("manuals");
    body.limitations = reader.saying("limitations");
    reader.objects("outstanding", [&](ObjectReader& inner) {
        body.outstanding.push_back({inner.saying("line"), inner.optionalName<ItemId>("item"), inner.text("title")});
    });
    if (body.outstanding.empty())
        reader.refuse("outstanding", EntryFault::NothingOutstanding);
    reader.objects("covers", [&](ObjectReader& inner) { body.covers.push_back(readWork(inner)); });
    reader.object("seal", [&](ObjectReader& inner) { body.seal = readSeal(inner); });
    body.within.until = reader.optionalDate("until");
    if (const auto minutes = reader.optionalCount("minutes", 1, mostMinutesAloft))
        body.within.minutes = Minutes(*minutes);
    body.within.flights = reader.optionalCount("flights", 1, mostFlights);
    body.proof = readProof(reader);
    body.confirmed = readConfirmed(reader);
    return body;
}

void Kind<ReleaseIncomplete>::write(json& into, const ReleaseIncomplete& body) {
    into["inspection"] = body.inspection.text();
    writeText(into, "statement", body.statement);
    into["signatory"] = body.signatory.text();
    into["capacity"] = body.capacity;
    writeText(into, "licence", body.licence);
    if (!body.manuals.empty())
        into["manuals"] = body.manuals;
    into["limitations"] = body.limitations;
    for (const auto& each : body.outstanding) {
        json line = {{"line", each.line}, {"title", each.title}};
        writeName(line, "item", each.item);
        into["outstanding"].push_back(std::move(line));
    }
    writeWork(into, "covers", body.covers);
    writeSeal(into, body.seal);
    if (body.within.until)
        into["until"] = body.within.until->iso();
    if (body.within.minutes)
        into["minutes"] = body.within.minutes->value();
    writeValue(into, "flights", body.within.flights);
    writeProof(into, body.proof);
    writeConfirmed(into, body.confirmed);
}

ReturnApproved Kind<ReturnApproved>::read(ObjectReader& reader) {
    ReturnApproved body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.statement = reader.optionalText("statement");
    body.signatory = reader.name<PersonId>("signatory");
    body.capacity = reader.slug("capacity");
    body.licence = reader.optionalText("licence");
    body.proof = readProof(reader);
    body.confirmed = readConfirmed(reader);
    return body;
}

void Kind<ReturnApproved>::write(json& into, const ReturnApproved& body) {
    into["inspection"] = body.inspection.text();
    writeText(into, "statement", body.statement);
    into["signatory"] = body.signatory.text();
    into["capacity"] = body.capacity;
    writeText(into, "licence", body.licence);
    writeProof(into, body.proof);
    writeConfirmed(into, body.confirmed);
}

ReleaseRevoked Kind<ReleaseRevoked>::read(ObjectReader& reader) {
    return {reader.name<InspectionId>("inspection"), reader.saying("reason"), readProof(reader)};
}

void Kind<ReleaseRevoked>::write(json& into, const ReleaseRevoked& body) {
    into["inspection"] = body.inspection.text();
    into["reason"] = body.reason;
    writeProof(into, body.proof);
}

}
