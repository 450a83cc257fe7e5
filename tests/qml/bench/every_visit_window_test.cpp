// SPDX-License-Identifier: GPL-3.0-or-later

/// The kinds of visit that differ on the screen, in the real window from "it came in" to the paper: an inspection after
/// an event, a repair that is released incomplete and closed later, work on a component, and a review. Every kind is
/// walked at the desks behind it in tests/screen/bench.

#include "qml/demo_window.h"
#include "screen/bench/every_visit.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>

namespace every_visit_window_test {

using namespace every_visit;

namespace {

/// A balloon whose review runs out within 90 days, all of it inspected, and who reviews it.
std::string reviewed() {
    std::string lines = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-REV","operations":["private"]})"
                        "\n";
    for (const std::string item : {R"("EREV","kind":"envelope")", R"("KREV","kind":"basket")",
                                   R"("RREV","kind":"burner")", R"("CREV","kind":"cylinder")"})
        lines +=
            R"({"entry":"item.entered","on":"2024-01-01","item":)" + item + "}\n" +
            R"({"entry":"item.fitted","on":"2024-01-01","balloon":"QE-REV","item":)" + item.substr(0, item.find(',')) +
            "}\n" +
            R"({"entry":"requirement.done","on":"2026-06-01","requirement":"ml.inspection","ref":"WO 1","signatory":"Odo Vale","licence":"QE.66.7","item":)" +
            item.substr(0, item.find(',')) + "}\n";
    return lines +
           R"({"entry":"requirement.done","on":"2025-12-10","item":"EREV","requirement":"ml.arc-review","ref":"ARC 1","signatory":"Odo Vale","licence":"QE.CAO.0031","expires":"2026-12-10"}
{"entry":"programme.adopted","on":"2024-01-02","programme":"part-ml-hot-air","balloons":["QE-REV"]}
{"entry":"person.entitled","on":"2024-01-01","person":"Cai Mo","capacity":"airworthiness-review-staff","licence":"ARS 3","organisation":"Lakeside","approval":"QE.CAO.0031"}
)" + testing::confirmedBy("Cai Mo", Capacity::AirworthinessReviewStaff, "2024-01-02", "ARS 3, Lakeside, QE.CAO.0031");
}

}

class EveryVisitWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;
    QTemporaryDir m_folder;

    [[nodiscard]] QObject* page() { return m_window->findChild<QObject*>(QStringLiteral("bench")); }
    template <class Desk>
    Desk& desk(const char* name) {
        return *qobject_cast<Desk*>(page()->property(name).template value<QObject*>());
    }
    [[nodiscard]] Bench bench() {
        auto* sheet = m_window->findChild<QObject*>(QStringLiteral("bench.visit"));
        return {*sheet->property("visit").value<VisitOpening*>(), desk<InspectionDesk>("desk"),
                desk<ReadingDesk>("readings"), desk<ReleaseDesk>("release")};
    }
    [[nodiscard]] QQuickItem* find(const QString& name) { return m_open.find(name); }
    [[nodiscard]] bool waitsFor(const char* name) {
        return QTest::qWaitFor([&] { return find(QLatin1String(name)) != nullptr; }, 15'000);
    }
    [[nodiscard]] bool clicks(const char* name) {
        const auto can = [&] {
            const auto* item = find(QLatin1String(name));
            return item != nullptr && item->isEnabled();
        };
        return QTest::qWaitFor(can, 15'000) && QMetaObject::invokeMethod(find(QLatin1String(name)), "clicked");
    }
    bool shows(const QString& place) { return QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)); }
    /// @param way "name" of what is expected to be seen
    [[nodiscard]] bool opens(Visit visit) {
        const auto name = isOfComponents(visit) ? QString() : QString::fromStdString(nameOf(visit));
        if (!QMetaObject::invokeMethod(page(), "beginVisit", Q_ARG(QString, name)) || !waitsFor("bench.visit.kind"))
            return false;
        auto at = bench();
        if (!chooses(at, visit) || !clicks("bench.visit.open"))
            return false;
        const auto isAtHand = [&] {
            return at.inspection.loaded() && at.inspection.isOpen() && at.inspection.file()->visit() == visit;
        };
        return QTest::qWaitFor(isAtHand, 15'000) && waitsFor("bench.rest");
    }
    /// By the sheet that names who signs, with the code of his own.
    [[nodiscard]] bool signs(const char* who) {
        if (!clicks("bench.sign") || !waitsFor("bench.sign.who") ||
            !find("bench.sign.who")->property("text").toString().contains(QLatin1String(who)))
            return false;
        auto& release = desk<ReleaseDesk>("release");
        if (!QTest::qWaitFor([&] { return release.code()->isAsked(); }, 15'000))
            return false;
        release.code()->setCode(QStringLiteral("basket wire 7"));
        release.code()->setAgain(QStringLiteral("basket wire 7"));
        QSignalSpy done(&release, &ReleaseDesk::signedNow);
        return clicks("bench.sign.confirm") && QTest::qWaitFor([&] { return done.size() == 1; }, 15'000);
    }
    /// The work described. @return what is wrong with the checklist that comes of it; empty where nothing is
    [[nodiscard]] static QString wrongAsDescribed(Visit visit, Bench& at) {
        describe(visit, at);
        return wrongLines(visit, at);
    }
    /// From the settled lines to the paper. @return what is wrong; empty where nothing is
    [[nodiscard]] QString endsWithItsPaper(Visit visit, Bench& at) {
        if (!shows(QStringLiteral("bench/%1/release").arg(at.inspection.inspection())) || !waitsFor("bench.sign"))
            return QStringLiteral("the release is not shown");
        if (const auto bar = comesToTheSignature(visit, at); !bar.isEmpty())
            return bar + u' ' + at.inspection.problem();
        if (!signs(signerOf(visit).person.text().c_str()))
            return QStringLiteral("not signed: ") + at.release.problem();
        if (!QTest::qWaitFor([&] { return at.inspection.loaded() && !at.inspection.isOpen(); }, 15'000) ||
            !waitsFor("bench.print.a4"))
            return QStringLiteral("no paper is offered");
        return lackingOn(paper(at.release, m_folder.filePath(QString::number(int(visit)) + ".pdf")), visit);
    }

    [[nodiscard]] static QString problemsOf(EntryForm& form) {
        auto said = form.problem();
        for (const auto& field : form.fields()->fields())
            if (!field.problem.isEmpty())
                said += u'\n' + QString::fromStdString(field.key) + u' ' + field.problem;
        return said;
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open(DemoHouse::Filled::Empty));
        m_window = m_open.window();
        m_window->resize(1280, 800);
        QVERIFY(isPosted(m_open.demo().house, theRecord() + reviewed()));
        m_open.demo().house.habits.setInspector(QStringLiteral("Bo Lind"));
        QVERIFY(shows(QStringLiteral("bench")));
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void anInspectionAfterAnEvent() {
        const auto visit = Visit::UsSpecial;
        QVERIFY(opens(visit));
        auto at = bench();
        const auto wrong = wrongLines(visit, at);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        QVERIFY(m_open.photograph(QStringLiteral("visit-special")));
        settleAll(visit, at);
        const auto ends = endsWithItsPaper(visit, at);
        QVERIFY2(ends.isEmpty(), qPrintable(ends));
    }
    /// ML.A.801(f), from memory: its release names what was not done, and it is closed by a release of its own.
    void aRepairThatIsReleasedIncompleteAndClosed() {
        const auto visit = Visit::PartMlRepair;
        QVERIFY(opens(visit));
        auto at = bench();
        const auto wrong = wrongAsDescribed(visit, at);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        QVERIFY(shows(QStringLiteral("bench/%1/release").arg(at.inspection.inspection())));
        QVERIFY(waitsFor("bench.sign"));
        at.release.setOutcome(3);
        at.release.setLimitations(QStringLiteral("one check flight, crew only"));
        const auto bar = comesToTheSignature(visit, at);
        QVERIFY2(bar.isEmpty(), qPrintable(bar));
        QVERIFY(find("bench.sign")->property("text").toString().contains(QStringLiteral("incomplete maintenance")));
        QVERIFY(signs("Ada Rhos"));
        QTRY_VERIFY_WITH_TIMEOUT(at.inspection.file()->inspection.incomplete.has_value(), 15'000);
        QVERIFY(at.inspection.isOpen());
        const auto text = paper(at.release, m_folder.filePath(QStringLiteral("incomplete.pdf")));
        for (const char* says : {"incomplete maintenance", "one check flight, crew only", "Ada Rhos"})
            QVERIFY2(text.contains(QLatin1String(says), Qt::CaseInsensitive),
                     qPrintable(QLatin1String(says) + u'\n' + text));
        QVERIFY(m_open.photograph(QStringLiteral("visit-incomplete")));
        settleAll(visit, at); // the check flight as not applicable
        const auto isOwed = [&] {
            return std::ranges::any_of(at.release.refusals()->choices(), [](const Choice& each) {
                return each.label.startsWith(QStringLiteral("Check flight is still to be done"));
            });
        };
        QTRY_VERIFY_WITH_TIMEOUT(isOwed(), 15'000);
        QVERIFY(isPosted(m_open.demo().house, flightOf(visit)));
        at.inspection.settle(at.inspection.showLine(QStringLiteral("work.check-flight")), 1);
        bench_walk_test::settle(at);
        const auto ends = endsWithItsPaper(visit, at);
        QVERIFY2(ends.isEmpty(), qPrintable(ends));
        QVERIFY(m_open.photograph(QStringLiteral("visit-closed")));
    }
    void workOnAComponent() {
        const auto visit = Visit::PartMlComponent;
        QVERIFY(opens(visit));
        auto at = bench();
        const auto wrong = wrongAsDescribed(visit, at);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        settleAll(visit, at);
        const auto ends = endsWithItsPaper(visit, at);
        QVERIFY2(ends.isEmpty(), qPrintable(ends));
        QVERIFY(m_open.photograph(QStringLiteral("visit-component")));
    }
    /// ML.A.901, ML.A.903 (read): from the balloon's page, read before it is signed; within 90 days the pattern is
    /// kept.
    void aReview() {
        QVERIFY(QMetaObject::invokeMethod(m_window, "goToBalloon", Q_ARG(QString, QStringLiteral("QE-REV"))));
        QVERIFY(waitsFor("balloon.review") && clicks("balloon.review") && waitsFor("form.save"));
        auto& form =
            *qvariant_cast<EntryForm*>(m_window->findChild<QObject*>(QStringLiteral("form"))->property("form"));
        const auto row = [&](std::string_view key) {
            const auto& fields = form.fields()->fields();
            return static_cast<int>(std::ranges::find(fields, key, &FormField::key) - fields.begin());
        };
        for (const auto& [key, value] :
             {std::pair("form", "EASA Form 15c"), std::pair("certificate", "ARC 2"), std::pair("on", "2026-11-25"),
              std::pair("reviewer", "Cai Mo"), std::pair("capacity", "airworthiness-review-staff"),
              std::pair("by", "Bo Lind")})
            form.setValue(row(key), QLatin1String(value));
        QVERIFY(waitsFor("secret.-code"));
        for (const char* key : {"-code", "-code-again"})
            form.setValue(row(key), QStringLiteral("a code of Cai Mo"));
        QVERIFY(clicks("form.save"));
        QTRY_VERIFY2_WITH_TIMEOUT(form.isSigning(), qPrintable(problemsOf(form)), 15'000);
        QVERIFY2(form.follows().contains(QStringLiteral("expires on 2027-12-10")), qPrintable(form.follows()));
        QVERIFY(m_open.photograph(QStringLiteral("visit-review")));
        QVERIFY(clicks("form.save"));
        QTRY_VERIFY2_WITH_TIMEOUT(find("form.save") == nullptr, qPrintable(form.problem()), 15'000);
    }
};

CROWNRING_TEST(EveryVisitWindowTest, QApplication)

}

#include "every_visit_window_test.moc"
