// SPDX-License-Identifier: GPL-3.0-or-later

/// Each kind of visit, walked in the real window from "it came in" to the paper that comes: its checklist is the right
/// one, it is settled, signed by who may, and what is filed says so. All names are invented.

#include "qml/bench/every_visit_fleet.h"
#include "qml/demo_window.h"
#include "screen/bench/bench_hands.h"
#include "test_class.h"

#include <QApplication>
#include <QProcess>
#include <QSignalSpy>

#include <algorithm>

namespace every_visit_window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// Which lines a kind of visit has, as one reads them in the rule: these, and none that begin with those.
struct Asked {
    QStringList has;
    QStringList hasNot;
};

const QStringList ofEvents{"hard-landing.", "dragged.", "wire-contact.", "immersion.", "fire.", "over-temperature."};
const QStringList ofInspections{"envelope.parachute", "basket.floor", "burner.main-valves", "cylinder.liquid-valve"};

/// 14 CFR 43.9 and ML.A.801 (from memory) want the work described; 43.11 and AMC1 ML.A.302(d) an inspection of it all.
Asked askedBy(Visit visit) {
    if (isPeriodic(visit))
        return {{"papers.directives", "papers.records", "envelope.parachute", "envelope.tell-tale", "basket.floor"},
                ofEvents + QStringList{"work.", "component.", "event."}};
    if (isSpecial(visit)) // what happened was a hard landing
        return {{"event.report", "hard-landing.basket", "hard-landing.suspension", "hard-landing.burner",
                 "hard-landing.cylinders"},
                ofEvents.mid(1) + ofInspections + QStringList{"work.", "component."}};
    if (isOfOwnersTasks(visit))
        return {{}, ofEvents + ofInspections + QStringList{"work.", "component.", "papers.", "event."}};
    if (isOfComponents(visit))
        return {{"work.data", "work.item", "component.identification", "component.label"},
                ofEvents + ofInspections + QStringList{"papers.", "event.", "work.check-flight"}};
    return {{"work.data", "work.parts", "work.item", "work.check-flight", "work.tools"},
            ofEvents + ofInspections + QStringList{"papers.", "event.", "component."}};
}

/// What the paper is called and certifies.
QStringList saidBy(Visit visit) {
    const bool partMl = regimeOf(visit) == Regime::PartMl;
    if (isOfComponents(visit))
        return {partMl ? "Certificate of release of components"
                       : "Maintenance record entry for components: approval for return to service",
                "no EASA Form 1 and no FAA Form 8130-3"};
    if (partMl)
        return {"Certificate of release to service", "considered ready for release to service"};
    const bool inspected = isPeriodic(visit);
    return {"Maintenance record entry: approval for return to service",
            inspected ? "was determined to be in airworthy condition"
                      : "the approval for return to service only for the work performed"};
}

Signer signerOf(Visit visit) {
    const bool partMl = regimeOf(visit) == Regime::PartMl;
    if (isOfOwnersTasks(visit))
        return partMl ? Signer{PersonId("Ole Berg"), Capacity::PilotOwner}
                      : Signer{PersonId("Pia Lund"), Capacity::PrivatePilot};
    return partMl ? Signer{PersonId("Ada Rhos"), Capacity::IndependentCertifyingStaff}
                  : Signer{PersonId("Ines Holt"), Capacity::InspectionAuthorization};
}

/// The desks of the window's bench.
struct Bench {
    InspectionDesk& inspection;
    ReadingDesk& reading;
    ReleaseDesk& release;
};

/// Of all its parts, as the screen shows them.
QStringList shownLines(InspectionDesk& desk) {
    QStringList lines;
    for (int part = 0; part < desk.parts()->count(); ++part) {
        desk.setPartAt(part);
        for (const auto& row : desk.lines()->rows())
            lines += row.line;
    }
    lines.removeDuplicates();
    return lines;
}

}

class EveryVisitWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;
    QTemporaryDir m_folder;

    template <class Desk>
    Desk* desk(const char* name) {
        auto* page = m_window->findChild<QObject*>(QStringLiteral("bench"));
        return page ? qobject_cast<Desk*>(page->property(name).template value<QObject*>()) : nullptr;
    }
    [[nodiscard]] bool isShown(const char* name) { return m_open.find(QLatin1String(name)) != nullptr; }
    [[nodiscard]] bool click(const char* name) {
        auto* item = m_open.find(QLatin1String(name));
        return item && item->isEnabled() && QMetaObject::invokeMethod(item, "clicked");
    }
    bool shows(const QString& place) { return QMetaObject::invokeMethod(m_window, "showPlace", Q_ARG(QString, place)); }
    /// In the sheet: what came in, the kind of visit, and what is proposed for it.
    [[nodiscard]] bool opens(Visit visit) {
        auto* page = m_window->findChild<QObject*>(QStringLiteral("bench"));
        const auto name = QString::fromStdString(nameOf(visit));
        const bool loose = isOfComponents(visit);
        if (!page || !QMetaObject::invokeMethod(page, "beginVisit", Q_ARG(QString, loose ? QString() : name)) ||
            !QTest::qWaitFor([&] { return isShown("bench.visit.kind"); }, 30'000))
            return false;
        auto* opening =
            m_window->findChild<QObject*>(QStringLiteral("bench.visit"))->property("visit").value<VisitOpening*>();
        if (!opening)
            return false;
        if (loose) {
            opening->setWords(u'K' + name);
            opening->toggleItem(u'K' + name);
        }
        if (!QTest::qWaitFor([&] { return opening->known(); }, 30'000))
            return false;
        for (const auto& offered : opening->visits()->choices()) // of the balloon's own rules alone
            if (!loose && regimeOf(*visitFrom(offered.value.toStdString())) != regimeOf(visit))
                return false;
        const auto kind = QString::fromStdString(std::string(visitName(visit)));
        if (!QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.visit.kind")), "picked",
                                       Q_ARG(QString, kind)) ||
            !QTest::qWaitFor([&] { return opening->known() && opening->canOpen() && opening->visit() == kind; },
                             30'000))
            return false;
        const auto before = desk<InspectionDesk>("desk") ? desk<InspectionDesk>("desk")->inspection() : QString();
        return click("bench.visit.open") && QTest::qWaitFor(
                                                [&] {
                                                    auto* now = desk<InspectionDesk>("desk");
                                                    return now && now->loaded() && now->isOpen() &&
                                                           now->inspection() != before && now->file()->visit() == visit;
                                                },
                                                30'000);
    }
    /// What is no inspection is described: on the basket; an owner's task is one of the list.
    void describe(Visit visit, InspectionDesk& desk) {
        WorkPerformed work;
        work.inspection = desk.file()->inspection.id;
        work.item = ItemId("K" + nameOf(visit));
        work.what = "one wire exchanged";
        work.data = "Creel manual, revision 2, 4-1";
        if (isGraded(visit))
            work.grade = Grade::Minor;
        if (isOfOwnersTasks(visit))
            for (const auto& line : workLines(desk.file()->inspection, desk.file()->items))
                if (line.item && line.item->id == work.item && work.line.empty())
                    work.line = line.line->id;
        desk.post({work});
    }
    /// Of an owner's list that task and what is of the visit, else everything.
    static void settleAll(Visit visit, Bench& bench) {
        if (!isOfOwnersTasks(visit))
            return bench_walk_test::lookAtEverything(bench);
        const auto task = QString::fromStdString(bench.inspection.file()->inspection.performed.front().body.line);
        const auto item = QString::fromStdString("K" + nameOf(visit));
        for (int part = 0; part < bench.inspection.parts()->count(); ++part) {
            bench.inspection.setPartAt(part);
            for (const auto& row : std::vector(bench.inspection.lines()->rows()))
                if (row.item.isEmpty() || (row.line == task && row.item == item))
                    bench.inspection.settle(row.at, 1);
            bench_walk_test::settle(bench);
        }
    }
    [[nodiscard]] QString paper(ReleaseDesk& release, const QString& name) {
        const auto file = m_folder.filePath(name + QStringLiteral(".pdf"));
        release.print(QUrl::fromLocalFile(file), false);
        QProcess reader;
        const bool written = QTest::qWaitFor([&] { return QFileInfo(file).size() > 0; }, 30'000);
        reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
        return written && reader.waitForFinished() ? QString::fromUtf8(reader.readAllStandardOutput()).simplified()
                                                   : QString();
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open(DemoHouse::Filled::Empty));
        m_window = m_open.window();
        m_window->resize(1280, 800);
        QVERIFY(isPosted(m_open.demo().house, theRecord()));
        m_open.demo().house.habits.setInspector(QStringLiteral("Bo Lind"));
        QVERIFY(shows(QStringLiteral("bench")));
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void isWalked_data() {
        QTest::addColumn<Visit>("visit");
        for (const auto visit : allVisits)
            QTest::newRow(std::string(visitName(visit)).c_str()) << visit;
    }
    void isWalked() {
        QFETCH(Visit, visit);
        QVERIFY(opens(visit));
        Bench bench{*desk<InspectionDesk>("desk"), *desk<ReadingDesk>("readings"), *desk<ReleaseDesk>("release")};
        QTRY_VERIFY_WITH_TIMEOUT(isShown("bench.part"), 30'000);
        if (isMaintenance(visit) || isOfOwnersTasks(visit)) {
            describe(visit, bench.inspection);
            QTRY_VERIFY_WITH_TIMEOUT(
                !bench.inspection.saving() && bench.inspection.file()->inspection.performed.size() == 1, 30'000);
        }
        const auto asked = askedBy(visit);
        const auto lines = shownLines(bench.inspection);
        QVERIFY2(!lines.isEmpty(), "no line");
        for (const auto& each : asked.has)
            QVERIFY2(lines.contains(each), qPrintable(each + " lacks in " + lines.join(u' ')));
        for (const auto& each : asked.hasNot)
            for (const auto& line : lines)
                QVERIFY2(!line.startsWith(each), qPrintable(line));
        if (isOfOwnersTasks(visit))
            for (const auto& line : bench.inspection.file()->inspection.checklist.lines)
                QVERIFY2(!line.ownerRule.empty() || line.kinds.empty(), line.id.c_str());

        bench_walk_test::takeReadings(bench);
        settleAll(visit, bench);
        const auto signer = signerOf(visit);
        QVERIFY(shows(QStringLiteral("bench/%1/release").arg(bench.inspection.inspection())));
        QTRY_VERIFY_WITH_TIMEOUT(isShown("bench.sign"), 30'000);
        QVERIFY(!m_open.find(QStringLiteral("bench.sign"))->isEnabled() || bench.release.signer().isEmpty() ||
                bench.release.maySign());
        bench.release.setSigner(signer);
        QTRY_VERIFY2_WITH_TIMEOUT(bench.release.maySign(),
                                  qPrintable(bench.release.refusals()->choices().empty()
                                                 ? bench.release.problem()
                                                 : bench.release.refusals()->choices().front().label + u' ' +
                                                       bench.release.refusals()->choices().front().detail),
                                  20'000);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.sign"))->isEnabled(), 30'000);
        const auto said = saidBy(visit);
        QSignalSpy done(&bench.release, &ReleaseDesk::signedNow);
        bench_walk_test::signWith(bench.release, QStringLiteral("basket wire 7"));
        QTRY_COMPARE_WITH_TIMEOUT(done.size(), 1, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(bench.inspection.loaded() && !bench.inspection.isOpen(), 30'000);

        const auto text = paper(bench.release, QString::fromStdString(std::string(visitName(visit))));
        for (const auto& each : said + QStringList{QString::fromStdString(signer.person.text()),
                                                   "Copy from the record of what was signed on 2026-11-25",
                                                   isOfComponents(visit) ? "K" + QString::fromStdString(nameOf(visit))
                                                                         : QString::fromStdString(nameOf(visit))})
            QVERIFY2(text.contains(each), qPrintable(each + u'\n' + text));
        if (isMaintenance(visit) || isOfOwnersTasks(visit))
            QVERIFY2(text.contains("one wire exchanged; to Creel manual, revision 2, 4-1"), qPrintable(text));
        QVERIFY2(!text.contains("DRAFT") && !text.contains("lot not known") && !text.contains("unknown lot"),
                 qPrintable(text));
    }
};

CROWNRING_TEST(EveryVisitWindowTest, QApplication)

}

#include "every_visit_window_test.moc"
