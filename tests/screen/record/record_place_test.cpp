// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/demo_house.h"
#include "screen/record/flight_intake.h"
#include "screen/record/rebuilding.h"
#include "screen/record/record_place.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>

#include <map>

namespace record_place_test {

using namespace crownring;
using namespace crownring::screen;

namespace {
constexpr auto strict = QAbstractItemModelTester::FailureReportingMode::Fatal;
}

class RecordPlaceTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<DemoHouse> m_demo;
    QUrl written(const QString& name, const QByteArray& text) {
        QFile file(m_demo->folder.filePath(name));
        [[maybe_unused]] const bool open = file.open(QIODevice::WriteOnly);
        file.write(text);
        return QUrl::fromLocalFile(file.fileName());
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }

    void theJournalComesInPages() {
        In<RecordPlace> place(m_demo->house);
        QAbstractItemModelTester tester(place.journal(), strict);
        QTRY_COMPARE_WITH_TIMEOUT(place.journal()->count(), 100, 30'000);
        place.showMore();
        QTRY_COMPARE_WITH_TIMEOUT(place.journal()->count(), 200, 30'000);
        place.setKind(QStringLiteral("event.reported"));
        QTRY_COMPARE_WITH_TIMEOUT(place.journal()->count(), 8, 30'000);
        place.setWords(QStringLiteral("no such words"));
        QTRY_COMPARE_WITH_TIMEOUT(place.journal()->count(), 0, 30'000);
    }

    void anEntryIsShownAsItWasWritten() {
        In<RecordPlace> place(m_demo->house);
        place.openEntry(QStringLiteral("enter-BRN-302"));
        QTRY_VERIFY_WITH_TIMEOUT(place.entryText().contains(QStringLiteral("\"item.entered\"")), 30'000);
        QCOMPARE(place.entryHash().size(), 64);
        QVERIFY(place.entryCorrectable());
    }

    void aNameIsNotBrokenInTheTitleOfAnEntry() {
        In<RecordPlace> place(m_demo->house);
        place.openEntry(QStringLiteral("enter-BRN-302"));
        QTRY_VERIFY2_WITH_TIMEOUT(place.entryTitle().contains(QStringLiteral("BRN-\u2060302")),
                                  qPrintable(place.entryTitle()), 30'000);
    }

    void theDemoFleetVerifies() {
        In<RecordPlace> place(m_demo->house);
        place.verify();
        QTRY_VERIFY_WITH_TIMEOUT(!place.verifying(), 60'000);
        QVERIFY2(place.intact(), qPrintable(place.verdict()));
        QVERIFY(place.verdict().contains(QString::number(demoFleet().count('\n'))));
    }

    void aBackupIsANewFile() {
        In<RecordPlace> place(m_demo->house);
        const auto to = QUrl::fromLocalFile(m_demo->folder.filePath(QStringLiteral("copy.sqlite")));
        place.backUpTo(to);
        QTRY_VERIFY_WITH_TIMEOUT(!place.backingUp(), 60'000);
        QVERIFY2(!place.backupFailed(), qPrintable(place.backup()));
        QVERIFY(QFile::exists(to.toLocalFile()));
        place.backUpTo(to); // never over an old one
        QTRY_VERIFY_WITH_TIMEOUT(!place.backingUp(), 60'000);
        QVERIFY(place.backupFailed());
    }

    void aLogIsPreviewedBeforeAnythingIsWritten() {
        In<FlightIntake> intake(m_demo->house);
        QAbstractItemModelTester tester(intake.rows(), strict);
        const auto log = written(QStringLiteral("log.csv"), "Registration;Date;Duration (h:mm);Landings\n"
                                                            "QE-OVA;2026-11-22;0:55;1\n"
                                                            "QE-OVA;2026-11-22;0:55;1\n"
                                                            "ZZ-NONE;2026-11-22;1:05;1\n"
                                                            "QE-OVA;2026-02-30;1:05;1\n");
        intake.openFile(log);
        QTRY_VERIFY_WITH_TIMEOUT(!intake.reading(), 30'000);
        QVERIFY2(intake.problem().isEmpty(), qPrintable(intake.problem()));
        QCOMPARE(intake.acceptable(), 2); // without times, two equal rows are two flights
        QVERIFY(intake.rows()->count() >= 4);
        QVERIFY2(intake.columns().contains(QStringLiteral("Date: date")), qPrintable(intake.columns()));
        QVERIFY2(intake.columns().contains(QStringLiteral("Duration (h:mm): time aloft")),
                 qPrintable(intake.columns()));
        // What must be looked at stands first.
        QVERIFY(intake.rows()->data(intake.rows()->index(0), IntakeModel::BadRole).toBool());
        const auto before = m_demo->house.fleet.sheet()->card(Registration("QE-OVA"))->flights;
        QSignalSpy accepted(&intake, &FlightIntake::accepted);
        intake.accept();
        QTRY_COMPARE_WITH_TIMEOUT(accepted.size(), 1, 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(m_demo->house.fleet.sheet()->card(Registration("QE-OVA"))->flights, before + 2,
                                  30'000);
        intake.openFile(log); // importing twice changes nothing
        QTRY_VERIFY_WITH_TIMEOUT(!intake.reading(), 30'000);
        QCOMPARE(intake.acceptable(), 0);
    }

    /// Every line of the file is there before anything is written, and says why it is not taken.
    void noLineOfALogIsPassedOver() {
        In<FlightIntake> intake(m_demo->house);
        intake.openFile(written(QStringLiteral("open.csv"), "Registration;Date;Duration (h:mm);Max temp\n"
                                                            "QE-OVA;2026-11-20;0:55;190\n"
                                                            "QE-OVA;2026-11-21;0:55;\n"
                                                            "ZZ-NONE;2026-11-22;1:05;\n"
                                                            "QE-OVA;1994-06-01;1:05;\n"
                                                            "QE-OVA;2031-06-01;1:05;\n"));
        QTRY_VERIFY_WITH_TIMEOUT(!intake.reading(), 30'000);
        QVERIFY(intake.asksTemperatureUnit());
        QCOMPARE(intake.rows()->count(), 5);
        std::map<int, QString> fates;
        for (int row = 0; row < 5; ++row)
            fates[intake.rows()->data(intake.rows()->index(row), IntakeModel::LineRole).toInt()] =
                intake.rows()->data(intake.rows()->index(row), IntakeModel::FateRole).toString();
        QCOMPARE(fates[2], QStringLiteral("waits"));
        QCOMPARE(fates[3], QStringLiteral("new"));
        QCOMPARE(fates[4], QStringLiteral("balloon not in the record"));
        QVERIFY2(fates[5].startsWith(QStringLiteral("balloon entered only on ")), qPrintable(fates[5]));
        QCOMPARE(fates[6], QStringLiteral("lies in the future"));
        QCOMPARE(intake.summary(),
                 QStringLiteral("1 new · 1 of a balloon that is not in the record · 1 from before the "
                                "balloon was entered · 1 waiting for what is asked above · 1 in the "
                                "future"));
    }

    /// Kilograms and litres are told apart by nobody but the user.
    void fuelWithoutAUnitIsAskedFor() {
        In<FlightIntake> intake(m_demo->house);
        intake.openFile(written(QStringLiteral("fuel.csv"), "Registration;Date;Duration (h:mm);Fuel used\n"
                                                            "QE-OVA;2026-11-17;0:51;38\n"));
        QTRY_VERIFY_WITH_TIMEOUT(!intake.reading(), 30'000);
        QVERIFY(intake.asksFuelUnit());
        QCOMPARE(intake.acceptable(), 0);
        const auto says = [&] {
            return intake.rows()->data(intake.rows()->index(0), IntakeModel::SaysRole).toString();
        };
        for (const char* unit : {"kg", "l"}) {
            intake.fuelIs(QLatin1String(unit));
            QTRY_VERIFY_WITH_TIMEOUT(!intake.reading() && !intake.asksFuelUnit(), 30'000);
            QCOMPARE(intake.acceptable(), 1);
            QTRY_VERIFY2_WITH_TIMEOUT(says().contains(QStringLiteral("38")) && says().contains(QLatin1String(unit)),
                                      qPrintable(says()), 5'000);
        }
    }
    void aFileThatIsNoLogSaysSo() {
        In<FlightIntake> intake(m_demo->house);
        intake.openFile(written(QStringLiteral("nothing.csv"), "hello\nworld\n"));
        QTRY_VERIFY_WITH_TIMEOUT(!intake.reading(), 30'000);
        QVERIFY(!intake.problem().isEmpty());
        QCOMPARE(intake.acceptable(), 0);
    }

    void aRecordThatIsNotIntactSaysSoAndIsMended() {
        auto& desk = m_demo->house.desk;
        const auto before = m_demo->house.fleet.sheet()->rows().size();
        {
            QSqlDatabase other = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("other"));
            other.setDatabaseName(desk.location());
            QVERIFY(other.open());
            QSqlQuery query(other);
            QVERIFY(query.exec(QStringLiteral("DELETE FROM adoption")));
        }
        QSqlDatabase::removeDatabase(QStringLiteral("other"));
        desk.open(desk.location());
        QTRY_VERIFY_WITH_TIMEOUT(desk.isDamaged(), 30'000);
        QVERIFY(desk.readOnly());
        QVERIFY2(desk.trouble().contains(QStringLiteral("not intact")), qPrintable(desk.trouble()));
        In<Rebuilding> rebuilding(m_demo->house);
        rebuilding.begin();
        QTRY_VERIFY_WITH_TIMEOUT(!rebuilding.isRunning(), 60'000);
        QVERIFY2(!rebuilding.hasFailed(), qPrintable(rebuilding.outcome()));
        QTRY_VERIFY_WITH_TIMEOUT(!desk.isDamaged(), 30'000);
        QVERIFY(!desk.readOnly());
        QVERIFY(m_demo->settled());
        QCOMPARE(m_demo->house.fleet.sheet()->rows().size(), before);
    }
};

CROWNRING_TEST(RecordPlaceTest, QCoreApplication)

}

#include "record_place_test.moc"
