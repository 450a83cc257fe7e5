// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A code of the signatory's own, and what it proves. The code itself stands nowhere: it and the salt give a key pair,
/// of which the record keeps the public half (core/trust says how).

#include "measure/name.h"
#include "record/kinds/kind.h"

#include <optional>
#include <string>

namespace crownring {

/// That an entry was signed by whoever has the code behind a key: over the entry's canonical text without the proof.
struct Proof {
    std::string key;       ///< public, 64 hex digits
    std::string signature; ///< 128 hex digits
    bool operator==(const Proof&) const = default;
};

/// Key "proof"; absent: none.
[[nodiscard]] std::optional<Proof> readProof(ObjectReader& reader);
void writeProof(nlohmann::json& into, const std::optional<Proof>& proof);

/// From when this entry is in the record, what is signed in the name of that person is proven by this key.
struct SignatoryCode {
    PersonId signatory;
    std::string salt;           ///< 32 hex digits
    std::string key;            ///< public, 64 hex digits
    std::optional<Proof> proof; ///< by the code before it, or by that of who sets it in his name; none of the first
    std::string reason;         ///< why another sets it
    bool operator==(const SignatoryCode&) const = default;
};

template <>
struct Kind<SignatoryCode> {
    static constexpr std::string_view name = "signatory.code";
    static constexpr std::string_view keys = "signatory salt key [proof{key signature} reason]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"signatory", &SignatoryCode::signatory}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&SignatoryCode::signatory};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static SignatoryCode read(ObjectReader& reader);
    static void write(nlohmann::json& into, const SignatoryCode& body);
};

}
