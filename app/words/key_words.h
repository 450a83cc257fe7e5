// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the keys of an entry are called, and what stands in them, for people who never saw the file.

#include <QString>

#include <string>
#include <string_view>

namespace crownring::words {

/// "time in service" for "minutes"; of a key that has no word its own name with blanks.
[[nodiscard]] QString keySaid(std::string_view key);
/// "time in service 1:38 h, no note" for {"minutes":98,"note":null}. @param with a JSON object
[[nodiscard]] QString changesSaid(const std::string& with);
/// Of a long id its last letters: "…4f2a9c".
[[nodiscard]] QString shortId(const std::string& id);

}
