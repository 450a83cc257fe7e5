// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/schema_words.h"

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

template <class Values>
std::string listed(const Values& values) {
    std::string text;
    for (const auto& value : values)
        text += (text.empty() ? "" : ", ") + value;
    return text;
}

std::string keysOf(const json& properties) {
    std::vector<std::string> keys;
    for (const auto& property : properties.items())
        keys.push_back(property.key());
    return "one of the keys " + listed(keys);
}

std::string inWords(const json& node) {
    if (const auto values = node.find("enum"); values != node.end())
        return "one of " + listed(values->get<std::vector<std::string>>());
    const auto type = node.value("type", "");
    if (type == "integer")
        return "a whole number from " + node.value("minimum", json(0)).dump() + " to " +
               node.value("maximum", json(0)).dump();
    if (type == "string" && node.contains("pattern"))
        return "text like " + node.at("pattern").get<std::string>();
    if (type == "string")
        return "a text of 1 to " + node.value("maxLength", json(1000)).dump() + " characters";
    if (type == "boolean")
        return "true or false";
    if (type == "array")
        return "a list, " + std::string(node.value("minItems", 0) > 0 ? "not empty, " : "") + "nothing in it twice";
    if (node.contains("properties"))
        return keysOf(node.at("properties"));
    return {};
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

std::string allowedAt(const json& schema, const DocumentPath& path) {
    const auto* node = &schema;
    for (const auto& key : path) {
        node = resolved(schema, child(*node, key));
        if (!node)
            return {};
    }
    return inWords(*node);
}

}
