// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An organisation adopts the wording that is signed, and somebody who may sign by it confirms that it is what the rule
/// says now: the program's own wording is partly from memory.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "record/kinds/kind.h"

#include <optional>
#include <string>

namespace crownring {

/// From this day on, until another adoption of that text.
struct TextAdopted {
    TextId text;          ///< "part-ml-release" …
    std::string revision; ///< one revision has one wording
    std::string title;
    std::string body; ///< with places in braces that the record fills: "{aircraft}"
    std::string source;
    std::string organisation; ///< whose wording it is from now on
    bool operator==(const TextAdopted&) const = default;
};

template <>
struct Kind<TextAdopted> {
    static constexpr std::string_view name = "text.adopted";
    static constexpr std::string_view keys = "text revision body organisation [title source]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TextAdopted::text};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TextAdopted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TextAdopted& body);
};

/// Of one text or one checklist: exactly what has that digest, and nothing that comes after it.
struct TextConfirmed {
    std::optional<TextId> text;
    std::optional<ChecklistId> checklist;
    std::string revision;
    std::string digest;   ///< 64 hex digits
    std::string against;  ///< which rule, as amended when
    PersonId confirmedBy; ///< who may sign such a visit
    std::string capacity;
    std::string licence;
    bool operator==(const TextConfirmed&) const = default;
};

template <>
struct Kind<TextConfirmed> {
    static constexpr std::string_view name = "text.confirmed";
    static constexpr std::string_view keys =
        "revision digest against confirmed_by capacity and text or checklist [licence]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"confirmed_by", &TextConfirmed::confirmedBy}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TextConfirmed::text, &TextConfirmed::checklist};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TextConfirmed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TextConfirmed& body);
};

}
