// SPDX-License-Identifier: GPL-3.0-or-later

/// Records as earlier programs left them, one for each version of the schema: tests/store/frozen/schema-N.crownring.
/// It holds entries-1.jsonl to entries-N.jsonl, each with the kinds that its version brought, and from 2 on a picture.
/// The program whose newest schema was N made it and it is never made again: this test leaves one where it is asked to,
///     CROWNRING_FREEZE=tests/store/frozen/schema-N.crownring store_frozen_record_test

#include "frozen_entries.h"
#include "said.h"
#include "scratch.h"
#include "store/accounts/account.h"
#include "store/connection/connection.h"
#include "store/schema/migration.h"
#include "test_class.h"

#include <QtCore/QDir>
#include <QtSql/QSqlQuery>
#include <QtSql/QSqlRecord>
#include <QtTest>

namespace frozen_record_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const Picture picture{"image/png", "a photograph"};
constexpr int firstWithPictures = 2;

std::unique_ptr<Record> madeToday(const std::string& file, int version) {
    auto record = openRecord(file, OpenMode::OrCreate, WriterId("frozen")).value();
    appendFrozen(*record, version);
    if (version >= firstWithPictures)
        static_cast<void>(record->keepPicture(picture).value());
    return record;
}

/// The ids of all entries of the bench, by what they are about.
QStringList toldBy(Record& record) {
    QStringList told;
    for (const auto subject : {Subject::Item, Subject::Balloon, Subject::Inspection, Subject::Defect, Subject::Person,
                               Subject::Tester, Subject::Type, Subject::Checklist}) {
        const auto lines = record.told({subject, {}, {}, day("2024-07-01")}).value();
        for (const auto& line : lines)
            told += QString::number(static_cast<int>(subject)) + QLatin1Char(' ') +
                    QString::fromStdString(line.entry.id.text());
    }
    return told;
}

int newestVersion() { return migrationSteps(Dialect::Sqlite).back().version; }

/// How many kinds of entries the program of that version knew.
int kindsKnownBy(int version) {
    return version == 1   ? 11
           : version == 2 ? 24
           : version < 5  ? 25
           : version < 6  ? 26
           : version < 7  ? 30
           : version < 9  ? 34
                          : 35;
}

QStringList tablesOf(const Connection& connection) {
    QStringList tables;
    QSqlQuery query(connection.database());
    query.exec(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name"));
    while (query.next())
        tables += query.value(0).toString();
    return tables;
}

/// What photographs come to is kept from the first one on that this version keeps.
const QString notOfPictures = QStringLiteral(" WHERE part <> %1").arg(static_cast<int>(Part::Pictures));

/// All rows of all tables as lines in order, without what tells when they were written or how names are numbered.
QStringList contentOf(const std::string& file) {
    const QStringList ofTheMoment{"recorded_at", "hash", "last_hash", "name_no", "mark", "row_sum"};
    const QStringList ofTheJournal{"entry_no", "writer_no"};
    const Connection connection(file, Access::ReadOnly);
    QHash<qlonglong, QString> names;
    QSqlQuery named(connection.database());
    named.exec(QStringLiteral("SELECT name_no, text FROM name"));
    while (named.next())
        names.insert(named.value(0).toLongLong(), named.value(1).toString());
    const auto textOf = [&](const QString& column, const QVariant& value) {
        if (value.isNull())
            return QStringLiteral("NULL");
        if (column.endsWith(QStringLiteral("_no")) && !ofTheJournal.contains(column))
            return names.value(value.toLongLong(), value.toString());
        return value.toString();
    };
    QStringList content;
    for (const auto& table : tablesOf(connection)) {
        if (table == QStringLiteral("migration"))
            continue;
        QSqlQuery rows(connection.database());
        rows.exec(QStringLiteral("SELECT * FROM ") + table +
                  (table == QStringLiteral("tally") ? notOfPictures : QString()));
        while (rows.next()) {
            QStringList line{table};
            for (int column = 0; column < rows.record().count(); ++column)
                if (const auto name = rows.record().fieldName(column); !ofTheMoment.contains(name))
                    line += textOf(name, rows.value(column));
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
    void initTestCase() {
        if (const auto file = qEnvironmentVariable("CROWNRING_FREEZE"); !file.isEmpty())
            QVERIFY(madeToday(m_folder.filePath(QStringLiteral("made")).toStdString(), newestVersion())
                        ->backUpTo(file.toStdString()));
    }
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
        QCOMPARE(connection.ask("SELECT COUNT(DISTINCT kind) FROM entry").toInt(), kindsKnownBy(version));
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
        QFETCH(int, version);
        const auto fresh = m_folder.filePath(QStringLiteral("fresh")).toStdString();
        {
            const auto made = madeToday(fresh, version);
            const auto old = openRecord(m_copy.toStdString(), OpenMode::Existing, WriterId("frozen"));
            QVERIFY2(old, old ? "" : text(old.error()).c_str());
            QVERIFY(!(*old)->readOnlyReason());
            const auto verdict = (*old)->verify().value();
            QVERIFY2(verdict.intact, verdict.reason ? spoken(*verdict.reason).c_str() : "");
            QCOMPARE(verdict.entries, made->verify().value().entries);
            QCOMPARE((*old)->facts({}, day("2024-07-01")).value(), made->facts({}, day("2024-07-01")).value());
            QCOMPARE((*old)->questions().value(), made->questions().value());
            QCOMPARE(toldBy(**old), toldBy(*made));
            QCOMPARE(fabricOf(**old, day("2024-07-01")), fabricOf(*made, day("2024-07-01")));
            if (version >= firstWithPictures)
                QCOMPARE((*old)->picture(hex(sha256(picture.bytes))).value(), std::optional(picture));
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

CROWNRING_TEST(FrozenRecordTest, QCoreApplication)

}

#include "frozen_record_test.moc"
