// SPDX-License-Identifier: GPL-3.0-or-later

/// Every form in the real window over the demo fleet: nothing in it is wider than its sheet, and its picture is taken,
/// to be looked at. tests/pictures.sh sets CROWNRING_PICTURES: then on desks too, and both pictures of the README.

#include "demo_window.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>

namespace every_form_test {

using namespace crownring;
using namespace crownring::screen;

class EveryFormTest : public QObject {
    Q_OBJECT

    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;
    QObject* m_sheet = nullptr;

    [[nodiscard]] EntryForm& form() const { return *m_sheet->property("form").value<EntryForm*>(); }
    /// Of pictures that take their time.
    [[nodiscard]] static bool isAsked() { return qEnvironmentVariableIsSet("CROWNRING_PICTURES"); }
    void photograph(const QString& name) {
        QDir().mkpath(QStringLiteral(PICTURES));
        QVERIFY(m_window->grabWindow().save(QStringLiteral(PICTURES "/%1.png").arg(name)));
    }
    /// What is drawn of a form and reaches beyond the sheet on either side, by its name.
    [[nodiscard]] static QStringList tooWide(const QQuickItem& item, const QQuickItem& sheet) {
        QStringList names;
        for (const auto* child : item.childItems()) {
            if (!child->isVisible())
                continue;
            const auto area = child->mapRectToItem(&sheet, child->boundingRect());
            if (child->width() > 0 && (area.left() < -1 || area.right() > sheet.width() + 1))
                names += QStringLiteral("%1 %2: %3 to %4 of %5")
                             .arg(QLatin1String(child->metaObject()->className()), child->objectName())
                             .arg(area.left())
                             .arg(area.right())
                             .arg(sheet.width());
            names += tooWide(*child, sheet);
        }
        return names;
    }
    /// Until nothing is asked of the record any more and what was answered is drawn.
    void rest() {
        bool answered = false;
        hear(m_open.demo().house.desk.ask([](Record&) { return true; }), this, [&](bool) { answered = true; });
        QTRY_VERIFY_WITH_TIMEOUT(answered, 30'000);
        QTest::qWait(150);
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_open.demo().house.habits.setPerson(QStringLiteral("pilot 7"));
        m_sheet = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(m_sheet != nullptr);
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void picturesOfTheReadme_data() {
        QTest::addColumn<QString>("place");
        QTest::addColumn<QSize>("size");
        QTest::newRow("next") << QStringLiteral("next") << QSize(1280, 800);
        if (isAsked())
            QTest::newRow("fabric") << QStringLiteral("balloons/QE-MIST/fabric") << QSize(1440, 1000);
    }
    void picturesOfTheReadme() {
        QFETCH(QString, place);
        QFETCH(QSize, size);
        m_window->resize(size);
        QTest::qWait(300);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)));
        rest();
        if (place.endsWith(QStringLiteral("fabric"))) {
            const auto* pane = m_window->findChild<QObject*>(QStringLiteral("subject.fabricPane"));
            QVERIFY(pane != nullptr);
            const auto* desk = pane->property("desk").value<QObject*>();
            QTRY_VERIFY_WITH_TIMEOUT(desk->property("foretold").toBool() && !desk->property("working").toBool(),
                                     300'000);
        }
        QTest::qWait(1000);
        photograph(QStringLiteral("readme-") + QString::fromLatin1(QTest::currentDataTag()));
    }

    void fitsItsSheet_data() {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QSize>("size");
        for (const char* kind :
             {"whole-balloon",  "balloon.entered",   "balloon.renamed",  "balloon.state",      "item.entered",
              "item.fitted",    "item.removed",      "item.state",       "flight.logged",      "requirement.done",
              "event.reported", "programme.adopted", "reading.taken",    "defect.found",       "defect.deferred",
              "defect.cleared", "repair.made",       "part.replaced",    "person.entitled",    "tester.calibrated",
              "type.described", "limit.stated",      "fabric.stated",    "checklist.adopted",  "release.revoked",
              "review.signed",  "entry.voided",      "directive.issued", "directive.answered", "cylinder.filled"})
            for (const QSize size : {QSize(360, 740), QSize(1280, 800), QSize(1920, 1080)})
                if (isAsked() || size.width() == 360)
                    QTest::addRow("%s-%dx%d", kind, size.width(), size.height()) << QString::fromLatin1(kind) << size;
    }
    void fitsItsSheet() {
        QFETCH(QString, kind);
        QFETCH(QSize, size);
        m_window->resize(size);
        const bool ofItem = kind == QStringLiteral("item.state") || kind == QStringLiteral("fabric.stated");
        const auto balloon = ofItem ? QString() : QStringLiteral("QE-OVA");
        form().begin(kind, balloon, ofItem ? QStringLiteral("ENV-1001") : QString());
        QVERIFY2(form().isOpen(), qPrintable(kind));
        QTRY_VERIFY_WITH_TIMEOUT(m_sheet->property("opened").toBool(), 30'000);
        rest();
        auto* content = m_sheet->property("contentItem").value<QQuickItem*>();
        QVERIFY(content != nullptr);
        photograph(QStringLiteral("form-") + QString::fromLatin1(QTest::currentDataTag()));
        const auto wide = tooWide(*content, *content);
        form().cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!m_sheet->property("opened").toBool(), 30'000);
        QVERIFY2(wide.isEmpty(), qPrintable(wide.join(u'\n')));
    }
};

CROWNRING_TEST(EveryFormTest, QApplication)

}

#include "every_form_test.moc"
