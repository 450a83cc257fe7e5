// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/readings.h"

#include "problem/faults/entry_fault.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

ReadingTaken Kind<ReadingTaken>::read(ObjectReader& reader) {
    ReadingTaken body;
    body.item = reader.name<ItemId>("item");
    body.quantity = reader.slug("quantity");
    const auto value = reader.optionalNumber("value", -farthest, farthest);
    const auto held = reader.optionalNumber("held_at", -farthest, farthest);
    if (value.has_value() == held.has_value())
        reader.refuse("value", EntryFault::NeitherReadNorHeld);
    body.value = value.value_or(held.value_or(0));
    body.held = held.has_value();
    body.below = reader.optionalNumber("below", -farthest, farthest);
    if (body.below && (body.held || *body.below <= body.value))
        reader.refuse("below", EntryFault::StepNotAbove);
    body.unit = reader.saying("unit", longestUnit);
    body.place = readPlace(reader);
    body.conditions = readConditions(reader);
    body.circumstances = readCircumstances(reader);
    body.method = reader.optionalText("method");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    body.tester = reader.optionalName<TesterId>("tester");
    body.confirmed = reader.optionalBool("confirmed");
    return body;
}

void Kind<ReadingTaken>::write(nlohmann::json& into, const ReadingTaken& body) {
    into["item"] = body.item.text();
    into["quantity"] = body.quantity;
    into[body.held ? "held_at" : "value"] = body.value;
    writeValue(into, "below", body.below);
    into["unit"] = body.unit;
    writePlace(into, body.place);
    writeConditions(into, body.conditions);
    writeCircumstances(into, body.circumstances);
    writeText(into, "method", body.method);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
    writeName(into, "tester", body.tester);
    if (body.confirmed)
        into["confirmed"] = true;
}

}
