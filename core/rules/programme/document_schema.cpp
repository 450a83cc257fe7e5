// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/document_schema.h"

#include "rules/programme/allowed.h"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

namespace crownring {

struct DocumentSchema::Compiled {
    explicit Compiled(std::string_view text) : document(nlohmann::json::parse(text)) {
        valijson::SchemaParser(valijson::SchemaParser::kDraft7)
            .populateSchema(valijson::adapters::NlohmannJsonAdapter(document), schema);
    }
    nlohmann::json document;
    valijson::Schema schema;
};

namespace {

using nlohmann::json;

/// A programme nests to "/requirements/0/exempt_until/limits/0/every"; more is refused before anything walks it.
constexpr int deepest = 16;

/// "<root>", "[requirements]", "[0]" → requirements, 0.
DocumentPath pathOf(const std::vector<std::string>& context) {
    DocumentPath path;
    for (std::size_t i = 1; i < context.size(); ++i)
        path.push_back(context[i].substr(1, context[i].size() - 2));
    return path;
}

/// The key that a description ends with: "Missing required property 'every'."
std::string namedAfter(const std::string& description, std::string_view words) {
    const auto from = description.find(words) + words.size();
    return description.substr(from, description.rfind('\'') - from);
}

struct Asked {
    const json& schema;
    const std::string& kind;
    const DocumentFaults& faults;

    [[nodiscard]] Problem at(const DocumentPath& path, const Fault& fault, const DocumentPath& allowed) const {
        auto may = allowedAt(schema, allowed);
        return Problem{fault,
                       {may ? *std::move(may) : Phrase{SchemaPhrase::WhatTheSchemaStates, {kind + ".schema.json"}}},
                       atKey(jsonPointer(path))};
    }
};

/// The path is that of the key itself, also where it is missing or has no business there.
Problem problemOf(const valijson::ValidationResults::Error& error, const Asked& asked) {
    constexpr std::string_view missing = "Missing required property '";
    constexpr std::string_view unwanted = "'additionalProperties' constraints: '";
    const auto place = pathOf(error.context);
    auto path = place;
    if (error.description.find(missing) != std::string::npos) {
        path.push_back(namedAfter(error.description, missing));
        return asked.at(path, asked.faults.keyMissing, path);
    }
    if (error.description.find(unwanted) != std::string::npos) {
        path.push_back(namedAfter(error.description, unwanted));
        return asked.at(path, asked.faults.keyNotAllowed, place);
    }
    return asked.at(place, asked.faults.valueNotAllowed, place);
}

/// The innermost of what the validator found; it names outer places after inner ones.
Problem innermost(const valijson::ValidationResults& results, const Asked& asked) {
    const auto deeper = [](const auto& a, const auto& b) { return a.context.size() < b.context.size(); };
    const auto found = std::max_element(results.begin(), results.end(), deeper);
    return found == results.end() ? Problem{asked.faults.notOfThisKind} : problemOf(*found, asked);
}

}

DocumentSchema::DocumentSchema(std::string kind, std::string_view schema, const DocumentFaults& faults)
    : m_kind(std::move(kind)), m_schema(std::make_shared<const Compiled>(schema)), m_faults(faults) {}

Result<json> DocumentSchema::read(std::string_view text) const {
    std::vector<std::set<std::string>> keys;
    std::optional<std::string> twice;
    bool tooDeep = false;
    const auto watch = [&](int depth, json::parse_event_t event, json& parsed) {
        tooDeep = tooDeep || depth > deepest;
        if (event == json::parse_event_t::object_start)
            keys.emplace_back();
        else if (event == json::parse_event_t::object_end && !keys.empty())
            keys.pop_back();
        else if (event == json::parse_event_t::key && !keys.empty() &&
                 !keys.back().insert(parsed.get<std::string>()).second)
            twice = parsed.get<std::string>();
        return !tooDeep;
    };
    auto document = json::parse(text, watch, false);
    if (tooDeep)
        return problem(m_faults.tooDeep);
    if (document.is_discarded() || !document.is_object())
        return problem(m_faults.notAnObject);
    if (twice)
        return problem(m_faults.keyTwice, {}, atKey(*twice));
    return document;
}

std::optional<Problem> DocumentSchema::breachIn(const json& document) const {
    try {
        valijson::ValidationResults results;
        valijson::Validator validator;
        if (validator.validate(m_schema->schema, valijson::adapters::NlohmannJsonAdapter(document), &results))
            return std::nullopt;
        return innermost(results, {m_schema->document, m_kind, m_faults});
    } catch (const std::exception& thrown) {
        return Problem{m_faults.cannotBeChecked, {thrown.what()}};
    }
}

}
