// SPDX-License-Identifier: GPL-3.0-or-later

/// In the real window, over a small record: an event in five taps from Next, from the balloon and from its flight; the
/// clock of its report; more fuel proposed; a worn basket on its map; a tag read off a picture. At both sizes.

#include "print/tags/qr_code.h"
#include "print/tags/tag_sheet.h"
#include "qml/counting_hand.h"
#include "qml/demo_window.h"
#include "qml/events/happenings.h"
#include "screen/balloons/status_file.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QPainter>
#include <QProcess>

namespace events_window_test {

using namespace crownring;
using namespace crownring::screen;

class EventsWindowTest : public QObject {
    Q_OBJECT

    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    [[nodiscard]] bool there(CountingHand& hand, const char* name) {
        return QTest::qWaitFor(
            [&] {
                const auto* item = hand.find(QString::fromLatin1(name));
                return item != nullptr && item->isEnabled() && item->width() > 0;
            },
            20'000);
    }
    [[nodiscard]] bool tap(CountingHand& hand, const char* name) {
        if (!there(hand, name))
            return false;
        QTest::qWait(250);
        return hand.tap(QString::fromLatin1(name));
    }
    [[nodiscard]] bool formIs(bool open) {
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"));
        return QTest::qWaitFor([&] { return form->property("opened").toBool() == open; }, 20'000);
    }
    /// The name of what has the keyboard.
    [[nodiscard]] QString focused() const {
        for (const auto* item = m_window->activeFocusItem(); item != nullptr; item = item->parentItem())
            if (!item->objectName().isEmpty())
                return item->objectName();
        return {};
    }
    void goTo(const char* place) {
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QString::fromLatin1(place))));
        QTest::qWait(400);
    }
    void showItem(const char* item, const char* leaf) {
        auto* balloons = m_window->findChild<QObject*>(QStringLiteral("balloons"));
        goTo("balloons");
        QVERIFY(QMetaObject::invokeMethod(balloons, "showItem", Q_ARG(QString, QString::fromLatin1(item))));
        QTest::qWait(400);
        CountingHand hand(*m_window);
        QVERIFY(tap(hand, leaf));
    }
    void look(const char* name) {
        for (const auto size : {QSize(1280, 800), QSize(360, 740)}) {
            m_window->resize(size);
            QTest::qWait(400);
            QVERIFY(m_open.photograph(QString::fromLatin1(name)));
        }
        m_window->resize(1280, 800);
        QTest::qWait(300);
    }
    [[nodiscard]] std::size_t eventsOf(const char* item) {
        return m_open.demo().house.fleet.sheet()->item(ItemId(item))->events.size();
    }
    void writtenIn(CountingHand& hand, int most) {
        QVERIFY2(tap(hand, "form.save"), qPrintable(hand.whereTo()));
        QVERIFY(formIs(false));
        QVERIFY(m_open.demo().settled());
        qInfo("%d taps: %s", hand.count(), qPrintable(hand.whereTo()));
        QVERIFY2(hand.count() <= most, qPrintable(hand.whereTo()));
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open(DemoHouse::Filled::Empty));
        m_window = m_open.window();
        m_window->resize(1280, 800);
        m_open.demo().house.habits.setPerson(QStringLiteral("pilot 7"));
        QVERIFY(isPosted(m_open.demo().house, testing::happenings()));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.demo().house.fleet.sheet()->item(ItemId("BSK-1")) != nullptr, 20'000);
        QVERIFY(m_open.demo().settled());
    }
    void cleanupTestCase() {
        const auto heard = m_open.close();
        QVERIFY2(heard.isEmpty(), qPrintable(heard.join(u'\n')));
    }

    void fromNextItTakesFiveTaps() {
        goTo("next");
        CountingHand hand(*m_window);
        QVERIFY(tap(hand, "next.report"));
        QVERIFY(formIs(true));
        QVERIFY(tap(hand, "seek.balloon"));
        hand.type(QStringLiteral("b27")); // text
        QVERIFY2(tap(hand, "choice.QE-B27"), qPrintable(hand.whereTo()));
        QVERIFY(tap(hand, "one.event.flame-contact")); // of the only envelope
        const auto* follows = hand.find(QStringLiteral("form.follows"));
        QVERIFY(follows && follows->property("text").toString().contains(QStringLiteral("no flight before")));
        look("event-form");
        QVERIFY(formIs(true));
        writtenIn(hand, 5);
        QCOMPARE(eventsOf("ENV-1"), std::size_t{2}); // dragged, too
    }
    void fromTheBalloonThree() {
        goTo("balloons/QE-B27");
        CountingHand hand(*m_window);
        QVERIFY(tap(hand, "subject.report"));
        QVERIFY(formIs(true));
        QVERIFY(tap(hand, "one.event.hard-landing"));
        writtenIn(hand, 5);
        QCOMPARE(eventsOf("BSK-1"), std::size_t{2});
    }
    void fromItsFlightFive() {
        goTo("balloons/QE-B27/history");
        CountingHand hand(*m_window);
        m_window->resize(1280, 1600); // no flick is counted
        QTest::qWait(500);
        QVERIFY(tap(hand, "subject.history"));
        QString flight; // the first behind the events
        for (int at = 0; at < 8 && flight.isEmpty(); ++at) {
            const auto name = QStringLiteral("history.%1").arg(at);
            if (const auto* row = hand.find(name); row != nullptr && row->property("flight").toBool())
                flight = name;
        }
        QVERIFY2(tap(hand, qPrintable(flight)), qPrintable(flight));
        QVERIFY2(tap(hand, "history.event"), qPrintable(hand.whereTo()));
        QVERIFY(formIs(true));
        QVERIFY(tap(hand, "one.event.mildew"));
        writtenIn(hand, 5);
        m_window->resize(1280, 800);
    }
    /// Nobody says that a report was made until somebody enters it.
    void theClockIsShownUntilItWasReported() {
        goTo("next");
        CountingHand hand(*m_window);
        QVERIFY(there(hand, "events.summary"));
        auto* summary = hand.find(QStringLiteral("events.summary"));
        QVERIFY2(summary->property("text").toString().contains(QStringLiteral("2026-11-26 16:20 UTC")),
                 qPrintable(summary->property("text").toString()));
        QMetaObject::invokeMethod(summary, "acted"); // shows them
        QVERIFY(there(hand, "events.notified.0"));
        look("next-events");
        goTo("balloons/QE-B27");
        QTest::qWait(500);
        look("balloon-events");
        QVERIFY(there(hand, "events.fuel"));
        QVERIFY(hand.find(QStringLiteral("events.fuel"))
                    ->property("text")
                    .toString()
                    .contains(QStringLiteral("42.0 kg/h")));
    }
    /// 14 CFR 91.417(a)(2)(v), ML.A.305(c), from memory: the status of directives, on paper; and what happened.
    void itsTwoPapersAreSavedFromItsPage() {
        goTo("balloons/QE-B27");
        CountingHand hand(*m_window);
        auto* status = m_window->findChild<StatusFile*>(QStringLiteral("status.file"));
        QVERIFY(status != nullptr);
        const auto textOf = [&](StatusFile::Paper paper) {
            const auto file = m_open.demo().folder.filePath(QStringLiteral("paper-%1.pdf").arg(paper));
            status->write(paper, QStringLiteral("QE-B27"), QUrl::fromLocalFile(file));
            QProcess reader;
            if (!QTest::qWaitFor([&] { return QFileInfo(file).size() > 0; }, 20'000))
                return QString();
            reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
            reader.waitForFinished();
            return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
        };
        for (const auto& [button, paper, name, words] :
             {std::tuple("balloon.directivesPaper", StatusFile::Directives, "directives",
                         "knows of none that was not entered"),
              std::tuple("balloon.eventsPaper", StatusFile::Events, "events", "dragged")}) {
            QVERIFY(there(hand, "subject.report"));
            if (hand.find(QString::fromLatin1(button)) == nullptr)
                QVERIFY(tap(hand, "subject.more"));
            QVERIFY2(there(hand, button), button);
            QVERIFY(status->proposed(paper, QStringLiteral("QE-B27")).fileName().startsWith(QLatin1String(name)));
            const auto text = textOf(paper);
            QVERIFY2(text.contains(QStringLiteral("QE-B27")) && text.contains(QLatin1String(words)), qPrintable(text));
        }
    }
    void aWornBasketOnItsMap() {
        showItem("BSK-1", "subject.wear");
        CountingHand hand(*m_window);
        look("basket-wear");
        QVERIFY(tap(hand, "wear.place.runner-2"));
        QVERIFY(formIs(true));
        look("basket-reading");
        QTest::qWait(300);
        // The figure is all that is left to say: what is read is said in words, and its unit.
        QCOMPARE(focused(), QStringLiteral("typed.value"));
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"))->property("form").value<EntryForm*>();
        const auto& fields = form->fields()->fields();
        const auto row = std::ranges::find(fields, std::string_view("quantity"), &FormField::key) - fields.begin();
        QCOMPARE(form->fields()->value("quantity"), QStringLiteral("runner-thickness"));
        QCOMPARE(form->fields()->data(form->fields()->index(static_cast<int>(row)), FormFields::ChosenRole),
                 QVariant(QStringLiteral("thickness left of the runner")));
        QCOMPARE(form->fields()->value("unit"), QStringLiteral("mm"));
        hand.type(QStringLiteral("15.5"));
        writtenIn(hand, 2);
        const auto* series = hand.find(QStringLiteral("wear.series.0"));
        QVERIFY(series != nullptr);
        QTRY_VERIFY_WITH_TIMEOUT(series->property("detail").toString().startsWith(QStringLiteral("15.5 mm")), 20'000);
        QVERIFY(series->property("detail").toString().contains(QStringLiteral("limit met in about")));
        QVERIFY(tap(hand, "wear.place.short-side-1"));
        QVERIFY(formIs(true));
        QCOMPARE(form->fields()->value("quantity"), QStringLiteral("wicker-break"));
        form->cancel();
        QVERIFY(formIs(false));
        QTRY_VERIFY_WITH_TIMEOUT(hand.find(QStringLiteral("wear.series.0"))
                                     ->property("detail")
                                     .toString()
                                     .contains(QStringLiteral("beyond the limit")),
                                 20'000);
    }
    /// What is none of ours is said; one of ours opens the page of its item.
    void aTagOpensItsItem() {
        const auto tag = [&](const std::string& text) {
            QImage picture(400, 400, QImage::Format_RGB32);
            QPainter painter(&picture);
            print::QrCode::of(text)->draw(painter, QRectF(picture.rect()));
            painter.end();
            const auto file = m_open.demo().folder.filePath(QStringLiteral("tag.png"));
            return picture.save(file) ? QUrl::fromLocalFile(file) : QUrl();
        };
        auto* search = m_window->findChild<QObject*>(QStringLiteral("search"));
        QVERIFY(search != nullptr && QMetaObject::invokeMethod(search, "open"));
        auto* pictures = search->property("pictures").value<QObject*>();
        QVERIFY(pictures != nullptr);
        CountingHand hand(*m_window);
        QVERIFY(there(hand, "search.tag"));
        QMetaObject::invokeMethod(pictures, "chosen", Q_ARG(int, 0),
                                  Q_ARG(QUrl, tag(print::tagText(ItemId("NONE-1")))));
        QVERIFY(there(hand, "search.tagProblem"));
        QVERIFY(hand.find(QStringLiteral("search.tagProblem"))
                    ->property("text")
                    .toString()
                    .contains(QStringLiteral("NONE-1")));
        look("search-tag");
        QMetaObject::invokeMethod(pictures, "chosen", Q_ARG(int, 0), Q_ARG(QUrl, tag(print::tagText(ItemId("BRN-1")))));
        QTRY_VERIFY_WITH_TIMEOUT(!search->property("opened").toBool(), 20'000);
        auto* page = m_window->findChild<QObject*>(QStringLiteral("balloons"))->property("subject").value<QObject*>();
        QVERIFY(page != nullptr);
        QTRY_COMPARE_WITH_TIMEOUT(page->property("item").toString(), QStringLiteral("BRN-1"), 20'000);
    }
};

CROWNRING_TEST(EventsWindowTest, QApplication)

}

#include "events_window_test.moc"
