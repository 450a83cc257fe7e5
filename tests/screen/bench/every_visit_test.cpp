// SPDX-License-Identifier: GPL-3.0-or-later

/// Each kind of visit, walked at the desks of the bench from "it came in" to the paper that comes: its checklist is the
/// right one, it is settled, signed by who may, and what is filed says so. The window over them is walked in tests/qml.

#include "every_visit.h"
#include "test_class.h"

namespace every_visit_test {

using namespace every_visit;

class EveryVisitTest : public QObject {
    Q_OBJECT
private:
    std::unique_ptr<DemoHouse> m_demo;
    QTemporaryDir m_folder;

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>(DemoHouse::Filled::Empty);
        QVERIFY(m_demo->ready());
        QVERIFY(isPosted(m_demo->house, theRecord()));
        m_demo->house.habits.setInspector(QStringLiteral("Bo Lind"));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void isWalked_data() {
        QTest::addColumn<Visit>("visit");
        for (const auto visit : allVisits)
            QTest::newRow(std::string(visitName(visit)).c_str()) << visit;
    }
    void isWalked() {
        QFETCH(Visit, visit);
        bench_walk_test::Desks desks(m_demo->house);
        Bench bench{desks.opening, desks.inspection, desks.reading, desks.release};
        desks.opening.begin(isOfComponents(visit) ? QString() : QString::fromStdString(nameOf(visit)));
        QVERIFY(chooses(bench, visit) && desks.openIt());
        if (isDescribed(visit))
            describe(visit, bench);
        const auto wrong = wrongLines(visit, bench);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        desks.release.setSigner(signerOf(visit));
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.refusals()->count() > 0, 15'000); // its lines stand open
        QVERIFY(!desks.release.maySign());
        settleAll(visit, bench);
        const auto bar = comesToTheSignature(visit, bench);
        QVERIFY2(bar.isEmpty(), qPrintable(bar));
        QSignalSpy done(&desks.release, &ReleaseDesk::signedNow);
        desks.signs();
        QTRY_COMPARE_WITH_TIMEOUT(done.size(), 1, 15'000);
        QTRY_VERIFY_WITH_TIMEOUT(desks.inspection.loaded() && !desks.inspection.isOpen(), 15'000);
        const auto lacks =
            lackingOn(paper(desks.release, m_folder.filePath(QString::number(int(visit)) + ".pdf")), visit);
        QVERIFY2(lacks.isEmpty(), qPrintable(lacks));
    }
};

CROWNRING_TEST(EveryVisitTest, QGuiApplication)

}

#include "every_visit_test.moc"
