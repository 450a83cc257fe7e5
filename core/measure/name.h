// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Names that must not be mixed: an item's id is not a registration, a requirement is not a programme.

#include <compare>
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace crownring {

/// A name of `What`, UTF-8. Names compare as bytes.
template <class What>
class Name {
public:
    Name() = default;
    explicit Name(std::string text) : m_text(std::move(text)) {}
    explicit Name(std::string_view text) : m_text(text) {}
    explicit Name(const char* text) : m_text(text) {}

    [[nodiscard]] const std::string& text() const { return m_text; }
    [[nodiscard]] bool empty() const { return m_text.empty(); }

    friend auto operator<=>(const Name&, const Name&) = default;
    friend bool operator==(const Name&, const Name&) = default;

private:
    std::string m_text;
};

inline constexpr std::size_t longestName = 200; ///< characters
/// Whether the record takes a text as a name: 1 to `longestName` characters, none of them a control character.
[[nodiscard]] bool isUsableName(std::string_view text);

using ItemId = Name<struct ItemTag>;
using Registration = Name<struct BalloonTag>;
using RequirementId = Name<struct RequirementTag>;
using ProgrammeId = Name<struct ProgrammeTag>;
using EntryId = Name<struct EntryTag>;
using WriterId = Name<struct WriterTag>;
using InspectionId = Name<struct InspectionTag>;
using DefectId = Name<struct DefectTag>;
using PersonId = Name<struct PersonTag>;
using TesterId = Name<struct TesterTag>;
using TypeName = Name<struct TypeTag>;
using ChecklistId = Name<struct ChecklistTag>;
using TextId = Name<struct TextTag>;
using DirectiveId = Name<struct DirectiveTag>;

}

template <class What>
struct std::hash<crownring::Name<What>> {
    std::size_t operator()(const crownring::Name<What>& name) const { return std::hash<std::string>{}(name.text()); }
};
