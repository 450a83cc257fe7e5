// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The chain: each entry carries a SHA-256 over itself and over the hash of its writer's previous entry, so that a
/// change anywhere in the past shows. It shows an alteration; it does not stop someone who rewrites everything.
///
/// What is hashed, in this order: byte 0x00; then the fields "crownring.entry.v1", the previous hash (32 bytes, zero
/// for a writer's first), the writer, its sequence number as 8 bytes big-endian, the instant of recording (ISO 8601,
/// UTC) and the entry's canonical text, each preceded by its length as 8 bytes big-endian. Lengths are hashed too, so
/// that "AB" + "C" and "A" + "BC" differ.

#include "measure/name.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace crownring {

using Digest = std::array<unsigned char, 32>;

[[nodiscard]] Digest sha256(std::string_view bytes);
[[nodiscard]] std::string hex(const Digest& digest);
/// 64 hex digits; nothing for anything else.
[[nodiscard]] std::optional<Digest> digestFromHex(std::string_view text);

/// One link: what the record keeps of an entry besides its canonical text.
struct Link {
    WriterId writer;
    std::uint64_t sequence = 1; ///< counts from 1 for each writer
    std::string recordedAt;     ///< see recorded.h
    Digest previous{};
};

[[nodiscard]] Digest entryHash(const Link& link, std::string_view canonicalText);

}
