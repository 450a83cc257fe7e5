// SPDX-License-Identifier: GPL-3.0-or-later

/// The visit planner in the window, on a desk by keyboard and on a phone by finger: planned, a visit moved, what that
/// costs seen and taken, and all of it into the calendar. Then the visit is dragged there.

#include "program/places.h"
#include "qml/heard_warnings.h"
#include "screen/next/ahead/calendar_desk.h"
#include "screen/next/plan/plan_desk.h"
#include "screen/next/two_balloons.h"
#include "test_class.h"

#include <QAccessible>
#include <QApplication>
#include <QDir>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>

#include <cmath>
#include <map>
#include <optional>

namespace plan_window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// The first that is to be seen there and is meant.
template <class Meant>
QQuickItem* below(QQuickItem* item, const Meant& meant) {
    if (!item->isVisible())
        return nullptr;
    if (meant(*item))
        return item;
    const auto children = item->childItems();
    for (auto* child : children)
        if (auto* found = below(child, meant))
            return found;
    return nullptr;
}

}

class PlanWindowTest : public QObject {
    Q_OBJECT

    std::unique_ptr<HeardWarnings> m_warnings;
    std::unique_ptr<TwoBalloons> m_two;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;

    QQuickItem* find(const char* name) {
        return below(m_window->contentItem(),
                     [&](const QQuickItem& each) { return each.objectName() == QLatin1String(name); });
    }
    /// Once it is to be seen and can be pressed.
    void press(const char* name) {
        QTRY_VERIFY2_WITH_TIMEOUT(find(name) && find(name)->isEnabled(), name, 30'000);
        QTest::qWait(100);
        auto* item = find(name);
        QTest::mouseClick(m_window, Qt::LeftButton, {}, item->mapRectToScene(item->boundingRect()).center().toPoint());
    }
    /// The tab key leads there, and Return does it.
    void enter(const char* name) {
        QTRY_VERIFY2_WITH_TIMEOUT(find(name) && find(name)->isEnabled(), name, 30'000);
        QTest::qWait(100);
        for (int tabs = 0; tabs < 60 && m_window->activeFocusItem() != find(name); ++tabs)
            QTest::keyClick(m_window, Qt::Key_Tab);
        QCOMPARE(m_window->activeFocusItem(), find(name));
        QTest::keyClick(m_window, Qt::Key_Return);
    }
    QString text(const char* name) { return find(name) ? find(name)->property("text").toString() : QString(); }
    /// The rows of the plan: their list.
    QQuickItem* rows() {
        return below(m_window->contentItem(), [](const QQuickItem& each) {
            return each.property("name").toString() == QStringLiteral("Visits of the plan, by week");
        });
    }
    QQuickItem* row(const QString& title) {
        return below(rows(),
                     [&](const QQuickItem& each) { return each.property("spoken").toString().startsWith(title); });
    }
    /// Scrolls the rows until it stands in their middle.
    void reveal(const char* name) {
        auto* list = rows();
        const auto y = find(name)->mapToItem(list, QPointF()).y();
        QVERIFY(list->setProperty("contentY", list->property("contentY").toReal() + y - list->height() / 2));
        QTest::qWait(200);
    }
    void photograph(const char* name) {
        QTest::qWait(300);
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(QStringLiteral(PICTURES "/%1-%2x%3.png")
                                                .arg(QLatin1String(name))
                                                .arg(m_window->width())
                                                .arg(m_window->height())));
    }
    void show(const char* place) {
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QString::fromLatin1(place))));
        QTest::qWait(200);
    }

