// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/item_kind.h"

#include "record/json/words.h"

namespace crownring {

namespace {

constexpr Words<itemKindCount> words = {"envelope", "basket", "burner", "cylinder", "hose", "instrument", "other"};

}

std::string_view itemKindName(ItemKind kind) { return words[static_cast<std::size_t>(kind)]; }
Term termOf(ItemKind kind) { return {Term::Of::ItemKind, std::string(itemKindName(kind))}; }
std::optional<ItemKind> itemKindFrom(std::string_view name) { return among<ItemKind>(words, name); }

}
