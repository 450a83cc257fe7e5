// SPDX-License-Identifier: GPL-3.0-or-later

/// Directives, the pool and the parts of an item in the window, on a desk and on a phone, with pictures to be looked
/// at.

#include "demo_window.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>

namespace components_window_test {

using namespace crownring;
using namespace crownring::screen;

class ComponentsWindowTest : public QObject {
    Q_OBJECT

    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    void show(const QString& place) {
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)));
        rest();
    }
    /// Until nothing is asked of the record any more and what was answered is drawn.
    void rest() {
        for (int round = 0; round < 2; ++round) {
            bool answered = false;
            hear(m_open.demo().house.desk.ask([](Record&) { return true; }), this, [&](bool) { answered = true; });
            QTRY_VERIFY_WITH_TIMEOUT(answered, 30'000);
            QTest::qWait(200);
        }
    }
    void click(const char* name) {
        QTRY_VERIFY2_WITH_TIMEOUT(m_open.find(QString::fromLatin1(name)) != nullptr, name, 30'000);
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QString::fromLatin1(name)), "clicked"));
        rest();
    }
    /// What is drawn below an item and reaches beyond the window on either side.
    [[nodiscard]] QStringList tooWide(const QQuickItem& item) const {
        QStringList names;
        for (const auto* child : item.childItems()) {
            if (!child->isVisible())
                continue;
            const auto area = child->mapRectToScene(child->boundingRect());
            if (child->width() > 0 && (area.left() < -1 || area.right() > m_window->width() + 1))
                names += QStringLiteral("%1 %2: %3 to %4")
                             .arg(QLatin1String(child->metaObject()->className()), child->objectName())
                             .arg(area.left())
                             .arg(area.right());
            names += tooWide(*child);
        }
        return names;
    }
    void look(const char* name) {
        rest();
        QVERIFY(m_open.photograph(QString::fromLatin1(name)));
        const auto wide = tooWide(*m_window->contentItem());
        QVERIFY2(wide.isEmpty(), qPrintable(QString::fromLatin1(name) + u'\n' + wide.join(u'\n')));
    }
    [[nodiscard]] EntryForm& form() const {
        return *m_window->findChild<QObject*>(QStringLiteral("form"))->property("form").value<EntryForm*>();
    }
    void lookAtForm(const char* name) {
        auto* sheet = m_window->findChild<QObject*>(QStringLiteral("form"));
        QTRY_VERIFY_WITH_TIMEOUT(sheet->property("opened").toBool(), 30'000);
        look(name);
        form().cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!sheet->property("opened").toBool(), 30'000);
    }
    static void sizes() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_open.demo().house.habits.setPerson(QStringLiteral("insp. 14"));
        // No list says what is in this one: of it nobody knows.
        QVERIFY(isPosted(
            m_open.demo().house,
            R"({"entry":"item.entered","on":"2026-11-20","by":"office","item":"BRN-399","kind":"burner","serial":"TA399","type":"Twin"})"));
        QVERIFY(m_open.demo().settled());
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void directives_data() { sizes(); }
    void directives() {
        QFETCH(QSize, size);
        m_window->resize(size);
        show(QStringLiteral("rules/directives"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directives.row.0")) != nullptr, 30'000);
        look("directives");
        show(QStringLiteral("rules/directives/OAO-AD 2026-014"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directive.held.0")) != nullptr, 30'000);
        look("directive-bound");
        if (size.width() < 400) {
            click("directive.more");
            look("directive-unfolded");
            click("directive.more");
        }
        click("directive.unknown");
        look("directive-unknown");
        click("directive.tickOpen");
        look("directive-ticked");
        click("directive.answer");
        lookAtForm("directive-answer");
        click("directive.notBound");
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directive.answer")) == nullptr, 30'000);
        look("directive-not-bound");
        show(QStringLiteral("rules/directives"));
        click("directives.enter");
        auto& fields = *form().fields();
        for (const auto& field : fields.fields())
            if (field.key == "applies.kinds")
                form().toggle(static_cast<int>(&field - fields.fields().data()), QStringLiteral("burner"));
        QTRY_VERIFY_WITH_TIMEOUT(form().follows().contains(QStringLiteral("It binds")), 30'000);
        lookAtForm("directive-enter");
    }

    void aDirectiveOpensAtItsTopAndItsRowsStayWhereTheyAre_data() { sizes(); }
    void aDirectiveOpensAtItsTopAndItsRowsStayWhereTheyAre() {
        QFETCH(QSize, size);
        m_window->resize(size);
        const auto list = [this] { return m_open.find(QStringLiteral("directive.list")); };
        for (const char* number : {"OAO-AD 2026-009", "TAW-SB 26-05", "OAO-AD 2026-014"}) {
            show(QStringLiteral("rules/directives/") + QString::fromLatin1(number));
            QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directive.held.0")) != nullptr, 30'000);
            rest();
            QCOMPARE(list()->property("contentY").toReal(), list()->property("originY").toReal());
        }
        const auto placeOf = [this] {
            return m_open.find(QStringLiteral("directive.held.0"))->mapToScene(QPointF()).y();
        };
        const auto before = placeOf();
        click("directive.held.0");
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directive.answer")) != nullptr, 30'000);
        rest();
        QCOMPARE(placeOf(), before);
        click("directive.held.0");
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("directive.answer")) == nullptr, 30'000);
        rest();
        QCOMPARE(placeOf(), before);
    }

    /// From what is due the way leads to the directive, where it is answered.
    void aDueRowLeadsToItsDirective() {
        m_window->resize(1280, 800);
        const auto& sheet = *m_open.demo().house.fleet.sheet();
        QString item;
        for (const auto& row : sheet.rows())
            if (row.requirement->id.text() == "directive/OAO-AD 2026-014")
                item = QString::fromStdString(row.item->id.text());
        QVERIFY(!item.isEmpty());
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToDue", Q_ARG(QString, item),
                                          Q_ARG(QString, QStringLiteral("directive/OAO-AD 2026-014"))));
        rest();
        click("due.directive");
        auto* desk = m_window->findChild<QObject*>(QStringLiteral("rules"))->property("directives").value<QObject*>();
        QTRY_COMPARE_WITH_TIMEOUT(desk->property("number").toString(), QStringLiteral("OAO-AD 2026-014"), 30'000);
        QCOMPARE(m_window->property("place").toInt(), 3);
    }

    void pool_data() { sizes(); }
    void pool() {
        QFETCH(QSize, size);
        m_window->resize(size);
        show(QStringLiteral("balloons/pool"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("pool.row.0")) != nullptr, 30'000);
        look("pool");
        click("pool.row.0");
        click("pool.row.1");
        look("pool-ticked");
        click("pool.send");
        lookAtForm("pool-send");
        click("pool.tickShown");
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("pool.send")) == nullptr, 30'000);
        form().beginFor(QStringLiteral("components.returned"),
                        {QStringLiteral("CYL-4076"), QStringLiteral("CYL-4013"), QStringLiteral("CYL-4018")});
        lookAtForm("pool-return");
        form().beginFor(QStringLiteral("cylinder.filled"), {QStringLiteral("CYL-4076"), QStringLiteral("CYL-4013")});
        lookAtForm("pool-fill");
    }

    void anItemWithParts_data() { sizes(); }
    void anItemWithParts() {
        QFETCH(QSize, size);
        m_window->resize(size);
        for (const char* item : {"CYL-9001", "VLV-1", "BRN-301", "VLV-3"}) {
            QVERIFY(QMetaObject::invokeMethod(m_window, "goToItem", Q_ARG(QString, QString::fromLatin1(item))));
            rest();
            click("subject.parts");
            look(qPrintable(QStringLiteral("parts-") + QString::fromLatin1(item)));
        }
        form().beginFor(QStringLiteral("component.replaced"), {QStringLiteral("VLV-1")});
        lookAtForm("parts-replace");
        form().beginFor(QStringLiteral("component.fitted"), {QStringLiteral("CYL-9001")});
        lookAtForm("parts-fit");
    }
};

CROWNRING_TEST(ComponentsWindowTest, QApplication)

}

#include "components_window_test.moc"
