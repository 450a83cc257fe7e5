// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/body.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"

#include <functional>
#include <utility>

namespace crownring {

namespace {

/// Calls `tell` with each name of a member, whether that is one, may be one, or is a list.
template <class Tag, class Tell>
void eachName(const Name<Tag>& name, const Tell& tell) {
    tell(Named{subjectOf(name), name.text()});
}
template <class Tag, class Tell>
void eachName(const std::vector<Name<Tag>>& names, const Tell& tell) {
    for (const auto& name : names)
        eachName(name, tell);
}
template <class Names, class Tell>
void eachName(const Names* names, const Tell& tell) {
    if (names)
        eachName(*names, tell);
}
template <class Names, class Tell>
void eachName(const std::optional<Names>& names, const Tell& tell) {
    if (names)
        eachName(*names, tell);
}

}

const std::vector<std::string_view>& kindNames() {
    static const auto names = ofEachKind([]<class Said>() { return Kind<Said>::name; });
    return names;
}

std::string_view kindName(const Body& body) { return kindNames()[body.index()]; }

TimeOfDay defaultTime(const Body& body) {
    return std::visit([]<class Said>(const Said&) { return Kind<Said>::time; }, body);
}

std::vector<Mention> mentions(const Body& body) {
    std::vector<Mention> all;
    std::visit(
        [&]<class Said>(const Said& said) {
            const auto ofKey = [&](const auto& key) {
                eachName(std::invoke(key.names, said), [&](Named named) {
                    all.push_back({std::move(named), key.key});
                });
            };
            std::apply([&](const auto&... keys) { (ofKey(keys), ...); }, Kind<Said>::mentions);
        },
        body);
    return all;
}

std::optional<Named> broughtBy(const Body& body) {
    std::optional<Named> brought;
    std::visit(
        [&]<class Said>(const Said& said) {
            if constexpr (!std::same_as<decltype(Kind<Said>::brings), const Nothing>)
                eachName(std::invoke(Kind<Said>::brings, said), [&](Named named) { brought = std::move(named); });
        },
        body);
    return brought;
}

std::vector<Named> toldUnder(const Body& body) {
    std::vector<Named> all;
    std::visit(
        [&]<class Said>(const Said& said) {
            const auto ofMember = [&](const auto& member) {
                eachName(std::invoke(member, said), [&](Named named) { all.push_back(std::move(named)); });
            };
            std::apply([&](const auto&... members) { (ofMember(members), ...); }, Kind<Said>::toldUnder);
        },
        body);
    return all;
}

std::optional<InspectionId> inspectionOf(const Body& body) {
    return std::visit(
        []<class Said>(const Said& said) -> std::optional<InspectionId> {
            if constexpr (OfInspection<Said>)
                return std::invoke(Kind<Said>::inspection, said);
            else
                return std::nullopt;
        },
        body);
}

Body readBody(ObjectReader& reader, std::string_view kind) {
    using Read = Body (*)(ObjectReader&);
    static const auto readers = ofEachKind(
        []<class Said>() -> Read { return [](ObjectReader& each) -> Body { return Kind<Said>::read(each); }; });
    const auto& names = kindNames();
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i] == kind)
            return readers[i](reader);
    reader.refuse("entry", EntryFault::UnknownKind, {kind});
    return {};
}

void writeBody(nlohmann::json& into, const Body& body) {
    std::visit([&]<class Said>(const Said& said) { Kind<Said>::write(into, said); }, body);
}

}
