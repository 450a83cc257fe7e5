// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/directives/directives.h"

#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

#include <set>
#include <utility>

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<issuedByCount> issuers = {"authority", "manufacturer"};
constexpr Words<directiveAnswerCount> directiveAnswers = {"done", "not-applicable"};
constexpr Words<2> forces = {"mandatory", "recommended"};
constexpr const char* kindWords = "envelope, basket, burner, cylinder, hose, instrument, other";

std::optional<bool> recommendedFrom(std::string_view name) { return among<bool>(forces, name); }

std::vector<SerialSpan> readSerials(ObjectReader& reader) {
    std::vector<SerialSpan> serials;
    reader.objects("serials", [&](ObjectReader& inner) {
        SerialSpan span;
        if (inner.has("from"))
            span.from = inner.saying("from");
        if (inner.has("to"))
            span.to = inner.saying("to");
        if (!span.from && !span.to)
            inner.refuse("from", EntryFault::KeyMissing);
        serials.push_back(std::move(span));
    });
    return serials;
}

void writeSerials(json& into, const std::vector<SerialSpan>& serials) {
    for (const auto& span : serials) {
        json one = json::object();
        writeValue(one, "from", span.from);
        writeValue(one, "to", span.to);
        into["serials"].push_back(std::move(one));
    }
}

PartAsked readPartAsked(ObjectReader& reader) {
    PartAsked asked;
    asked.part = reader.slug("part");
    if (reader.has("in"))
        asked.in = reader.word("in", itemKindFrom, kindWords);
    asked.types = reader.optionalTexts("types");
    asked.serials = readSerials(reader);
    return asked;
}

void readKinds(ObjectReader& reader, std::vector<ItemKind>& kinds) {
    const auto words = reader.optionalTexts("kinds");
    for (const auto& word : words) {
        if (const auto kind = itemKindFrom(word))
            kinds.push_back(*kind);
        else
            reader.refuse("kinds", EntryFault::NoKindOfItem, {word, kindWords});
    }
    if (words.empty())
        reader.refuse("kinds", EntryFault::KeyMissing);
}

AppliesTo readApplies(ObjectReader& reader) {
    AppliesTo applies;
    if (!reader.has("applies"))
        reader.refuse("applies", EntryFault::KeyMissing);
    reader.object("applies", [&](ObjectReader& inner) {
        readKinds(inner, applies.kinds);
        applies.types = inner.optionalTexts("types");
        applies.serials = readSerials(inner);
        inner.objects("fitted", [&](ObjectReader& part) { applies.fitted.push_back(readPartAsked(part)); });
    });
    return applies;
}

void writeTexts(json& into, const char* key, const std::vector<std::string>& texts) {
    if (!texts.empty())
        into[key] = texts;
}

json appliesJson(const AppliesTo& applies) {
    json into = json::object();
    for (const auto kind : applies.kinds)
        into["kinds"].push_back(itemKindName(kind));
    writeTexts(into, "types", applies.types);
    writeSerials(into, applies.serials);
    for (const auto& asked : applies.fitted) {
        json one{{"part", asked.part}};
        if (asked.in)
            one["in"] = itemKindName(*asked.in);
        writeTexts(one, "types", asked.types);
        writeSerials(one, asked.serials);
        into["fitted"].push_back(std::move(one));
    }
    return into;
}

DoneWithin readWithin(ObjectReader& reader) {
    const auto count = [&](std::string_view key) { return reader.optionalCount(key, 1, largestCount); };
    constexpr std::int64_t longestDays = 36'600;
    constexpr std::int64_t longestMonths = 1'200;
    DoneWithin within;
    within.minutes = count("minutes");
    within.landings = count("landings");
    within.inflations = count("inflations");
    within.days = reader.optionalCount("days", 1, longestDays);
    within.months = reader.optionalCount("months", 1, longestMonths);
    return within;
}

void writeWithin(json& into, const DoneWithin& within) {
    writeValue(into, "minutes", within.minutes);
    writeValue(into, "landings", within.landings);
    writeValue(into, "inflations", within.inflations);
    writeValue(into, "days", within.days);
    writeValue(into, "months", within.months);
}

std::vector<ListedPart> readParts(ObjectReader& reader, int depth) {
    std::vector<ListedPart> parts;
    if (depth > deepestPart && reader.has("parts"))
        reader.refuse("parts", DirectiveFault::PartsTooDeep, {deepestPart});
    if (!reader.good())
        return parts;
    reader.objects("parts", [&](ObjectReader& inner) {
        ListedPart part;
        part.part = inner.slug("part");
        if (inner.has("type"))
            part.type = inner.saying("type");
        if (inner.has("serial"))
            part.serial = inner.saying("serial");
        part.parts = readParts(inner, depth + 1);
        part.whole = inner.optionalBool("whole");
        parts.push_back(std::move(part));
    });
    return parts;
}

void writeParts(json& into, const std::vector<ListedPart>& parts) {
    for (const auto& part : parts) {
        json one{{"part", part.part}};
        writeValue(one, "type", part.type);
        writeValue(one, "serial", part.serial);
        writeParts(one, part.parts);
        if (part.whole)
            one["whole"] = true;
        into["parts"].push_back(std::move(one));
    }
}

/// A part of one name and serial number is in one place.
void checkOnce(ObjectReader& reader, const std::vector<ListedPart>& parts,
               std::set<std::pair<std::string, std::string>>& seen) {
    for (const auto& part : parts) {
        if (part.serial && !seen.emplace(part.part, *part.serial).second)
            reader.refuse("parts", DirectiveFault::PartTwice, {part.part, *part.serial});
        checkOnce(reader, part.parts, seen);
    }
}

}

