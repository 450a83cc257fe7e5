// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Nobody signs wording from memory: what is signed was adopted, and confirmed against the current rule by somebody who
/// may sign such a visit, by the day of the signature. It is asked when it is signed and not again: what was signed
/// stays as it was signed, whoever takes his confirmation back.

#include "bench/confirmed/confirmation.h"
#include "bench/release/release.h"

#include <optional>
#include <span>
#include <vector>

namespace crownring {

/// What is signed, by whom, and what the record holds of wording on that day.
struct WordingAsked {
    const WordingBook* book = nullptr;
    std::span<const Entitlement> entitlements;
    PrescribedStatement statement;
    std::optional<NamedText> checklist; ///< of the visit
    Served served;
};
/// @return pointing into `file`
[[nodiscard]] WordingAsked wordingAsked(const BenchFile& file, const Signing& signing);

/// One text or checklist that is signed by.
struct WordingState {
    NamedText named;
    bool adopted = true; ///< a checklist is with the inspection that was opened by it
    std::optional<ConfirmedText> confirmed;
};
/// The statement, where one is signed, then the checklist.
[[nodiscard]] std::vector<WordingState> statesOf(const WordingAsked& asked);

/// What stands in the way; empty when it may be signed by.
[[nodiscard]] std::vector<Refusal> refusals(const WordingAsked& asked);

/// What the signature carries.
[[nodiscard]] std::vector<ConfirmedText> confirmedFor(const WordingAsked& asked);

}
