// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/not_asked.h"
#include "bench/release/release_phrase.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"
#include "sheets/wording_lines.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

using Json = nlohmann::ordered_json;

template <class Body>
Json saidJson(const Said<Body>& said, Json json) {
    json["entry"] = said.id.text();
    json["on"] = said.stamp.at.on().iso();
    json["by"] = said.by;
    json["corrected"] = said.first.has_value();
    return json;
}

template <class Value>
Json orNull(const std::optional<Value>& value) {
    return value ? Json(*value) : Json();
}

template <class AmountOf>
Json numberOrNull(const std::optional<AmountOf>& amount) {
    return amount ? Json(amount->value()) : Json();
}

/// On a basket.
Json placeOf(const PanelPlace& place) { return place.basket ? Json(basketPlaceName(*place.basket)) : Json(); }

Json readingJson(const BenchFile& file, const Said<ReadingTaken>& said, const Speech& in) {
    const auto& body = said.body;
    const auto state = stateOf(file, body);
    Json json = {{"item", body.item.text()}, {"quantity", body.quantity}};
    json[body.held ? "held_at" : "value"] = body.value;
    json["below"] = orNull(body.below);
    json["unit"] = body.unit;
    json["gore"] = orNull(body.place.gore);
    json["row"] = orNull(body.place.row);
    json["zone"] = zoneName(body.place.zone);
    json["place"] = placeOf(body.place);
    json["direction"] = orNull(body.conditions.direction);
    json["jaw_mm"] = numberOrNull(body.conditions.jaw);
    json["pressure_pa"] = numberOrNull(body.conditions.pressure);
    json["area_cm2"] = numberOrNull(body.conditions.area);
    json["hold_s"] = orNull(body.circumstances.seconds);
    json["dry"] = orNull(body.circumstances.dry);
    json["side"] = body.circumstances.side ? Json(sideName(*body.circumstances.side)) : Json();
    json["temp_c"] = numberOrNull(body.circumstances.temperature);
    json["tester"] = body.tester ? Json(body.tester->text()) : Json();
    json["judgement"] = judgementName(state.judgement);
    json["reason"] = state.reason ? in.say(*state.reason) : "";
    json["limit"] = state.limit ? in.say(*state.limit) : "";
    const auto printed = asTheManualStates(file, body);
    json["printed"] = {{"value", printed.value}, {"below", orNull(printed.below)}, {"unit", printed.unit}};
    return saidJson(said, std::move(json));
}

Json itemsJson(const BenchFile& file) {
    auto items = Json::array();
    for (const auto& item : file.items)
        items.push_back({{"item", item.id.text()},
                         {"kind", itemKindName(item.kind)},
                         {"type", orNull(item.type)},
                         {"serial", orNull(item.serial)},
                         {"minutes", item.clock.minutes ? Json(item.clock.minutes->value()) : Json()}});
    return items;
}

Json linesJson(const BenchFile& file) {
    auto lines = Json::array();
    const auto table = linesTable(file);
    for (const auto& row : table.rows) {
        Json line;
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            line[table.columns[i].title] = row[i];
        lines.push_back(std::move(line));
    }
    return lines;
}

Json incompleteJson(const Said<ReleaseIncomplete>& release) {
    const auto& body = release.body;
    auto outstanding = Json::array();
    for (const auto& each : body.outstanding)
        outstanding.push_back(
            {{"line", each.line}, {"item", each.item ? Json(each.item->text()) : Json()}, {"title", each.title}});
    return saidJson(release, {{"outstanding", std::move(outstanding)},
                              {"limitations", body.limitations},
                              {"until", body.within.until ? Json(body.within.until->iso()) : Json()},
                              {"minutes", body.within.minutes ? Json(body.within.minutes->value()) : Json()},
                              {"flights", body.within.flights ? Json(*body.within.flights) : Json()},
                              {"statement", body.statement},
                              {"signatory", body.signatory.text()},
                              {"capacity", body.capacity},
                              {"licence", body.licence},
                              {"manuals", body.manuals},
                              {"confirmed", confirmedJson(body.confirmed)},
                              {"seal", body.seal ? Json(body.seal->digest) : Json()},
                              {"proof", proofJson(body.proof)}});
}

Json spoken(const std::vector<Argument>& arguments, const Speech& in) {
    auto texts = Json::array();
    for (const auto& each : arguments)
        texts.push_back(in.say(each));
    return texts;
}

