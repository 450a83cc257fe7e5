// SPDX-License-Identifier: GPL-3.0-or-later

/// What the program does before anybody has done anything: it answers for itself without a display, opens a record that
/// is the user's own and empty, keeps the demo fleet apart, and has its settings under its own name.

#include "ctl/answer.h"
#include "program/own_place.h"
#include "screen/demo_house.h"
#include "store/record_file.h"
#include "test_class.h"

#include <QFileInfo>
#include <QSettings>

namespace first_start_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// Somebody who has just logged in, for the first time, with no display.
QProcessEnvironment newcomer(const QTemporaryDir& home) {
    auto environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "QT_QUICK_BACKEND"})
        environment.remove(QLatin1String(name));
    environment.insert(QStringLiteral("HOME"), home.path());
    environment.insert(QStringLiteral("XDG_DATA_HOME"), home.filePath(QStringLiteral("data")));
    environment.insert(QStringLiteral("XDG_CONFIG_HOME"), home.filePath(QStringLiteral("config")));
    return environment;
}

testing::Answer answerOf(const QTemporaryDir& home, const QStringList& arguments) {
    QProcess program;
    program.setProcessEnvironment(newcomer(home));
    program.start(QStringLiteral(CROWNRING), arguments);
    program.waitForFinished(120'000);
    return {program.exitStatus() == QProcess::NormalExit ? program.exitCode() : -1, program.readAllStandardOutput(),
            program.readAllStandardError()};
}

std::size_t entriesIn(const QString& file) {
    const auto record = openRecord(file.toStdString(), OpenMode::Existing);
    return record.value()->lines({}).value().size();
}

}

class FirstStartTest : public QObject {
    Q_OBJECT

private slots:
    void itAnswersForItselfWithoutADisplay_data() {
        QTest::addColumn<QString>("option");
        QTest::addColumn<QByteArray>("says");
        QTest::newRow("help") << QStringLiteral("--help") << QByteArray("--record <FILE>");
        QTest::newRow("help, in short") << QStringLiteral("-h") << QByteArray("--demo");
        QTest::newRow("version") << QStringLiteral("--version") << QByteArray("crownring ");
        QTest::newRow("version, in short") << QStringLiteral("-v") << QByteArray("crownring ");
    }
    void itAnswersForItselfWithoutADisplay() {
        QFETCH(QString, option);
        QFETCH(QByteArray, says);
        const QTemporaryDir home;
        const auto answer = answerOf(home, {option});
        QVERIFY2(answer.code == 0, answer.err.constData());
        QVERIFY2(answer.out.contains(says), answer.out.constData());
    }

    void theUsersOwnRecordBeginsEmpty() {
        const QTemporaryDir home;
        const auto picture = home.filePath(QStringLiteral("next.png"));
        const auto answer = answerOf(home, {QStringLiteral("--picture"), picture});
        QVERIFY2(answer.code == 0, answer.err.constData());
        QVERIFY(QFileInfo(picture).size() > 0);
        const auto own = home.filePath(QStringLiteral("data/crownring/fleet.sqlite"));
        QVERIFY(QFileInfo::exists(own));
        QCOMPARE(entriesIn(own), std::size_t{0});
    }

    void theDemoFleetIsARecordOfItsOwn() {
        const QTemporaryDir home;
        const auto answer = answerOf(
            home, {QStringLiteral("--demo"), QStringLiteral("--picture"), home.filePath(QStringLiteral("next.png"))});
        QVERIFY2(answer.code == 0, answer.err.constData());
        QVERIFY(!QFileInfo::exists(home.filePath(QStringLiteral("data/crownring/fleet.sqlite"))));
    }

