// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is fitted to items and to balloons, as far as the record knows, for a directive to be held against: the lists
/// of parts with what was replaced since.

#include "parts/directives.h"
#include "record/kinds/directives/directives.h"
#include "registry/books.h"

#include <map>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace crownring {

/// The parts of items at the end of a day, and what was said of items that were entered more than once.
class PartsKnown {
public:
    /// Of all items.
    [[nodiscard]] static Result<PartsKnown> read(Books& books, CivilDate on);
    /// For directives that ask for no part.
    [[nodiscard]] static Result<PartsKnown> withoutLists(Books& books);

    /// With nothing in it, and not whole, where no list says what is.
    [[nodiscard]] FittedThing thingOf(const ItemFacts& item) const;
    /// As they were at a moment; what was first listed after it was so before.
    [[nodiscard]] PartsKnown before(const Stamp& moment) const;
    /// The last that was said of an item's parts; empty where nothing was.
    [[nodiscard]] std::string lastWord(const ItemId& item) const;

    /// What later entries say of items; the earliest stands in their facts.
    [[nodiscard]] const std::vector<ItemEntered>& enteredAgain() const { return m_again; }

private:
    struct Tree {
        std::vector<FittedThing> parts;
        bool isWhole = false;
        EntryId said;
    };
    struct Word {
        Stamp stamp;
        std::variant<PartsListed, PartReplaced> body;
    };
    void hear(Word word);
    void list(const Stamp& at, const PartsListed& said);
    void replace(const Stamp& at, const PartReplaced& said);

    std::vector<Word> m_words;
    std::map<ItemId, Tree> m_trees;
    std::vector<ItemEntered> m_again;
};

/// Whether a directive binds an item, with what is fitted to the same balloon. Where entries contradict each other, and
/// it binds by one of them, it is not said that it does not.
/// @param beside all that is on its balloon, the item among it; of a loose item the item alone
[[nodiscard]] Applicability appliesTo(const AppliesTo& asked, const ItemFacts& item,
                                      const std::vector<const ItemFacts*>& beside, const PartsKnown& parts);

/// What is on a balloon at the end of a moment's day, and was so before that moment.
[[nodiscard]] Result<std::set<ItemId>> onBalloonBefore(Books& books, const Registration& balloon, const Stamp& moment);

/// The parts that an answer rests on, each by a name: an answer says nothing of a part that came in after it. Where it
/// is not known which they are, what was last said of what may hold them.
[[nodiscard]] std::set<std::string> partsBehind(const AppliesTo& asked, const ItemFacts& item,
                                                const std::vector<const ItemFacts*>& beside, const PartsKnown& parts);

}