/// What the release says, section by section: as it was signed, while it is open as it would be.
Json releaseJson(const BenchFile& file, const ReleaseFacts& facts, const Speech& in) {
    const auto prescribed = statementOf(facts);
    const auto& closed = file.inspection.closed;
    auto sections = Json::array();
    for (const auto& section : sectionsOf(facts))
        sections.push_back({{"heading", in.say(section.heading)}, {"paragraphs", spoken(section.paragraphs, in)}});
    return {{"statement", closed ? closed->body.statement : prescribed.text},
            {"statement_source", prescribed.source},
            {"wording", wordingJson(statesOf(wordingAsked(file, signingOf(file))))},
            {"because", prescribed.because ? in.say(*prescribed.because) : ""},
            {"sections", std::move(sections)},
            {"work", spoken(workOf(facts), in)},
            {"deferred", spoken(facts.deferred, in)},
            {"not_covered", spoken(facts.excepted, in)},
            {"discrepancies", spoken(facts.discrepancies, in)},
            {"not_done", workText(file, workNotDone(file), in)},
            {"total_minutes", facts.totalTime ? Json(facts.totalTime->value()) : Json()},
            {"highest_temperature", facts.highestTemperature ? in.say(*facts.highestTemperature) : ""}};
}

Json labelsJson(const BenchFile& file, const Speech& in) {
    auto labels = Json::array();
    for (const auto& item : certifiedItems(file, signingOf(file).outcome)) {
        const auto label = labelOf(file, item, in);
        auto facts = Json::array();
        for (const auto& fact : label.facts)
            facts.push_back({{"label", fact.label}, {"value", fact.value}});
        labels.push_back({{"item", item.id.text()},
                          {"title", label.subtitle},
                          {"facts", std::move(facts)},
                          {"status", label.status},
                          {"released", !label.bars},
                          {"note", label.note}});
    }
    return labels;
}

Json testersJson(const BenchFile& file, const Speech& in) {
    auto testers = Json::array();
    for (const auto& row : testersTable(file, in).rows)
        testers.push_back(
            {{"tester", row.at(0)}, {"what", row.at(1)}, {"measures", row.at(2)}, {"calibrated_until", row.at(3)}});
    return testers;
}

Json correctionsJson(const BenchFile& file, const Speech& in) {
    auto corrections = Json::array();
    for (const auto& row : correctionsTable(file, in).rows)
        corrections.push_back(
            {{"entry", row.at(0)}, {"kind", row.at(1)}, {"key", row.at(2)}, {"first", row.at(3)}, {"now", row.at(4)}});
    return corrections;
}

/// Tests that nobody is asked for, since the record does not know the item's type.
Json notAskedJson(const BenchFile& file) {
    auto items = Json::array();
    for (const auto& [item, quantities] : notAsked(file))
        items.push_back({{"item", item.text()}, {"quantities", quantities}});
    return items;
}

/// What happened that it answers, and what that made due.
Json eventsJson(const BenchFile& file) {
    auto events = Json::array();
    for (const auto& each : file.events) {
        auto due = Json::array();
        for (const auto& work : each.madeDue)
            due.push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
        events.push_back({{"event", each.event.event},
                          {"on", each.event.stamp.at.on().iso()},
                          {"temp_c", numberOrNull(each.event.hottest)},
                          {"minutes", numberOrNull(each.event.lasted)},
                          {"made_due", std::move(due)}});
    }
    return events;
}

Json closedJson(const Said<InspectionClosed>& closed) {
    const auto& body = closed.body;
    return saidJson(closed, {{"outcome", outcomeName(body.outcome)},
                             {"statement", body.statement},
                             {"signatory", body.signatory ? Json(body.signatory->text()) : Json()},
                             {"capacity", body.capacity},
                             {"licence", body.licence},
                             {"manuals", body.manuals},
                             {"limitations", body.limitations},
                             {"confirmed", confirmedJson(body.confirmed)},
                             {"seal", body.seal ? Json(body.seal->digest) : Json()},
                             {"proof", proofJson(body.proof)}});
}

}

nlohmann::ordered_json proofJson(const std::optional<Proof>& proof) {
    return proof ? Json{{"key", proof->key}, {"signature", proof->signature}} : Json();
}

