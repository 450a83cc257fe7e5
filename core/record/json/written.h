// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Puts values under their keys; what is not there is left out. Inside the record room only.

#include "civil/civil_date.h"
#include "measure/name.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace crownring {

inline void writeText(nlohmann::json& into, const char* key, const std::string& text) {
    if (!text.empty())
        into[key] = text;
}

template <class What>
void writeName(nlohmann::json& into, const char* key, const std::optional<Name<What>>& name) {
    if (name)
        into[key] = name->text();
}

/// A number, or a text that is not there when it is unknown.
template <class Value>
void writeValue(nlohmann::json& into, const char* key, const std::optional<Value>& value) {
    if (value)
        into[key] = *value;
}

/// A number of the unit that the key names.
template <class AmountOf>
void writeAmount(nlohmann::json& into, const char* key, const std::optional<AmountOf>& amount) {
    if (amount)
        into[key] = amount->value();
}

inline void writeDate(nlohmann::json& into, const char* key, const std::optional<CivilDate>& date) {
    if (date)
        into[key] = date->iso();
}

template <class What>
nlohmann::json namesOf(const std::vector<Name<What>>& names) {
    nlohmann::json array = nlohmann::json::array();
    for (const auto& name : names)
        array.push_back(name.text());
    return array;
}

}
