// SPDX-License-Identifier: GPL-3.0-or-later

/// What one does every day, in the real window over the demo fleet, from the balloon's page on: every tap and key is
/// counted, but for what is typed.

#include "counting_hand.h"
#include "demo_window.h"
#include "screen/desk/journal_model.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

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

    QTemporaryDir m_folder;

    /// Two pictures of today lie in the user's folder of pictures; what stands elsewhere on this machine does not.
    void takePictures() {
        QFile places(m_folder.filePath(QStringLiteral("user-dirs.dirs")));
        QVERIFY(places.open(QIODevice::WriteOnly));
        QVERIFY(places.write("XDG_PICTURES_DIR=\"" + m_folder.path().toUtf8() + "\"\n") > 0);
        places.close();
        qputenv("XDG_CONFIG_HOME", m_folder.path().toUtf8());
        const auto today = m_demo->house.day.today();
        for (const auto& [name, tone] : {std::pair("tape.jpg", Qt::darkRed), std::pair("wicker.jpg", Qt::darkYellow)}) {
            QImage image(800, 600, QImage::Format_RGB32);
            image.fill(tone);
            const auto path = m_folder.filePath(QLatin1String(name));
            QVERIFY(image.save(path));
            QFile file(path);
            QVERIFY(file.open(QIODevice::ReadWrite));
            QVERIFY(file.setFileTime(QDateTime(QDate::fromString(today, Qt::ISODate), QTime(7, 0)),
                                     QFileDevice::FileModificationTime));
        }
    }
    /// The chooser of files stands in the window of the form.
    static void lookForOtherPictures(const CountingHand& hand) {
        auto* button = hand.find(QStringLiteral("attach.photographs"));
        QVERIFY(button);
        auto* chooser = button->parentItem()->parentItem()->findChild<QObject*>(QStringLiteral("choose.photographs"));
        QVERIFY(chooser);
        QMetaObject::invokeMethod(button, "clicked");
        QTRY_VERIFY_WITH_TIMEOUT(chooser->property("visible").toBool(), 30'000);
        QMetaObject::invokeMethod(chooser, "close");
        QTRY_VERIFY_WITH_TIMEOUT(!chooser->property("visible").toBool(), 30'000);
    }
    /// In the form of a defect: what is wrong is typed, of which item and the picture are tapped, and it is written.
    void writeDefect(CountingHand& hand, const QString& item, const QString& picture) {
        QTRY_VERIFY_WITH_TIMEOUT(m_form->property("opened").toBool(), 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("latest.photographs.0")) != nullptr, 30'000);
        lookForOtherPictures(hand);
        QTest::qWait(300);
        hand.type(QStringLiteral("a torn load tape"));
        QVERIFY(hand.tap(QStringLiteral("one.item.") + item));
        QVERIFY(hand.tap(QStringLiteral("latest.photographs.0")));
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("shown.photographs.0")) != nullptr, 30'000);
        QTest::qWait(600);
        photograph(picture);
        save(hand);
    }
    [[nodiscard]] QStringList picturesOfLatestDefect() const {
        auto lines = m_demo->house.desk.ask([](Record& record) {
            return record.lines({.text = {}, .kind = "defect.found", .before = {}, .limit = 1});
        });
        lines.waitForFinished();
        const auto answer = lines.result();
        return answer && !answer->empty() ? JournalModel::photographsOf(nowOf(answer->front())) : QStringList();
    }
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
        takePictures();
        m_form = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(m_form != nullptr);
        m_window->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_window, 30'000));
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

    void aDefectIsWrittenDownWithItsPhotograph() {
        // Of which nothing else is told that day: at what time of it the test runs is all the same.
        const auto* balloon = m_window->width() < 760 ? "QE-HFB" : "QE-HFA";
        show(QStringLiteral("balloons/") + QLatin1String(balloon));
        CountingHand hand(*m_window);
        const auto envelope = fitted(balloon, ItemKind::Envelope);
        QVERIFY(hand.tap(QStringLiteral("subject.defect")));
        writeDefect(hand, envelope, QStringLiteral("defect"));
        if (QTest::currentTestFailed())
            return;
        QVERIFY(!m_demo->house.fleet.sheet()->item(ItemId(envelope.toStdString()))->defects.empty());
        QCOMPARE(picturesOfLatestDefect().size(), 1);
        QVERIFY2(hand.count() <= 4, qPrintable(QString::number(hand.count())));
        qInfo("a defect with its photograph, from the balloon: %d taps", hand.count());

        CountingHand looking(*m_window);
        QVERIFY(looking.tap(QStringLiteral("subject.history")));
        QTest::qWait(400);
        QVERIFY(looking.tap(QStringLiteral("history.0")));
        QTRY_VERIFY_WITH_TIMEOUT(looking.find(QStringLiteral("photograph.0")) != nullptr, 30'000);
        QTest::qWait(600);
        photograph(QStringLiteral("defect-history"));
    }

    void aDefectIsWrittenDownFromItsFlight() {
        // Of which nothing else is told that day, so that the flight stands on top.
        const auto* balloon = m_window->width() < 760 ? "QE-OVD" : "QE-OVC";
        show(QStringLiteral("balloons/") + QLatin1String(balloon));
        CountingHand before(*m_window);
        openFlight(before);
        before.type(QStringLiteral("1:05"));
        save(before);
        QVERIFY(before.tap(QStringLiteral("subject.history")));
        QTest::qWait(400);
        QVERIFY(before.tap(QStringLiteral("history.0")));
        QTest::qWait(400);
        photograph(QStringLiteral("flight-entry"));

        CountingHand hand(*m_window);
        QVERIFY(hand.tap(QStringLiteral("history.defect")));
        writeDefect(hand, fitted(balloon, ItemKind::Basket), QStringLiteral("defect-of-flight"));
        if (QTest::currentTestFailed())
            return;
        QCOMPARE(picturesOfLatestDefect().size(), 1);
        QVERIFY2(hand.count() <= 4, qPrintable(QString::number(hand.count())));
        qInfo("a defect with its photograph, from the flight: %d taps", hand.count());
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
