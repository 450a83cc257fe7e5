// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/own_code.h"

#include "acts/post.h"
#include "problem/faults/trust_fault.h"
#include "record/new_id.h"
#include "trust/codes_told.h"
#include "trust/proof.h"

#include <algorithm>

namespace crownring {

namespace {

/// The key behind a code that the record keeps, where it is that code.
Result<OwnKey> keyOf(const CodeSet& kept, const std::string& code) {
    auto key = keyFrom(code, kept.said.salt);
    if (!key || key->publicKey() != kept.said.key)
        return problem(TrustFault::WrongCode, {kept.said.signatory});
    return key;
}

Entry codeEntry(const PersonId& signatory, const std::string& by, CivilDate on) {
    Entry entry;
    entry.id = newEntryId();
    entry.on = on;
    entry.by = by;
    entry.body = SignatoryCode{signatory, newSalt(), {}, {}, {}};
    return entry;
}

/// Puts the key that the code gives into an entry that sets it.
Result<OwnKey> keyed(Entry& entry, const std::string& code) {
    auto& body = std::get<SignatoryCode>(entry.body);
    auto key = keyFrom(code, body.salt);
    if (key)
        body.key = key->publicKey();
    return key;
}

struct ToSign {
    Entry* entry = nullptr;
    SignedFor by;
};

ToSign signatureIn(std::vector<NumberedEntry>& entries) {
    for (auto& [entry, line] : entries) {
        if (auto by = signedFor(entry))
            return {&entry, std::move(*by)};
        if (std::holds_alternative<EntryVoided>(entry.body))
            return {&entry, {PersonId(entry.by), Purpose::Revocation}};
    }
    return {};
}

template <class Of>
Results<Of> failed(Problem problem) {
    return tl::unexpected(std::vector{std::move(problem)});
}

}

Results<Receipt> postSigned(Journal& journal, Books& books, std::vector<NumberedEntry> entries, const SaidCode& said) {
    const auto [signature, by] = signatureIn(entries);
    if (said.code.empty() || !signature)
        return post(journal, books, std::move(entries), {});
    const auto codes = codesTold(books);
    if (!codes)
        return failed<Receipt>(codes.error());
    const auto* kept = inForce(*codes, by.person.text());
    if (!kept && !said.setsFirst)
        return failed<Receipt>(Problem{TrustFault::NoCodeYet, {by.person}});
    auto first = codeEntry(by.person, by.person.text(), signature->on); // made before the signature: ids keep the order
    if (auto completed = complete(entries, books, {}); !completed)
        return tl::unexpected(std::move(completed.error()));
    const auto key = kept ? keyOf(*kept, said.code) : keyed(first, said.code);
    if (!key)
        return failed<Receipt>(key.error());
    if (signature->id.empty())
        signature->id = newEntryId();
    putProof(*signature, prove(*key, provenDigest(*signature), by.purpose));
    if (!kept)
        entries.insert(entries.begin(), {std::move(first), 0});
    return post(journal, books, std::move(entries), {});
}

Results<Receipt> setCode(Journal& journal, Books& books, const CodeSetting& setting) {
    const auto codes = codesTold(books);
    if (!codes)
        return failed<Receipt>(codes.error());
    auto entry = codeEntry(setting.signatory, setting.other.value_or(setting.signatory).text(), setting.on);
    entry.time = setting.time;
    std::get<SignatoryCode>(entry.body).reason = setting.reason;
    if (const auto key = keyed(entry, setting.code); !key)
        return failed<Receipt>(key.error());
    if (const auto* kept = inForce(*codes, setting.signatory.text())) {
        const auto* prover = setting.other ? inForce(*codes, setting.other->text()) : kept;
        if (!prover)
            return failed<Receipt>(Problem{TrustFault::SetterHasNoCode, {*setting.other}});
        const auto& code = setting.other ? setting.codeOfOther : setting.before;
        if (code.empty())
            return failed<Receipt>(Problem{TrustFault::CodeSetAlready, {setting.signatory, kept->stamp.at.on()}});
        const auto key = keyOf(*prover, code);
        if (!key)
            return failed<Receipt>(key.error());
        putProof(entry, prove(*key, provenDigest(entry), Purpose::Code));
    }
    return postOne(journal, books, std::move(entry));
}

}
