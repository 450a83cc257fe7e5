// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What was reported of one balloon as a paper: each event with what it made due, by which source, whether that was
/// done since, and what is in the record of reports to others.

#include "civil/moment.h"
#include "measure/name.h"
#include "paper/document.h"
#include "problem/speech.h"
#include "registry/item_facts.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// One thing that an event made due.
struct MadeDueLine {
    ItemId item;
    Argument title, source;
    std::optional<CivilDate> done; ///< on which day it was done after the event; else it is open
};

struct EventStatusLine {
    Occurrence event;
    std::string subject; ///< the balloon or the item that it was reported of
    std::vector<MadeDueLine> madeDue;
    std::vector<std::string> reports;  ///< to others, as the record says them
    std::optional<Moment> reportUntil; ///< where one may be owed, and none to the authority is in the record
};

/// @param since the first day that is told, but for what is open still
[[nodiscard]] paper::Document eventStatus(const Registration& balloon, CivilDate since, CivilDate on,
                                          const std::vector<EventStatusLine>& lines, const Speech& in);

}
