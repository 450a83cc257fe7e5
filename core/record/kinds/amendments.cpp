// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/amendments.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"

namespace crownring {

namespace {

constexpr Words<voidReasonCount> voidReasons = {"undone", "taken-back", "reading-taken-back"};

}

std::string_view voidReasonName(VoidReason reason) { return voidReasons[static_cast<std::size_t>(reason)]; }
std::optional<VoidReason> voidReasonFrom(std::string_view name) { return among<VoidReason>(voidReasons, name); }

using nlohmann::json;

std::optional<std::string> textUnder(const EntryCorrected& correction, std::string_view key) {
    const auto with = nlohmann::json::parse(correction.with, nullptr, false);
    const auto found = with.is_object() ? with.find(key) : with.end();
    return found == with.end() || !found->is_string() ? std::nullopt : std::optional(found->get<std::string>());
}

EntryCorrected Kind<EntryCorrected>::read(ObjectReader& reader) {
    EntryCorrected body;
    body.replaces = reader.name<EntryId>("replaces");
    body.with = reader.objectText("with");
    if (!reader.good())
        return body;
    const auto patch = json::parse(body.with);
    if (patch.empty())
        reader.refuse("with", EntryFault::ChangesNothing);
    for (const auto* fixed : {"id", "entry", "replaces", "voids"})
        if (patch.contains(fixed))
            reader.refuse(std::string("with/") + fixed, EntryFault::KeyIsFixed);
    return body;
}

void Kind<EntryCorrected>::write(json& into, const EntryCorrected& body) {
    into["replaces"] = body.replaces.text();
    into["with"] = json::parse(body.with);
}

EntryVoided Kind<EntryVoided>::read(ObjectReader& reader) {
    return {reader.name<EntryId>("voids"), reader.saying("reason"), readProof(reader)};
}

void Kind<EntryVoided>::write(json& into, const EntryVoided& body) {
    into["voids"] = body.voids.text();
    into["reason"] = body.reason;
    writeProof(into, body.proof);
}

}
