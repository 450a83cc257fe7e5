// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/bench_writer.h"

namespace crownring {

namespace {

using nlohmann::json;

template <class What>
void writeName(json& into, const char* key, const std::optional<Name<What>>& name) {
    if (name)
        into[key] = name->text();
}

template <class Number>
void writeNumber(json& into, const char* key, const std::optional<Number>& number) {
    if (number)
        into[key] = *number;
}

void writeDate(json& into, const char* key, const std::optional<CivilDate>& date) {
    if (date)
        into[key] = date->iso();
}

void writePlace(json& into, const PanelPlace& place) {
    writeNumber(into, "gore", place.gore);
    writeNumber(into, "row", place.row);
}

void writeConditions(json& into, const TestConditions& conditions) {
    writeNumber(into, "direction", conditions.direction);
    writeNumber(into, "jaw_mm", conditions.jawMillimetres);
    writeNumber(into, "pressure_pa", conditions.pressurePascals);
    writeNumber(into, "area_cm2", conditions.areaSquareCentimetres);
}

}

void writeBody(json& into, const ReadingTaken& body) {
    into["item"] = body.item.text();
    into["quantity"] = body.quantity;
    into[body.held ? "held_at" : "value"] = body.value;
    writeNumber(into, "below", body.below);
    into["unit"] = body.unit;
    writePlace(into, body.place);
    writeConditions(into, body.conditions);
    writeText(into, "method", body.method);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
    writeName(into, "tester", body.tester);
    if (body.confirmed)
        into["confirmed"] = true;
}

void writeBody(json& into, const InspectionOpened& body) {
    into["inspection"] = body.inspection.text();
    into["visit"] = body.visit;
    into["items"] = namesOf(body.items);
    writeName(into, "balloon", body.balloon);
    for (const auto& work : body.work)
        into["work"].push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
    if (!body.checklist.empty())
        into["checklist"] = json::parse(body.checklist);
}

void writeBody(json& into, const LineSettled& body) {
    into["inspection"] = body.inspection.text();
    into["line"] = body.line;
    writeName(into, "item", body.item);
    into["state"] = lineStateName(body.state);
    writeText(into, "finding", body.finding);
    writeName(into, "tester", body.tester);
    if (!body.photographs.empty())
        into["photographs"] = body.photographs;
}

void writeBody(json& into, const DefectFound& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    into["what"] = body.what;
    into["severity"] = severityName(body.severity);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
    writeName(into, "reading", body.reading);
    writePlace(into, body.place);
}

void writeBody(json& into, const DefectDeferred& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    into["reason"] = body.reason;
    writeDate(into, "until", body.until);
    if (body.untilMinutes)
        into["until_minutes"] = body.untilMinutes->value();
    into["agreed_by"] = body.agreedBy.text();
    writeName(into, "inspection", body.inspection);
}

void writeBody(json& into, const DefectCleared& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    into["what"] = body.what;
    writeText(into, "ref", body.ref);
    writeName(into, "inspection", body.inspection);
}

void writeBody(json& into, const RepairMade& body) {
    into["item"] = body.item.text();
    into["method"] = body.method;
    writePlace(into, body.place);
    writeNumber(into, "width_mm", body.widthMillimetres);
    writeNumber(into, "height_mm", body.heightMillimetres);
    writeText(into, "lot", body.lot);
    writeName(into, "defect", body.defect);
    writeName(into, "inspection", body.inspection);
}

void writeBody(json& into, const PartReplaced& body) {
    into["item"] = body.item.text();
    into["part"] = body.part;
    writeText(into, "removed_serial", body.removedSerial);
    writeText(into, "fitted_serial", body.fittedSerial);
    into["release_document"] = body.releaseDocument;
    writeName(into, "defect", body.defect);
    writeName(into, "inspection", body.inspection);
}

void writeBody(json& into, const InspectionClosed& body) {
    into["inspection"] = body.inspection.text();
    into["outcome"] = outcomeName(body.outcome);
    writeText(into, "statement", body.statement);
    writeName(into, "signatory", body.signatory);
    writeText(into, "capacity", body.capacity);
    writeText(into, "licence", body.licence);
    if (!body.manuals.empty())
        into["manuals"] = body.manuals;
    writeText(into, "limitations", body.limitations);
    for (const auto& each : body.clocks) {
        json clock = {{"item", each.item.text()}};
        const auto write = [&](const char* key, const auto& figure) {
            if (figure)
                clock[key] = figure->value();
        };
        write("minutes", each.clock.minutes);
        write("landings", each.clock.landings);
        write("inflations", each.clock.inflations);
        into["clocks"].push_back(std::move(clock));
    }
    if (body.seal) {
        auto& seal = into["seal"] = json::object();
        seal["entries"] = namesOf(body.seal->entries);
        seal["digest"] = body.seal->digest;
    }
}

void writeBody(json& into, const PersonEntitled& body) {
    into["person"] = body.person.text();
    into["capacity"] = body.capacity;
    into["licence"] = body.licence;
    writeDate(into, "until", body.until);
    if (!body.balloons.empty())
        into["balloons"] = namesOf(body.balloons);
}

void writeBody(json& into, const TesterCalibrated& body) {
    into["tester"] = body.tester.text();
    into["until"] = body.until.iso();
    writeText(into, "what", body.what);
    writeText(into, "certificate", body.certificate);
}

void writeBody(json& into, const TypeDescribed& body) {
    into["type"] = body.type.text();
    into["kind"] = itemKindName(body.kind);
    into["manual"] = body.manual;
    into["revision"] = body.revision;
    writeNumber(into, "gores", body.gores);
    writeNumber(into, "rows", body.rows);
}

void writeBody(json& into, const LimitStated& body) {
    into["type"] = body.type.text();
    into["kind"] = itemKindName(body.kind);
    into["quantity"] = body.quantity;
    into["unit"] = body.unit;
    writeNumber(into, "least", body.least);
    writeNumber(into, "most", body.most);
    writeNumber(into, "proof", body.proof);
    writeNumber(into, "places", body.places);
    writeConditions(into, body.conditions);
    writeText(into, "passes", body.passes);
    into["source"] = body.source;
    if (body.retires != Retired::Panel)
        into["retires"] = retiredName(body.retires);
}

void writeBody(json& into, const FabricStated& body) {
    into["item"] = body.item.text();
    into["lot"] = body.lot;
    writeText(into, "fabric", body.fabric);
    writeNumber(into, "first_gore", body.firstGore);
    writeNumber(into, "last_gore", body.lastGore);
    writeNumber(into, "first_row", body.firstRow);
    writeNumber(into, "last_row", body.lastRow);
}

void writeBody(json& into, const ChecklistAdopted& body) {
    into["checklist"] = body.checklist.text();
    into["document"] = json::parse(body.document);
}

}
