// SPDX-License-Identifier: GPL-3.0-or-later
#include "trust/proof.h"

#include "record/chain/chain.h"
#include "record/entry_json.h"

#include <array>
#include <concepts>

namespace crownring {

namespace {

constexpr std::string_view domain = "crownring.proof.v1";

std::string messageFor(const Digest& digest, Purpose purpose) {
    std::string message(domain);
    message.push_back('\0');
    message.append(purposeName(purpose));
    message.push_back('\0');
    message.append(reinterpret_cast<const char*>(digest.data()), digest.size());
    return message;
}

template <class Said>
concept MayBeProven = requires(Said said) {
    { said.proof } -> std::same_as<std::optional<Proof>&>; // a limit's proof is a load
};

}

std::string_view purposeName(Purpose purpose) {
    constexpr std::array<std::string_view, 6> names = {"closing", "incomplete-release", "return",
                                                       "review",  "revocation",         "code"};
    return names[static_cast<std::size_t>(purpose)];
}

std::optional<SignedFor> signedFor(const Entry& entry) {
    if (const auto* closed = std::get_if<InspectionClosed>(&entry.body)) {
        if (closed->outcome == Outcome::Abandoned || !closed->signatory)
            return std::nullopt;
        return SignedFor{*closed->signatory, Purpose::Closing};
    }
    if (const auto* incomplete = std::get_if<ReleaseIncomplete>(&entry.body))
        return SignedFor{incomplete->signatory, Purpose::Incomplete};
    if (const auto* approved = std::get_if<ReturnApproved>(&entry.body))
        return SignedFor{approved->signatory, Purpose::Return};
    if (const auto* review = std::get_if<ReviewSigned>(&entry.body))
        return SignedFor{review->reviewer, Purpose::Review};
    if (std::holds_alternative<ReleaseRevoked>(entry.body))
        return SignedFor{PersonId(entry.by), Purpose::Revocation};
    return std::nullopt;
}

std::optional<Proof> proofIn(const Entry& entry) {
    return std::visit(
        []<class Said>(const Said& said) -> std::optional<Proof> {
            if constexpr (MayBeProven<Said>)
                return said.proof;
            else
                return std::nullopt;
        },
        entry.body);
}

void putProof(Entry& entry, std::optional<Proof> proof) {
    std::visit(
        [&]<class Said>(Said& said) {
            if constexpr (MayBeProven<Said>)
                said.proof = std::move(proof);
        },
        entry.body);
}

Digest provenDigest(Entry entry) {
    putProof(entry, std::nullopt);
    return sha256(canonicalText(entry));
}

Proof prove(const OwnKey& key, const Digest& digest, Purpose purpose) {
    return {key.publicKey(), key.sign(messageFor(digest, purpose))};
}

bool holds(const Proof& proof, const Digest& digest, Purpose purpose) {
    return isSignedBy(proof.key, messageFor(digest, purpose), proof.signature);
}

}