    void fromTheDemoFleetBackToOnesOwn() {
        DemoHouse demo(DemoHouse::Filled::Empty);
        auto& desk = demo.house.desk;
        const auto own = desk.location();
        connect(&desk, &RecordDesk::demoAsked, &desk,
                [&] { desk.open(demo.folder.filePath(QStringLiteral("demo.sqlite")), demoFleet()); });
        connect(&desk, &RecordDesk::ownAsked, &desk, [&] { desk.open(own); });
        QVERIFY(demo.ready());
        QVERIFY(demo.house.fleet.empty());
        desk.askDemo();
        QVERIFY(QTest::qWaitFor([&] { return desk.isOpen() && !demo.house.fleet.empty(); }, 240'000));
        QVERIFY(desk.isDemo());
        desk.askOwn();
        QVERIFY(QTest::qWaitFor([&] { return desk.isOpen() && demo.house.fleet.empty(); }, 60'000));
        QVERIFY(!desk.isDemo());
        QCOMPARE(entriesIn(own), std::size_t{0});
    }

    void settingsLiveUnderTheProgramsOwnName() {
        const QTemporaryDir config;
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, config.path());
        nameProgram(QStringLiteral("0"));
        {
            QSettings before(QStringLiteral("Unknown Organization"), QStringLiteral("crownring"));
            before.setValue(QStringLiteral("person"), QStringLiteral("insp. A"));
            before.setValue(QStringLiteral("dark"), true);
        }
        {
            Habits habits(true); // what was kept before is taken over …
            habits.turnTo(QStringLiteral("/a.sqlite"));
            QCOMPARE(habits.person(), QStringLiteral("insp. A"));
            QVERIFY(habits.dark());
            habits.setPerson(QStringLiteral("insp. B"));
        }
        QVERIFY(QFileInfo::exists(config.filePath(QStringLiteral("Crownring/crownring.conf"))));
        Habits again(true);
        again.turnTo(QStringLiteral("/a.sqlite"));
        QCOMPARE(again.person(), QStringLiteral("insp. B")); // … once
        QCOMPARE(QSettings(QStringLiteral("Unknown Organization"), QStringLiteral("crownring"))
                     .value(QStringLiteral("person"))
                     .toString(),
                 QStringLiteral("insp. A"));
    }

    void whoWritesIsKeptForEachRecord() {
        const QTemporaryDir config;
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, config.path());
        nameProgram(QStringLiteral("0"));
        Habits habits(true);
        habits.turnTo(QStringLiteral("/a.sqlite"));
        habits.setPerson(QStringLiteral("pilot 7"));
        habits.setInspector(QStringLiteral("insp. B")); // the bench has its own
        QCOMPARE(habits.person(), QStringLiteral("pilot 7"));
        habits.turnTo(QStringLiteral("postgresql://me@host/shop"));
        QCOMPARE(habits.person(), QString());
        QCOMPARE(habits.inspector(), QString());
        habits.setPerson(QStringLiteral("insp. 14"));
        habits.turnTo(QStringLiteral("/a.sqlite"));
        QCOMPARE(habits.person(), QStringLiteral("pilot 7"));
        QCOMPARE(habits.inspector(), QStringLiteral("insp. B"));
        Habits later(true);
        later.turnTo(QStringLiteral("postgresql://me@host/shop"));
        QCOMPARE(later.person(), QStringLiteral("insp. 14"));
    }

    /// Nobody inspects in a name that nobody gave since the start; who did before is offered.
    void whoInspectsIsSaidAfterEachStart() {
        const QTemporaryDir config;
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, config.path());
        nameProgram(QStringLiteral("0"));
        Habits habits(true);
        habits.turnTo(QStringLiteral("/a.sqlite"));
        habits.setInspector(QStringLiteral("insp. B"));
        Habits later(true);
        later.turnTo(QStringLiteral("/a.sqlite"));
        QCOMPARE(later.inspector(), QString());
        QCOMPARE(later.lastInspector(), QStringLiteral("insp. B"));
    }
};

CROWNRING_TEST(FirstStartTest, QCoreApplication)

}

#include "first_start_test.moc"
