// SPDX-License-Identifier: GPL-3.0-or-later

/// How much of what comes next is seen at one look, on a desk and on a phone.

#include "demo_window.h"
#include "screen/next/next_place.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <utility>

namespace next_window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// Rows of a list that are seen whole.
int wholeRows(QQuickItem* below) {
    if (!below->isVisible())
        return 0;
    if (below->property("standingWord").isValid() && below->parentItem() && below->parentItem()->parentItem()) {
        auto* list = below->parentItem()->parentItem();
        const auto window = QRectF(0, 0, below->window()->width(), below->window()->height());
        const auto seen = list->mapRectToScene(list->boundingRect()).intersected(window);
        return seen.contains(below->mapRectToScene(below->boundingRect()).adjusted(1, 1, -1, -1)) ? 1 : 0;
    }
    int rows = 0;
    for (auto* child : below->childItems())
        rows += wholeRows(child);
    return rows;
}

}

namespace {

QQuickItem* seen(QQuickItem* below, const QString& name) {
    if (!below->isVisible())
        return nullptr;
    if (below->objectName() == name)
        return below;
    for (auto* child : below->childItems())
        if (auto* found = seen(child, name))
            return found;
    return nullptr;
}

}

class NextWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    DemoHouse* m_demo = nullptr;
    QQuickWindow* m_window = nullptr;
    NextPlace* m_next = nullptr;

    void photograph(const QString& name) {
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(
            QStringLiteral(PICTURES "/%1-%2x%3.png").arg(name).arg(m_window->width()).arg(m_window->height())));
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_demo = &m_open.demo();
        m_window = m_open.window();
        m_next = qobject_cast<NextPlace*>(
            m_window->findChild<QObject*>(QStringLiteral("next"))->property("place").value<QObject*>());
        QVERIFY(m_next != nullptr);
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void whatIsLeftOutIsSaidUncut_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void whatIsLeftOutIsSaidUncut() {
        QFETCH(QSize, size);
        m_window->resize(size);
        m_window->findChild<QObject*>(QStringLiteral("next"))->setProperty("detailShown", false);
        m_next->setGrouping(0);
        m_next->clearFilters();
        m_next->chooseWeeks(6);
        QTRY_VERIFY_WITH_TIMEOUT(m_next->range().contains(QStringLiteral("left out: ")), 30'000);
        QTest::qWait(400);
        photograph(QStringLiteral("next-six-weeks"));
        auto* told = seen(m_window->contentItem(), QStringLiteral("next.range"));
        QVERIFY(told != nullptr);
        QCOMPARE(told->property("text").toString(), m_next->range());
        QVERIFY(!told->property("truncated").toBool());
        QVERIFY(told->y() + told->property("implicitHeight").toReal() <= told->parentItem()->height());
        m_next->clearFilters();
    }

    void rowsAtOneLook_data() {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("grouping");
        QTest::addColumn<int>("atLeast");
        for (int grouping = 0; grouping < groupingCount; ++grouping) {
            QTest::addRow("desk-%d", grouping) << QSize(1280, 800) << grouping << 10;
            QTest::addRow("phone-%d", grouping) << QSize(360, 740) << grouping << 5;
        }
    }
    void rowsAtOneLook() {
        QFETCH(QSize, size);
        QFETCH(int, grouping);
        QFETCH(int, atLeast);
        m_window->resize(size);
        m_window->findChild<QObject*>(QStringLiteral("next"))->setProperty("detailShown", false);
        m_next->setGrouping(grouping);
        QTRY_VERIFY_WITH_TIMEOUT((grouping == 0 ? m_next->list()->count() : m_next->groups()->count()) > 0, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(wholeRows(m_window->contentItem()) > 0, 30'000);
        QTest::qWait(400);
        // Beside other work a window that was resized takes longer to be laid out.
        static_cast<void>(QTest::qWaitFor([&] { return wholeRows(m_window->contentItem()) >= atLeast; }, 10'000));
        photograph(QStringLiteral("next-%1").arg(grouping));
        QVERIFY(wholeRows(m_window->contentItem()) >= atLeast);
    }

    void aFoldedStripLeavesMoreRows() {
        m_window->resize(1280, 800);
        const auto comesToRest = [&] {
            for (int before = -1;
                 std::exchange(before, wholeRows(m_window->contentItem())) != wholeRows(m_window->contentItem()) ||
                 before < 0;)
                QTest::qWait(400);
        };
        comesToRest(); // rows that are being made when the list changes are complained of
        m_next->setGrouping(0);
        QTRY_VERIFY_WITH_TIMEOUT(m_next->list()->count() > 0, 30'000);
        comesToRest();
        QVERIFY(wholeRows(m_window->contentItem()) > 0);
        const int unfolded = wholeRows(m_window->contentItem());
        m_demo->house.habits.setHorizonFolded(true);
        QTRY_VERIFY_WITH_TIMEOUT(wholeRows(m_window->contentItem()) >= unfolded + 2, 30'000);
        photograph(QStringLiteral("next-folded"));
        m_demo->house.habits.setHorizonFolded(false);
    }

    /// Which balloons may fly this weekend, which visit comes next, what does it cover? At the first look, unscrolled
    /// and uncut.
    void threeAnswersWithoutScrolling_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void threeAnswersWithoutScrolling() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("agenda"))));
        const auto find = [&](const QString& name) { return seen(m_window->contentItem(), name); };
        QTRY_VERIFY_WITH_TIMEOUT(find(QStringLiteral("agenda.covers.0")), 60'000);
        const auto* bar = m_window->findChild<QQuickItem*>(QStringLiteral("bar"));
        const double end = m_window->height() - (bar->isVisible() ? bar->height() : 0);
        // The first of them that is cut or out of sight.
        const auto missing = [&] {
            QStringList names{QStringLiteral("agenda.mayFly"), QStringLiteral("agenda.nextVisit")};
            for (int nth = 0; find(QStringLiteral("agenda.covers.%1").arg(nth)); ++nth)
                names += QStringLiteral("agenda.covers.%1").arg(nth);
            for (const auto& name : names) {
                auto* label = find(name);
                if (!label || label->property("text").toString().isEmpty() || label->property("truncated").toBool())
                    return name;
                const auto place = label->mapRectToScene(label->boundingRect());
                if (place.top() < 0 || place.bottom() > end)
                    return name;
            }
            return QString();
        };
        static_cast<void>(QTest::qWaitFor([&] { return missing().isEmpty(); }, 10'000));
        const auto found = missing();
        photograph(QStringLiteral("next-agenda"));
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("next"))));
        QTest::qWait(400);
        QCOMPARE(found, QString());
    }
};

CROWNRING_TEST(NextWindowTest, QApplication)

}

#include "next_window_test.moc"
