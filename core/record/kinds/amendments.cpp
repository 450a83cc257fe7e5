// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/amendments.h"

#include "record/json/object_reader.h"

namespace crownring {

using nlohmann::json;

EntryCorrected Kind<EntryCorrected>::read(ObjectReader& reader) {
    EntryCorrected body;
    body.replaces = reader.name<EntryId>("replaces");
    body.with = reader.objectText("with");
    if (!reader.good())
        return body;
    const auto patch = json::parse(body.with);
    if (patch.empty())
        reader.refuse(Code::BadValue, "with", "a correction that changes nothing", "name the keys to change");
    for (const auto* fixed : {"id", "entry", "replaces", "voids"})
        if (patch.contains(fixed))
            reader.refuse(Code::CannotAmend, std::string("with/") + fixed, "this key of an entry cannot change",
                          "void the entry and write a new one");
    return body;
}

void Kind<EntryCorrected>::write(json& into, const EntryCorrected& body) {
    into["replaces"] = body.replaces.text();
    into["with"] = json::parse(body.with);
}

EntryVoided Kind<EntryVoided>::read(ObjectReader& reader) {
    return {reader.name<EntryId>("voids"), reader.saying("reason")};
}

void Kind<EntryVoided>::write(json& into, const EntryVoided& body) {
    into["voids"] = body.voids.text();
    into["reason"] = body.reason;
}

}
