// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme_schema.h"

#include "rules/schema_words.h"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include <algorithm>
#include <memory>
#include <set>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& programmeSchemaData();

}

namespace crownring {

namespace {

using nlohmann::json;
using JsonAdapter = valijson::adapters::NlohmannJsonAdapter;

/// A programme nests to "/requirements/0/exempt_until/limits/0/every"; more is refused before anything walks it.
constexpr int deepest = 16;

struct Schema {
    Schema() : document(json::parse(embedded::programmeSchemaData().front().second)) {
        valijson::SchemaParser(valijson::SchemaParser::kDraft7).populateSchema(JsonAdapter(document), compiled);
    }
    json document;
    valijson::Schema compiled;
};

const Schema& schema() {
    static const Schema schema;
    return schema;
}

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
Problem inWords(const valijson::ValidationResults::Error& error) {
    constexpr std::string_view missing = "Missing required property '";
    constexpr std::string_view unwanted = "'additionalProperties' constraints: '";
    auto path = pathOf(error.context);
    Problem problem{Code::BadProgramme, "this value is not one that a programme may have here", "", {}};
    if (error.description.find(missing) != std::string::npos) {
        path.push_back(namedAfter(error.description, missing));
        problem.message = "a key that a programme must have here is missing";
        problem.mend = allowedAt(schema().document, path);
    } else if (error.description.find(unwanted) != std::string::npos) {
        problem.mend = allowedAt(schema().document, path);
        path.push_back(namedAfter(error.description, unwanted));
        problem.message = "no programme has this key here";
    } else {
        problem.mend = allowedAt(schema().document, path);
    }
    problem.mend = problem.mend.empty() ? "see programme.schema.json" : "give " + problem.mend;
    problem.where.key = jsonPointer(path);
    return problem;
}

/// The innermost of what the validator found; it names outer places after inner ones.
Problem innermost(const valijson::ValidationResults& results) {
    const auto deeper = [](const auto& a, const auto& b) { return a.context.size() < b.context.size(); };
    const auto found = std::max_element(results.begin(), results.end(), deeper);
    return found == results.end() ? Problem{Code::BadProgramme, "not a programme", "see programme.schema.json", {}}
                                  : inWords(*found);
}

}

Result<json> programmeJson(std::string_view text) {
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
        return problem(Code::BadJson, "this nests deeper than a programme does", "write a programme document");
    if (document.is_discarded() || !document.is_object())
        return problem(Code::BadJson, "this is not one JSON object", "write a programme document");
    if (twice)
        return problem(Code::BadJson, "this key stands twice in one object", "keep one of them", {{}, 0, *twice});
    return document;
}

std::optional<Problem> breachOfSchema(const json& document) {
    try {
        valijson::ValidationResults results;
        valijson::Validator validator;
        if (validator.validate(schema().compiled, JsonAdapter(document), &results))
            return std::nullopt;
        return innermost(results);
    } catch (const std::exception& thrown) {
        return Problem{Code::BadProgramme,
                       std::string("this cannot be checked: ") + thrown.what(),
                       "see programme.schema.json",
                       {}};
    }
}

}
