// SPDX-License-Identifier: GPL-3.0-or-later

/// The list that grounds a balloon, on its page and in the sheet that approves its return, on a desk and on a phone.

#include "demo_window.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>
#include <QQuickItem>
#include <QTest>

namespace return_window_test {

using namespace crownring;
using namespace crownring::screen;

class ReturnWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    void photograph(const QString& name) {
        QTest::qWait(300); // until all stands where it belongs
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(
            QStringLiteral(PICTURES "/%1-%2x%3.png").arg(name).arg(m_window->width()).arg(m_window->height())));
    }
    static QQuickItem* below(QQuickItem* item, const QString& name) {
        if (item->objectName() == name && item->isVisible())
            return item;
        const auto children = item->childItems();
        for (auto* child : children)
            if (auto* found = below(child, name))
                return found;
        return nullptr;
    }
    QQuickItem* onScreen(const QString& name) { return below(m_window->contentItem(), name); }

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
            QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.unfold")) != nullptr, 30'000);
            QVERIFY(onScreen(QStringLiteral("returns.approve.0")) == nullptr);
            photograph(QStringLiteral("return-folded"));
            QVERIFY(QMetaObject::invokeMethod(onScreen(QStringLiteral("returns.unfold")), "clicked"));
        }
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.approve.0")) != nullptr, 30'000);
        QVERIFY(onScreen(QStringLiteral("returns.listed.2")) != nullptr);
        QTest::qWait(500);
        photograph(QStringLiteral("return-page"));
        QVERIFY(QMetaObject::invokeMethod(onScreen(QStringLiteral("returns.approve.0")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.confirm")) != nullptr, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.refusal.2")) != nullptr, 30'000);
        auto* confirm = onScreen(QStringLiteral("returns.confirm"));
        QVERIFY(!confirm->isEnabled() && !confirm->hasActiveFocus());
        QTest::qWait(500);
        photograph(QStringLiteral("return-sheet"));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.confirm")) == nullptr, 30'000);
    }

    void fromTheBenchAListLeadsToItsApproval_data() { whoApprovesIsChosenAndTheButtonIsNeverTheDefault_data(); }
    void fromTheBenchAListLeadsToItsApproval() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/KS-2026-015/release"))));
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("bench.list")) != nullptr, 30'000);
        photograph(QStringLiteral("bench-list"));
        QVERIFY(QMetaObject::invokeMethod(onScreen(QStringLiteral("bench.list")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(onScreen(QStringLiteral("returns.approve.0")) != nullptr, 30'000);

        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/OL-2026-018/release"))));
        QTest::qWait(500);
        QVERIFY(onScreen(QStringLiteral("bench.list")) == nullptr); // it is open
    }
};

CROWNRING_TEST(ReturnWindowTest, QApplication)

}

#include "return_window_test.moc"
