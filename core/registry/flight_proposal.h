// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A flight that came from outside (a log, a track), before anybody has looked at it: nothing of it is written yet.

#include "record/entry.h"

#include <optional>
#include <string>

namespace crownring {

struct FlightProposal {
    Registration balloon;
    CivilDate on;
    std::optional<TimeOfDay> time;
    FlightLogged flight; ///< `balloon` repeated there
    std::string by;
    std::string note;
    int line = 0; ///< of the file, from 1; 0 where there are no lines
    bool operator==(const FlightProposal&) const = default;
};

}
