// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Codes of the people of a test, and what they prove with them. Working a key out of a code takes long, so here keys
/// are made of a letter; what becomes of a code is told by the tests of core/acts and core/trust.

#include "record/entry_json.h"
#include "trust/proof.h"

#include <string>

namespace crownring::testing {

inline OwnKey keyNamed(char name) {
    OwnKey::Seed seed{};
    seed.fill(static_cast<unsigned char>(name));
    return OwnKey(seed);
}

/// That a key is that person's from now on; proven by another where one is named.
inline std::string codeOf(const std::string& person, char key, char provenBy = 0, const std::string& id = {},
                          const std::string& on = "2026-01-01", const std::string& by = {},
                          const std::string& reason = {}) {
    Entry entry;
    entry.id = EntryId(id.empty() ? "code-" + person + key : id);
    entry.on = CivilDate::parse(on).value();
    entry.by = by;
    entry.body = SignatoryCode{PersonId(person), std::string(32, 'a'), keyNamed(key).publicKey(), {}, reason};
    if (provenBy != 0)
        putProof(entry, prove(keyNamed(provenBy), provenDigest(entry), Purpose::Code));
    return canonicalText(entry);
}

/// A line with a proof of it by a key. @pre it has an id and is of a kind that is signed
inline std::string proven(const std::string& line, char key, std::optional<Purpose> purpose = {}) {
    auto entry = entryFrom(line).value();
    const auto by = signedFor(entry);
    putProof(entry, prove(keyNamed(key), provenDigest(entry), purpose ? *purpose : by->purpose));
    return canonicalText(entry);
}

}
