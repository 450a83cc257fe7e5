// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is kept apart until it is released (ML.A.504, from memory), and what came out of it: who takes a part out of a
/// burner that is unserviceable knows no more of the part than of the burner.

#include "registry/carriage.h"
#include "registry/service.h"

#include <functional>

namespace crownring {

/// What is said of the state of an item, in service too.
struct StateWord {
    Stamp stamp;
    OutOfService out;
    bool operator==(const StateWord&) const = default;
};
/// It is in service again.
[[nodiscard]] inline bool isBack(const StateWord& word) { return word.out.state == ServiceState::InService; }
/// Of one item: by moment, of one moment what is further from service last.
using StateWords = std::vector<StateWord>;
[[nodiscard]] StateWords inOrder(StateWords words);

/// As what it was kept apart before that stamp, and not in service again since.
[[nodiscard]] std::optional<OutOfService> keptApartBefore(const StateWords& words, const Stamp& stamp);

/// As what it is kept apart before `end` since it was taken out of something that was; nothing where it was in service
/// again since by a word of its own, or with what it came out of and was back in.
/// @param carried what carried it until then
/// @param wordsOf of its carriers
[[nodiscard]] std::optional<OutOfService> takenOutBefore(const Stamp& end, const std::vector<Carried>& carried,
                                                         const StateWords& own,
                                                         const std::function<StateWords(const ItemId&)>& wordsOf);

}
