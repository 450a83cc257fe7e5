// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Photographs as a key of several kinds: digests of what the record keeps as pictures. Inside the record room only.

#include "record/json/object_reader.h"

#include <string>
#include <vector>

namespace crownring {

/// Refuses what is no SHA-256 in hex.
void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest);

/// Key "photographs": all different, 64 hex digits each; absent: none.
[[nodiscard]] std::vector<std::string> readPhotographs(ObjectReader& reader);
void writePhotographs(nlohmann::json& into, const std::vector<std::string>& photographs);

}
