// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/csv.h"
#include "paper/document_json.h"
#include "paper/document_text.h"
#include "paper/sample_paper.h"
#include "paper/wrapping.h"
#include "said.h"
#include "test_class.h"

#include <QProcess>
#include <QRegularExpression>
#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

namespace tree_test {

using namespace crownring::paper;
using crownring::testing::english;
namespace sample = crownring::paper::sample;

namespace {

/// Python's csv module, which knows RFC 4180 as its dialect "excel": for each line with a text as JSON, a line with the
/// rows of fields that it reads.
class PythonReader {
public:
    PythonReader() {
        m_python.start("python3", {"-uc", "import csv,io,json,sys\n"
                                          "for line in sys.stdin:\n"
                                          "  text=io.StringIO(json.loads(line),newline='')\n"
                                          "  print(json.dumps(list(csv.reader(text,strict=True))))"});
    }
    ~PythonReader() {
        m_python.closeWriteChannel();
        m_python.waitForFinished();
    }
    nlohmann::json read(const std::string& csv) {
        m_python.write(QByteArray::fromStdString(nlohmann::json(csv).dump() + "\n"));
        while (!m_python.canReadLine())
            if (!m_python.waitForReadyRead(20'000))
                qFatal("%s", m_python.readAllStandardError().constData());
        return nlohmann::json::parse(m_python.readLine().toStdString());
    }

private:
    QProcess m_python;
};

}

class TreeTest : public QObject {
    Q_OBJECT

private slots:
    // RFC 4180 section 2, rules 1 (CR LF), 3 (header), 4 (equal fields), 6 (quoted), 7 (quotes doubled).
    /// OWASP, "CSV Injection": fields that begin with = + - @, a tab or a return are formulas to spreadsheets.
    void csvStartsNoFormula() {
        for (const auto* formula : {"=1+1", "+1-2", "-2+3", "@SUM(A1)", "\t=1", "-", "=HYPERLINK(\"x\")"})
            QVERIFY2(csv(Table{{{"a", Align::Left, 1}, {"b", Align::Left, 1}}, {{formula, ""}}, ""})
                             .find("'" + std::string(1, formula[0])) != std::string::npos,
                     formula);
        QCOMPARE(csv(Table{{{"a", Align::Left, 1}, {"b", Align::Left, 1}}, {{"-12.5", "+3"}}, ""}),
                 std::string("a,b\r\n-12.5,+3\r\n"));
    }
    void csvAsTheRfcHasIt() {
        Table table{{{"a", Align::Left, 1}, {"b,c", Align::Left, 1}}, {{"say \"hm\"", "two\nlines"}, {"short"}}, ""};
        QCOMPARE(csv(table), std::string("a,\"b,c\"\r\n\"say \"\"hm\"\"\",\"two\nlines\"\r\nshort,\r\n"));
        table.rows = {{"x", "y", "beyond the columns"}};
        QCOMPARE(csv(table), std::string("a,\"b,c\",\r\nx,y,beyond the columns\r\n"));
        QCOMPARE(csv(Table{{{"one", Align::Left, 1}}, {{""}}, ""}), std::string("one\r\n\"\"\r\n"));
        QCOMPARE(csv(Table{}), std::string());
    }