private slots:
    void initTestCase() {
        QAccessible::setActive(true);
        QQuickStyle::setStyle(QStringLiteral("Basic"));
        useOwnFont();
        m_warnings = std::make_unique<HeardWarnings>();
        m_two = std::make_unique<TwoBalloons>();
        m_engine = std::make_unique<QQmlApplicationEngine>();
        QVERIFY(loadFrame(*m_engine, m_two->house()));
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
        QVERIFY(m_window && QTest::qWaitForWindowExposed(m_window));
        QVERIFY(m_two->ready());
    }
    void cleanupTestCase() {
        const auto heard = HeardWarnings::all();
        m_engine.reset();
        m_two.reset();
        QCOMPARE(heard, QStringList());
    }

    /// By keyboard alone: the months, the plan, its first visit to the dearer station, left again.
    void aDeskPlansByKeyboard() {
        m_window->resize(1280, 800);
        show("plan");
        QTRY_VERIFY(find("plan.stations"));
        QVERIFY(text("plan.stations").startsWith(QStringLiteral("First choose")));
        QVERIFY(!find("plan.plan")->isEnabled());
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("next"))));
        m_two->house().habits.setStationsFile(m_two->file("stations.json", twoStations).toLocalFile());
        emit m_two->house().desk.stateChanged();
        show("plan");
        enter("plan.months.6");
        enter("plan.plan");
        QTRY_VERIFY_WITH_TIMEOUT(text("plan.worth.0").contains(QStringLiteral("2 visits in 26 weeks")), 60'000);
        photograph("plan");
        const auto isInRows = [&] {
            const auto* at = m_window->activeFocusItem();
            while (at && at != rows())
                at = at->parentItem();
            return at != nullptr;
        };
        for (int tabs = 0; tabs < 60 && !isInRows(); ++tabs)
            QTest::keyClick(m_window, Qt::Key_Tab);
        QVERIFY(isInRows());
        QTest::keyClick(m_window, Qt::Key_Return);
        QTRY_VERIFY(text("plan.panel").startsWith(QStringLiteral("QE-")));
        enter("plan.later");
        photograph("plan-visit");
        enter("plan.move");
        QTRY_VERIFY_WITH_TIMEOUT(!text("plan.means.0").isEmpty(), 60'000);
        photograph("plan-tried");
        enter("plan.leave");
        QTRY_VERIFY(!find("plan.panel"));
    }
    /// By finger: a visit that may not be in its week is elsewhere, that is taken, and all goes into the calendar.
    void aPhoneTakesAnotherPlanIntoTheCalendar() {
        m_window->resize(360, 740);
        show("plan");
        QTRY_VERIFY(rows());
        photograph("plan");
        constexpr int toTheMiddle = 1; // ListView.Center
        QVERIFY(QMetaObject::invokeMethod(rows(), "positionViewAtIndex", Q_ARG(int, 0), Q_ARG(int, toTheMiddle)));
        QTest::qWait(200);
        QTRY_VERIFY(row(QStringLiteral("QE-ONE")));
        auto* line = row(QStringLiteral("QE-ONE"));
        QTest::mouseClick(m_window, Qt::LeftButton, {},
                          line->mapToScene(QPointF(line->width() / 2, line->height() / 2)).toPoint());
        press("plan.notThen");
        QTRY_VERIFY_WITH_TIMEOUT(!text("plan.means.0").isEmpty(), 60'000);
        photograph("plan-tried");
        press("plan.take");
        QTRY_VERIFY(!find("plan.panel"));
        QVERIFY(QMetaObject::invokeMethod(rows(), "positionViewAtBeginning"));
        QTRY_VERIFY(find("plan.calendar"));
        reveal("plan.calendar");
        press("plan.calendar");
        QTRY_VERIFY(find("plan.by"));
        photograph("plan-calendar");
        QVERIFY(!find("plan.write")->isEnabled());
        press("plan.by");
        for (const auto key : {'o', 'f', 'f', 'i', 'c', 'e'})
            QTest::keyClick(m_window, key);
        press("plan.write");
        QTRY_VERIFY_WITH_TIMEOUT(m_two->house().notice.text().contains(QStringLiteral("2 visits of the plan")), 30'000);
    }
    /// Press, move, release: the visit is proposed as many days later as the block was dragged, and written only then.
    void aVisitIsDraggedInTheCalendar() {
        m_window->resize(1280, 800);
        show("calendar");
        const auto block = [&]() -> QQuickItem* { return find("calendar.block"); };
        QTRY_VERIFY_WITH_TIMEOUT(block(), 60'000);
        QTest::qWait(300);
        auto* desk = block()->property("desk").value<CalendarDesk*>();
        QVERIFY(desk);
        auto& lines = *desk->lines();
        const auto firstDayOf = [&](const QString& entry) -> std::optional<CivilDate> {
            for (int row = 0; row < lines.count(); ++row)
                if (lines.line(row)->entry == entry)
                    return *CivilDate::parse(lines.line(row)->first.toStdString());
            return std::nullopt;
        };
        std::map<QString, CivilDate> before;
        for (int row = 0; row < lines.count(); ++row)
            if (const auto entry = lines.line(row)->entry; !entry.isEmpty())
                before.emplace(entry, *firstDayOf(entry));
        QCOMPARE(before.size(), std::size_t{2});
        const double strip = block()->parentItem()->width();
        const auto days = [&](int count) { return static_cast<int>(std::lround(strip * count / desk->days())); };
        const auto from = block()->mapToScene(QPointF(block()->width() / 2, block()->height() / 2)).toPoint();
        QTest::mousePress(m_window, Qt::LeftButton, {}, from);
        for (int step = 1; step <= 10; ++step)
            QTest::mouseMove(m_window, from + QPoint(days(21) * step / 10, 0), 20);
        QTest::mouseRelease(m_window, Qt::LeftButton, {}, from + QPoint(days(21), 0));
        QTRY_VERIFY_WITH_TIMEOUT(!desk->proposal().isEmpty(), 10'000);
        photograph("calendar-dragged");
        const auto dragged = desk->moving();
        QVERIFY(before.contains(dragged));
        QVERIFY(firstDayOf(dragged) == before.at(dragged)); // nothing is written yet
        QTRY_VERIFY(find("calendar.by"));
        press("calendar.move");
        QTRY_VERIFY_WITH_TIMEOUT(firstDayOf(dragged) != before.at(dragged), 30'000);
        // A day is two points wide, and the first ten of a drag make it one.
        const auto moved = daysBetween(before.at(dragged), *firstDayOf(dragged)).value();
        QVERIFY2(moved >= 21 - 6 && moved <= 21 + 1, qPrintable(QString::number(moved)));
    }
};

CROWNRING_TEST(PlanWindowTest, QApplication)

}

#include "plan_window_test.moc"