nlohmann::ordered_json inspectionJson(const BenchFile& file, const Speech& in) {
    const auto& inspection = file.inspection;
    const auto& opened = inspection.opened.body;
    Json json = {{"inspection", inspection.id.text()},
                 {"visit", opened.visit},
                 {"title", in.say(termOf(file.visit()))},
                 {"balloon", opened.balloon ? Json(opened.balloon->text()) : Json()},
                 {"opened", inspection.opened.stamp.at.on().iso()},
                 {"by", inspection.opened.by},
                 {"items", itemsJson(file)},
                 {"work", Json::array()},
                 {"not_asked", notAskedJson(file)},
                 {"lines", linesJson(file)},
                 {"readings", Json::array()},
                 {"defects", Json::array()},
                 {"repairs", Json::array()},
                 {"parts", Json::array()}};
    for (const auto& work : opened.work)
        json["work"].push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
    json["events"] = eventsJson(file);
    for (const auto& reading : inspection.readings)
        json["readings"].push_back(readingJson(file, reading, in));
    for (const auto& line : defectLines(file, in))
        json["defects"].push_back({{"defect", line.defect.text()},
                                   {"item", line.item},
                                   {"what", line.what},
                                   {"severity", severityName(line.severity)},
                                   {"state", line.state},
                                   {"open", line.open},
                                   {"voided", line.voided},
                                   {"bars_flight", line.bars},
                                   {"photographs", line.photographs},
                                   {"deferred", line.open && line.deferred},
                                   {"placard", line.placard},
                                   {"deferred_by", line.deferredBy}});
    for (const auto& repair : inspection.repairs)
        json["repairs"].push_back(saidJson(repair, {{"item", repair.body.item.text()},
                                                    {"method", repair.body.method},
                                                    {"gore", orNull(repair.body.place.gore)},
                                                    {"row", orNull(repair.body.place.row)},
                                                    {"zone", zoneName(repair.body.place.zone)},
                                                    {"place", placeOf(repair.body.place)},
                                                    {"width_mm", numberOrNull(repair.body.width)},
                                                    {"height_mm", numberOrNull(repair.body.height)},
                                                    {"lot", repair.body.lot}}));
    for (const auto& part : inspection.parts)
        json["parts"].push_back(saidJson(part, {{"item", part.body.item.text()},
                                                {"part", part.body.part},
                                                {"removed_serial", part.body.removedSerial},
                                                {"fitted_serial", part.body.fittedSerial},
                                                {"release_document", part.body.releaseDocument}}));
    json["performed"] = Json::array();
    for (const auto& work : inspection.performed)
        json["performed"].push_back(
            saidJson(work, {{"item", work.body.item.text()},
                            {"what", work.body.what},
                            {"data", work.body.data},
                            {"grade", work.body.grade ? Json(gradeName(*work.body.grade)) : Json()},
                            {"approval", work.body.approval},
                            {"performed_by", work.body.performed ? Json(work.body.performed->text()) : Json()},
                            {"line", work.body.line}}));
    json["order"] = opened.order;
    json["owner"] = file.owner;
    json["operator"] = file.operatedBy;
    json["incomplete"] = inspection.incomplete ? incompleteJson(*inspection.incomplete) : Json();
    json["closed"] = inspection.closed ? closedJson(*inspection.closed) : Json();
    json["excepted"] = Json::array();
    for (const auto& each : file.excepted)
        json["excepted"].push_back({{"item", each.item.text()},
                                    {"requirement", each.requirement.text()},
                                    {"standing", standingText(each.standing)}});
    json["revoked"] = inspection.revoked
                          ? saidJson(*inspection.revoked, {{"reason", inspection.revoked->body.reason},
                                                           {"proof", proofJson(inspection.revoked->body.proof)}})
                          : Json();
    json["pending"] = inspection.isPending();
    json["approved"] =
        inspection.approved
            ? saidJson(*inspection.approved, {{"signatory", inspection.approved->body.signatory.text()},
                                              {"capacity", inspection.approved->body.capacity},
                                              {"licence", inspection.approved->body.licence},
                                              {"statement", inspection.approved->body.statement},
                                              {"confirmed", confirmedJson(inspection.approved->body.confirmed)},
                                              {"proof", proofJson(inspection.approved->body.proof)}})
            : Json();
    json["supported"] = inspection.closed ? Json(file.unsupported.empty()) : Json();
    json["unsupported"] = Json::array();
    for (const auto& each : file.unsupported)
        json["unsupported"].push_back(in.say(messageOf(each)));
    json["release"] = releaseJson(file, factsOf(file), in);
    json["labels"] = labelsJson(file, in);
    json["testers"] = testersJson(file, in);
    json["corrections"] = correctionsJson(file, in);
    json["papers"] = Json::array();
    for (const auto kind : sheetsOf(file))
        json["papers"].push_back(sheetName(kind));
    json["caution"] = in.say(ReleasePhrase::CautionText);
    return json;
}

}
