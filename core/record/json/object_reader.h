// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Takes the keys of one JSON object by name and type, keeps the first problem, and at the end refuses what was not
/// taken. Inside the record room only.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "problem/faults/entry_fault.h"
#include "problem/problem.h"
#include "text/blank.h"
#include "text/utf8.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

class ObjectReader {
public:
    explicit ObjectReader(const nlohmann::json& object, std::string path = {})
        : m_object(object), m_path(std::move(path)) {}

    [[nodiscard]] bool good() const { return !m_problem; }
    [[nodiscard]] const std::optional<Problem>& problem() const { return m_problem; }

    void refuse(std::string_view key, Fault fault, Arguments arguments = {}) {
        refuse(key, Problem{fault, std::move(arguments)});
    }
    void refuse(std::string_view key, Problem problem) {
        if (!good())
            return;
        m_problem = std::move(problem);
        m_problem->where = atKey(m_path + std::string(key));
    }

    /// A required string; may be empty.
    std::string text(std::string_view key) {
        const auto* value = required(key);
        return value ? asText(key, *value).value_or("") : "";
    }
    /// A required text that says something, at most `longest` characters.
    std::string saying(std::string_view key, std::size_t longest = std::string::npos) {
        auto value = text(key);
        if (isBlank(value))
            refuse(key, EntryFault::Blank);
        if (characters(value) > longest)
            refuse(key, EntryFault::TooLong, {longest});
        return value;
    }
    std::string optionalText(std::string_view key) {
        const auto* value = take(key);
        return value ? asText(key, *value).value_or("") : "";
    }
    /// Absent and null both mean "not known".
    std::optional<std::string> nullableText(std::string_view key) {
        const auto* value = take(key);
        if (!value || value->is_null())
            return std::nullopt;
        return asText(key, *value);
    }

    /// A word of lower case letters, digits and hyphens, at most 64.
    std::string slug(std::string_view key) {
        auto value = text(key);
        checkSlug(key, value);
        return value;
    }
    std::string optionalSlug(std::string_view key) { return has(key) ? slug(key) : ""; }
    /// A list of different words; may be empty.
    std::vector<std::string> optionalSlugs(std::string_view key) {
        const auto* value = take(key);
        auto words = value ? asTexts(key, *value) : std::vector<std::string>{};
        for (const auto& word : words)
            checkSlug(key, word);
        checkDifferent(key, words);
        return words;
    }

    /// A required name: 1 to 200 characters, no control characters.
    template <class NameOf>
    NameOf name(std::string_view key) {
        auto value = text(key);
        checkName(key, value);
        return NameOf(std::move(value));
    }
    template <class NameOf>
    std::optional<NameOf> optionalName(std::string_view key) {
        return has(key) ? std::optional(name<NameOf>(key)) : std::nullopt;
    }
    /// A list of different names, at least one.
    template <class NameOf>
    std::optional<std::vector<NameOf>> optionalNames(std::string_view key) {
        const auto* value = take(key);
        if (!value)
            return std::nullopt;
        const auto texts = asTexts(key, *value);
        if (texts.empty())
            refuse(key, EntryFault::EmptyList);
        for (const auto& each : texts)
            checkName(key, each);
        checkDifferent(key, texts);
        return std::vector<NameOf>(texts.begin(), texts.end());
    }

    std::int64_t count(std::string_view key, std::int64_t least, std::int64_t most) {
        const auto* value = required(key);
        return value ? asCount(key, *value, least, most).value_or(least) : least;
    }
    std::optional<std::int64_t> optionalCount(std::string_view key, std::int64_t least, std::int64_t most) {
        const auto* value = take(key);
        return value ? asCount(key, *value, least, most) : std::nullopt;
    }
    std::optional<double> optionalNumber(std::string_view key, double least, double most) {
        const auto* value = take(key);
        if (!value)
            return std::nullopt;
        const double number = value->is_number() ? value->get<double>() : std::numeric_limits<double>::quiet_NaN();
        if (!(number >= least && number <= most)) {
            refuse(key, EntryFault::NotANumber);
            return std::nullopt;
        }
        return number;
    }
    bool optionalBool(std::string_view key) {
        const auto* value = take(key);
        if (!value)
            return false;
        if (!value->is_boolean())
            refuse(key, EntryFault::NotABoolean);
        return value->is_boolean() && value->get<bool>();
    }

    [[nodiscard]] bool has(std::string_view key) const { return m_object.contains(key); }
    [[nodiscard]] bool empty() const { return m_object.empty(); }

    /// True, and the key taken, when it is there as null.
    bool takeNull(std::string_view key) {
        const auto found = m_object.find(key);
        if (found == m_object.end() || !found->is_null())
            return false;
        take(key);
        return true;
    }

