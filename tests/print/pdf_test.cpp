// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/sample_paper.h"
#include "print/readback.h"
#include "said.h"
#include "test_class.h"

#include <QRegularExpression>

namespace pdf_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::print;
using crownring::paper::Align;
namespace sample = crownring::paper::sample;

class PdfTest : public QObject {
    Q_OBJECT

private slots:
    void everyPageSaysWhatItBelongsTo_data() { formats(); }
    void everyPageSaysWhatItBelongsTo() {
        QFETCH(PageFormat, format);
        const Readback read(sample::everything(), format);
        QVERIFY(read.pages.size() >= 4);
        for (int page = 0; page < read.pages.size(); ++page) {
            const QString text = read.pages[page].simplified();
            QCOMPARE(text.count(sample::recordId), 2); // head and foot
            QVERIFY2(text.contains(QString(sample::caution)), qPrintable(text));
            QVERIFY(text.contains(QStringLiteral("page %1 of %2").arg(page + 1).arg(read.pages.size())));
            QVERIFY(text.contains("Annual inspection: report and release"));
        }
    }

    // ISO 216: A4 is 210 x 297 mm, in points 595.28 x 841.89. ANSI/ASME Y14.1: Letter is 8.5 x 11 in, 612 x 792 points.
    void theSheetIsTheOneAskedFor() {
        const auto sizeOf = [](PageFormat format) {
            const QString facts = outputOf("pdfinfo", {Readback(sample::empty(), format).file});
            const auto found = QRegularExpression("Page size:\\s+([\\d.]+) x ([\\d.]+) pts").match(facts);
            return QSizeF(found.captured(1).toDouble(), found.captured(2).toDouble());
        };
        const QSizeF a4 = sizeOf(PageFormat::A4), letter = sizeOf(PageFormat::Letter);
        QVERIFY(qAbs(a4.width() - 595.28) < 0.5 && qAbs(a4.height() - 841.89) < 0.5);
        QCOMPARE(letter, QSizeF(612, 792));
    }

    void everyFontIsInside() {
        const Readback read(sample::everything());
        const QStringList fonts = QString(outputOf("pdffonts", {read.file})).split('\n', Qt::SkipEmptyParts).mid(2);
        QVERIFY(!fonts.isEmpty());
        for (const QString& font : fonts)
            QVERIFY2(QRegularExpression("\\byes +(yes|no) +yes\\b").match(font).hasMatch(),
                     qPrintable(font)); // emb sub uni
    }

    void lettersSurvive() {
        const QString text = Readback(sample::everything()).plain();
        for (const char* words : {"Straße, façade, año, ≥ 178 N, Å, ½, – and —", "Ana Müller-Źrebak",
                                  "at least 116 °C, below 121 °C", "type Å-77", "≥178", "14 CFR 43.11(a)(4)"})
            QVERIFY2(text.contains(QString::fromUtf8(words)), words);
    }

    void aLongTableLosesNoRowAndRepeatsItsHead_data() { formats(); }
    void aLongTableLosesNoRowAndRepeatsItsHead() {
        QFETCH(PageFormat, format);
        paper::Document document = sample::empty();
        document.blocks = {sample::longTable(200)};
        const Readback read(document, format);
        for (int row = 1; row <= 200; ++row)
            QCOMPARE(read.plain().count(QStringLiteral("R%1").arg(row, 3, 10, QChar(u'0'))), 1);
        QVERIFY(read.pages.size() > 3);
        for (const QString& page : read.pages)
            QCOMPARE(page.simplified().count("Mark What was looked for Load, N"), 1);
        QCOMPARE(read.plain().count("width that is left, measured at the narrowest place"),
                 28); // 200 / 7: rows are not torn
    }

    void aRowIsNeverTorn() {
        for (int before = 0; before < 24; before += 2) {
            paper::Document document = sample::empty();
            for (int line = 0; line < before; ++line)
                document.blocks.push_back(paper::Paragraph{"Line", paper::Emphasis::Plain});
            paper::Table table;
            table.columns = {{"Left", Align::Left, 1}, {"Right", Align::Left, 1}};
            for (int row = 0; row < 12; ++row)
                table.rows.push_back({"B" + std::to_string(row) + "\nx\nx\nx\nx\nE" + std::to_string(row), "y"});
            document.blocks.push_back(table);
            const Readback read(document);
            for (int row = 0; row < 12; ++row)
                QCOMPARE(read.pageWith("B" + QString::number(row)), read.pageWith("E" + QString::number(row)));
        }
    }

