// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/chain/chain.h"

#include <sodium.h>

namespace crownring {

namespace {

constexpr std::string_view domain = "crownring.entry.v1";

void appendNumber(std::string& bytes, std::uint64_t number) {
    for (int shift = 56; shift >= 0; shift -= 8)
        bytes.push_back(static_cast<char>((number >> shift) & 0xff));
}

void appendField(std::string& bytes, std::string_view field) {
    appendNumber(bytes, field.size());
    bytes.append(field);
}

int nibble(char c) {
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    return -1;
}

}

Digest sha256(std::string_view bytes) {
    Digest digest{};
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return digest;
}

std::string hex(const Digest& digest) {
    constexpr std::string_view symbols = "0123456789abcdef";
    std::string text;
    text.reserve(2 * digest.size());
    for (const auto byte : digest) {
        text.push_back(symbols[byte >> 4]);
        text.push_back(symbols[byte & 15]);
    }
    return text;
}

std::optional<Digest> digestFromHex(std::string_view text) {
    Digest digest{};
    if (text.size() != 2 * digest.size())
        return std::nullopt;
    for (std::size_t i = 0; i < digest.size(); ++i) {
        const int high = nibble(text[2 * i]);
        const int low = nibble(text[2 * i + 1]);
        if (high < 0 || low < 0)
            return std::nullopt;
        digest[i] = static_cast<unsigned char>(high * 16 + low);
    }
    return digest;
}

Digest entryHash(const Link& link, std::string_view canonicalText) {
    std::string bytes(1, '\0');
    bytes.reserve(200 + canonicalText.size());
    appendField(bytes, domain);
    appendField(bytes, {reinterpret_cast<const char*>(link.previous.data()), link.previous.size()});
    appendField(bytes, link.writer.text());
    std::string sequence;
    appendNumber(sequence, link.sequence);
    appendField(bytes, sequence);
    appendField(bytes, link.recordedAt);
    appendField(bytes, canonicalText);
    return sha256(bytes);
}

}
