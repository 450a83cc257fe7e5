// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verify/pages.h"

#include "record/chain/chain.h"
#include "record/verdict_phrase.h"
#include "store/connection/statement.h"

namespace crownring {

std::optional<Phrase> pageFlaw(const Connection& connection) {
    if (connection.dialect() != Dialect::Sqlite)
        return std::nullopt;
    const auto pages = connection.ask(QStringLiteral("PRAGMA integrity_check(1)"));
    if (pages != QStringLiteral("ok"))
        return Phrase{VerdictPhrase::FileDamaged, {pages.simplified().toStdString()}};
    const auto reference = connection.ask(QStringLiteral("PRAGMA foreign_key_check"));
    return reference.isEmpty() ? std::nullopt
                               : std::optional(Phrase{VerdictPhrase::ReferenceDangles, {reference.toStdString()}});
}

std::optional<std::string> pictureFlaw(const Connection& connection) {
    Statement rows(connection, "SELECT digest, bytes FROM picture ORDER BY digest");
    rows.run();
    while (rows.next()) {
        auto digest = rows.read<std::string>();
        if (hex(sha256(rows.read<QByteArray>().toStdString())) != digest)
            return digest;
    }
    return std::nullopt;
}

}
