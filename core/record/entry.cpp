// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry.h"

namespace crownring {

Moment momentOf(const Entry& entry) { return {entry.on, entry.time.value_or(defaultTime(entry.body))}; }

Stamp stampOf(const Entry& entry) { return {momentOf(entry), entry.id}; }

std::optional<EntryId> amends(const Entry& entry) {
    if (const auto* corrected = std::get_if<EntryCorrected>(&entry.body))
        return corrected->replaces;
    if (const auto* voided = std::get_if<EntryVoided>(&entry.body))
        return voided->voids;
    return std::nullopt;
}

}
