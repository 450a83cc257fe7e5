// SPDX-License-Identifier: GPL-3.0-or-later

/// In the real window: a directive is entered and answered for the fleet of forty, and twelve cylinders go to the test
/// house and come back. Every tap and every key is counted, but for what is typed; the goals are 25 and 20.

#include "answers/directives/book.h"
#include "answers/parts/pool.h"
#include "counting_hand.h"
#include "demo_window.h"
#include "screen/components/pool_model.h"
#include "screen/directives/directive_model.h"
#include "test_class.h"

#include <QApplication>

namespace batch_taps_test {

using namespace crownring;
using namespace crownring::screen;

class BatchTapsTest : public QObject {
    Q_OBJECT

    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    [[nodiscard]] bool there(CountingHand& hand, const char* name) {
        return QTest::qWaitFor(
            [&] {
                const auto* item = hand.find(QString::fromLatin1(name));
                return item != nullptr && item->isEnabled() && item->width() > 0;
            },
            30'000);
    }
    [[nodiscard]] bool tap(CountingHand& hand, const char* name) {
        if (!there(hand, name))
            return false;
        QTest::qWait(250);
        return hand.tap(QString::fromLatin1(name));
    }
    /// Goes into the field, unless the keyboard is there, and types.
    [[nodiscard]] bool write(CountingHand& hand, const char* name, const QString& text) {
        if (!there(hand, name))
            return false;
        QTest::qWait(100);
        if (!hand.into(QString::fromLatin1(name)))
            return false;
        hand.type(text);
        return true;
    }
    [[nodiscard]] bool formIs(bool open) {
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"));
        return QTest::qWaitFor([&] { return form->property("opened").toBool() == open; }, 30'000);
    }
    template <class Ask>
    [[nodiscard]] auto asked(Ask ask) {
        auto answer = m_open.demo().house.desk.ask(ask);
        answer.waitForFinished();
        return answer.result();
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_window->resize(1280, 800);
        m_window->requestActivate();
        m_open.demo().house.habits.setPerson(QStringLiteral("insp. 14"));
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void aDirectiveIsEnteredAndAnsweredForTheFleet() {
        CountingHand hand(*m_window);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("next"))));
        QTest::qWait(300);
        hand.key(Qt::Key_4, Qt::ControlModifier);
        QVERIFY(tap(hand, "rules.directives"));
        QVERIFY(tap(hand, "directives.enter"));
        QVERIFY(formIs(true));
        QVERIFY(write(hand, "typed.directive", QStringLiteral("OAO-AD 2026-021")));
        QVERIFY(write(hand, "typed.revision", QStringLiteral("0")));
        QVERIFY(write(hand, "typed.title", QStringLiteral("Crown ring: look at the knots")));
        QVERIFY(tap(hand, "before.issuer.Ovelmere Aviation Office"));
        QVERIFY(tap(hand, "before.state.QE"));
        QVERIFY(write(hand, "typed.effective", QStringLiteral("2026-11-25")));
        QVERIFY(tap(hand, "some.applies.kinds.envelope"));
        QVERIFY(write(hand, "typed.first.by", QStringLiteral("2026-12-31")));
        const auto* follows = hand.find(QStringLiteral("form.follows"));
        QTRY_VERIFY_WITH_TIMEOUT(follows != nullptr &&
                                     follows->property("text").toString().contains(QStringLiteral("It binds")),
                                 30'000); // before it is posted
        QVERIFY(tap(hand, "form.save"));
        QVERIFY(formIs(false));
        const int entered = hand.count();

        // Its page, all that are open, one answer.
        auto* list = m_window->findChild<QObject*>(QStringLiteral("rules"))->property("directives").value<QObject*>();
        QVERIFY(list != nullptr);
        auto* directives = list->property("directives").value<DirectiveModel*>();
        QTRY_VERIFY_WITH_TIMEOUT(directives->entries().front().number.startsWith(QStringLiteral("OAO-AD 2026-021")),
                                 30'000);
        QVERIFY(tap(hand, "directives.row.0"));
        QTRY_COMPARE_WITH_TIMEOUT(list->property("number").toString(), QStringLiteral("OAO-AD 2026-021"), 30'000);
        const int open = list->property("open").toInt();
        QVERIFY2(open >= 40, qPrintable(QString::number(open)));
        QVERIFY(tap(hand, "directive.tickOpen"));
        QVERIFY(tap(hand, "directive.answer"));
        QVERIFY(formIs(true));
        QVERIFY(write(hand, "typed.method", QStringLiteral("paragraph 1: no wear seen")));
        QVERIFY(tap(hand, "one.capacity."));
        QVERIFY(write(hand, "typed.licence", QStringLiteral("QE.CAO.0031 / 14")));
        QVERIFY(write(hand, "typed.ref", QStringLiteral("OL-WO 26-201")));
        QVERIFY(tap(hand, "form.save"));
        QVERIFY(formIs(false));
        QTRY_COMPARE_WITH_TIMEOUT(list->property("open").toInt(), 0, 30'000);
        const auto answered = asked([](Record& record) {
            const auto book = directiveBook(record, *CivilDate::parse("2026-11-25")).value();
            for (const auto& line : book->lines)
                if (line.issued.body.directive == DirectiveId("OAO-AD 2026-021"))
                    return line.count(DirectiveShare::Answered);
            return 0;
        });
        QCOMPARE(answered, open);
        qInfo("a directive for %d envelopes: %d taps and keys (%d to enter it); %s", open, hand.count(), entered,
              qPrintable(hand.whereTo()));
        QVERIFY2(hand.count() <= 25, qPrintable(hand.whereTo()));
    }

    void twelveCylindersGoToTheTestHouseAndComeBack() {
        CountingHand hand(*m_window);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("next"))));
        QTest::qWait(300);
        hand.key(Qt::Key_2, Qt::ControlModifier);
        QVERIFY(tap(hand, "balloons.pool"));
        QVERIFY(there(hand, "pool.tickShown"));
        auto* pane = hand.find(QStringLiteral("pool.quarter"));
        QVERIFY(pane != nullptr);
        QTest::qWait(300);
        int row = -1;
        QVERIFY(QMetaObject::invokeMethod(pane, "indexOfValue", Q_RETURN_ARG(int, row),
                                          Q_ARG(QVariant, QVariant(QStringLiteral("2026-Q4")))));
        QVERIFY(hand.pick(QStringLiteral("pool.quarter"), row));
        QTest::qWait(300);
        QVERIFY(tap(hand, "pool.tickShown"));
        QVERIFY(tap(hand, "pool.send"));
        QVERIFY(formIs(true));
        QVERIFY(write(hand, "typed.to", QStringLiteral("Test house 3")));
        QVERIFY(tap(hand, "form.save"));
        QVERIFY(formIs(false));
        const auto away = [&] {
            return asked([](Record& record) {
                const auto items = pool(record, {ItemKind::Cylinder, {}}, *CivilDate::parse("2026-11-25")).value();
                return std::ranges::count_if(items, [](const PoolItem& each) {
                    return each.facts.out && each.facts.out->state == ServiceState::Away;
                });
            });
        };
        QCOMPARE(away(), 13); // one was away before
        const int sent = hand.count();

        auto* list = m_window->findChild<QObject*>(QStringLiteral("balloons"))->property("pool").value<QObject*>();
        QVERIFY(list != nullptr);
        const auto renewed = [list] { return !list->property("renewing").toBool(); };
        QTRY_VERIFY_WITH_TIMEOUT(list->property("ticked").toStringList().isEmpty(), 30'000); // it is another batch now
        QTRY_VERIFY_WITH_TIMEOUT(renewed(), 30'000);
        QVERIFY(tap(hand, "pool.away"));
        QTRY_VERIFY_WITH_TIMEOUT(renewed(), 30'000);
        QVERIFY(tap(hand, "pool.tickShown"));
        QTest::qWait(200);
        auto* items = list->property("items").value<PoolModel*>();
        for (int at = 0; at < items->count(); ++at)
            if (items->itemAt(at) == QStringLiteral("CYL-9002")) // which is elsewhere
                QVERIFY(tap(hand, qPrintable(QStringLiteral("pool.row.%1").arg(at))));
        QTRY_VERIFY_WITH_TIMEOUT(renewed(), 30'000);
        QVERIFY(tap(hand, "pool.return"));
        QVERIFY(formIs(true));
        QVERIFY(write(hand, "typed.ref", QStringLiteral("TH3 26-88")));
        QVERIFY(tap(hand, "one.requirement.-each"));
        if (hand.find(QStringLiteral("one.method.volumetric")) != nullptr) // asked of those of the United States
            QVERIFY(tap(hand, "one.method.volumetric"));
        QVERIFY(write(hand, "typed.mark", QStringLiteral("TH3")));
        QVERIFY2(tap(hand, "some.condemned.CYL-4013"), qPrintable(hand.whereTo()));
        QVERIFY(tap(hand, "form.save"));
        QVERIFY(formIs(false));
        QCOMPARE(away(), 1);
        const auto condemned = asked([](Record& record) {
            const auto items = pool(record, {ItemKind::Cylinder, {}}, *CivilDate::parse("2026-11-25")).value();
            const auto at =
                std::ranges::find(items, ItemId("CYL-4013"), [](const PoolItem& each) { return each.facts.id; });
            return at != items.end() && at->condemned;
        });
        QVERIFY(condemned);
        qInfo("twelve cylinders there and back: %d taps and keys (%d there); %s", hand.count(), sent,
              qPrintable(hand.whereTo()));
        QVERIFY2(hand.count() <= 20, qPrintable(hand.whereTo()));
    }
};

CROWNRING_TEST(BatchTapsTest, QApplication)

}

#include "batch_taps_test.moc"
