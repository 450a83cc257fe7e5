// SPDX-License-Identifier: GPL-3.0-or-later
/// A record is there once its first entries are.
#include "scratch.h"
#include "store/new_record.h"
#include "test_class.h"

#include <QtCore/QDir>
#include <QtTest>

namespace new_record_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";

}

class NewRecordTest : public QObject {
    Q_OBJECT
private slots:
    void itIsThereOnceItIsKept() {
        QTemporaryDir folder;
        const auto names = [&] { return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden); };
        const auto file = folder.filePath(QStringLiteral("new")).toStdString();
        QVERIFY(NewRecord::isMadeAt(file));
        {
            auto made = NewRecord::at(file).value();
            posted(made.record(), balloon);
            QVERIFY(!QFile::exists(QString::fromStdString(file)));
        }
        QVERIFY2(names().isEmpty(), qPrintable(names().join(u' ')));
        auto made = NewRecord::at(file).value();
        posted(made.record(), balloon);
        QVERIFY(made.keep());
        QCOMPARE(names(), QStringList("new"));
        QVERIFY(!NewRecord::isMadeAt(file));
        QCOMPARE(openRecord(file, OpenMode::Existing).value()->verify().value().entries, 1);
    }
    void whatSomebodyElseMadeMeanwhileStays() {
        QTemporaryDir folder;
        const auto file = folder.filePath(QStringLiteral("new")).toStdString();
        auto made = NewRecord::at(file).value();
        posted(made.record(), balloon);
        auto theirs = openRecord(file, OpenMode::OrCreate, WriterId("second")).value();
        const auto kept = made.keep();
        QVERIFY(!kept);
        QVERIFY(kept.error().code() == Code::FileUnwritable || kept.error().code() == Code::FileExists);
        QCOMPARE(theirs->verify().value().entries, 0);
        posted(*theirs, balloon);
        QCOMPARE(QDir(folder.path()).entryList({".crownring*"}, QDir::Files | QDir::Hidden), QStringList());
    }
    void onlyAFileIsMade() {
        QTemporaryDir folder;
        QVERIFY(!NewRecord::isMadeAt(folder.path().toStdString()));
        QVERIFY(!NewRecord::isMadeAt("postgresql:///nowhere"));
        QVERIFY(!NewRecord::isMadeAt(""));
        QCOMPARE(NewRecord::at(folder.filePath(QStringLiteral("no/such")).toStdString()).error().code(),
                 Code::FileUnwritable);
    }
};

CROWNRING_TEST(NewRecordTest, QCoreApplication)

}

#include "new_record_test.moc"
