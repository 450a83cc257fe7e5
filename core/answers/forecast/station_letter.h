// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a letter to a station about a planned visit says: the items that come, the work that is wanted, and the same as
/// a file that the station's own Crownring reads (assets/schema/letter.schema.json).

#include "answers/forecast/visits_told.h"

#include <string>
#include <string_view>

namespace crownring {

struct LetterItem {
    ItemId item;
    ItemKind kind = ItemKind::Other;
    std::optional<std::string> serial, type;
    Figures clock; ///< in the evening of the day on which the letter is written
};
struct LetterWork {
    PlannedWork work;
    Argument title;
    Argument source;
    std::optional<DateBand> band; ///< when it is due
};
struct StationLetter {
    EntryId visit; ///< the entry that plans it
    VisitPlanned planned;
    CivilDate on;
    std::string owner; ///< name and address, as the record has them; may be empty
    std::string operatedBy;
    std::vector<LetterItem> items; ///< fitted to the balloon, and what else is covered
    std::vector<LetterWork> works;
};

/// @return UnknownReference where no such visit is planned
[[nodiscard]] Result<StationLetter> letterOf(Books& books, const EntryId& visit, CivilDate on, CivilDate known);

/// What a station needs of it to open an inspection.
struct LetterRead {
    EntryId visit;
    Registration balloon;
    std::vector<ItemId> items;
    std::vector<PlannedWork> works;
};
[[nodiscard]] std::string letterText(const StationLetter& letter);
/// Strictly as `letterText` writes it; NotALetter for anything else, at the key that is wrong.
[[nodiscard]] Result<LetterRead> letterFrom(std::string_view text);

}
