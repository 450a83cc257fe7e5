// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/document_schema.h"

#include "rules/programme/schema_words.h"

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

/// The path is that of the key itself, also where it is missing or has no business there.
Problem inWords(const valijson::ValidationResults::Error& error, const json& schema, const std::string& kind) {
    constexpr std::string_view missing = "Missing required property '";
    constexpr std::string_view unwanted = "'additionalProperties' constraints: '";
    auto path = pathOf(error.context);
    Problem problem{Code::BadValue, "this value is not one that a " + kind + " may have here", "", {}};
    if (error.description.find(missing) != std::string::npos) {
        path.push_back(namedAfter(error.description, missing));
        problem.message = "a key that a " + kind + " must have here is missing";
        problem.mend = allowedAt(schema, path);
    } else if (error.description.find(unwanted) != std::string::npos) {
        problem.mend = allowedAt(schema, path);
        path.push_back(namedAfter(error.description, unwanted));
        problem.message = "no " + kind + " has this key here";
    } else {
        problem.mend = allowedAt(schema, path);
    }
    problem.mend = problem.mend.empty() ? "see " + kind + ".schema.json" : "give " + problem.mend;
    problem.where.key = jsonPointer(path);
    return problem;
}

/// The innermost of what the validator found; it names outer places after inner ones.
Problem innermost(const valijson::ValidationResults& results, const json& schema, const std::string& kind) {
    const auto deeper = [](const auto& a, const auto& b) { return a.context.size() < b.context.size(); };
    const auto found = std::max_element(results.begin(), results.end(), deeper);
    return found == results.end() ? Problem{Code::BadValue, "not a " + kind, "see " + kind + ".schema.json", {}}
                                  : inWords(*found, schema, kind);
}

}

DocumentSchema::DocumentSchema(std::string kind, std::string_view schema, Code breach)
    : m_kind(std::move(kind)), m_schema(std::make_shared<const Compiled>(schema)), m_breach(breach) {}

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
    const auto mend = "write a " + m_kind + " document";
    if (tooDeep)
        return problem(Code::BadJson, "this nests deeper than a " + m_kind + " does", mend);
    if (document.is_discarded() || !document.is_object())
        return problem(Code::BadJson, "this is not one JSON object", mend);
    if (twice)
        return problem(Code::BadJson, "this key stands twice in one object", "keep one of them", {{}, 0, *twice});
    return document;
}

std::optional<Problem> DocumentSchema::breachIn(const json& document) const {
    const auto ofThisKind = [&](Problem problem) {
        problem.code = m_breach;
        return problem;
    };
    try {
        valijson::ValidationResults results;
        valijson::Validator validator;
        if (validator.validate(m_schema->schema, valijson::adapters::NlohmannJsonAdapter(document), &results))
            return std::nullopt;
        return ofThisKind(innermost(results, m_schema->document, m_kind));
    } catch (const std::exception& thrown) {
        return Problem{
            m_breach, std::string("this cannot be checked: ") + thrown.what(), "see " + m_kind + ".schema.json", {}};
    }
}

}
