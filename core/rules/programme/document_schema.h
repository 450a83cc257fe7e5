// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Checks the documents that people write (programmes, checklists) against their schemas of assets/schema.

#include "problem/problem.h"

#include <nlohmann/json.hpp>

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace crownring {

/// What can be wrong with a document of one kind.
struct DocumentFaults {
    Fault tooDeep;
    Fault notAnObject;
    Fault keyTwice;
    Fault valueNotAllowed;
    Fault keyMissing;
    Fault keyNotAllowed;
    Fault notOfThisKind;
    Fault cannotBeChecked;
};

/// Of a family that has them all under their names.
template <class Family>
[[nodiscard]] constexpr DocumentFaults documentFaults() {
    return {Family::TooDeep,    Family::NotAnObject,   Family::KeyTwice,      Family::ValueNotAllowed,
            Family::KeyMissing, Family::KeyNotAllowed, Family::NotOfThisKind, Family::CannotBeChecked};
}

/// The schema of one kind of document, compiled once.
class DocumentSchema {
public:
    /// @param kind what such a document is called, as in "programme.schema.json"
    /// @param schema the schema, JSON Schema draft-07
    DocumentSchema(std::string kind, std::string_view schema, const DocumentFaults& faults);

    /// Reads JSON text. BadJson when it is none, when it nests deeper than any document does, or when an object has a
    /// key twice (`Where::key` names it).
    [[nodiscard]] Result<nlohmann::json> read(std::string_view text) const;

    /// What breaks the schema, with a JSON pointer in `Where::key`; empty when nothing does.
    [[nodiscard]] std::optional<Problem> breachIn(const nlohmann::json& document) const;

private:
    struct Compiled;

    std::string m_kind;
    std::shared_ptr<const Compiled> m_schema;
    DocumentFaults m_faults;
};

}