    void aHeadingIsNeverAloneAtTheFoot() {
        for (int before = 22; before < 38; ++before) {
            paper::Document document = filled(before);
            document.blocks.push_back(paper::Heading{1, "Heading one"});
            document.blocks.push_back(paper::Heading{2, "Heading two"});
            document.blocks.push_back(
                before % 2 ? paper::Block(sample::longTable(30))
                           : paper::Block(paper::Paragraph{"After the headings", paper::Emphasis::Plain}));
            const Readback read(document);
            const int page = read.pageWith(before % 2 ? "R001" : "After the headings");
            QVERIFY(page >= 0);
            QCOMPARE(read.pageWith("Heading one"), page);
            QCOMPARE(read.pageWith("Heading two"), page);
        }
    }

    void aSignatureIsOnePieceAndStandsWithItsStatement() {
        for (int before = 14; before < 38; before += 2) {
            paper::Document document = filled(before);
            document.blocks.push_back(paper::Heading{1, "Release"});
            document.blocks.push_back(paper::Statement{"I certify that it was inspected", "Source of the wording",
                                                       "First the reading of the rule\nConfirmed by whom"});
            document.blocks.push_back(sample::signature("Who signs"));
            const Readback read(document);
            const int page = read.pageWith("Who signs");
            QVERIFY(page >= 0);
            QCOMPARE(read.pageWith("Release"), page);
            for (const char* words :
                 {"I certify that it was inspected", "Source of the wording", "First the reading of the rule",
                  "Confirmed by whom", "Certificate and kind", "Signature"})
                QCOMPARE(read.pageWith(words), page);
        }
    }

    void whatIsTooHighForAPageGoesOn() {
        std::string words;
        for (int word = 100; word < 400; ++word)
            words += "w" + std::to_string(word) + "\n";
        for (const paper::Block& block : std::vector<paper::Block>{
                 paper::Table{{{"Column", Align::Left, 1}}, {{words, "beyond the columns"}}, "Note of the table"},
                 paper::Facts{{{"Fact", words}}, 2}, paper::Checks{{{"", "", paper::CheckMark::Done, words, ""}}},
                 paper::Statement{words, "Rule"}, paper::Paragraph{words, paper::Emphasis::Plain}}) {
            paper::Document document = sample::empty();
            document.blocks = {block};
            const Readback read(document, PageFormat::Letter);
            QVERIFY(read.pages.size() >= 300 / 60); // not drawn smaller: no page holds 60 lines
            for (int word = 100; word < 400; ++word)
                QCOMPARE(read.plain().count("w" + QString::number(word)), 1);
            if (std::holds_alternative<paper::Table>(block))
                QVERIFY(read.plain().contains("beyond the columns") && read.plain().contains("Note of the table"));
        }
    }

    void aSignatureHigherThanAPageIsDrawnSmaller() {
        paper::Document document = sample::empty();
        paper::Signature many{"Many", {}};
        for (int line = 100; line < 160; ++line)
            many.lines.push_back({"Label" + std::to_string(line), "", false});
        document.blocks = {many};
        const Readback read(document);
        QCOMPARE(read.plain().count("Label"), 60);
        QCOMPARE(read.pageWith("Label100"), read.pageWith("Label159"));
    }

    void aMapOfAnySizeKeepsAllItsReadings() {
        for (const auto& [gores, rows] : {std::pair(8, 4), std::pair(24, 30), std::pair(48, 16), std::pair(0, 0)}) {
            paper::EnvelopeMapFigure map{gores, rows, {}, {}, "Caption"};
            for (int gore = 1; gore <= 48; gore += 5)
                for (int row = 1; row <= 30; row += 3)
                    map.panels.push_back({gore, row, std::to_string(1000 + gore * 40 + row)});
            paper::Document document = sample::empty();
            document.blocks = {map};
            const QString text = Readback(document).plain().remove(u' ');
            for (const paper::Panel& panel : map.panels)
                QVERIFY2(text.contains(QString::fromStdString(panel.text)), panel.text.c_str());
        }
    }

    void aPageBreakBreaks() {
        paper::Document document = sample::empty();
        document.blocks = {paper::Paragraph{"First", paper::Emphasis::Plain}, paper::PageBreak{}, sample::longTable(2),
                           paper::PageBreak{}, paper::Paragraph{"Third", paper::Emphasis::Plain}};
        const Readback read(document);
        QCOMPARE(read.pages.size(), 3);
        QCOMPARE(read.pageWith("R002"), 1);
        QCOMPARE(read.pageWith("Third"), 2);
    }

