// SPDX-License-Identifier: GPL-3.0-or-later

/// The whole window over the demo fleet: no warning of QML, a name for everything that a screen reader may stop at,
/// every place reached by keyboard alone, and pictures for people to look at.

#include "counting_hand.h"
#include "demo_window.h"
#include "screen/parts/kept_names.h"
#include "screen/record/flight_intake.h"
#include "test_class.h"

#include <QAccessible>
#include <QApplication>
#include <QDir>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>
#include <QThreadPool>

#include <set>
#include <stdexcept>

namespace window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

struct Stop {
    QString role;
    QString name;
};

/// Everything visible that can be focused and says no name.
void nameless(QAccessibleInterface* at, QStringList& found, int& seen) {
    if (at == nullptr || !at->isValid() || at->state().invisible)
        return;
    const auto* item = qobject_cast<QQuickItem*>(at->object());
    if (item == nullptr || item->isVisible()) {
        const bool stop = at->state().focusable || (item != nullptr && item->activeFocusOnTab());
        seen += stop ? 1 : 0;
        if (stop && at->text(QAccessible::Name).trimmed().isEmpty() && at->object() != nullptr)
            found += QLatin1String(at->object()->metaObject()->className());
    }
    for (int child = 0; child < at->childCount(); ++child)
        nameless(at->child(child), found, seen);
}

/// Texts that can be seen and of which a line ends inside a word, behind a hyphen: a registration that is torn.
QStringList brokenNames(QQuickItem* below) {
    QStringList found;
    if (!below->isVisible())
        return found;
    if (below->property("textFormat").isValid() && isTorn(*below))
        found += below->property("text").toString();
    for (auto* child : below->childItems())
        found += brokenNames(child);
    return found;
}

}

class WindowTest : public QObject {
    Q_OBJECT

private:
    DemoWindow m_open;
    DemoHouse* m_demo = nullptr;
    QQuickWindow* m_window = nullptr;

