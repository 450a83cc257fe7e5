// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/bench_reader.h"

#include "record/chain.h"

namespace crownring {

namespace {

constexpr double farthest = 1e12;
constexpr std::size_t longestUnit = 40;

std::optional<int> smallCount(ObjectReader& reader, std::string_view key) {
    const auto number = reader.optionalCount(key, 1, 1000);
    return number ? std::optional<int>(static_cast<int>(*number)) : std::nullopt;
}

/// A length, a pressure or an area: more than nothing.
std::optional<double> amount(ObjectReader& reader, std::string_view key) {
    constexpr double least = 1e-6;
    constexpr double most = 1e6;
    return reader.optionalNumber(key, least, most);
}

PanelPlace readPlace(ObjectReader& reader) { return {smallCount(reader, "gore"), smallCount(reader, "row")}; }

TestConditions readConditions(ObjectReader& reader) {
    TestConditions conditions;
    if (reader.has("direction")) {
        conditions.direction = reader.text("direction");
        if (*conditions.direction != "warp" && *conditions.direction != "weft")
            reader.refuse(Code::BadValue, "direction", "no direction of a fabric", "one of warp, weft");
    }
    conditions.jawMillimetres = amount(reader, "jaw_mm");
    conditions.pressurePascals = amount(reader, "pressure_pa");
    conditions.areaSquareCentimetres = amount(reader, "area_cm2");
    return conditions;
}

void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest) {
    if (!digestFromHex(digest))
        reader.refuse(Code::BadValue, key, "not a SHA-256 digest", "64 hexadecimal digits in lower case");
}

Severity readSeverity(ObjectReader& reader) { return reader.word("severity", severityFrom, "barring, minor"); }

ItemKind readKind(ObjectReader& reader) {
    return reader.word("kind", itemKindFrom, "envelope, basket, burner, cylinder, hose, instrument, other");
}

/// Either may be left out, not both.
void checkEither(ObjectReader& reader, std::string_view one, std::string_view other, const char* what) {
    if (!reader.has(one) && !reader.has(other))
        reader.refuse(Code::MissingKey, one, std::string("neither ") + std::string(one) + " nor " + std::string(other),
                      what);
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

Seal readSeal(ObjectReader& reader) {
    Seal seal;
    if (auto entries = reader.optionalNames<EntryId>("entries"))
        seal.entries = std::move(*entries);
    else
        reader.refuse(Code::MissingKey, "entries", "a seal over nothing", "name what the signature covers");
    seal.digest = reader.text("digest");
    checkDigest(reader, "digest", seal.digest);
    return seal;
}

}

ReadingTaken readReading(ObjectReader& reader) {
    ReadingTaken body;
    body.item = reader.name<ItemId>("item");
    body.quantity = reader.slug("quantity");
    const auto value = reader.optionalNumber("value", -farthest, farthest);
    const auto held = reader.optionalNumber("held_at", -farthest, farthest);
    if (value.has_value() == held.has_value())
        reader.refuse(Code::MissingKey, "value", "a reading has either a value or a load that was held",
                      "give one of value and held_at");
    body.value = value.value_or(held.value_or(0));
    body.held = held.has_value();
    body.below = reader.optionalNumber("below", -farthest, farthest);
    if (body.below && (body.held || *body.below <= body.value))
        reader.refuse(Code::BadValue, "below", "not above the value that it goes with",
                      "a stepped indicator shows at least value and below the next step");
    body.unit = reader.saying("unit", longestUnit);
    body.place = readPlace(reader);
    body.conditions = readConditions(reader);
    body.method = reader.optionalText("method");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    body.tester = reader.optionalName<TesterId>("tester");
    body.confirmed = reader.optionalBool("confirmed");
    return body;
}

InspectionOpened readInspectionOpened(ObjectReader& reader) {
    InspectionOpened body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.visit = reader.slug("visit");
    if (auto items = reader.optionalNames<ItemId>("items"))
        body.items = std::move(*items);
    else
        reader.refuse(Code::MissingKey, "items", "what is inspected is not said", "name at least one item");
    body.balloon = reader.optionalName<Registration>("balloon");
    reader.objects("work", [&](ObjectReader& inner) {
        body.work.push_back({inner.name<ItemId>("item"), inner.name<RequirementId>("requirement")});
    });
    body.checklist = reader.optionalObjectText("checklist");
    return body;
}

LineSettled readLineSettled(ObjectReader& reader) {
    LineSettled body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.line = reader.saying("line");
    body.item = reader.optionalName<ItemId>("item");
    body.state = reader.word("state", lineStateFrom, "open, done, not-applicable");
    body.finding = reader.optionalText("finding");
    body.tester = reader.optionalName<TesterId>("tester");
    body.photographs = reader.optionalTexts("photographs");
    for (const auto& digest : body.photographs)
        checkDigest(reader, "photographs", digest);
    return body;
}

DefectFound readDefectFound(ObjectReader& reader) {
    DefectFound body;
    body.defect = reader.name<DefectId>("defect");
    body.item = reader.name<ItemId>("item");
    body.what = reader.saying("what");
    body.severity = readSeverity(reader);
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    body.reading = reader.optionalName<EntryId>("reading");
    body.place = readPlace(reader);
    return body;
}

DefectDeferred readDefectDeferred(ObjectReader& reader) {
    DefectDeferred body;
    body.defect = reader.name<DefectId>("defect");
    body.item = reader.name<ItemId>("item");
    body.reason = reader.saying("reason");
    body.until = reader.optionalDate("until");
    if (const auto minutes = reader.optionalCount("until_minutes", 0, largestCount))
        body.untilMinutes = Minutes(*minutes);
    checkEither(reader, "until", "until_minutes",
                "a deferral ends: give a date, a figure of the item's clock, or both");
    body.agreedBy = reader.name<PersonId>("agreed_by");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    return body;
}

DefectCleared readDefectCleared(ObjectReader& reader) {
    return {reader.name<DefectId>("defect"), reader.name<ItemId>("item"), reader.saying("what"),
            reader.optionalText("ref"), reader.optionalName<InspectionId>("inspection")};
}

RepairMade readRepairMade(ObjectReader& reader) {
    RepairMade body;
    body.item = reader.name<ItemId>("item");
    body.method = reader.saying("method");
    body.place = readPlace(reader);
    body.widthMillimetres = amount(reader, "width_mm");
    body.heightMillimetres = amount(reader, "height_mm");
    body.lot = reader.optionalText("lot");
    body.defect = reader.optionalName<DefectId>("defect");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    return body;
}

PartReplaced readPartReplaced(ObjectReader& reader) {
    PartReplaced body;
    body.item = reader.name<ItemId>("item");
    body.part = reader.saying("part");
    body.removedSerial = reader.optionalText("removed_serial");
    body.fittedSerial = reader.optionalText("fitted_serial");
    body.releaseDocument = reader.saying("release_document");
    body.defect = reader.optionalName<DefectId>("defect");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    return body;
}

InspectionClosed readInspectionClosed(ObjectReader& reader) {
    InspectionClosed body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.outcome = reader.word("outcome", outcomeFrom, "released, discrepancies, abandoned");
    body.statement = reader.optionalText("statement");
    body.signatory = reader.optionalName<PersonId>("signatory");
    body.capacity = reader.optionalSlug("capacity");
    body.licence = reader.optionalText("licence");
    body.manuals = reader.optionalTexts("manuals");
    body.limitations = reader.optionalText("limitations");
    reader.objects("clocks", [&](ObjectReader& inner) { body.clocks.push_back(readSignedClock(inner)); });
    reader.object("seal", [&](ObjectReader& inner) { body.seal = readSeal(inner); });
    if (body.outcome != Outcome::Abandoned && !body.signatory)
        reader.refuse(Code::MissingKey, "signatory", "who signs is not said", "name the person who signs");
    return body;
}

PersonEntitled readPersonEntitled(ObjectReader& reader) {
    PersonEntitled body;
    body.person = reader.name<PersonId>("person");
    body.capacity = reader.slug("capacity");
    body.licence = reader.saying("licence");
    body.until = reader.optionalDate("until");
    body.balloons = reader.optionalNames<Registration>("balloons").value_or(std::vector<Registration>{});
    return body;
}

TesterCalibrated readTesterCalibrated(ObjectReader& reader) {
    return {reader.name<TesterId>("tester"), reader.date("until"), reader.optionalText("what"),
            reader.optionalText("certificate")};
}

TypeDescribed readTypeDescribed(ObjectReader& reader) {
    TypeDescribed body;
    body.type = reader.name<TypeName>("type");
    body.kind = readKind(reader);
    body.manual = reader.saying("manual");
    body.revision = reader.saying("revision");
    body.gores = smallCount(reader, "gores");
    body.rows = smallCount(reader, "rows");
    return body;
}

LimitStated readLimitStated(ObjectReader& reader) {
    LimitStated body;
    body.type = reader.name<TypeName>("type");
    body.kind = readKind(reader);
    body.quantity = reader.slug("quantity");
    body.unit = reader.saying("unit", longestUnit);
    body.least = reader.optionalNumber("least", -farthest, farthest);
    body.most = reader.optionalNumber("most", -farthest, farthest);
    if (!reader.has("proof"))
        checkEither(reader, "least", "most", "a limit bounds a reading: give the least, the most, or a proof load");
    if (body.least && body.most && *body.least > *body.most)
        reader.refuse(Code::BadValue, "least", "more than the most", "exchange the two");
    body.proof = reader.optionalNumber("proof", -farthest, farthest);
    body.places = smallCount(reader, "places");
    body.conditions = readConditions(reader);
    body.passes = reader.optionalText("passes");
    body.source = reader.saying("source");
    if (reader.has("retires"))
        body.retires = reader.word("retires", retiredFrom, "panel, item");
    return body;
}

FabricStated readFabricStated(ObjectReader& reader) {
    FabricStated body;
    body.item = reader.name<ItemId>("item");
    body.lot = reader.saying("lot");
    body.fabric = reader.optionalText("fabric");
    const auto span = [&](std::string_view first, std::string_view last, std::optional<int>& from,
                          std::optional<int>& to) {
        from = smallCount(reader, first);
        to = smallCount(reader, last);
        if (from && to && *from > *to)
            reader.refuse(Code::BadValue, first, "after the last", "exchange the two");
    };
    span("first_gore", "last_gore", body.firstGore, body.lastGore);
    span("first_row", "last_row", body.firstRow, body.lastRow);
    return body;
}

ChecklistAdopted readChecklistAdopted(ObjectReader& reader) {
    return {reader.name<ChecklistId>("checklist"), reader.objectText("document")};
}

}
