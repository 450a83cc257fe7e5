// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A flight that came from outside (a log, a track), before anybody has looked at it: nothing of it is written yet.

#include "record/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// What a file names as having flown, as it is written there.
struct NamedItems {
    std::optional<ItemKind> kind; ///< instead of what is fitted of this kind; absent: the whole kit
    std::vector<std::string> written;
    bool operator==(const NamedItems&) const = default;
};

struct FlightProposal {
    Registration balloon;
    CivilDate on;
    std::optional<TimeOfDay> time;
    FlightLogged flight; ///< `balloon` repeated there
    std::vector<NamedItems> named{};
    std::string by;
    std::string note;
    int line = 0; ///< of the file, from 1; 0 where there are no lines
    bool operator==(const FlightProposal&) const = default;
};

}