    /// Reads an optional inner object with `read`; what `read` does not take is refused.
    template <class Read>
    void object(std::string_view key, Read read) {
        const auto* value = take(key);
        if (!value)
            return;
        if (!value->is_object()) {
            refuse(key, EntryFault::NotAnObject);
            return;
        }
        ObjectReader inner(*value, m_path + std::string(key) + "/");
        read(inner);
        inner.refuseUnknownKeys(key);
        if (good() && inner.m_problem)
            m_problem = inner.m_problem;
    }
    /// Reads an optional list of inner objects, at least one, each with `read`; what it does not take is refused.
    template <class Read>
    void objects(std::string_view key, Read read) {
        const auto* value = take(key);
        if (!value)
            return;
        if (!value->is_array() || value->empty()) {
            refuse(key, EntryFault::NotAListOfObjects);
            return;
        }
        for (std::size_t i = 0; i < value->size() && good(); ++i) {
            const auto path = std::string(key) + "/" + std::to_string(i);
            if (!(*value)[i].is_object()) {
                refuse(path, EntryFault::NotAnObject);
                return;
            }
            ObjectReader inner((*value)[i], m_path + path + "/");
            read(inner);
            inner.refuseUnknownKeys(key);
            m_problem = inner.m_problem;
        }
    }
    /// A required civil date.
    CivilDate date(std::string_view key) {
        const auto written = text(key);
        const auto day = CivilDate::parse(written);
        if (!day)
            refuse(key, day.error());
        return day.value_or(CivilDate());
    }
    std::optional<CivilDate> optionalDate(std::string_view key) {
        return has(key) ? std::optional(date(key)) : std::nullopt;
    }
    /// One of the words that `from` knows.
    template <class From>
    auto word(std::string_view key, From from, std::string_view words) {
        const auto written = text(key);
        const auto known = from(written);
        if (!known)
            refuse(key, EntryFault::NoWordForThis, {written, words});
        return known.value_or(typename decltype(known)::value_type{});
    }
    /// Different texts that say something, at least one.
    std::vector<std::string> optionalTexts(std::string_view key) {
        const auto* value = take(key);
        if (!value)
            return {};
        auto texts = asTexts(key, *value);
        if (texts.empty())
            refuse(key, EntryFault::EmptyList);
        for (const auto& each : texts)
            if (isBlank(each))
                refuse(key, EntryFault::Blank);
        checkDifferent(key, texts);
        return texts;
    }

    /// The canonical text of a required inner object.
    std::string objectText(std::string_view key) {
        const auto* value = required(key);
        return value ? asObjectText(key, *value) : "";
    }
    std::string optionalObjectText(std::string_view key) {
        const auto* value = take(key);
        return value ? asObjectText(key, *value) : "";
    }

    void refuseUnknownKeys(std::string_view what) {
        if (m_taken.size() == m_object.size())
            return;
        for (const auto& [key, value] : m_object.items())
            if (std::find(m_taken.begin(), m_taken.end(), key) == m_taken.end())
                refuse(key, EntryFault::UnknownKey, {what});
    }

private:
    const nlohmann::json* take(std::string_view key) {
        const auto found = m_object.find(key);
        if (found == m_object.end())
            return nullptr;
        m_taken.push_back(key);
        return &*found;
    }
    const nlohmann::json* required(std::string_view key) {
        const auto* value = take(key);
        if (!value)
            refuse(key, EntryFault::KeyMissing);
        return value;
    }
    std::optional<std::string> asText(std::string_view key, const nlohmann::json& value) {
        if (!value.is_string()) {
            refuse(key, EntryFault::NotAText);
            return std::nullopt;
        }
        auto text = value.get<std::string>();
        // A database may end a text at its first U+0000.
        if (text.find('\0') != std::string::npos)
            refuse(key, EntryFault::NullCharacter);
        return text;
    }
    std::vector<std::string> asTexts(std::string_view key, const nlohmann::json& value) {
        std::vector<std::string> texts;
        if (!value.is_array())
            refuse(key, EntryFault::NotAList);
        else
            for (const auto& each : value)
                texts.push_back(asText(key, each).value_or(""));
        return texts;
    }
    std::optional<std::int64_t> asCount(std::string_view key, const nlohmann::json& value, std::int64_t least,
                                        std::int64_t most) {
        const bool whole = value.is_number_integer() &&
                           (!value.is_number_unsigned() || value.get<std::uint64_t>() <= std::uint64_t(INT64_MAX));
        if (whole && value.get<std::int64_t>() >= least && value.get<std::int64_t>() <= most)
            return value.get<std::int64_t>();
        refuse(key, EntryFault::NotAWholeNumber, {least, most});
        return std::nullopt;
    }
    std::string asObjectText(std::string_view key, const nlohmann::json& value) {
        if (value.is_object())
            return value.dump();
        refuse(key, EntryFault::NotAnObject);
        return "";
    }
    void checkName(std::string_view key, const std::string& value) {
        if (!isUsableName(value))
            refuse(key, EntryFault::NotAName, {longestName});
    }
    void checkSlug(std::string_view key, const std::string& value) {
        constexpr std::size_t longest = 64;
        const auto fits = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
        if (value.empty() || value.size() > longest || value.front() == '-' ||
            !std::all_of(value.begin(), value.end(), fits))
            refuse(key, EntryFault::NotASlug);
    }
    void checkDifferent(std::string_view key, std::vector<std::string> values) {
        std::sort(values.begin(), values.end());
        if (const auto twice = std::adjacent_find(values.begin(), values.end()); twice != values.end())
            refuse(key, EntryFault::NamedTwice, {*twice});
    }

    const nlohmann::json& m_object;
    std::string m_path;
    std::vector<std::string_view> m_taken;
    std::optional<Problem> m_problem;
};

}
