// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/new_id.h"

#include <sodium.h>

#include <array>

namespace crownring {

EntryId newEntryId() {
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    bytes[6] = static_cast<unsigned char>((bytes[6] & 0x0f) | 0x40);
    bytes[8] = static_cast<unsigned char>((bytes[8] & 0x3f) | 0x80);
    constexpr std::string_view symbols = "0123456789abcdef";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10)
            text.push_back('-');
        text.push_back(symbols[bytes[i] >> 4]);
        text.push_back(symbols[bytes[i] & 15]);
    }
    return EntryId(std::move(text));
}

}
