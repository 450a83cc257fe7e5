// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/allowed.h"

namespace crownring {

namespace {

using nlohmann::json;

/// Follows references to the definitions of the same document; of alternatives the first is shown.
const json* resolved(const json& schema, const json* node) {
    while (node) {
        if (const auto reference = node->find("$ref"); reference != node->end())
            node = &schema.at(json::json_pointer(reference->get<std::string>().substr(1)));
        else if (const auto all = node->find("allOf"); all != node->end() && !node->contains("type"))
            node = &all->front();
        else if (const auto one = node->find("oneOf"); one != node->end() && !node->contains("type"))
            node = &one->front();
        else
            break;
    }
    return node;
}

const json* child(const json& node, const std::string& key) {
    if (const auto properties = node.find("properties"); properties != node.end() && properties->contains(key))
        return &properties->at(key);
    for (const auto* rest : {"items", "additionalProperties"})
        if (const auto found = node.find(rest); found != node.end() && found->is_object())
            return &*found;
    return nullptr;
}

Phrase keysOf(const json& properties) {
    Listed keys;
    for (const auto& property : properties.items())
        keys.list.emplace_back(property.key());
    return {SchemaPhrase::OneOfTheKeys, {std::move(keys)}};
}

std::optional<Phrase> phraseOf(const json& node) {
    if (const auto values = node.find("enum"); values != node.end())
        return Phrase{SchemaPhrase::OneOf, {listed(values->get<std::vector<std::string>>())}};
    const auto type = node.value("type", "");
    if (type == "integer")
        return Phrase{SchemaPhrase::WholeNumber,
                      {node.value("minimum", std::int64_t{0}), node.value("maximum", std::int64_t{0})}};
    if (type == "string" && node.contains("pattern"))
        return Phrase{SchemaPhrase::TextLike, {node.at("pattern").get<std::string>()}};
    if (type == "string")
        return Phrase{SchemaPhrase::TextOfLength, {node.value("maxLength", std::int64_t{1000})}};
    if (type == "boolean")
        return Phrase{SchemaPhrase::TrueOrFalse, {}};
    if (type == "array")
        return Phrase{node.value("minItems", 0) > 0 ? SchemaPhrase::ListNotEmpty : SchemaPhrase::List, {}};
    if (node.contains("properties"))
        return keysOf(node.at("properties"));
    return std::nullopt;
}

}

std::string jsonPointer(const DocumentPath& path) {
    std::string pointer;
    for (const auto& key : path) {
        pointer += '/';
        for (const char c : key)
            pointer += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
    }
    return pointer;
}

std::optional<Phrase> allowedAt(const json& schema, const DocumentPath& path) {
    const auto* node = &schema;
    for (const auto& key : path) {
        node = resolved(schema, child(*node, key));
        if (!node)
            return std::nullopt;
    }
    return phraseOf(*node);
}

}