    void aDocumentWithoutBlocksIsOnePage() {
        QCOMPARE(Readback(sample::empty()).pages.size(), 1);
        QCOMPARE(Readback(paper::Document{}).pages.size(), 1);
    }

    // pdftoppm -gray: one byte a dot, at 50 dots an inch.
    void everyPageIsDrawnAndNothingNearTheEdge_data() { formats(); }
    void everyPageIsDrawnAndNothingNearTheEdge() {
        QFETCH(PageFormat, format);
        const Readback read(sample::everything(), format);
        QTemporaryDir folder;
        outputOf("pdftoppm", {"-r", "50", "-gray", read.file, folder.filePath("page")});
        const QStringList pictures = QDir(folder.path()).entryList({"*.pgm"});
        QCOMPARE(pictures.size(), read.pages.size());
        for (const QString& name : pictures)
            compareInk(QImage(folder.filePath(name)), 50);
    }

    void thePreviewShowsTheSamePages() {
        const paper::Document document = sample::everything();
        const std::vector<QImage> pages = renderPages(document, PageFormat::Letter, 50);
        QCOMPARE(static_cast<qsizetype>(pages.size()), Readback(document, PageFormat::Letter).pages.size());
        for (const QImage& page : pages)
            compareInk(page, 50);
    }

    void aPlaceThatCannotBeWrittenIsAProblem() {
        const auto nowhere = writePdf(sample::empty(), PageFormat::A4, "/nowhere/at/all/paper.pdf", Replace::Never);
        QVERIFY(!nowhere);
        QCOMPARE(nowhere.error().code(), Code::FileUnwritable);
        QCOMPARE(nowhere.error().where.file, std::string("/nowhere/at/all/paper.pdf"));
        QVERIFY2(isSaid(nowhere.error()), qPrintable(words::line(nowhere.error())));
        QTemporaryDir folder;
        QVERIFY(!writePdf(sample::empty(), PageFormat::A4, folder.path().toStdString(),
                          Replace::Asked)); // a folder stands there
    }

    void theOldFileStaysUntilTheNewIsWhole() {
        QTemporaryDir folder;
        const QString file = folder.filePath("paper.pdf");
        QVERIFY(writePdf(sample::empty(), PageFormat::A4, file.toStdString(), Replace::Never));
        QCOMPARE(writePdf(sample::everything(), PageFormat::A4, file.toStdString(), Replace::Never).error().code(),
                 Code::FileExists);
        QVERIFY(!QString(outputOf("pdftotext", {file, "-"})).contains("Ana Müller"));
        QVERIFY(writePdf(sample::everything(), PageFormat::A4, file.toStdString(), Replace::Asked));
        QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList("paper.pdf")); // nothing beside it is left
        QVERIFY(QString(outputOf("pdftotext", {file, "-"})).contains("Ana Müller"));
    }

    // For eyes: tests/paper in the build folder.
    void picturesForEyes() {
        for (const auto& [format, name] : {std::pair(PageFormat::A4, "a4"), std::pair(PageFormat::Letter, "letter")}) {
            const Readback read(sample::everything(), format);
            outputOf("pdftoppm", {"-r", "90", "-png", read.file, QStringLiteral(PICTURES "/%1").arg(name)});
        }
    }

private:
    static void formats() {
        QTest::addColumn<PageFormat>("format");
        QTest::newRow("A4") << PageFormat::A4;
        QTest::newRow("Letter") << PageFormat::Letter;
    }

    static paper::Document filled(int lines) {
        paper::Document document = sample::empty();
        for (int line = 0; line < lines; ++line)
            document.blocks.push_back(paper::Paragraph{"Line " + std::to_string(line), paper::Emphasis::Plain});
        return document;
    }

    static void compareInk(const QImage& page, int resolution) {
        const int edge = 10 * resolution * 10 / 254; // 10 mm, rounded down
        int inside = 0, outside = 0;
        for (int y = 0; y < page.height(); ++y)
            for (int x = 0; x < page.width(); ++x)
                if (qGray(page.pixel(x, y)) < 250)
                    ++(page.rect().adjusted(edge, edge, -edge, -edge).contains(x, y) ? inside : outside);
        QCOMPARE(outside, 0);
        QVERIFY(inside > 500);
    }
};

CROWNRING_TEST(PdfTest, QGuiApplication)

}

#include "pdf_test.moc"
