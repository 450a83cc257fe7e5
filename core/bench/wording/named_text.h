// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a confirmation is of: a text or a checklist, in one revision, by its digest.

#include "bench/wording/wording.h"
#include "record/kinds/shop.h"

#include <optional>
#include <string>

namespace crownring {

struct NamedText {
    std::optional<TextId> text;
    std::optional<ChecklistId> checklist;
    std::string revision;
    std::string digest;
    std::string title;

    [[nodiscard]] std::string id() const { return text ? text->text() : checklist ? checklist->text() : std::string(); }
};

[[nodiscard]] NamedText named(const Wording& wording);

/// Of the checklist that an inspection was opened by. Under the name and revision of one that ships it is that, whole:
/// what is cut for a visit has its lines (`scope_refusals`). Else it is what the inspection holds. Nothing where it has
/// none, or one that cannot be read.
[[nodiscard]] std::optional<NamedText> namedChecklist(const std::string& document);

/// Those that ship, and those that shipped before.
[[nodiscard]] const std::vector<NamedText>& shippedChecklists();
/// Visits that have lines in it; all, where none has.
[[nodiscard]] std::vector<Visit> visitsOfChecklist(const std::string& document);
/// Of one that ships or shipped, its document; empty where there is none.
[[nodiscard]] std::string_view shippedDocument(const NamedText& checklist);

/// What a signature carries as confirmed, by its title: as adopted, else as it ships or shipped; else what names it.
[[nodiscard]] std::string titleOf(const ConfirmedText& confirmed, const AdoptedTexts& adopted);

/// The same text, in the same revision and wording.
[[nodiscard]] bool isOf(const TextConfirmed& said, const NamedText& named);

}
