// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/scratch.h"
#include "test_class.h"
#include "writing/target.h"

#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <QtTest>
#include <sys/stat.h>

namespace target_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// "" where it may be written, else the name of the code.
QString refusal(const QString& file, Replace replace) {
    const auto why = whyNotWritten(file.toStdString(), replace);
    return why ? QString::fromStdString(std::string(codeName(why->code()))) : QString();
}

void write(const QString& file, const char* text) {
    QFile out(file);
    QVERIFY(out.open(QIODevice::WriteOnly));
    out.write(text);
}

}

/// Nothing that goes out is ever written over a record, what stands beside it, or another's database.
class TargetTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void whatIsNotThereMayBeWritten() {
        QCOMPARE(refusal(path("new.pdf"), Replace::Never), "");
        QCOMPARE(refusal(m_folder.path() + QLatin1Char('/'), Replace::Asked), "file-unwritable");
    }
    void aPlainFileIsReplacedWhenSomebodySaysSo() {
        write(path("old.pdf"), "%PDF-1.4");
        QCOMPARE(refusal(path("old.pdf"), Replace::Never), "file-exists");
        QCOMPARE(refusal(path("old.pdf"), Replace::Asked), "");
    }
    void aRecordNeverIs() {
        Scratch open;
        posted(*open.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})");
        const auto record = QString::fromStdString(open.file());
        for (const auto replace : {Replace::Never, Replace::Asked})
            for (const auto* beside : {"", "-wal", "-shm", "-journal"})
                QCOMPARE(refusal(record + QLatin1String(beside), replace), "file-unwritable");
        // Closed, it keeps nothing beside it; these names are its own all the same.
        open.record.reset();
        for (const auto* beside : {"", "-wal", "-shm", "-journal"})
            QCOMPARE(refusal(record + QLatin1String(beside), Replace::Asked), "file-unwritable");
        QVERIFY(QFile::link(record, path("link.pdf")));
        QCOMPARE(refusal(path("link.pdf"), Replace::Asked), "file-unwritable");
    }
    void aDatabaseOfAnotherNeverIs() {
        {
            auto database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("other"));
            database.setDatabaseName(path("other.db"));
            QVERIFY(database.open() && QSqlQuery(database).exec(QStringLiteral("CREATE TABLE t (x)")));
            database.close();
        }
        QSqlDatabase::removeDatabase(QStringLiteral("other"));
        QCOMPARE(refusal(path("other.db"), Replace::Asked), "file-unwritable");
    }
    void whatIsNoPlainFileNeverIs() {
        QCOMPARE(refusal(m_folder.path(), Replace::Asked), "file-unwritable");
        QCOMPARE(refusal(QStringLiteral("/dev/null"), Replace::Asked), "file-unwritable");
        QCOMPARE(::mkfifo(qPrintable(path("pipe")), 0600), 0);
        QCOMPARE(refusal(path("pipe"), Replace::Asked), "file-unwritable");
        QVERIFY(QFile::link(path("nowhere"), path("lost")));
        QCOMPARE(refusal(path("lost"), Replace::Asked), "file-unwritable");
    }
};

CROWNRING_TEST(TargetTest, QCoreApplication)

}

#include "target_test.moc"
