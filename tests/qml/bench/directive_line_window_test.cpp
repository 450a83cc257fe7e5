// SPDX-License-Identifier: GPL-3.0-or-later

/// A directive that stands open: proposed when a visit is opened, listed on its line of the checklist, answered from
/// there; and how a directive without a deadline is refused, by the names of the form's fields.

#include "qml/demo_window.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QQuickItem>
#include <QTest>

#include <algorithm>
#include <utility>

namespace directive_line_window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* directive =
    R"({"entry":"directive.issued","on":"2026-11-20","directive":"OAO-AD 2026-021","revision":"0","title":"Burner valves: look at the spindle","issuer":"Oak Airworthiness Office","issued_by":"authority","state":"QE","effective":"2026-11-22","source":"invented for tests","applies":{"kinds":["burner"]},"first":{"before_flight":true}})";

}

class DirectiveLineWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    [[nodiscard]] QQuickItem* find(const char* name) { return m_open.find(QLatin1String(name)); }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_window->requestActivate();
        QVERIFY(isPosted(m_open.demo().house, directive));
        m_open.demo().house.habits.setInspector(QStringLiteral("insp. 14"));
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void itIsAnsweredFromItsLine_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void itIsAnsweredFromItsLine() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, QStringLiteral("bench"))));
        auto* bench = m_window->findChild<QObject*>(QStringLiteral("bench"));
        QVERIFY(QMetaObject::invokeMethod(bench, "beginVisit", Q_ARG(QString, QStringLiteral("QE-IVY"))));
        QTRY_VERIFY_WITH_TIMEOUT(find("bench.visit.directive.0") != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("directive-visit")));
        QTRY_VERIFY_WITH_TIMEOUT(find("bench.visit.open")->isEnabled(), 30'000);
        QVERIFY(QMetaObject::invokeMethod(find("bench.visit.open"), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(find("bench.line.0.directive.0.answer") != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("directive-line")));
        QVERIFY(QMetaObject::invokeMethod(find("bench.line.0.done"), "clicked"));
        QTest::qWait(1000);
        QVERIFY(m_open.photograph(QStringLiteral("directive-line-refused")));
        QVERIFY(QMetaObject::invokeMethod(find("bench.line.0.directive.0.answer"), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(find("form.save") != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("directive-line-answer")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(find("form.save") == nullptr, 30'000);
    }

    void aDeadlineIsAskedForWhereItIsRead_data() { itIsAnsweredFromItsLine_data(); }
    void aDeadlineIsAskedForWhereItIsRead() {
        QFETCH(QSize, size);
        m_window->resize(size);
        auto* form = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(form != nullptr);
        auto* entry = qvariant_cast<EntryForm*>(form->property("form"));
        QVERIFY(entry != nullptr);
        entry->begin(QStringLiteral("directive.issued"));
        QTRY_VERIFY_WITH_TIMEOUT(find("form.save") != nullptr, 30'000);
        const auto row = [&](const char* key) {
            const auto& fields = entry->fields()->fields();
            return static_cast<int>(std::ranges::find(fields, std::string(key), &FormField::key) - fields.begin());
        };
        for (const auto& [key, value] :
             {std::pair("directive", "QE-AD 7"), std::pair("revision", "0"), std::pair("title", "Look"),
              std::pair("issuer", "Authority of Q"), std::pair("state", "Q"), std::pair("effective", "2026-11-20"),
              std::pair("by", "insp. 14")})
            entry->setValue(row(key), QLatin1String(value));
        entry->toggle(row("applies.kinds"), QStringLiteral("burner"));
        QTRY_VERIFY_WITH_TIMEOUT(!entry->follows().isEmpty(), 30'000);
        QVERIFY(QMetaObject::invokeMethod(find("form.save"), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(!entry->problem().isEmpty(), 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("directive-deadline")));
        auto* told = find("problem.first.before_flight");
        QVERIFY(told != nullptr);
        const auto bottom = told->mapToScene(QPointF(0, told->height())).y();
        const auto* save = find("form.save");
        const auto* foot = save->parentItem();
        QVERIFY2(bottom <= foot->mapToScene(QPointF(0, 0)).y() + 1,
                 qPrintable(QStringLiteral("%1 under %2").arg(bottom).arg(foot->mapToScene(QPointF(0, 0)).y())));
        entry->cancel();
        QTRY_VERIFY_WITH_TIMEOUT(find("form.save") == nullptr, 30'000);
    }
};

CROWNRING_TEST(DirectiveLineWindowTest, QApplication)

}

#include "directive_line_window_test.moc"
