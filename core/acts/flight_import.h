// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Flights that come from outside (a log, a track): proposed, looked at, then posted or not. Nothing is written before
/// the user accepts.

#include "record/journal.h"
#include "registry/books.h"
#include "registry/flight_proposal.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

enum class ProposalState {
    New,
    AlreadyLogged,  ///< the record has the same flight: balloon, day, minutes, and the time where both state one; or
                    ///< one in the air at that time
    TwiceInFile,    ///< the same flight stands earlier in the same file
    UnknownBalloon, ///< the registration is not in the record on that day, in no spelling
    UnknownItem,    ///< it names what flew, and the record does not know it
};

struct JudgedProposal {
    FlightProposal proposal;
    ProposalState state = ProposalState::New;
    std::string unknown{};              ///< with `UnknownItem`: as the file has it
    std::optional<CivilDate> entered{}; ///< with `UnknownBalloon`: it is in the record, from this later day on
    std::string written{};              ///< the registration as the file has it, where the record spells it otherwise
};

/// Holds proposals against the record.
[[nodiscard]] Result<std::vector<JudgedProposal>> judge(Books& books, std::vector<FlightProposal> proposals);

/// Posts those that are `New`, all or none.
[[nodiscard]] Results<Receipt> accept(Journal& journal, Books& books, const std::vector<JudgedProposal>& proposals,
                                      const std::string& file);

}
