// SPDX-License-Identifier: GPL-3.0-or-later

/// What the desktop's service of notifications hears (issue 15), on a bus of the test's own; without a service nothing
/// happens.

#include "program/desktop_herald.h"
#include "test_class.h"

#include <QDBusConnection>
#include <QProcess>
#include <QStandardPaths>
#include <QTest>

#include <memory>
#include <optional>

namespace desktop_herald_test {

using namespace crownring;

/// A service that keeps what it is told.
class Desktop : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    struct Heard {
        uint replaces;
        QString title;
        QString text;
        QStringList actions;
    };
    std::vector<Heard> heard;
    bool readsMarkup = true;

public slots:
    QStringList GetCapabilities() const {
        return readsMarkup ? QStringList{QStringLiteral("body-markup")} : QStringList();
    }
    uint Notify(const QString&, uint replaces, const QString&, const QString& title, const QString& text,
                const QStringList& actions, const QVariantMap&, int) {
        heard.push_back({replaces, title, text, actions});
        return replaces != 0 ? replaces : 7;
    }

signals:
    void ActionInvoked(uint number, const QString& action);
};

class DesktopHeraldTest : public QObject {
    Q_OBJECT

    QProcess m_daemon;
    Desktop m_desktop;
    DesktopHerald m_herald;
    std::optional<bool> m_said;
    int m_followed = 0;

    [[nodiscard]] bool isAnswered() {
        return QTest::qWaitFor([&] { return m_said.has_value(); }, 10'000);
    }
    void say() {
        m_said.reset();
        m_herald.say(
            {QStringLiteral("Near a limit"), QStringLiteral("B & Sons <1>\nand 2 more")},
            [this](bool said) { m_said = said; }, [this] { ++m_followed; });
    }
    [[nodiscard]] QDBusConnection desktop() const { return QDBusConnection(QStringLiteral("desktop")); }

private slots:
    void initTestCase() {
        const auto daemon = QStandardPaths::findExecutable(QStringLiteral("dbus-daemon"));
        QVERIFY2(!daemon.isEmpty(), "needs Debian's dbus-daemon");
        m_daemon.start(daemon,
                       {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        QVERIFY(m_daemon.waitForReadyRead(10'000));
        const auto address = m_daemon.readLine().trimmed();
        qputenv("DBUS_SESSION_BUS_ADDRESS", address);
        QVERIFY(QDBusConnection::connectToBus(QString::fromUtf8(address), QStringLiteral("desktop")).isConnected());
    }
    void cleanupTestCase() {
        QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
        m_daemon.kill();
        m_daemon.waitForFinished();
    }

    void withoutAServiceNothingIsSaid() {
        say();
        QVERIFY(isAnswered());
        QVERIFY(!*m_said);
    }
    /// Where it reads markup what is plain is said so that it stays plain; it leads to the program.
    void aServiceHearsItAsItIs() {
        QVERIFY(desktop().registerObject(QStringLiteral("/org/freedesktop/Notifications"), &m_desktop,
                                         QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals));
        QVERIFY(desktop().registerService(QStringLiteral("org.freedesktop.Notifications")));
        say();
        QVERIFY(isAnswered() && *m_said);
        QCOMPARE(m_desktop.heard.size(), std::size_t{1});
        QCOMPARE(m_desktop.heard[0].title, QStringLiteral("Near a limit"));
        QCOMPARE(m_desktop.heard[0].text, QStringLiteral("B &amp; Sons &lt;1&gt;\nand 2 more"));
        QCOMPARE(m_desktop.heard[0].actions.front(), QStringLiteral("default"));
        emit m_desktop.ActionInvoked(6, QStringLiteral("default")); // somebody else's
        emit m_desktop.ActionInvoked(7, QStringLiteral("default"));
        QTRY_COMPARE(m_followed, 1);
    }
    /// The one of yesterday, should it still stand there, is replaced.
    void thereIsOneAtATime() {
        m_desktop.readsMarkup = false;
        say();
        QVERIFY(isAnswered() && *m_said);
        QCOMPARE(m_desktop.heard.back().replaces, 7U);
        QCOMPARE(m_desktop.heard.back().text, QStringLiteral("B & Sons <1>\nand 2 more"));
    }
};

CROWNRING_TEST(DesktopHeraldTest, QCoreApplication)

}

#include "desktop_herald_test.moc"
