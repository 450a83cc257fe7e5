// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which state's aircraft rules were adopted, and for whom.

#include "bench/checklist/visit.h"
#include "bench/release/entitlement.h"
#include "registry/books.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// Who decides of what was found, and of its grade, is our reading of these.
inline constexpr const char* gradingRule = "ML.A.403(a), (b); 14 CFR 43.11(b), 91.405";

/// Why nobody decides in that capacity of what flies under a regime; nothing where that is not known.
[[nodiscard]] std::optional<Barred> otherRules(const std::optional<Regime>& regime, Capacity capacity);

/// Whose aircraft rules a text is; of a revision from before texts said so, as the shelf has its programme.
class Regimes {
public:
    const std::string& of(const ProgrammeId& id, const std::string& digest, const std::string& document);

private:
    std::map<std::string, std::string> m_known;
};

/// An adoption of the aircraft rules of a state, binding each registration that the balloon took later, too.
struct Aircraft {
    EntryId id;
    ProgrammeId programme;
    std::string regime;
    Bound bound;
};
[[nodiscard]] Result<std::vector<Aircraft>> aircraftRules(Books& books);

/// Under whose rules an item is: those of the balloon that it is on, in the end, else on that day; of one on none its
/// own. Whenever they were adopted, since the day of what is decided is anybody's to write. Nothing where nobody
/// adopted any, or those of two states.
[[nodiscard]] Result<std::optional<Regime>> regimeOf(Books& books, const ItemId& item, CivilDate on);
/// The same for who asks of many. @param rules `aircraftRules`
[[nodiscard]] Result<std::optional<Regime>> regimeOf(Books& books, const std::vector<Aircraft>& rules,
                                                     const ItemId& item, CivilDate on);

}
