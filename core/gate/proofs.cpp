// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/trust_fault.h"
#include "trust/codes_told.h"
#include "trust/proof.h"

namespace crownring {

namespace {

/// A void of a certificate is signed by whoever writes it; any other is not.
Result<std::optional<SignedFor>> signedIn(Journal& journal, const Entry& entry) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return signedFor(entry);
    const auto root = journal.line(taken->voids);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || !std::holds_alternative<ReviewSigned>((*root)->entry.body))
        return std::nullopt;
    return SignedFor{PersonId(entry.by), Purpose::Revocation};
}

/// The signature is over what it covers, too.
bool lacksSeal(const Entry& entry) {
    if (const auto* closed = std::get_if<InspectionClosed>(&entry.body))
        return !closed->seal;
    const auto* incomplete = std::get_if<ReleaseIncomplete>(&entry.body);
    return incomplete && !incomplete->seal;
}

std::optional<Problem> judged(const Entry& entry, const SignedFor& by, const CodeSet* code,
                              const std::optional<Proof>& proof, int line) {
    const Where where{{}, line, "proof"};
    if (!code)
        return proof ? std::optional(Problem{TrustFault::ProofOfNoCode, {by.person}, where}) : std::nullopt;
    if (!proof)
        return Problem{TrustFault::ProofMissing, {by.person, code->stamp.at.on()}, where};
    if (proof->key != code->said.key)
        return Problem{TrustFault::ProofByAnotherKey, {by.person}, where};
    if (lacksSeal(entry))
        return Problem{TrustFault::ProofWithoutSeal, {}, {{}, line, "seal"}};
    if (!holds(*proof, provenDigest(entry), by.purpose))
        return Problem{TrustFault::ProofFails, {by.person}, where};
    return std::nullopt;
}

}

Findings askProofs(const Batch& batch) {
    std::vector<Problem> problems;
    std::optional<std::vector<CodeSet>> codes;
    for (const auto& [entry, line] : batch.entries) {
        if (std::holds_alternative<SignatoryCode>(entry.body))
            continue; // `askSignatoryCodes`
        const auto by = signedIn(batch.journal, entry);
        if (!by)
            return tl::unexpected(atLine(by.error(), line));
        const auto proof = proofIn(entry);
        if (!*by) {
            if (proof)
                problems.push_back(Problem{TrustFault::ProofOfNothing, {}, {{}, line, "proof"}});
            continue;
        }
        if (!codes) {
            auto told = codesTold(batch.books);
            if (!told)
                return tl::unexpected(atLine(told.error(), line));
            codes = std::move(*told);
        }
        const auto written = batch.journal.line(entry.id);
        if (!written)
            return tl::unexpected(atLine(written.error(), line));
        if (!*written)
            return tl::unexpected(Problem{BenchFault::NoEntry, {entry.id}, {{}, line, {}}});
        const auto* code = inForce(*codes, (*by)->person.text(), (*written)->number);
        if (auto problem = judged(entry, **by, code, proof, line))
            problems.push_back(std::move(*problem));
    }
    return problems;
}

}
