// SPDX-License-Identifier: GPL-3.0-or-later
/// A backup gives way to a newer one when somebody says so, and nothing goes with it.
#include "said.h"
#include "scratch.h"
#include "store/connection/connection.h"
#include "test_class.h"

#include <QtCore/QDir>
#include <QtTest>

namespace older_copy_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

std::int64_t entriesIn(const std::string& file) {
    return openRecord(file, OpenMode::Existing).value()->verify().value().entries;
}

QStringList namesBeside(const Scratch& scratch) {
    const QFileInfo file(QString::fromStdString(scratch.file()));
    auto names = file.dir().entryList(QDir::Files | QDir::Hidden);
    names.removeIf([&](const QString& name) { return name.startsWith(file.fileName()); });
    return names;
}

}

class OlderCopyTest : public QObject {
    Q_OBJECT
private slots:
    void anOlderCopyGivesWay() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        const auto copy = scratch.beside("copy");
        QVERIFY(scratch.record->backUpTo(copy));
        posted(*scratch.record, flight);
        QCOMPARE(scratch.record->backUpTo(copy).error().code(), Code::FileExists);
        QCOMPARE(entriesIn(copy), 1); // and opening it leaves it in write-ahead mode
        const auto again = scratch.record->backUpTo(copy, Replace::Asked);
        QVERIFY2(again, again ? "" : text(again.error()).c_str());
        QCOMPARE(namesBeside(scratch), QStringList("copy"));
        QCOMPARE(entriesIn(copy), 2);
        QVERIFY(scratch.record->backUpTo(copy, Replace::Asked)); // of the same again
    }
    void whatHoldsMoreStays() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        const auto copy = scratch.beside("copy");
        QVERIFY(scratch.record->backUpTo(copy));
        {
            const auto other = openRecord(copy, OpenMode::Existing, WriterId("second")).value();
            posted(*other, flight); // somebody has gone on with the copy
        }
        posted(*scratch.record, flight);
        const auto refused = scratch.record->backUpTo(copy, Replace::Asked);
        QCOMPARE(refused.error().code(), Code::FileUnwritable);
        QVERIFY(spokenMessage(refused.error()).find("entries") != std::string::npos);
        QCOMPARE(entriesIn(copy), 2);
        QCOMPARE(openRecord(copy, OpenMode::Existing).value()->lines({}).value().front().writer, WriterId("second"));
    }
    void aPhotographIsMissed() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        const auto copy = scratch.beside("copy");
        QVERIFY(scratch.record->backUpTo(copy));
        static_cast<void>(
            openRecord(copy, OpenMode::Existing).value()->keepPicture({"image/png", "a photograph"}).value());
        const auto refused = scratch.record->backUpTo(copy, Replace::Asked);
        QVERIFY(spokenMessage(refused.error()).find("photographs") != std::string::npos);
    }
    void whatIsOpenStays() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        const auto copy = scratch.beside("copy");
        QVERIFY(scratch.record->backUpTo(copy));
        const auto other = openRecord(copy, OpenMode::Existing).value();
        const auto refused = scratch.record->backUpTo(copy, Replace::Asked);
        QCOMPARE(refused.error().code(), Code::FileUnwritable);
        QVERIFY(spokenMessage(refused.error()).find("open") != std::string::npos);
        posted(*other, flight);
        QCOMPARE(other->verify().value().entries, 2);
    }
    void theRecordItselfAndOthersStay() {
        Scratch scratch, another;
        posted(*scratch.record, balloon);
        posted(*another.record, balloon);
        another.record.reset();
        Connection(scratch.beside("recipes.db"), Access::ReadWrite).run("CREATE TABLE recipe (name TEXT)");
        QVERIFY(QFile::link(QString::fromStdString(scratch.file()), QString::fromStdString(scratch.beside("link"))));
        for (const auto& file :
             {scratch.file(), scratch.file() + "-wal", scratch.file() + "-shm", scratch.file() + "-journal",
              scratch.beside("link"), scratch.beside("recipes.db"), another.file()})
            for (const auto replace : {Replace::Never, Replace::Asked}) {
                const auto refused = scratch.record->backUpTo(file, replace);
                QVERIFY2(!refused && refused.error().code() == Code::FileUnwritable, file.c_str());
            }
        posted(*scratch.record, flight);
        QCOMPARE(scratch.record->verify().value().entries, 2);
        QCOMPARE(entriesIn(another.file()), 1);
    }
};

CROWNRING_TEST(OlderCopyTest, QCoreApplication)

}

#include "older_copy_test.moc"
