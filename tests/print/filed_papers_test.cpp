// SPDX-License-Identifier: GPL-3.0-or-later

/// Papers as they are filed: how many sheets they take, with a whole balloon on the bench.

#include "paper/document_text.h"
#include "print/full_annual.h"
#include "print/readback.h"
#include "said.h"
#include "sheets/sheets.h"
#include "test_class.h"

namespace filed_papers_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::print;

class FiledPapersTest : public QObject {
    Q_OBJECT

    std::map<Visit, std::unique_ptr<FullAnnual>> m_annuals, m_tenItems;

    const FullAnnual& annual(Visit visit) {
        auto& there = m_annuals[visit];
        if (!there)
            there = std::make_unique<FullAnnual>(visit);
        return *there;
    }

    static void visitsAndFormats() {
        QTest::addColumn<Visit>("visit");
        QTest::addColumn<PageFormat>("format");
        for (const auto visit : {Visit::PartMlInspection, Visit::UsAnnual})
            for (const auto format : {PageFormat::A4, PageFormat::Letter})
                QTest::newRow(
                    (std::string(visitName(visit)) + (format == PageFormat::A4 ? ", A4" : ", Letter")).c_str())
                    << visit << format;
    }

private slots:
    void theCertificateOfAWholeBalloonIsOnePage_data() { visitsAndFormats(); }
    void theCertificateOfAWholeBalloonIsOnePage() {
        QFETCH(Visit, visit);
        QFETCH(PageFormat, format);
        const auto file = annual(visit).file();
        QVERIFY(file.inspection.closed);
        for (const auto kind : {SheetKind::Release, SheetKind::Logbook}) {
            const Readback read(sheet(kind, file, english), format);
            QCOMPARE(read.pages.size(), 1);
            const auto text = read.plain();
            for (const char* words : {"E1",
                                      "B1",
                                      "R1",
                                      "C1",
                                      "C2",
                                      "C3",
                                      "C4",
                                      "24 readings",
                                      "12 readings",
                                      "171 to 227 N",
                                      "main blast valve",
                                      "MV-112",
                                      "MV-774",
                                      "EASA Form 1 no. 2026-0417",
                                      "L-2024-07",
                                      "deferred on 2026-06-01",
                                      "2026-07-31",
                                      "INOPERATIVE",
                                      "WO 2026-118",
                                      "Vale Balloon Club",
                                      "performed by Ben Ash",
                                      "Signature"})
                QVERIFY2(text.contains(QString::fromUtf8(words)), words);
            QVERIFY(!text.contains("lines done"));
        }
    }

    /// Ten items are a balloon with its hoses in the record: it stays a certificate that one files.
    void theCertificateOfTenItemsIsOnePage_data() { visitsAndFormats(); }
    void theCertificateOfTenItemsIsOnePage() {
        QFETCH(Visit, visit);
        QFETCH(PageFormat, format);
        auto& there = m_tenItems[visit];
        if (!there)
            there = std::make_unique<FullAnnual>(visit, 3);
        const auto file = there->file();
        QVERIFY(file.inspection.closed);
        QCOMPARE(file.items.size(), std::size_t{10});
        const Readback read(sheet(SheetKind::Release, file, english), format);
        QCOMPARE(read.pages.size(), 1);
        for (const char* words : {"E1", "B1", "C4", "H1", "H3", "H-2021-03", "Signature"})
            QVERIFY2(read.plain().contains(QString::fromUtf8(words)), words);
    }

    /// What no sheet holds goes on; then the statement and its signature are still not parted.
    void whatIsTooLongGoesOnWithItsStatementAndSignatureTogether() {
        int onTwo = 0;
        for (const int deferrals : {10, 25, 40, 55}) {
            FullAnnual full(Visit::PartMlInspection, 3, deferrals);
            const auto file = full.file();
            QVERIFY(file.inspection.closed);
            for (const auto format : {PageFormat::A4, PageFormat::Letter}) {
                const Readback read(sheet(SheetKind::Release, file, english), format);
                onTwo += read.pages.size() > 1 ? 1 : 0;
                const int last = static_cast<int>(read.pages.size()) - 1;
                for (const char* words : {"considered ready for release", "Confirmed against", "Signature"})
                    QCOMPARE(read.pageWith(QString::fromUtf8(words)), last);
                QVERIFY(read.pages[last].contains(QStringLiteral("page %1 of %1").arg(last + 1)));
            }
        }
        QVERIFY(onTwo > 0);
    }

    void theReportOfEveryLineIsAtMostEightPages_data() { visitsAndFormats(); }
    void theReportOfEveryLineIsAtMostEightPages() {
        QFETCH(Visit, visit);
        QFETCH(PageFormat, format);
        const auto file = annual(visit).file();
        const Readback read(inspectionReport(file, english), format);
        QVERIFY2(read.pages.size() <= 8, qPrintable(QString::number(read.pages.size())));
        const auto text = read.plain();
        for (const auto& work : workLines(file.inspection, file.items))
            QVERIFY2(text.contains(QString::fromStdString(work.line->title).left(20)), work.line->title.c_str());
    }

    /// For eyes: tests/print in the build folder.
    void papersForEyes() {
        for (const auto visit : {Visit::PartMlInspection, Visit::UsAnnual})
            for (const auto format : {PageFormat::A4, PageFormat::Letter}) {
                const auto file = annual(visit).file();
                for (const auto& name : sheetNames()) {
                    const Readback read(sheet(*sheetFrom(name), file, english), format);
                    const auto stem =
                        QStringLiteral(PICTURES "/%1-%2-%3")
                            .arg(QString::fromStdString(std::string(visitName(visit))), QString::fromStdString(name),
                                 format == PageFormat::A4 ? QStringLiteral("a4") : QStringLiteral("letter"));
                    outputOf("pdftoppm", {"-r", "80", "-png", read.file, stem});
                }
            }
    }
};

CROWNRING_TEST(FiledPapersTest, QGuiApplication)

}

#include "filed_papers_test.moc"
