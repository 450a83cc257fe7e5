// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tags to hang on items: which one it is, for eyes and for a camera. A tag says nothing of an item's state.

#include "paper/document.h"
#include "registry/item_facts.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring::print {

/// What a camera reads off a tag: "crownring:item:CYL-9001".
[[nodiscard]] std::string tagText(const ItemId& item);
/// The item that such a text names; nothing for another text.
[[nodiscard]] std::optional<ItemId> itemOfTag(const std::string& text);

/// @param on the day that the items are told of
[[nodiscard]] paper::Document tagSheet(const std::vector<ItemFacts>& items, CivilDate on);

}
