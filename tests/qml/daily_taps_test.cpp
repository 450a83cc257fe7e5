// SPDX-License-Identifier: GPL-3.0-or-later

/// What one does every day, in the real window over the demo fleet, from the balloon's page on: every tap and key is
/// counted, but for what is typed.

#include "counting_hand.h"
#include "demo_window.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>

namespace daily_taps_test {

using namespace crownring;
using namespace crownring::screen;

class DailyTapsTest : public QObject {
    Q_OBJECT

private:
    DemoWindow m_open;
    DemoHouse* m_demo = nullptr;
    QQuickWindow* m_window = nullptr;
    QObject* m_form = nullptr;

    [[nodiscard]] EntryForm& form() const { return *m_form->property("form").value<EntryForm*>(); }
    void show(const QString& place) {
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)));
        QTest::qWait(500);
    }
    void photograph(const QString& name) {
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(
            QStringLiteral(PICTURES "/daily-%1-%2x%3.png").arg(name).arg(m_window->width()).arg(m_window->height())));
    }
    [[nodiscard]] std::int64_t minutesOf(const char* item) const {
        const auto* facts = m_demo->house.fleet.sheet()->item(ItemId(item));
        return facts && facts->clock.minutes ? facts->clock.minutes->value() : -1;
    }
    [[nodiscard]] QString fitted(const char* balloon, ItemKind kind) const {
        for (const auto* item : m_demo->house.fleet.sheet()->itemsOf(Registration(balloon)))
            if (item->kind == kind)
                return QString::fromStdString(item->id.text());
        return {};
    }
    /// The pool's first of a kind.
    [[nodiscard]] QStringList pool(ItemKind kind) const {
        QStringList items;
        for (const auto& item : m_demo->house.fleet.sheet()->items())
            if (item.kind == kind && !item.balloon && item.clock.minutes)
                items += QString::fromStdString(item.id.text());
        return items;
    }
    void openFlight(CountingHand& hand) {
        QVERIFY(hand.tap(QStringLiteral("balloon.fly")));
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(form().kit()->count() > 4, 30'000);
        QTest::qWait(300);
    }
    void save(CountingHand& hand) {
        QVERIFY2(hand.tap(QStringLiteral("form.save")), qPrintable(form().problem()));
        QTRY_VERIFY_WITH_TIMEOUT(!form().saving(), 30'000);
        QVERIFY2(!form().isOpen(), qPrintable(form().problem()));
        QVERIFY(m_demo->settled());
        // What is shown of it is asked for by then, and answered.
        bool answered = false;
        hear(m_demo->house.desk.ask([](Record&) { return true; }), this, [&](bool) { answered = true; });
        QTRY_VERIFY_WITH_TIMEOUT(answered, 30'000);
        QTest::qWait(300);
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_demo = &m_open.demo();
        m_window = m_open.window();
        m_demo->house.habits.setPerson(QStringLiteral("pilot 7"));
        m_form = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(m_form != nullptr);
        m_window->requestActivate();
    }
    void initTestCase_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void init() {
        QFETCH_GLOBAL(QSize, size);
        m_window->resize(size);
        show(QStringLiteral("balloons/QE-OVB"));
    }
    void cleanup() {
        form().cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!m_form->property("opened").toBool(), 30'000);
        m_demo->house.notice.dismiss();
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void aPlainFlight() {
        const auto envelope = fitted("QE-OVB", ItemKind::Envelope).toUtf8();
        const auto before = minutesOf(envelope.constData());
        CountingHand hand(*m_window);
        openFlight(hand);
        hand.type(QStringLiteral("1:05"));
        photograph(QStringLiteral("flight"));
        save(hand);
        QCOMPARE(minutesOf(envelope.constData()), before + 65);
        QVERIFY2(hand.count() <= 4, qPrintable(QString::number(hand.count())));
        qInfo("a plain flight: %d taps", hand.count());
    }

    void aFlightWithAnotherBasket() {
        const auto usual = fitted("QE-OVB", ItemKind::Basket);
        const auto other = fitted("QE-OVA", ItemKind::Basket); // lent by another balloon, which keeps it
        QVERIFY(!other.isEmpty() && other != usual);
        const auto before = minutesOf(other.toUtf8().constData());
        CountingHand hand(*m_window);
        openFlight(hand);
        hand.type(QStringLiteral("1:05"));
        QVERIFY(hand.tap(QStringLiteral("kit.") + usual));
        QTest::qWait(300);
        hand.type(other.right(3));
        QTest::qWait(300);
        photograph(QStringLiteral("basket"));
        hand.key(Qt::Key_Return);
        QTest::qWait(200);
        save(hand);
        QCOMPARE(minutesOf(other.toUtf8().constData()), before + 65);
        QVERIFY2(hand.count() <= 4, qPrintable(QString::number(hand.count())));
        qInfo("a flight with another basket: %d taps", hand.count());
    }

    void threeCylindersSwapped() {
        const auto usual = fitted("QE-OVB", ItemKind::Cylinder);
        const auto others = pool(ItemKind::Cylinder);
        QVERIFY(others.size() >= 3);
        CountingHand hand(*m_window);
        openFlight(hand);
        hand.type(QStringLiteral("1:05"));
        QVERIFY(hand.tap(QStringLiteral("kit.") + usual));
        for (int at = 0; at < 3; ++at) {
            QTest::qWait(300);
            hand.type(others.at(at));
            QTest::qWait(200);
            hand.key(Qt::Key_Return);
        }
        QTest::qWait(200);
        photograph(QStringLiteral("cylinders"));
        const auto before = minutesOf(others.at(2).toUtf8().constData());
        save(hand);
        QCOMPARE(minutesOf(others.at(2).toUtf8().constData()), before + 65);
        QVERIFY2(hand.count() <= 6, qPrintable(QString::number(hand.count())));
        qInfo("three cylinders swapped: %d taps", hand.count());
    }

    void aCorrection() {
        CountingHand earlier(*m_window);
        openFlight(earlier);
        earlier.type(QStringLiteral("1:05"));
        save(earlier);
        const auto envelope = fitted("QE-OVB", ItemKind::Envelope).toUtf8();
        const auto before = minutesOf(envelope.constData());
        CountingHand hand(*m_window);
        QVERIFY(hand.tap(QStringLiteral("subject.history")));
        QTest::qWait(400);
        QVERIFY(hand.tap(QStringLiteral("history.0")));
        QTest::qWait(300);
        photograph(QStringLiteral("history"));
        QVERIFY(hand.tap(QStringLiteral("history.correct")));
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTest::qWait(300);
        hand.type(QStringLiteral("1:15"));
        QVERIFY(hand.tap(QStringLiteral("form.save")));
        QTRY_VERIFY2_WITH_TIMEOUT(!form().follows().isEmpty(), qPrintable(form().problem()), 30'000);
        QTest::qWait(200);
        photograph(QStringLiteral("correction"));
        QCOMPARE(minutesOf(envelope.constData()), before);
        save(hand);
        QCOMPARE(minutesOf(envelope.constData()), before + 10);
        QVERIFY2(hand.count() <= 5, qPrintable(QString::number(hand.count())));
        qInfo("a correction: %d taps", hand.count());
    }

    void aWholeNewBalloon() {
        show(QStringLiteral("balloons"));
        const auto name = QStringLiteral("QX-%1").arg(m_window->width());
        CountingHand hand(*m_window);
        QVERIFY(hand.tap(QStringLiteral("balloons.new")));
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTest::qWait(300);
        hand.type(name);
        QVERIFY(hand.tap(QStringLiteral("some.programme.part-ml-hot-air")));
        for (const char* part : {"envelope", "basket", "burner"}) {
            // The enter key goes on to the next field; over the day it was made a tap leads to the hours.
            QVERIFY(hand.tap(QStringLiteral("typed.%1.item").arg(QLatin1String(part))));
            for (const char* key : {"name", "type", "serial"}) {
                hand.type(QStringLiteral("%1-%2-%3").arg(name, QLatin1String(part), QLatin1String(key)));
                hand.key(Qt::Key_Return);
            }
            QVERIFY(hand.tap(QStringLiteral("typed.%1.brought_forward.minutes").arg(QLatin1String(part))));
            hand.type(QStringLiteral("250"));
            hand.key(Qt::Key_Return);
            hand.type(QStringLiteral("260"));
        }
        QVERIFY(hand.tap(QStringLiteral("lines.cylinders")));
        for (int cylinder = 1; cylinder <= 5; ++cylinder) {
            hand.type(QStringLiteral("%1-C%2;TA%2;2016-05;250").arg(name).arg(cylinder));
            hand.key(Qt::Key_Return);
        }
        QTest::qWait(600);
        photograph(QStringLiteral("whole"));
        save(hand);
        if (QTest::currentTestFailed())
            return;
        QCOMPARE(m_demo->house.fleet.sheet()->itemsOf(Registration(name.toStdString())).size(), std::size_t{8});
        const auto envelope = (name + QStringLiteral("-envelope-name")).toStdString();
        const auto* facts = m_demo->house.fleet.sheet()->item(ItemId(envelope));
        QVERIFY(facts != nullptr && facts->serial == name.toStdString() + "-envelope-serial");
        QCOMPARE(facts->clock.landings, std::optional(Landings(260)));
        QVERIFY2(hand.count() <= 40, qPrintable(QString::number(hand.count())));
        qInfo("a whole new balloon of eight items: %d taps", hand.count());
    }

    void aDefectIsWrittenDown() {
        CountingHand hand(*m_window);
        QVERIFY(hand.tap(QStringLiteral("subject.defect")));
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTest::qWait(300);
        hand.type(QStringLiteral("a torn load tape"));
        const auto envelope = fitted("QE-OVB", ItemKind::Envelope);
        QVERIFY(hand.tap(QStringLiteral("one.item.") + envelope));
        QTest::qWait(600);
        photograph(QStringLiteral("defect"));
        save(hand);
        QVERIFY(!m_demo->house.fleet.sheet()->item(ItemId(envelope.toStdString()))->defects.empty());
        QVERIFY2(hand.count() <= 4, qPrintable(QString::number(hand.count())));
        qInfo("a defect: %d taps", hand.count());
    }

    void aDayIsPickedFromAMonth() {
        CountingHand hand(*m_window);
        openFlight(hand);
        QVERIFY(hand.tap(QStringLiteral("month.on")));
        QTest::qWait(400);
        photograph(QStringLiteral("month"));
        QVERIFY(hand.tap(QStringLiteral("day.2026-11-03")));
        QTest::qWait(300);
        QCOMPARE(form().fields()->value("on"), QStringLiteral("2026-11-03"));
    }

    void whatIsMarkedIsGoneTo() {
        CountingHand hand(*m_window);
        openFlight(hand);
        hand.type(QStringLiteral("90"));
        QVERIFY(hand.tap(QStringLiteral("form.save")));
        QTest::qWait(300);
        photograph(QStringLiteral("asked-back"));
        QVERIFY(hand.find(QStringLiteral("meant.minutes")) != nullptr);
        QVERIFY(hand.tap(QStringLiteral("meant.minutes")));
        QCOMPARE(form().fields()->value("minutes"), QStringLiteral("90 min"));
    }

    void aFittingAsksWhen() {
        CountingHand hand(*m_window);
        if (hand.find(QStringLiteral("subject.fit")) == nullptr)
            QVERIFY(hand.tap(QStringLiteral("subject.more"))); // a phone keeps it folded away
        QVERIFY(hand.tap(QStringLiteral("subject.fit")));
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTest::qWait(400);
        QVERIFY(hand.tap(QStringLiteral("seek.item")));
        QTest::qWait(300);
        hand.type(QStringLiteral("bsk"));
        QTest::qWait(300);
        photograph(QStringLiteral("chooser"));
        hand.key(Qt::Key_Return);
        QTest::qWait(500);
        photograph(QStringLiteral("fitting"));
    }
};

CROWNRING_TEST(DailyTapsTest, QApplication)

}

#include "daily_taps_test.moc"
