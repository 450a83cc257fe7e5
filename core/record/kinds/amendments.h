// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries about entries. What they point at must be in the record too; `amends` and the record see to that.

#include "record/kinds/kind.h"
#include "record/kinds/signatures.h"

#include <optional>
#include <string>
#include <string_view>

namespace crownring {

struct EntryCorrected {
    EntryId replaces;
    std::string with; ///< a JSON object: a shallow patch, null removes a key
    bool operator==(const EntryCorrected&) const = default;
};

template <>
struct Kind<EntryCorrected> {
    static constexpr std::string_view name = "entry.corrected";
    static constexpr std::string_view keys = "replaces with{keys}";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static EntryCorrected read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EntryCorrected& body);
};

/// The text that a correction puts under a key; nothing where it leaves the key alone, or puts something else there.
[[nodiscard]] std::optional<std::string> textUnder(const EntryCorrected& correction, std::string_view key);

/// Why the program itself voids an entry. In the record stands the name; a person's own reason stands there in words.
enum class VoidReason {
    Undone,           ///< "undone": taken back at once by who had written it
    TakenBack,        ///< "taken-back": a reading, at the bench
    ReadingTakenBack, ///< "reading-taken-back": a defect whose reading was
};
inline constexpr int voidReasonCount = 3;
[[nodiscard]] std::string_view voidReasonName(VoidReason reason);
[[nodiscard]] std::optional<VoidReason> voidReasonFrom(std::string_view name);

struct EntryVoided {
    EntryId voids;
    std::string reason;           ///< in words, or the name of a `VoidReason`
    std::optional<Proof> proof{}; ///< by who voids what was signed (`Entry::by`)
    bool operator==(const EntryVoided&) const = default;
};

template <>
struct Kind<EntryVoided> {
    static constexpr std::string_view name = "entry.voided";
    static constexpr std::string_view keys = "voids reason [proof{key signature}]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static EntryVoided read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EntryVoided& body);
};

}
