// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// "The balloon came in": what is due or nearly due on it is proposed, what is to be done is settled, and the
/// inspection is opened with the whole checklist in hand.

#include "bench/release/entitlement.h"
#include "record/journal.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <optional>
#include <vector>

namespace crownring {

/// Something that could be done in this visit, and why.
struct Proposal {
    const DueRow* row = nullptr;
    bool due = false; ///< due or nearly due: proposed; else it may be added
};

/// Mandatory before recommended, worst first. Open defects are not proposed: they are on the bench anyway; nor is what
/// such a visit does not accomplish.
struct Offer {
    DueList due; ///< what the proposals point into
    std::vector<Proposal> proposals;
    Visit visit = Visit::PartMlInspection; ///< that was asked for, else the kind that the worst row calls for
    bool eventUnknown =
        false; ///< an inspection after an event, and none is reported: nothing is proposed before one is
};

/// @param balloon what is fitted to it; with `items` only these of it
/// @param items loose ones when no balloon is given
/// @param visit nothing: the one that the worst row calls for
[[nodiscard]] Result<Offer> offerInspection(Books& books, const std::optional<Registration>& balloon,
                                            const std::vector<ItemId>& items, CivilDate on,
                                            std::optional<Visit> visit = {});

struct Opening {
    InspectionId inspection; ///< empty: made from the day and the subject
    Visit visit = Visit::PartMlInspection;
    std::optional<Registration> balloon;
    std::vector<ItemId> items;
    std::vector<Work> work;
    CivilDate on;
    std::optional<TimeOfDay> time;
    std::string by;
    std::string order{}; ///< the shop's own number
};

/// The entry that opens it: the lines of the visit, the organisation's own, and a line for each piece of work that the
/// visit by itself does not accomplish. BadUse when there are no items, for a component on a balloon, for work that
/// such a visit does not accomplish, and for an inspection after an event where none is reported that would call for
/// it; UnknownReference for an item that is not in the record on that day.
[[nodiscard]] Result<Entry> openingEntry(Books& books, const Opening& opening);

/// Posts it. @return the inspection's name
[[nodiscard]] Results<InspectionId> openInspection(Journal& journal, Books& books, const Opening& opening);

}