    /// Of the annual or 100-hour inspection of the balloon's envelope, minutes.
    std::int64_t leftOfHundredHours(const Registration& balloon) const {
        const auto& sheet = *m_demo->house.fleet.sheet();
        for (const auto* each : sheet.rowsOf(balloon)) {
            const auto& row = *each;
            if (row.requirement->id != RequirementId("ml.inspection") || row.item->kind != ItemKind::Envelope)
                continue;
            for (const auto& limit : row.state.limits)
                if (limit.clock == ClockName::Minutes)
                    return limit.usage()->left.value();
        }
        throw std::runtime_error("no such limit");
    }
    void photograph(const QString& name) {
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(
            QStringLiteral(PICTURES "/%1-%2x%3-light.png").arg(name).arg(m_window->width()).arg(m_window->height())));
    }
    /// Clicks on the button of that text.
    void press(const QString& text) {
        for (auto* item : m_window->findChildren<QQuickItem*>())
            if (item->isVisible() && item->property("text").toString() == text && item->activeFocusOnTab()) {
                const auto middle = item->mapRectToScene(item->boundingRect()).center().toPoint();
                return QTest::mouseClick(m_window, Qt::LeftButton, {}, middle);
            }
        QFAIL(qPrintable(QStringLiteral("no button says ") + text));
    }
    void show(const QString& place) {
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)));
        QTest::qWait(350);
        if (place.contains(QStringLiteral("fabric")))
            waitForForecasts();
        if (place == QStringLiteral("agenda") || place == QStringLiteral("calendar"))
            waitForRecord();
        // The bench reads a visit, and then what its release would say.
        for (int asked = 0; place.startsWith(QStringLiteral("bench/")) && asked < 3; ++asked)
            waitForRecord();
    }
    /// What was asked of the record is answered.
    void waitForRecord() {
        bool told = false;
        hear(m_demo->house.desk.ask([](Record&) { return true; }), m_window, [&](bool) { told = true; });
        QVERIFY(QTest::qWaitFor([&] { return told; }, 60'000));
        QTest::qWait(100);
    }
    /// Pages of fabric ask the record, and what they show comes from other threads.
    void waitForForecasts() {
        waitForRecord();
        QVERIFY(QTest::qWaitFor([] { return QThreadPool::globalInstance()->activeThreadCount() == 0; }, 120'000));
        QTest::qWait(300);
    }

private slots:
    void initTestCase() {
        QAccessible::setActive(true);
        QVERIFY(m_open.open());
        m_demo = &m_open.demo();
        m_window = m_open.window();
        QTest::qWait(300);
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void everythingThatCanBeFocusedHasAName_data() {
        QTest::addColumn<QString>("place");
        for (const char* place : {"next",
                                  "next/0",
                                  "rig-up/QE-OVA",
                                  "agenda",
                                  "calendar",
                                  "plan",
                                  "balloons/QE-OVA",
                                  "balloons/QE-MIST/fabric",
                                  "balloons/QE-MIST/fabric/chart",
                                  "balloons/QE-MIST/fabric/table",
                                  "balloons/fabric",
                                  "bench",
                                  "bench/OL-2026-018",
                                  "bench/OL-2026-018/readings",
                                  "bench/OL-2026-018/defects",
                                  "bench/OL-2026-018/release",
                                  "bench/OL-2026-017/release",
                                  "bench/shop",
                                  "rules/part-ml-hot-air",
                                  "rules/directives/OAO-AD 2026-014",
                                  "balloons/pool",
                                  "record/journal",
                                  "record/questions",
                                  "record/flights",
                                  "record/upkeep"})
            QTest::newRow(place) << place;
    }
    void everythingThatCanBeFocusedHasAName() {
        QFETCH(QString, place);
        show(place);
        QStringList found;
        int seen = 0;
        nameless(QAccessible::queryAccessibleInterface(m_window), found, seen);
        QCOMPARE(found, QStringList());
        QVERIFY2(seen > 5, qPrintable(QString::number(seen)));
    }

    void theTabKeyGoesRoundEveryPlace_data() { everythingThatCanBeFocusedHasAName_data(); }
    void theTabKeyGoesRoundEveryPlace() {
        QFETCH(QString, place);
        if (place.endsWith(QLatin1String("/chart")) || place.endsWith(QLatin1String("/table")))
            return; // the same page again, each with a forecast to wait for
        show(place);
        m_window->requestActivate();
        std::set<QQuickItem*> stops;
        for (int press = 0; press < 120; ++press) {
            QTest::keyClick(m_window, Qt::Key_Tab);
            auto* item = m_window->activeFocusItem();
            QVERIFY(item != nullptr);
            if (!stops.insert(item).second && stops.size() > 4)
                break;
            QVERIFY2(item->isVisible(), item->metaObject()->className());
            // Where the keyboard is must be inside the window, or be scrolled to: the row of filters may not be cut
            // off.
            const auto area = item->mapRectToScene(item->boundingRect());
            QVERIFY2(
                area.left() >= -1 && area.right() <= m_window->width() + 1,
                qPrintable(
                    QStringLiteral("%1 at %2").arg(QLatin1String(item->metaObject()->className())).arg(area.left())));
        }
        QVERIFY2(stops.size() >= 8, qPrintable(QString::number(stops.size())));
    }

    void shortcutsReachPlacesSearchAndDay() {
        show(QStringLiteral("next"));
        QTest::keyClick(m_window, Qt::Key_3, Qt::ControlModifier);
        QCOMPARE(m_window->property("place").toInt(), 2);
        QTest::keyClick(m_window, Qt::Key_1, Qt::ControlModifier);
        QCOMPARE(m_window->property("place").toInt(), 0);
        auto* search = m_window->findChild<QObject*>(QStringLiteral("search"));
        QVERIFY(search != nullptr);
        QTest::keyClick(m_window, Qt::Key_K, Qt::ControlModifier);
        QTRY_VERIFY_WITH_TIMEOUT(search->property("opened").toBool(), 30'000);
        for (const char key : QByteArray("TA302"))
            QTest::keyClick(m_window, key);
        QTest::qWait(600);
        QTest::keyClick(m_window, Qt::Key_Return);
        QTRY_VERIFY_WITH_TIMEOUT(!search->property("opened").toBool(), 30'000);
        QCOMPARE(m_window->property("place").toInt(), 1); // the burner of that serial number
    }

    void aFormIsFilledByKeyboard() {
        show(QStringLiteral("balloons/QE-OVA"));
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(form != nullptr);
        auto* page = m_window->findChild<QObject*>(QStringLiteral("balloons"));
        QVERIFY(QMetaObject::invokeMethod(page, "act", Q_ARG(QString, QStringLiteral("flight.logged")),
                                          Q_ARG(QString, QStringLiteral("QE-OVA")), Q_ARG(QString, QString()),
                                          Q_ARG(QString, QString())));
        QTRY_VERIFY_WITH_TIMEOUT(form->property("opened").toBool(), 30'000);
        QTest::qWait(200);
        std::set<QQuickItem*> stops;
        for (int press = 0; press < 30; ++press) {
            QTest::keyClick(m_window, Qt::Key_Tab);
            stops.insert(m_window->activeFocusItem());
        }
        QVERIFY2(stops.size() > 10, qPrintable(QString::number(stops.size())));
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(QStringLiteral(PICTURES "/form-1280x800-light.png")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(!form->property("opened").toBool(), 30'000);
    }

    /// What was chosen stays where it is; the next key goes on from there.
    void afterAChoiceTabGoesOnToTheNextField() {
        show(QStringLiteral("balloons/QE-OVA"));
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"));
        auto* page = m_window->findChild<QObject*>(QStringLiteral("balloons"));
        QVERIFY(QMetaObject::invokeMethod(page, "act", Q_ARG(QString, QStringLiteral("event.reported")),
                                          Q_ARG(QString, QString()), Q_ARG(QString, QString()),
                                          Q_ARG(QString, QString())));
        QTRY_VERIFY_WITH_TIMEOUT(form->property("opened").toBool(), 30'000);
        QTest::qWait(300);
        auto* seek = CountingHand(*m_window).find(QStringLiteral("seek.balloon"));
        QVERIFY(seek != nullptr);
        const auto before = seek->property("text").toString();
        seek->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(m_window, Qt::Key_Tab);
        auto* next = m_window->activeFocusItem();
        QVERIFY(next != nullptr && next != seek);
        seek->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(m_window, Qt::Key_Return);
        QTest::qWait(200);
        QVERIFY(m_window->activeFocusItem() != seek); // the words of the chooser
        QTest::keyClick(m_window, Qt::Key_Return);
        QTest::qWait(200);
        QVERIFY(seek->property("text").toString() != before);
        QCOMPARE(m_window->activeFocusItem(), seek);
        QTest::keyClick(m_window, Qt::Key_Tab);
        QCOMPARE(m_window->activeFocusItem(), next);
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(!form->property("opened").toBool() || form->property("held").toBool(), 30'000);
        QMetaObject::invokeMethod(form, "close");
        QTRY_VERIFY_WITH_TIMEOUT(!form->property("opened").toBool(), 30'000);
    }

    void flightsOfAFileAreShownThenAcceptedThenCounted_data() {
        QTest::addColumn<QString>("file");
        QTest::addColumn<QString>("balloon");
        QTest::newRow("a log") << "flight_log.csv"
                               << "QE-OAK";
        QTest::newRow("a track") << "evening.igc"
                                 << "QE-HFC";
    }
    void flightsOfAFileAreShownThenAcceptedThenCounted() {
        QFETCH(QString, file);
        QFETCH(QString, balloon);
        const Registration named(balloon.toStdString());
        show(QStringLiteral("record/flights"));
        auto* intake =
            m_window->findChild<QObject*>(QStringLiteral("record"))->property("intake").value<FlightIntake*>();
        QVERIFY(intake != nullptr);
        const auto minutesLeft = [&] { return leftOfHundredHours(named); };
        const auto before = minutesLeft();
        intake->openFile(QUrl::fromLocalFile(QStringLiteral(CROWNRING_SOURCE_DIR "/demo_data/") + file));
        QTRY_VERIFY_WITH_TIMEOUT(!intake->reading(), 30'000);
        QVERIFY2(intake->acceptable() > 0, qPrintable(intake->problem()));
        QTest::qWait(200);
        photograph(file.section(u'.', 0, 0));
        m_window->resize(360, 740);
        QTest::qWait(200);
        photograph(file.section(u'.', 0, 0));
        m_window->resize(1280, 800);
        QTest::qWait(200);
        QCOMPARE(minutesLeft(), before); // nothing is written yet
        QSignalSpy accepted(intake, &FlightIntake::accepted);
        press(intake->verb());
        QTRY_COMPARE_WITH_TIMEOUT(accepted.size(), 1, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(minutesLeft() < before, 30'000);
        QVERIFY(minutesLeft() >= before - 24 * 60);
        m_demo->house.notice.dismiss();
    }

    void theBannerShowsWhileTheDayIsNotToday() {
        show(QStringLiteral("next"));
        QCOMPARE(m_demo->house.day.ask(QStringLiteral("2027-03-01")), QString());
        QVERIFY(m_demo->settled());
        QTest::qWait(400);
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(QStringLiteral(PICTURES "/next-2027-03-01.png")));
        m_demo->house.day.askToday();
        QVERIFY(m_demo->settled());
    }

    void pictures_data() {
        QTest::addColumn<QString>("place");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<bool>("dark");
        bool odd = false;
        for (const char* place :
             {"next", "next/0", "rig-up/QE-IVY", "balloons", "balloons/QE-OVA", "bench", "bench/open/QE-OVA",
              "bench/OL-2026-018", "bench/OL-2026-018/readings", "bench/OL-2026-018/defects",
              "bench/OL-2026-018/release", "bench/OL-2026-017/release", "bench/shop", "rules/part-ml-hot-air",
              "record/journal", "record/questions", "record/flights", "record/upkeep"}) {
            const auto row = [&](QSize size, bool dark) {
                QTest::addRow("%s %dx%d %s", place, size.width(), size.height(), dark ? "dark" : "light")
                    << QString::fromLatin1(place) << size << dark;
            };
            // The other tones and the ends of the sizes in turn.
            row({360, 740}, odd);
            row({1280, 800}, !odd);
            row(odd ? QSize(360, 640) : QSize(1920, 1080), false);
            odd = !odd;
        }
        // What a forecast is waited for, in fewer sizes.
        for (const char* place : {"agenda", "calendar", "balloons/QE-MIST/fabric", "balloons/QE-MIST/fabric/chart",
                                  "balloons/QE-MIST/fabric/table", "balloons/fabric"}) {
            QTest::addRow("%s, phone", place) << QString::fromLatin1(place) << QSize(360, 740) << false;
            QTest::addRow("%s, desk", place) << QString::fromLatin1(place) << QSize(1280, 800) << true;
        }
    }
    void pictures() {
        QFETCH(QString, place);
        QFETCH(QSize, size);
        QFETCH(bool, dark);
        m_demo->house.habits.setDark(dark);
        m_window->resize(size);
        show(place);
        QCOMPARE(brokenNames(m_window->contentItem()), QStringList());
        const auto picture = m_window->grabWindow();
        QCOMPARE(picture.size(), size);
        std::set<QRgb> tones;
        for (int y = 0; y < picture.height(); y += 3)
            for (int x = 0; x < picture.width(); x += 3)
                tones.insert(picture.pixel(x, y));
        QVERIFY(tones.size() > 20); // something is drawn
        QDir().mkpath(QStringLiteral(PICTURES));
        const auto name = QStringLiteral(PICTURES "/%1-%2x%3-%4.png")
                              .arg(QString(place).replace(u'/', u'-'))
                              .arg(size.width())
                              .arg(size.height())
                              .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"));
        QVERIFY(picture.save(name));
    }
};

CROWNRING_TEST(WindowTest, QApplication)

}

#include "window_test.moc"
