// SPDX-License-Identifier: GPL-3.0-or-later

/// A record with nothing in it: the bench sends to where a balloon is entered, and opens nothing on nothing.

#include "qml/demo_window.h"
#include "test_class.h"

#include <QApplication>
#include <QQuickItem>
#include <QTest>

namespace first_steps_window_test {

using namespace crownring;
using namespace crownring::screen;

class FirstStepsWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    [[nodiscard]] bool isShown(const char* name) { return m_open.find(QLatin1String(name)) != nullptr; }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open(DemoHouse::Filled::Empty));
        m_window = m_open.window();
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void theBenchSendsToWhereABalloonIsEntered_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void theBenchSendsToWhereABalloonIsEntered() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("bench"))));
        QTRY_VERIFY_WITH_TIMEOUT(isShown("bench.empty"), 30'000);
        QVERIFY(!isShown("bench.open"));
        auto* empty = m_open.find(QStringLiteral("bench.empty"));
        QVERIFY(empty->property("text").toString().contains(QStringLiteral("Enter them first")));
        QVERIFY(m_open.photograph(QStringLiteral("bench-empty")));
        QVERIFY(QMetaObject::invokeMethod(empty, "acted"));
        QTRY_VERIFY_WITH_TIMEOUT(isShown("form.save"), 30'000);
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(!isShown("form.save"), 30'000);
        // Whoever comes to the sheet all the same is told what lacks, with the way there.
        auto* bench = m_window->findChild<QObject*>(QStringLiteral("bench"));
        QVERIFY(QMetaObject::invokeMethod(bench, "beginVisit", Q_ARG(QString, QString())));
        QTRY_VERIFY_WITH_TIMEOUT(isShown("bench.visit.enter"), 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("bench-visit-empty")));
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.visit.enter")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(isShown("form.save") && !isShown("bench.visit.enter"), 30'000);
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(!isShown("form.save"), 30'000);
    }
};

CROWNRING_TEST(FirstStepsWindowTest, QApplication)

}

#include "first_steps_window_test.moc"
