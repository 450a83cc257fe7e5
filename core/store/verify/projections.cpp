// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verify/projections.h"

#include "store/schema/migration.h"
#include "store/verify/replay.h"
#include "store/verify/table_rows.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <algorithm>
#include <set>

namespace crownring {

namespace {

/// Which entry stands as amending which.
std::set<std::pair<std::string, std::int64_t>> notedAmendments(const Connection& connection) {
    std::set<std::pair<std::string, std::int64_t>> noted;
    QSqlQuery query(connection.database());
    query.setForwardOnly(true);
    const auto statement = QStringLiteral("SELECT target_id, entry_no FROM amendment");
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    while (query.next())
        noted.emplace(query.value(0).toString().toStdString(), query.value(1).toLongLong());
    return noted;
}

std::optional<ProjectionFlaw> amendmentFlaw(const Connection& connection, const AmendmentTargets& targets) {
    const auto noted = notedAmendments(connection);
    std::set<std::pair<std::string, std::int64_t>> given;
    for (const auto& [target, number] : targets)
        given.emplace(target.text(), number);
    const auto differs = [](const auto& a, const auto& b) -> std::optional<std::pair<std::string, std::int64_t>> {
        for (const auto& each : a)
            if (!b.contains(each))
                return each;
        return std::nullopt;
    };
    const auto lacking = differs(given, noted);
    const auto extra = lacking ? std::nullopt : differs(noted, given);
    if (!lacking && !extra)
        return std::nullopt;
    const auto& row = lacking ? *lacking : *extra;
    return ProjectionFlaw{"amendment", EntryId(row.first), lacking.has_value(),
                          "target " + row.first + ", entry " + std::to_string(row.second)};
}

ProjectionFlaw firstDifference(const std::string& table, const std::vector<ProjectedRow>& held,
                               const std::vector<ProjectedRow>& given) {
    auto here = held.begin();
    auto there = given.begin();
    while (here != held.end() && there != given.end() && *here == *there) {
        ++here;
        ++there;
    }
    const bool lacking = here == held.end() || (there != given.end() && *there < *here);
    const auto& row = lacking ? *there : *here;
    return {table, EntryId(row.entry), lacking, plainly(row)};
}

}

std::optional<ProjectionFlaw> projectionFlaw(const Connection& connection, JournalTable& journal,
                                             const std::function<bool(double)>& progress) {
    const Connection replayed(":memory:", Access::ReadWrite);
    migrate(replayed, migrationSteps(Dialect::Sqlite));
    Names names(replayed);
    Projector projector(replayed, names);
    bool stopped = false;
    AmendmentTargets targets;
    {
        Transaction transaction(replayed);
        targets = replay(journal, projector, [&] {
            stopped = stopped || (progress && !progress(0.5));
            return !stopped;
        });
        transaction.commit();
    }
    if (stopped)
        return std::nullopt;
    if (auto flaw = amendmentFlaw(connection, targets))
        return flaw;
    const auto held = nameTexts(connection);
    const auto given = nameTexts(replayed);
    for (const auto& table : Projector::tables()) {
        if (table == "amendment")
            continue;
        if (digestOf(connection, std::string(table), held) != digestOf(replayed, std::string(table), given))
            return firstDifference(std::string(table), rowsOf(connection, std::string(table), held),
                                   rowsOf(replayed, std::string(table), given));
    }
    return std::nullopt;
}

}
