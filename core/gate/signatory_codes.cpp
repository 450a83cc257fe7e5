// SPDX-License-Identifier: GPL-3.0-or-later
#include "trust/signatory_codes.h"

#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/trust_fault.h"
#include "text/blank.h"
#include "trust/codes_told.h"
#include "trust/own_key.h"
#include "trust/proof.h"

#include <algorithm>

namespace crownring {

namespace {

/// @param said in the record, as `entry` with its place among the others
std::optional<Problem> judgedCode(const Entry& entry, const CodeSet& said, std::span<const CodeSet> codes, int line) {
    const auto refuse = [line](TrustFault fault, Arguments arguments, const char* key) {
        return Problem{fault, std::move(arguments), {{}, line, key}};
    };
    const auto& person = said.said.signatory;
    if (!isPublicKey(said.said.key))
        return refuse(TrustFault::NotAKey, {}, "key");
    const auto& proof = said.said.proof;
    const auto* before = inForce(codes, person.text(), said.number);
    if (!before)
        return proof ? std::optional(refuse(TrustFault::ProofOfNoCode, {person}, "proof")) : std::nullopt;
    if (!(before->stamp < said.stamp))
        return refuse(TrustFault::CodeBeforeTheOther, {before->stamp.at.on()}, entry.time ? "time" : "on");
    if (!proof)
        return refuse(TrustFault::CodeSetAlready, {person, before->stamp.at.on()}, "proof");
    const auto* prover = before;
    if (said.isByAnother()) {
        prover = inForce(codes, said.by, said.number);
        if (!prover)
            return refuse(TrustFault::SetterHasNoCode, {said.by}, "by");
        if (isBlank(said.said.reason))
            return refuse(TrustFault::SetByAnotherUnsaid, {person}, "reason");
    }
    if (proof->key != prover->said.key)
        return refuse(TrustFault::ProofByAnotherKey, {prover->said.signatory}, "proof");
    if (!holds(*proof, provenDigest(entry), Purpose::Code))
        return refuse(TrustFault::ProofFails, {prover->said.signatory}, "proof");
    return std::nullopt;
}

}

Findings askSignatoryCodes(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto root = amendedRoot(batch.journal, entry);
        if (!root)
            return tl::unexpected(atLine(root.error(), line));
        const auto* amended = *root ? std::get_if<SignatoryCode>(&(*root)->entry.body) : nullptr;
        if (amended && !(*root)->unread)
            problems.push_back(
                Problem{TrustFault::CodeIsFixed,
                        {amended->signatory},
                        {{}, line, std::holds_alternative<EntryVoided>(entry.body) ? "voids" : "replaces"}});
        if (!std::holds_alternative<SignatoryCode>(entry.body))
            continue;
        const auto codes = codesTold(batch.books);
        if (!codes)
            return tl::unexpected(atLine(codes.error(), line));
        const auto said = std::ranges::find(*codes, entry.id, &CodeSet::entry);
        if (said == codes->end()) // voided in the same batch
            continue;
        if (auto problem = judgedCode(entry, *said, *codes, line))
            problems.push_back(std::move(*problem));
    }
    return problems;
}

}
