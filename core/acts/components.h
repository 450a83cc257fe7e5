// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Acts on components that are more than one entry: each is posted whole or not at all.

#include "record/journal.h"
#include "registry/books.h"

#include <map>
#include <string>
#include <vector>

namespace crownring {

/// One comes off and another goes on in its place: on a balloon, or as a part of an item.
struct Replacing {
    ItemId off;
    ItemId on;
    std::optional<PartRelease> release; ///< of what goes on
    std::string lot;
    bool unserviceable = false; ///< what came off is kept apart
    CivilDate day;
    std::optional<TimeOfDay> time; ///< of both, UTC; absent: after the flights of the day
    std::string by;
    std::optional<ItemEntered> enters{}; ///< what goes on comes into the record first
};
/// NotFitted where what comes off is on nothing that day, FittedElsewhere where what goes on is on something;
/// OtherKind, ReplacesItself.
[[nodiscard]] Results<Receipt> replaceItem(Journal& journal, Books& books, const Replacing& replacing);

/// A batch goes to a test house or a shop; what is fitted comes off.
struct Sending {
    std::vector<ItemId> items;
    std::string to;
    CivilDate day;
    std::string by;
    std::optional<TimeOfDay> time{}; ///< UTC; absent: what is fitted comes off after the flights of the day
};
/// NamedTwice for an item that is, Blank where nobody is named.
[[nodiscard]] Results<Receipt> sendAway(Journal& journal, Books& books, const Sending& sending);

/// What says of items where they are from now on comes behind what was said of them in the same minute or later that
/// day: what answers comes after (02, "Moments").
[[nodiscard]] Result<void> putBehind(Books& books, std::vector<NumberedEntry>& entries);
[[nodiscard]] Results<Receipt> postBehind(Journal& journal, Books& books, std::vector<NumberedEntry> entries);

/// It comes back: tested, or condemned there.
struct Returning {
    std::vector<ItemId> items;
    std::vector<ItemId> condemned;
    std::optional<RequirementId> requirement; ///< that was done on `items`
    std::map<ItemId, RequirementId> each{};   ///< where it is not one for all
    std::string method;
    std::string mark; ///< the tester's
    std::string ref;  ///< his document
    std::optional<PartRelease> release;
    std::optional<CivilDate> tested; ///< absent: on the day of the return
    CivilDate day;
    std::string by;
    std::optional<TimeOfDay> time{};     ///< UTC; absent: 18:00
    std::optional<PersonId> signatory{}; ///< of his document
    std::string licence{};               ///< of who signed it
};
/// NotAway for an item that was not sent, NothingReturned where none is named, NamedTwice for what is tested and
/// condemned; Condemned for what was overheated and would come back good.
/// TestedBeforeSent, TestedAfterBack.
[[nodiscard]] Results<Receipt> takeBack(Journal& journal, Books& books, const Returning& returning);

}
