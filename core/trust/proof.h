// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a proof is over. Signed is "crownring.proof.v1", a byte 0x00, the purpose, a byte 0x00, and the SHA-256 of the
/// entry's canonical text without the proof: its id, its day, who signs as what, every word, and the seal over what it
/// covers. So a proof serves one entry, of one kind, and no other.

#include "record/chain/chain.h"
#include "record/entry.h"
#include "trust/own_key.h"

#include <optional>
#include <string_view>

namespace crownring {

enum class Purpose { Closing, Incomplete, Return, Review, Revocation, Code };
/// "closing" …; stands in what is signed, so it never changes.
[[nodiscard]] std::string_view purposeName(Purpose purpose);

struct SignedFor {
    PersonId person;
    Purpose purpose = Purpose::Closing;
};

/// Who signs with this entry, and what; nothing for what nobody signs, and for a void: what that takes back decides.
[[nodiscard]] std::optional<SignedFor> signedFor(const Entry& entry);

/// The proof that it carries; nothing where there is none, and for kinds that have none.
[[nodiscard]] std::optional<Proof> proofIn(const Entry& entry);
/// @pre it is of a kind that may carry one
void putProof(Entry& entry, std::optional<Proof> proof);

/// SHA-256 of its canonical text without the proof.
[[nodiscard]] Digest provenDigest(Entry entry);

[[nodiscard]] Proof prove(const OwnKey& key, const Digest& digest, Purpose purpose);
[[nodiscard]] bool holds(const Proof& proof, const Digest& digest, Purpose purpose);

}
