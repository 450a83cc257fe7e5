// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/chain/acknowledged.h"

#include <charconv>

namespace crownring {

std::string acknowledgedText(const Acknowledged& end) {
    return end.writer.text() + ":" + std::to_string(end.sequence) + ":" + hex(end.hash);
}

std::optional<Acknowledged> acknowledgedFrom(std::string_view text) {
    const auto beforeHash = text.rfind(':');
    const auto beforeSequence = beforeHash == 0 ? std::string_view::npos : text.rfind(':', beforeHash - 1);
    if (beforeHash == std::string_view::npos || beforeSequence == std::string_view::npos || beforeSequence == 0)
        return std::nullopt;
    const auto hash = digestFromHex(text.substr(beforeHash + 1));
    const auto digits = text.substr(beforeSequence + 1, beforeHash - beforeSequence - 1);
    Acknowledged end{WriterId(std::string(text.substr(0, beforeSequence))), 0, {}};
    const auto [stop, error] = std::from_chars(digits.data(), digits.data() + digits.size(), end.sequence);
    if (!hash || error != std::errc() || stop != digits.data() + digits.size() || end.sequence == 0)
        return std::nullopt;
    end.hash = *hash;
    return end;
}

}
