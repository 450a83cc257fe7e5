// SPDX-License-Identifier: GPL-3.0-or-later
#include "trust/own_key.h"

#include "problem/faults/entry_fault.h"
#include "problem/faults/trust_fault.h"
#include "text/utf8.h"

#include <sodium.h>

#include <new>
#include <optional>

namespace crownring {

namespace {

/// Never to be changed: keys that the record holds were made with them. They are libsodium's for what a person waits
/// for.
constexpr unsigned long long passes = 2;
constexpr std::size_t memory = 64ULL * 1024 * 1024;
static_assert(passes == crypto_pwhash_argon2id_OPSLIMIT_INTERACTIVE);
static_assert(memory == crypto_pwhash_argon2id_MEMLIMIT_INTERACTIVE);

template <std::size_t Size>
using Bytes = std::array<unsigned char, Size>;
using Salt = Bytes<crypto_pwhash_SALTBYTES>;
using PublicKey = Bytes<crypto_sign_PUBLICKEYBYTES>;
using SignatureBytes = Bytes<crypto_sign_BYTES>;

static_assert(crypto_sign_SEEDBYTES == std::tuple_size_v<OwnKey::Seed>);

const unsigned char* bytesOf(std::string_view text) { return reinterpret_cast<const unsigned char*>(text.data()); }

template <class Bytes>
std::string hexOf(const Bytes& bytes) {
    std::string text(2 * bytes.size() + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

template <class Bytes>
std::optional<Bytes> fromHex(std::string_view text) {
    Bytes bytes{};
    std::size_t read = 0;
    const char* end = nullptr;
    if (text.size() != 2 * bytes.size() ||
        sodium_hex2bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, &read, &end) != 0 ||
        read != bytes.size())
        return std::nullopt;
    return bytes;
}

}

OwnKey::OwnKey(const Seed& seed) {
    PublicKey ours{};
    crypto_sign_seed_keypair(ours.data(), m_secret.data(), seed.data());
}

OwnKey::~OwnKey() { sodium_memzero(m_secret.data(), m_secret.size()); }

std::string OwnKey::publicKey() const {
    PublicKey ours{};
    crypto_sign_ed25519_sk_to_pk(ours.data(), m_secret.data());
    return hexOf(ours);
}

std::string OwnKey::sign(std::string_view message) const {
    SignatureBytes signature{};
    crypto_sign_detached(signature.data(), nullptr, bytesOf(message), message.size(), m_secret.data());
    return hexOf(signature);
}

std::string newSalt() {
    Salt salt{};
    static_cast<void>(sodium_init());
    randombytes_buf(salt.data(), salt.size());
    return hexOf(salt);
}

Result<OwnKey> keyFrom(std::string_view code, std::string_view salt) {
    if (!isUtf8(code))
        return problem(EntryFault::NotUtf8);
    if (characters(code) < shortestCode)
        return problem(TrustFault::CodeTooShort, {shortestCode});
    const auto salted = fromHex<Salt>(salt);
    if (!salted)
        return problem(EntryFault::NotHexDigits, {2 * crypto_pwhash_SALTBYTES});
    static_cast<void>(sodium_init());
    OwnKey::Seed seed{};
    if (crypto_pwhash(seed.data(), seed.size(), code.data(), code.size(), salted->data(), passes, memory,
                      crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw std::bad_alloc(); // the only way in which it fails
    const OwnKey key(seed);
    sodium_memzero(seed.data(), seed.size());
    return key;
}

bool isPublicKey(std::string_view key) {
    const auto point = fromHex<PublicKey>(key);
    return point && crypto_core_ed25519_is_valid_point(point->data()) == 1;
}

bool isSignedBy(std::string_view publicKey, std::string_view message, std::string_view signature) {
    const auto key = fromHex<PublicKey>(publicKey);
    const auto signedWith = fromHex<SignatureBytes>(signature);
    return key && signedWith &&
           crypto_sign_verify_detached(signedWith->data(), bytesOf(message), message.size(), key->data()) == 0;
}

}
