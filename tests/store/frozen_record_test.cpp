// SPDX-License-Identifier: GPL-3.0-or-later

/// Records as earlier programs left them, one for each version of the schema: tests/store/frozen/schema-N.crownring.
/// The program whose newest schema was N made it and it is never made again:
///     crownringctl --record made --writer frozen post tests/store/frozen/entries.jsonl
///     crownringctl --record made backup tests/store/frozen/schema-N.crownring

#include "record/chain.h"
#include "scratch.h"
#include "store/connection.h"
#include "store/migration.h"

#include <QtCore/QDir>
#include <QtSql/QSqlQuery>
#include <QtSql/QSqlRecord>
#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

const QDir frozen(QStringLiteral(CROWNRING_SOURCE_DIR "/tests/store/frozen"));

std::string entriesText() {
    QFile file(frozen.filePath(QStringLiteral("entries.jsonl")));
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("no entries");
    return file.readAll().toStdString();
}

QStringList tablesOf(const Connection& connection) {
    QStringList tables;
    QSqlQuery query(connection.database());
    query.exec(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name"));
    while (query.next())
        tables += query.value(0).toString();
    return tables;
}

/// All rows of all tables as lines in order, without what tells when they were written.
QStringList contentOf(const std::string& file) {
    const QStringList ofTheMoment{"recorded_at", "hash", "last_hash"};
    const Connection connection(file, Access::ReadOnly);
    QStringList content;
    for (const auto& table : tablesOf(connection)) {
        if (table == QStringLiteral("migration"))
            continue;
        QSqlQuery rows(connection.database());
        rows.exec(QStringLiteral("SELECT * FROM ") + table);
        while (rows.next()) {
            QStringList line{table};
            for (int column = 0; column < rows.record().count(); ++column)
                if (!ofTheMoment.contains(rows.record().fieldName(column)))
                    line += rows.isNull(column) ? QStringLiteral("NULL") : rows.value(column).toString();
            content += line.join(QLatin1Char('|'));
        }
    }
    content.sort();
    return content;
}

}

class FrozenRecordTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_copy;

    static void eachVersion() {
        QTest::addColumn<int>("version");
        for (const auto& step : migrationSteps(Dialect::Sqlite))
            QTest::addRow("schema %d", step.version) << step.version;
    }
    static QString fileOf(int version) { return frozen.filePath(QStringLiteral("schema-%1.crownring").arg(version)); }

private slots:
    void init() {
        QFETCH(int, version);
        m_copy = m_folder.filePath(QLatin1String(QTest::currentTestFunction()) + QString::number(version));
        QVERIFY2(QFile::copy(fileOf(version), m_copy), "each schema leaves a frozen record");
        QVERIFY(QFile::setPermissions(m_copy, QFile::ReadOwner | QFile::WriteOwner));
    }
    void holdsEveryKindAndARowInEveryTable_data() { eachVersion(); }
    void holdsEveryKindAndARowInEveryTable() {
        QFETCH(int, version);
        const Connection connection(m_copy.toStdString(), Access::ReadOnly);
        QCOMPARE(schemaVersion(connection), version);
        for (const auto& table : tablesOf(connection))
            QVERIFY2(connection.ask(QStringLiteral("SELECT COUNT(*) FROM ") + table).toInt() > 0, qPrintable(table));
        QVERIFY(connection.ask("SELECT COUNT(DISTINCT kind) FROM entry").toInt() >= 11); // as many as schema 1 knew
    }
    void theStepsThatMadeItWereNotEditedSince_data() { eachVersion(); }
    void theStepsThatMadeItWereNotEditedSince() {
        QFETCH(int, version);
        const Connection connection(m_copy.toStdString(), Access::ReadOnly);
        for (const auto& step : migrationSteps(Dialect::Sqlite))
            if (step.version <= version)
                QCOMPARE(connection
                             .ask(QStringLiteral("SELECT checksum FROM migration WHERE version = %1").arg(step.version))
                             .toStdString(),
                         hex(sha256(step.text)));
    }
    void opensAndAnswersAsARecordPostedToday_data() { eachVersion(); }
    void opensAndAnswersAsARecordPostedToday() {
        const auto fresh = m_folder.filePath(QStringLiteral("fresh")).toStdString();
        {
            const auto made = openRecord(fresh, OpenMode::OrCreate, WriterId("frozen"));
            posted(**made, entriesText());
            const auto old = openRecord(m_copy.toStdString(), OpenMode::Existing, WriterId("frozen"));
            QVERIFY2(old, old ? "" : text(old.error()).c_str());
            QCOMPARE((*old)->readOnlyReason(), std::string());
            const auto verdict = (*old)->verify().value();
            QVERIFY2(verdict.intact, verdict.reason.c_str());
            QCOMPARE(verdict.entries, (*made)->verify().value().entries);
            QCOMPARE((*old)->facts({}, day("2024-07-01")).value(), (*made)->facts({}, day("2024-07-01")).value());
            QCOMPARE((*old)->questions().value(), (*made)->questions().value());
        }
        QCOMPARE(contentOf(m_copy.toStdString()), contentOf(fresh));
        QFile::remove(QString::fromStdString(fresh));
        // And it can be written on, and made anew from its journal.
        const auto old = openRecord(m_copy.toStdString(), OpenMode::Existing);
        const auto before = contentOf(m_copy.toStdString());
        QVERIFY((*old)->rebuild());
        QCOMPARE(contentOf(m_copy.toStdString()), before);
        posted(**old, R"({"entry":"flight.logged","on":"2024-07-01","balloon":"QE-ONE","minutes":60})");
        QVERIFY((*old)->verify().value().intact);
    }
};

QTEST_GUILESS_MAIN(FrozenRecordTest)
#include "frozen_record_test.moc"
