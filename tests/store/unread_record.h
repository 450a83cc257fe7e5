// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Records as the programs before schema 3 could leave them: with an entry in their chain that our reader refuses,
/// since they did not read again what they wrote.

#include "record/chain/chain.h"
#include "store/connection/statement.h"

#include <nlohmann/json.hpp>

#include <string>

namespace crownring::testing {

/// Makes the file one of schema 2 again: whoever opens it brings it to today's.
inline void leaveToSchema2(const Connection& connection) {
    for (const auto* undo : {"DROP INDEX cleared_in_visit",
                             "ALTER TABLE defect_mark DROP COLUMN cleared_in",
                             "ALTER TABLE defect_mark DROP COLUMN raised",
                             "DROP TABLE part",
                             "ALTER TABLE kit_flight DROP COLUMN carried",
                             "ALTER TABLE occurrence DROP COLUMN carried",
                             "DROP INDEX kit_flight_of_balloon",
                             "ALTER TABLE kit_flight DROP COLUMN balloon_no",
                             "ALTER TABLE done DROP COLUMN expires",
                             "DROP TABLE service",
                             "DROP TABLE renaming",
                             "DROP INDEX done_under",
                             "DROP TABLE tally",
                             "DROP TABLE flown",
                             "ALTER TABLE name DROP COLUMN mark",
                             "DROP TABLE closing",
                             "DROP TABLE revocation",
                             "DROP TABLE opening",
                             "DROP TABLE approval",
                             "ALTER TABLE done DROP COLUMN ref",
                             "ALTER TABLE done DROP COLUMN paper",
                             "DROP TABLE repair",
                             "DROP TABLE fabric_stated",
                             "DROP TABLE reading",
                             "CREATE TABLE reading (item_no INTEGER NOT NULL REFERENCES name, at INTEGER NOT NULL,"
                             " entry_id TEXT NOT NULL, PRIMARY KEY (item_no, at, entry_id)) STRICT, WITHOUT ROWID",
                             "ALTER TABLE defect_mark DROP COLUMN reading_id",
                             "ALTER TABLE occurrence DROP COLUMN celsius",
                             "ALTER TABLE occurrence DROP COLUMN lasted",
                             "DELETE FROM migration WHERE version > 2"})
        connection.run(QString::fromLatin1(undo));
    connection.run(QStringLiteral("PRAGMA user_version = 2"));
}

/// Writes `text`, canonical JSON with an id, at the end of the journal: linked into the chain of `writer`, who has one
/// already, and projected where such a program projected it. @pre nobody else has the record open
inline void writeUnread(const std::string& file, const std::string& text, const char* writer = "tester") {
    const auto said = nlohmann::json::parse(text);
    const auto id = said.at("id").get<std::string>();
    const auto kind = said.at("entry").get<std::string>();
    const auto on = said.at("on").get<std::string>();
    const Connection connection(file, Access::ReadWrite);
    Transaction transaction(connection);
    Statement head(connection,
                   "SELECT writer_no, last_sequence, last_hash, (SELECT MAX(entry_no) FROM entry) FROM writer"
                   " WHERE writer_id = ?");
    head.run(std::string(writer)).next();
    const auto number = head.read<std::int64_t>();
    const auto sequence = head.read<std::int64_t>() + 1;
    const auto previous = head.read<QByteArray>();
    const auto entry = head.read<std::int64_t>() + 1;
    head.finish();
    Link link{WriterId(writer), static_cast<std::uint64_t>(sequence), "2026-10-01T08:00:00Z", {}};
    std::copy(previous.begin(), previous.end(), link.previous.begin());
    const auto hash = entryHash(link, text);
    const QByteArray bytes(reinterpret_cast<const char*>(hash.data()), static_cast<qsizetype>(hash.size()));
    Statement(connection,
              "INSERT INTO entry (entry_no, entry_id, kind, dated_on, writer_no, sequence, recorded_at, hash,"
              " body) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .run(entry, id, kind, on, number, sequence, link.recordedAt, bytes, text);
    Statement(connection, "UPDATE writer SET last_sequence = ?, last_hash = ? WHERE writer_no = ?")
        .run(sequence, bytes, number);
    if (kind == "programme.adopted") {
        auto bound = said;
        bound.erase("document");
        Statement(connection, "INSERT INTO adoption (at, entry_id, programme, digest, bound, document)"
                              " VALUES (?, ?, ?, ?, ?, ?)")
            .run(Moment::startOf(CivilDate::parse(on).value()).minutes(), id, said.at("programme").get<std::string>(),
                 said.at("digest").get<std::string>(), bound.dump(), said.at("document").dump());
    }
    if (kind == "entry.voided")
        Statement(connection, "INSERT INTO amendment (target_id, entry_no) VALUES (?, ?)")
            .run(said.at("voids").get<std::string>(), entry);
    leaveToSchema2(connection);
    transaction.commit();
}

/// An adoption of a programme of the shelf that names the item E1 twice.
inline std::string adoptedTwice(const std::string& document) {
    const auto programme = nlohmann::json::parse(document);
    return nlohmann::json{{"entry", "programme.adopted"},           {"id", "twice"},         {"on", "2024-01-02"},
                          {"programme", programme.at("programme")}, {"items", {"E1", "E1"}}, {"document", programme},
                          {"digest", hex(sha256(programme.dump()))}}
        .dump();
}

}
