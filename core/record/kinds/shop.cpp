// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/shop.h"

#include "problem/faults/entry_fault.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<retiredCount> retiredThings = {"panel", "item"};

ItemKind readKind(ObjectReader& reader) {
    return reader.word("kind", itemKindFrom, "envelope, basket, burner, cylinder, hose, instrument, other");
}

}

std::string_view retiredName(Retired retired) { return retiredThings[static_cast<std::size_t>(retired)]; }
std::optional<Retired> retiredFrom(std::string_view name) { return among<Retired>(retiredThings, name); }

PersonEntitled Kind<PersonEntitled>::read(ObjectReader& reader) {
    PersonEntitled body;
    body.person = reader.name<PersonId>("person");
    body.capacity = reader.slug("capacity");
    body.licence = reader.saying("licence");
    body.until = reader.optionalDate("until");
    body.balloons = reader.optionalNames<Registration>("balloons").value_or(std::vector<Registration>{});
    body.organisation = reader.optionalText("organisation");
    body.approval = reader.optionalText("approval");
    body.lastReview = reader.optionalDate("last_review");
    return body;
}

void Kind<PersonEntitled>::write(json& into, const PersonEntitled& body) {
    into["person"] = body.person.text();
    into["capacity"] = body.capacity;
    into["licence"] = body.licence;
    writeDate(into, "until", body.until);
    if (!body.balloons.empty())
        into["balloons"] = namesOf(body.balloons);
    writeText(into, "organisation", body.organisation);
    writeText(into, "approval", body.approval);
    writeDate(into, "last_review", body.lastReview);
}

TesterCalibrated Kind<TesterCalibrated>::read(ObjectReader& reader) {
    TesterCalibrated body;
    body.tester = reader.name<TesterId>("tester");
    body.until = reader.date("until");
    body.what = reader.optionalText("what");
    body.certificate = reader.optionalText("certificate");
    body.measures = reader.optionalSlugs("measures");
    if (reader.has("unit"))
        body.unit = reader.saying("unit", longestUnit);
    body.from = reader.optionalNumber("from", -farthest, farthest);
    body.to = reader.optionalNumber("to", -farthest, farthest);
    body.station = reader.optionalText("station");
    return body;
}

void Kind<TesterCalibrated>::write(json& into, const TesterCalibrated& body) {
    into["tester"] = body.tester.text();
    into["until"] = body.until.iso();
    writeText(into, "what", body.what);
    writeText(into, "certificate", body.certificate);
    if (!body.measures.empty())
        into["measures"] = body.measures;
    writeText(into, "unit", body.unit);
    writeValue(into, "from", body.from);
    writeValue(into, "to", body.to);
    writeText(into, "station", body.station);
}

TypeDescribed Kind<TypeDescribed>::read(ObjectReader& reader) {
    TypeDescribed body;
    body.type = reader.name<TypeName>("type");
    body.kind = readKind(reader);
    body.manual = reader.saying("manual");
    body.revision = reader.saying("revision");
    body.gores = readSmallCount(reader, "gores");
    body.rows = readSmallCount(reader, "rows");
    body.confirmed = reader.optionalBool("confirmed");
    return body;
}

void Kind<TypeDescribed>::write(json& into, const TypeDescribed& body) {
    into["type"] = body.type.text();
    into["kind"] = itemKindName(body.kind);
    into["manual"] = body.manual;
    into["revision"] = body.revision;
    writeValue(into, "gores", body.gores);
    writeValue(into, "rows", body.rows);
    if (body.confirmed)
        into["confirmed"] = true;
}

LimitStated Kind<LimitStated>::read(ObjectReader& reader) {
    LimitStated body;
    body.type = reader.name<TypeName>("type");
    body.kind = readKind(reader);
    body.quantity = reader.slug("quantity");
    body.unit = reader.saying("unit", longestUnit);
    body.least = reader.optionalNumber("least", -farthest, farthest);
    body.most = reader.optionalNumber("most", -farthest, farthest);
    if (!reader.has("proof") && !reader.has("least") && !reader.has("most"))
        reader.refuse("least", EntryFault::LimitWithoutBound);
    if (body.least && body.most && *body.least > *body.most)
        reader.refuse("least", EntryFault::LeastAboveMost);
    body.proof = reader.optionalNumber("proof", -farthest, farthest);
    body.places = readSmallCount(reader, "places");
    body.zone = readZone(reader);
    body.conditions = readConditions(reader);
    if (reader.has("hold_s"))
        body.seconds = reader.optionalNumber("hold_s", 1, longestHold);
    body.passes = reader.optionalText("passes");
    body.source = reader.saying("source");
    if (reader.has("retires"))
        body.retires = reader.word("retires", retiredFrom, "panel, item");
    body.confirmed = reader.optionalBool("confirmed");
    return body;
}

void Kind<LimitStated>::write(json& into, const LimitStated& body) {
    into["type"] = body.type.text();
    into["kind"] = itemKindName(body.kind);
    into["quantity"] = body.quantity;
    into["unit"] = body.unit;
    writeValue(into, "least", body.least);
    writeValue(into, "most", body.most);
    writeValue(into, "proof", body.proof);
    writeValue(into, "places", body.places);
    if (body.zone)
        into["zone"] = zoneName(*body.zone);
    writeConditions(into, body.conditions);
    writeValue(into, "hold_s", body.seconds);
    writeText(into, "passes", body.passes);
    into["source"] = body.source;
    if (body.retires != Retired::Panel)
        into["retires"] = retiredName(body.retires);
    if (body.confirmed)
        into["confirmed"] = true;
}

ChecklistAdopted Kind<ChecklistAdopted>::read(ObjectReader& reader) {
    return {reader.name<ChecklistId>("checklist"), reader.objectText("document")};
}

void Kind<ChecklistAdopted>::write(json& into, const ChecklistAdopted& body) {
    into["checklist"] = body.checklist.text();
    into["document"] = json::parse(body.document);
}

TextAdopted Kind<TextAdopted>::read(ObjectReader& reader) {
    return {reader.name<TextId>("text"), reader.saying("revision"),     reader.optionalText("title"),
            reader.saying("body"),       reader.optionalText("source"), reader.saying("organisation")};
}

void Kind<TextAdopted>::write(nlohmann::json& into, const TextAdopted& body) {
    into["text"] = body.text.text();
    into["revision"] = body.revision;
    writeText(into, "title", body.title);
    into["body"] = body.body;
    writeText(into, "source", body.source);
    into["organisation"] = body.organisation;
}

TextConfirmed Kind<TextConfirmed>::read(ObjectReader& reader) {
    TextConfirmed body;
    readWhich(reader, body.text, body.checklist);
    body.revision = reader.saying("revision");
    body.digest = reader.text("digest");
    checkDigest(reader, "digest", body.digest);
    body.against = reader.saying("against");
    body.confirmedBy = reader.name<PersonId>("confirmed_by");
    body.capacity = reader.slug("capacity");
    body.licence = reader.optionalText("licence");
    return body;
}

void Kind<TextConfirmed>::write(nlohmann::json& into, const TextConfirmed& body) {
    writeName(into, "text", body.text);
    writeName(into, "checklist", body.checklist);
    into["revision"] = body.revision;
    into["digest"] = body.digest;
    into["against"] = body.against;
    into["confirmed_by"] = body.confirmedBy.text();
    into["capacity"] = body.capacity;
    writeText(into, "licence", body.licence);
}

}
