// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pool: where every item of a kind is, wherever that is, and until when it is good: for flight by its
/// airworthiness, for filling by its transport test. What was filled before may be flown until it is empty.

#include "answers/parts/components.h"
#include "registry/item_facts.h"
#include "rules/standing/standing.h"

namespace crownring {

/// One of the two dates of a vessel.
struct GoodUntil {
    std::optional<Standing> standing; ///< the worst among what binds it; nothing where nothing does
    std::optional<CivilDate> until; ///< the first last good day among them; nothing while one of them is unproven, nor
                                    ///< a day to come beside what is past
    Argument title;                 ///< of what gives the day, else of what is unproven
};

struct PoolItem {
    ItemFacts facts;
    Component component;
    GoodUntil airworthy; ///< what blocks flight
    GoodUntil transport; ///< what blocks filling
    bool condemned = false;
    bool fillable = false; ///< in service, nothing bars it (`barsFilling`), and its transport test shown to be good
    bool material = false; ///< of the lot asked for there is material in it, by a repair or its making

    /// The earlier of the two.
    [[nodiscard]] std::optional<CivilDate> first() const;
    /// In which it falls due: "2026-Q2"; empty where no day is known.
    [[nodiscard]] std::string quarter() const;
};

struct PoolAsked {
    std::optional<ItemKind> kind;
    std::string lot; ///< pieces of it, and what has material of it; empty: any
};

/// Sorted by what falls due first: before all what is unproven, or past without a day; after all what is out for good.
[[nodiscard]] Result<std::vector<PoolItem>> pool(Books& books, const PoolAsked& asked, CivilDate on);

}
