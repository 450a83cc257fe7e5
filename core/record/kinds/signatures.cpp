// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/signatures.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/written.h"

namespace crownring {

namespace {

constexpr std::size_t saltDigits = 32;
constexpr std::size_t keyDigits = 64;
constexpr std::size_t signatureDigits = 128;

/// So many hex digits, small.
std::string hexDigits(ObjectReader& reader, std::string_view key, std::size_t digits) {
    auto text = reader.text(key);
    if (text.size() != digits || text.find_first_not_of("0123456789abcdef") != std::string::npos)
        reader.refuse(key, EntryFault::NotHexDigits, {digits});
    return text;
}

}

std::optional<Proof> readProof(ObjectReader& reader) {
    std::optional<Proof> proof;
    reader.object("proof", [&](ObjectReader& inner) {
        proof = Proof{hexDigits(inner, "key", keyDigits), hexDigits(inner, "signature", signatureDigits)};
    });
    return proof;
}

void writeProof(nlohmann::json& into, const std::optional<Proof>& proof) {
    if (proof)
        into["proof"] = {{"key", proof->key}, {"signature", proof->signature}};
}

SignatoryCode Kind<SignatoryCode>::read(ObjectReader& reader) {
    SignatoryCode body;
    body.signatory = reader.name<PersonId>("signatory");
    body.salt = hexDigits(reader, "salt", saltDigits);
    body.key = hexDigits(reader, "key", keyDigits);
    body.proof = readProof(reader);
    body.reason = reader.optionalText("reason");
    return body;
}

void Kind<SignatoryCode>::write(nlohmann::json& into, const SignatoryCode& body) {
    into["signatory"] = body.signatory.text();
    into["salt"] = body.salt;
    into["key"] = body.key;
    writeProof(into, body.proof);
    writeText(into, "reason", body.reason);
}

}
