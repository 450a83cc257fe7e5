// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// From a code that a signatory keeps in his head to a key pair: Argon2id (RFC 9106) over the code and a random salt
/// gives the seed of an Ed25519 key (RFC 8032). The record keeps the salt and the public half; the code and the seed
/// are kept nowhere. Whoever has the record can try codes against it, each for what Argon2id costs: a short or common
/// one falls.

#include "problem/problem.h"

#include <array>
#include <string>
#include <string_view>

namespace crownring {

/// Characters, not bytes. Common practice for a code that a person chooses (NIST SP 800-63B, 5.1.1.1, from memory).
inline constexpr std::size_t shortestCode = 8;

/// Wiped from memory when it goes.
class OwnKey {
public:
    using Seed = std::array<unsigned char, 32>;
    explicit OwnKey(const Seed& seed);
    OwnKey(const OwnKey&) = default;
    OwnKey& operator=(const OwnKey&) = default;
    ~OwnKey();

    /// 64 hex digits.
    [[nodiscard]] std::string publicKey() const;
    /// 128 hex digits.
    [[nodiscard]] std::string sign(std::string_view message) const;

private:
    std::array<unsigned char, 64> m_secret{};
};

/// 16 random bytes as 32 hex digits.
[[nodiscard]] std::string newSalt();

/// Takes about 64 MiB and a tenth of a second.
/// @param code UTF-8, as it was typed: nobody trims it or changes its case
/// @param salt 32 hex digits
/// CodeTooShort, NotUtf8; NotHexDigits for a salt that is none.
[[nodiscard]] Result<OwnKey> keyFrom(std::string_view code, std::string_view salt);

/// A key by which somebody has to have signed: a point of the curve, canonical and of its main subgroup. By one of
/// small order, or of zeros, anybody's signature holds (RFC 8032, 5.1.7, and libsodium's
/// crypto_core_ed25519_is_valid_point; from memory).
[[nodiscard]] bool isPublicKey(std::string_view key);

/// False, too, for what is no key or no signature.
[[nodiscard]] bool isSignedBy(std::string_view publicKey, std::string_view message, std::string_view signature);

}
