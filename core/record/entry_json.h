// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries as JSON, one object a line. The schemas in assets/schema say the same; a test holds the two together.

#include "record/entry.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Reads one entry. An absent `id` stays empty. `Where::key` of a problem names the key.
[[nodiscard]] Result<Entry> entryFrom(const nlohmann::json& object);
[[nodiscard]] Result<Entry> entryFrom(std::string_view line);
[[nodiscard]] inline Result<Entry> entryFrom(const std::string& line) { return entryFrom(std::string_view(line)); }

/// The canonical form: keys sorted, no spaces, defaults left out. This is what the record stores and the chain covers.
[[nodiscard]] nlohmann::json toJson(const Entry& entry);
[[nodiscard]] std::string canonicalText(const Entry& entry);
/// The canonical text, proven to be read as this very entry; a problem with the key when it is not: such a text must
/// not come into a journal, for nobody could read it again.
[[nodiscard]] Result<std::string> readableText(const Entry& entry);

struct NumberedEntry {
    Entry entry;
    int line = 0;
};

/// Reads a whole file of entries, blank lines skipped; on failure every bad line is listed.
[[nodiscard]] Results<std::vector<NumberedEntry>> entriesFrom(std::string_view text, const std::string& file);

}
