// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/confirmed_text.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

void readWhich(ObjectReader& reader, std::optional<TextId>& text, std::optional<ChecklistId>& checklist) {
    text = reader.optionalName<TextId>("text");
    checklist = reader.optionalName<ChecklistId>("checklist");
    if (text.has_value() == checklist.has_value())
        reader.refuse("text", EntryFault::TextOrChecklist);
}

std::vector<ConfirmedText> readConfirmed(ObjectReader& reader) {
    std::vector<ConfirmedText> confirmed;
    reader.objects("confirmed", [&](ObjectReader& inner) {
        ConfirmedText each;
        readWhich(inner, each.text, each.checklist);
        each.revision = inner.saying("revision");
        each.digest = inner.text("digest");
        checkDigest(inner, "digest", each.digest);
        each.by = inner.name<PersonId>("by");
        each.licence = inner.optionalText("licence");
        each.on = inner.date("on");
        each.against = inner.saying("against");
        confirmed.push_back(std::move(each));
    });
    return confirmed;
}

void writeConfirmed(nlohmann::json& into, const std::vector<ConfirmedText>& confirmed) {
    for (const auto& each : confirmed) {
        nlohmann::json object = {{"revision", each.revision},
                                 {"digest", each.digest},
                                 {"by", each.by.text()},
                                 {"on", each.on.iso()},
                                 {"against", each.against}};
        writeName(object, "text", each.text);
        writeName(object, "checklist", each.checklist);
        writeText(object, "licence", each.licence);
        into["confirmed"].push_back(std::move(object));
    }
}

}