    void csvIsReadBackByAnother() {
        const auto cells = rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,;\"\n\r \t=|")));
        PythonReader python;
        QVERIFY(rc::check("what was written is read", [&] {
            Table table;
            const auto columns = *rc::gen::inRange<std::size_t>(1, 5);
            for (std::size_t column = 0; column < columns; ++column)
                table.columns.push_back({*cells, Align::Left, 1});
            table.rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
                rc::gen::container<std::vector<std::string>>(columns, cells));
            const nlohmann::json read = python.read(csv(table));
            // What a spreadsheet would take for a formula comes back behind an apostrophe; nothing else changes.
            const auto kept = [](const std::string& cell) {
                static const QRegularExpression formula(QStringLiteral("\\A([=@\\t\\r]|[+-](?![0-9.]+\\z))"));
                const bool isOne = formula.match(QString::fromStdString(cell)).hasMatch();
                return isOne ? "'" + cell : cell;
            };
            RC_ASSERT(read.size() == table.rows.size() + 1);
            for (std::size_t column = 0; column < columns; ++column)
                RC_ASSERT(read[0][column] == kept(table.columns[column].title));
            for (std::size_t row = 0; row < table.rows.size(); ++row)
                for (std::size_t column = 0; column < columns; ++column)
                    RC_ASSERT(read[row + 1][column] == kept(table.rows[row][column]));
        }));
    }

    void textHasAllThatThePaperHas() {
        const std::string text = toText(sample::everything(), english);
        for (const char* words :
             {"Annual inspection: report and release", "Straße, façade, año, ≥ 178 N, Å", "R040", "14 CFR 43.11(a)(4)",
              "Ana Müller-Źrebak", "≥\u00a0178", "failed", "open", "n.a.", "Tester FT-2", "at 512 h 36 min"})
            QVERIFY2(text.find(words) != std::string::npos, words);
        QCOMPARE(QString::fromStdString(text).count(sample::recordId), 2);
        QVERIFY(QString::fromStdString(text).simplified().contains(sample::caution));
    }

    void textKeepsToItsColumns() {
        for (const std::size_t columns : {40u, 72u, 96u, 140u})
            for (const QString& line :
                 QString::fromStdString(toText(sample::everything(), english, columns)).split('\n')) {
                QVERIFY2(line.size() <= static_cast<qsizetype>(columns), qPrintable(line));
                QVERIFY2(!line.endsWith(' '), qPrintable(line));
            }
    }

    void wordsWrapWithoutLoss() {
        QCOMPARE(wrapped("", 5), std::vector<std::string>{""});
        QCOMPARE(wrapped("one two", 7), std::vector<std::string>{"one two"});
        QCOMPARE(wrapped("one two", 6), (std::vector<std::string>{"one", "two"}));
        QCOMPARE(wrapped("Müller", 3), (std::vector<std::string>{"Mül", "ler"}));
        QCOMPARE(wrapped("a\n\nb", 9), (std::vector<std::string>{"a", "", "b"}));
        QVERIFY(rc::check("every letter stays, no line is too long", [] {
            const auto text = *rc::gen::container<std::string>(rc::gen::elementOf(std::string("abc   \n")));
            const auto width = *rc::gen::inRange<std::size_t>(1, 9);
            std::string joined, bare;
            for (const std::string& line : wrapped(text, width)) {
                RC_ASSERT(letters(line) <= width);
                joined += line;
            }
            const auto blank = [](char letter) { return letter == ' ' || letter == '\n'; };
            std::copy_if(text.begin(), text.end(), std::back_inserter(bare),
                         [&](char letter) { return !blank(letter); });
            joined.erase(std::remove_if(joined.begin(), joined.end(), blank), joined.end());
            RC_ASSERT(joined == bare);
        }));
    }

    void jsonHoldsTheTree() {
        const Document document = sample::everything();
        const auto json = nlohmann::json::parse(toJson(document));
        QCOMPARE(json["title"].get<std::string>(), document.title);
        QCOMPARE(json["record"].get<std::string>(), document.recordId);
        QCOMPARE(json["caution"].get<std::string>(), document.caution);
        QCOMPARE(json["blocks"].size(), document.blocks.size());
        QCOMPARE(json["blocks"][0]["facts"][1]["value"].get<std::string>(),
                 std::string("E-1187, type Å-77, made 2017-04"));
        for (const auto& block : json["blocks"]) {
            QVERIFY(block.is_object());
            if (block["block"] == "envelope-map") {
                QCOMPARE(block["panels"].size(), std::size_t(24));
                QCOMPARE(block["panels"][0]["bound"].get<bool>(), true);
                QCOMPARE(block["panels"][7]["verdict"].get<std::string>(), std::string("failed"));
            }
            if (block["block"] == "table" && block["rows"].size() == 40)
                QCOMPARE(block["rows"][39][0].get<std::string>(), std::string("R040"));
        }
    }

    void brokenUtf8DoesNotStopThePaper() {
        Document document = sample::empty();
        document.title = "broken \xff";
        QVERIFY(nlohmann::json::parse(toJson(document))["title"].get<std::string>().starts_with("broken "));
        QVERIFY(!toText(document, english).empty());
    }

    void aMapIsATableToo() {
        const Table table = asTable(sample::map(24, 12, 24), english);
        QCOMPARE(table.rows.size(), std::size_t(24));
        QCOMPARE(table.rows[0], (std::vector<std::string>{"1", "12", "≥\u00a0178", "passed"}));
    }
};

CROWNRING_TEST(TreeTest)

}

#include "tree_test.moc"