std::string_view issuedByName(IssuedBy by) { return issuers[static_cast<std::size_t>(by)]; }
std::optional<IssuedBy> issuedByFrom(std::string_view name) { return among<IssuedBy>(issuers, name); }
std::string_view directiveAnswerName(DirectiveAnswer answer) {
    return directiveAnswers[static_cast<std::size_t>(answer)];
}
std::optional<DirectiveAnswer> directiveAnswerFrom(std::string_view name) {
    return among<DirectiveAnswer>(directiveAnswers, name);
}

DirectiveIssued Kind<DirectiveIssued>::read(ObjectReader& reader) {
    DirectiveIssued body;
    body.directive = reader.name<DirectiveId>("directive");
    body.revision = reader.saying("revision");
    body.title = reader.saying("title");
    body.issuer = reader.saying("issuer");
    body.issuedBy = reader.word("issued_by", issuedByFrom, "authority, manufacturer");
    body.state = reader.saying("state");
    body.effective = reader.date("effective");
    body.source = reader.saying("source");
    body.applies = readApplies(reader);
    if (reader.has("force"))
        body.recommended = reader.word("force", recommendedFrom, "mandatory, recommended");
    reader.object("first", [&](ObjectReader& inner) {
        body.beforeFlight = inner.optionalBool("before_flight");
        body.until = inner.optionalDate("by");
        body.first = readWithin(inner);
    });
    if (!body.recommended && !body.beforeFlight && !body.until && body.first.empty())
        reader.refuse("first", DirectiveFault::NoDeadline);
    reader.object("repeat", [&](ObjectReader& inner) { body.repeat = readWithin(inner); });
    body.terminating = reader.optionalText("terminating");
    if (auto supersedes = reader.optionalNames<DirectiveId>("supersedes"))
        body.supersedes = std::move(*supersedes);
    body.credits = reader.optionalTexts("credits");
    return body;
}

void Kind<DirectiveIssued>::write(json& into, const DirectiveIssued& body) {
    into["directive"] = body.directive.text();
    into["revision"] = body.revision;
    into["title"] = body.title;
    into["issuer"] = body.issuer;
    into["issued_by"] = issuedByName(body.issuedBy);
    into["state"] = body.state;
    into["effective"] = body.effective.iso();
    into["source"] = body.source;
    into["applies"] = appliesJson(body.applies);
    if (body.recommended)
        into["force"] = forces[1];
    json first = json::object();
    if (body.beforeFlight)
        first["before_flight"] = true;
    writeDate(first, "by", body.until);
    writeWithin(first, body.first);
    if (!first.empty())
        into["first"] = std::move(first);
    json repeat = json::object();
    writeWithin(repeat, body.repeat);
    if (!repeat.empty())
        into["repeat"] = std::move(repeat);
    writeText(into, "terminating", body.terminating);
    if (!body.supersedes.empty())
        into["supersedes"] = namesOf(body.supersedes);
    writeTexts(into, "credits", body.credits);
}

DirectiveAnswered Kind<DirectiveAnswered>::read(ObjectReader& reader) {
    DirectiveAnswered body;
    body.directive = reader.name<DirectiveId>("directive");
    body.revision = reader.saying("revision");
    body.item = reader.optionalName<ItemId>("item");
    body.balloon = reader.optionalName<Registration>("balloon");
    if (body.item.has_value() == body.balloon.has_value())
        reader.refuse("item", DirectiveFault::OfItemOrBalloon);
    body.answer = reader.word("answer", directiveAnswerFrom, "done, not-applicable");
    const bool isDone = body.answer == DirectiveAnswer::Done;
    for (const auto* key : {"method", "clock", "amoc", "terminating"})
        if (!isDone && reader.has(key))
            reader.refuse(key, DirectiveFault::SaidOfTheOther);
    if (isDone && reader.has("why"))
        reader.refuse("why", DirectiveFault::SaidOfTheOther);
    if (isDone)
        body.method = reader.saying("method");
    else
        body.why = reader.saying("why");
    if (reader.has("clock") && body.balloon)
        reader.refuse("clock", DirectiveFault::ClockOfBalloon);
    body.clock = readStatedClock(reader);
    body.amoc = reader.optionalText("amoc");
    body.terminating = reader.optionalBool("terminating");
    body.capacity = reader.optionalSlug("capacity");
    body.licence = reader.optionalText("licence");
    body.ref = reader.optionalText("ref");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    return body;
}

void Kind<DirectiveAnswered>::write(json& into, const DirectiveAnswered& body) {
    into["directive"] = body.directive.text();
    into["revision"] = body.revision;
    writeName(into, "item", body.item);
    writeName(into, "balloon", body.balloon);
    into["answer"] = directiveAnswerName(body.answer);
    writeText(into, "method", body.method);
    writeFigures(into, "clock", body.clock, {});
    writeText(into, "amoc", body.amoc);
    if (body.terminating)
        into["terminating"] = true;
    writeText(into, "why", body.why);
    writeText(into, "capacity", body.capacity);
    writeText(into, "licence", body.licence);
    writeText(into, "ref", body.ref);
    writeName(into, "inspection", body.inspection);
}

PartsListed Kind<PartsListed>::read(ObjectReader& reader) {
    PartsListed body;
    body.item = reader.name<ItemId>("item");
    body.parts = readParts(reader, 1);
    std::set<std::pair<std::string, std::string>> seen;
    checkOnce(reader, body.parts, seen);
    body.whole = reader.optionalBool("whole");
    body.source = reader.optionalText("source");
    return body;
}

void Kind<PartsListed>::write(json& into, const PartsListed& body) {
    into["item"] = body.item.text();
    writeParts(into, body.parts);
    if (body.whole)
        into["whole"] = true;
    writeText(into, "source", body.source);
}

}
