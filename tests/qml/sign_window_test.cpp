// SPDX-License-Identifier: GPL-3.0-or-later

/// The sheet that asks before somebody signs, with the code of who signs, on a desk and on a phone.

#include "acts/own_code.h"
#include "demo_window.h"
#include "screen/bench/release_desk.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QDir>
#include <QQuickItem>
#include <QTest>

#include <algorithm>

namespace sign_window_test {

using namespace crownring;
using namespace crownring::screen;

class SignWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    void type(const QString& text) {
        for (const auto letter : text)
            QTest::keyClick(m_window, letter.toLatin1());
    }
    ReleaseDesk* release() {
        auto* page = m_window->findChild<QObject*>(QStringLiteral("bench"));
        return page ? qobject_cast<ReleaseDesk*>(page->property("release").value<QObject*>()) : nullptr;
    }
    /// The sheet over the release of an inspection that is still open, for somebody to sign.
    bool isAsked(const Signer& signer) {
        if (!QMetaObject::invokeMethod(m_window, "showPlace",
                                       Q_ARG(QString, QStringLiteral("bench/OL-2026-018/release"))) ||
            !QTest::qWaitFor([&] { return release() != nullptr && release()->people()->count() > 0; }, 30'000))
            return false;
        release()->setSigner(signer);
        if (!QTest::qWaitFor([&] { return release()->code()->isAsked(); }, 30'000))
            return false;
        auto* sheet = m_window->findChild<QObject*>(QStringLiteral("bench.signing"));
        return sheet != nullptr && QMetaObject::invokeMethod(sheet, "open") &&
               QTest::qWaitFor([&] { return m_open.find(QStringLiteral("code.own")) != nullptr; }, 30'000);
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_window->requestActivate();
        bool set = false;
        hear(m_open.demo().house.desk.ask([](Record& record) {
            CodeSetting setting;
            setting.signatory = PersonId("insp. K3");
            setting.code = "basket wire 7";
            setting.on = CivilDate::parse("2026-11-01").value();
            return setCode(record, record, setting).has_value();
        }),
             this, [&](bool written) { set = written; });
        QTRY_VERIFY_WITH_TIMEOUT(set, 30'000);
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void returnGoesOnAndNeverSigns_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void returnGoesOnAndNeverSigns() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(isAsked({PersonId("insp. 14"), Capacity::OrganisationCertifyingStaff}));
        auto* own = m_open.find(QStringLiteral("code.own"));
        QTRY_VERIFY_WITH_TIMEOUT(own->hasActiveFocus(), 10'000);
        QVERIFY(m_open.find(QStringLiteral("code.again")) != nullptr); // it is the first
        QVERIFY(m_open.photograph(QStringLiteral("sign-first-code")));
        type(QStringLiteral("basket wire"));
        QCOMPARE(own->property("displayText").toString().count(u'b'), 0); // nobody is shown it
        QTest::keyClick(m_window, Qt::Key_Return);
        QVERIFY(m_open.find(QStringLiteral("code.again"))->hasActiveFocus());
        type(QStringLiteral("basket wirf"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("code.problem")) != nullptr, 10'000);
        QVERIFY(!release()->code()->isReady());
        QVERIFY(m_open.photograph(QStringLiteral("sign-two-differ")));
        QTest::keyClick(m_window, Qt::Key_Backspace);
        type(QStringLiteral("e"));
        QVERIFY(release()->code()->isReady());
        QTest::keyClick(m_window, Qt::Key_Return);
        QVERIFY(!release()->signing() && m_open.find(QStringLiteral("code.again"))->hasActiveFocus());
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("code.own")) == nullptr, 30'000);
        QVERIFY(release()->code()->code().isEmpty()); // it is let go of
    }
    void whoHasACodeWritesItOnce_data() { returnGoesOnAndNeverSigns_data(); }
    void whoHasACodeWritesItOnce() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(isAsked({PersonId("insp. K3"), Capacity::InspectionAuthorization}));
        QVERIFY(m_open.find(QStringLiteral("code.again")) == nullptr);
        QVERIFY(release()->code()->about().contains(QStringLiteral("2026-11-01")));
        QVERIFY(!m_open.find(QStringLiteral("bench.sign.confirm"))->isEnabled());
        QVERIFY(m_open.photograph(QStringLiteral("sign-code")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("code.own")) == nullptr, 30'000);
    }
    void whoWithdrawsIsAskedToo_data() { returnGoesOnAndNeverSigns_data(); }
    void whoWithdrawsIsAskedToo() {
        QFETCH(QSize, size);
        m_window->resize(size);
        auto* sheet = m_window->findChild<QObject*>(QStringLiteral("form"));
        QVERIFY(sheet != nullptr);
        auto* form = qobject_cast<EntryForm*>(sheet->property("form").value<QObject*>());
        QVERIFY(form != nullptr);
        form->beginAtBench(QStringLiteral("release.revoked"), QStringLiteral("OL-2026-017"), {}, {});
        const auto& fields = form->fields()->fields();
        const auto by = std::ranges::find(fields, std::string_view("by"), &FormField::key) - fields.begin();
        form->setValue(static_cast<int>(by), QStringLiteral("insp. K3"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("secret.-code")) != nullptr, 30'000);
        QVERIFY(m_open.find(QStringLiteral("secret.-code-again")) == nullptr);
        m_open.find(QStringLiteral("secret.-code"))->forceActiveFocus();
        QVERIFY(m_open.photograph(QStringLiteral("withdraw-code")));
        form->cancel();
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("secret.-code")) == nullptr, 30'000);
    }
};

CROWNRING_TEST(SignWindowTest, QApplication)

}

#include "sign_window_test.moc"
