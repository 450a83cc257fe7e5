// SPDX-License-Identifier: GPL-3.0-or-later

/// The list that grounds a balloon, on its page and in the sheet that approves its return, on a desk and on a phone.

#include "demo_window.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>
#include <QQuickItem>
#include <QTest>
#include <QThread>

#include <tuple>

namespace return_window_test {

using namespace crownring;
using namespace crownring::screen;

class ReturnWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    /// The record answers nothing else for a while.
    void busy() {
        std::ignore = m_open.demo().house.desk.ask([](Record&) {
            QThread::msleep(1500);
            return true;
        });
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void whoApprovesIsChosenAndTheButtonIsNeverTheDefault_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void whoApprovesIsChosenAndTheButtonIsNeverTheDefault() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToBalloon", Q_ARG(QString, QStringLiteral("QN190R"))));
        if (size.width() < 400) { // folded there, so that the page keeps its room
            QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.unfold")) != nullptr, 30'000);
            QVERIFY(m_open.find(QStringLiteral("returns.approve.0")) == nullptr);
            QVERIFY(m_open.photograph(QStringLiteral("return-folded")));
            QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("returns.unfold")), "clicked"));
        }
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.approve.0")) != nullptr, 30'000);
        QVERIFY(m_open.find(QStringLiteral("returns.listed.2")) != nullptr);
        QTest::qWait(500);
        QVERIFY(m_open.photograph(QStringLiteral("return-page")));
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("returns.approve.0")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.confirm")) != nullptr, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.refusal.2")) != nullptr, 30'000);
        auto* confirm = m_open.find(QStringLiteral("returns.confirm"));
        QVERIFY(!confirm->isEnabled() && !confirm->hasActiveFocus());
        QTest::qWait(500);
        QVERIFY(m_open.photograph(QStringLiteral("return-sheet")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.confirm")) == nullptr, 30'000);
    }

    void aTestOnTheListIsReadInAVisit_data() { whoApprovesIsChosenAndTheButtonIsNeverTheDefault_data(); }
    void aTestOnTheListIsReadInAVisit() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToList", Q_ARG(QString, QStringLiteral("QN190R"))));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.listed.2.rectify")) != nullptr, 30'000);
        QQuickItem* read = nullptr;
        for (int row = 0; row < 3; ++row)
            if (auto* button = m_open.find(QStringLiteral("returns.listed.%1.rectify").arg(row));
                button->property("text") == QStringLiteral("Read it in a visit …"))
                read = button; // the last one: the strength test, or what a reading found
        QVERIFY(read != nullptr);
        QVERIFY(QMetaObject::invokeMethod(read, "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.visit.open")) != nullptr, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.visit.open"))->isEnabled(), 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.visit.kind"))->property("value").toString(),
                                  QStringLiteral("us-rectification"), 30'000);
        QTest::qWait(500);
        QVERIFY(m_open.photograph(QStringLiteral("return-reading")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.visit.open")) == nullptr, 30'000);
    }

    /// While the record is busy that is said, and nothing stands where a finger could meet something else.
    void whileTheRecordIsBusyItIsSaid_data() { whoApprovesIsChosenAndTheButtonIsNeverTheDefault_data(); }
    void whileTheRecordIsBusyItIsSaid() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToBalloon", Q_ARG(QString, QStringLiteral("QE-OAK"))));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("balloon.fly")) != nullptr, 30'000);
        busy();
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToList", Q_ARG(QString, QStringLiteral("QN190R"))));
        QVERIFY(m_open.find(QStringLiteral("returns.asking")) != nullptr);
        QVERIFY(m_open.find(QStringLiteral("balloon.fly")) == nullptr);
        QVERIFY(m_open.photograph(QStringLiteral("return-asking")));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.approve.0")) != nullptr, 30'000);
        QVERIFY(m_open.find(QStringLiteral("returns.asking")) == nullptr);
        QVERIFY(m_open.find(QStringLiteral("balloon.fly")) != nullptr);
        busy();
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("returns.approve.0")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.signer")) != nullptr, 30'000);
        const auto says = [&] { return m_open.find(QStringLiteral("returns.signer"))->property("empty").toString(); };
        QVERIFY2(says().contains(QStringLiteral("asking")), qPrintable(says()));
        QTRY_COMPARE_WITH_TIMEOUT(says(), QStringLiteral("choose …"), 30'000);
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.confirm")) == nullptr, 30'000);
    }

    void fromTheBenchAListLeadsToItsApproval_data() { whoApprovesIsChosenAndTheButtonIsNeverTheDefault_data(); }
    void fromTheBenchAListLeadsToItsApproval() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/KS-2026-015/release"))));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.list")) != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("bench-list")));
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.list")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("returns.approve.0")) != nullptr, 30'000);

        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/OL-2026-018/release"))));
        QTest::qWait(500);
        QVERIFY(m_open.find(QStringLiteral("bench.list")) == nullptr); // it is open
    }
};

CROWNRING_TEST(ReturnWindowTest, QApplication)

}

#include "return_window_test.moc"
