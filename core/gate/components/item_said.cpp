// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/components/item_said.h"

#include "gate/refusing.h"

namespace crownring {

Result<std::optional<OfItem>> enteredBy(const Batch& batch, const Entry& entry) {
    if (const auto* entered = std::get_if<ItemEntered>(&entry.body))
        return OfItem{entered->item, {}};
    auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    const auto* entered = *root && !(*root)->unread ? std::get_if<ItemEntered>(&(*root)->entry.body) : nullptr;
    return entered ? std::optional(OfItem{entered->item, std::move(*root)}) : std::nullopt;
}

Result<std::vector<ItemEntered>> saidOtherwise(const Batch& batch, const Entry& entry, const OfItem& of) {
    std::vector<ItemEntered> others;
    const auto before = batch.journal.before(entry.id);
    if (!before)
        return tl::unexpected(before.error());
    if (*before && std::holds_alternative<ItemEntered>((*before)->body))
        others.push_back(std::get<ItemEntered>((*before)->body));
    const auto& own = of.root ? of.root->entry.id : entry.id;
    constexpr int many = 1000;
    const auto lines = batch.journal.lines(
        {.text = of.item.text(), .kind = std::string(kindName<ItemEntered>()), .before = {}, .limit = many});
    if (!lines)
        return tl::unexpected(lines.error());
    for (const auto& line : *lines) {
        const auto* other = std::get_if<ItemEntered>(&nowOf(line).body);
        if (other && !line.voided && !line.unread && line.entry.id != own && other->item == of.item)
            others.push_back(*other);
    }
    return others;
}

}
