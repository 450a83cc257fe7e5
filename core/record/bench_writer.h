// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Writes the entries of the bench as JSON: defaults are left out. Inside the record room only.

#include "record/entry.h"

#include <nlohmann/json.hpp>

namespace crownring {

inline void writeText(nlohmann::json& into, const char* key, const std::string& text) {
    if (!text.empty())
        into[key] = text;
}

template <class What>
nlohmann::json namesOf(const std::vector<Name<What>>& names) {
    nlohmann::json array = nlohmann::json::array();
    for (const auto& name : names)
        array.push_back(name.text());
    return array;
}

void writeBody(nlohmann::json& into, const ReadingTaken& body);
void writeBody(nlohmann::json& into, const InspectionOpened& body);
void writeBody(nlohmann::json& into, const LineSettled& body);
void writeBody(nlohmann::json& into, const DefectFound& body);
void writeBody(nlohmann::json& into, const DefectDeferred& body);
void writeBody(nlohmann::json& into, const DefectCleared& body);
void writeBody(nlohmann::json& into, const RepairMade& body);
void writeBody(nlohmann::json& into, const PartReplaced& body);
void writeBody(nlohmann::json& into, const InspectionClosed& body);
void writeBody(nlohmann::json& into, const PersonEntitled& body);
void writeBody(nlohmann::json& into, const TesterCalibrated& body);
void writeBody(nlohmann::json& into, const TypeDescribed& body);
void writeBody(nlohmann::json& into, const LimitStated& body);
void writeBody(nlohmann::json& into, const FabricStated& body);
void writeBody(nlohmann::json& into, const ChecklistAdopted& body);

}
