// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl directives: the keys of its answer.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QtTest>

namespace directives_call_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","serial":"12"}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"E2"}
{"entry":"directive.issued","on":"2025-02-01","directive":"AD-1","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2025-03-01","source":"invented for tests","applies":{"kinds":["envelope"],"serials":[{"from":"10","to":"20"}]},"first":{"by":"2025-03-31"},"repeat":{"minutes":600}}
{"entry":"flight.logged","on":"2025-03-02","balloon":"QE-ONE","minutes":60}
{"entry":"directive.answered","on":"2025-03-10","by":"Ada Rhos","licence":"QE.66.1","ref":"WO 7","directive":"AD-1","revision":"0","item":"E1","answer":"done","method":"paragraph 1"}
)";

}

class DirectivesCallTest : public QObject, OwnRecord {
    Q_OBJECT

private slots:
    void initTestCase() {
        const auto posted = ctl({"post", "-"}, shed);
        QVERIFY2(posted.code == 0, posted.err.constData());
    }

    void itsRowsHaveTheKeysOfTheContract() {
        const auto answer = ctl({"directives", "--on", "2025-04-01", "--json"});
        QCOMPARE(answer.code, 0);
        const auto rows = answer.document()["rows"];
        QCOMPARE(rows.size(), std::size_t{2});
        for (const auto& row : rows)
            for (const char* key :
                 {"balloon", "item", "directive", "revision", "applies", "why", "done", "next", "standing"})
                QVERIFY2(row.contains(key), key);
        const auto& unknown = rows[0]; // worst first
        QCOMPARE(unknown["balloon"].get<std::string>(), std::string("QE-TWO"));
        QCOMPARE(unknown["applies"].get<std::string>(), std::string("unknown"));
        QVERIFY(unknown["why"].get<std::string>().find("serial number") != std::string::npos);
        QCOMPARE(unknown["standing"].get<std::string>(), std::string("unproven"));
        QVERIFY(unknown["done"].is_null());
        const auto& bound = rows[1];
        QCOMPARE(bound["item"].get<std::string>(), std::string("E1"));
        QCOMPARE(bound["directive"].get<std::string>(), std::string("AD-1"));
        QCOMPARE(bound["revision"].get<std::string>(), std::string("0"));
        QCOMPARE(bound["applies"].get<std::string>(), std::string("yes"));
        QCOMPARE(bound["done"]["on"].get<std::string>(), std::string("2025-03-10"));
        QCOMPARE(bound["done"]["method"].get<std::string>(), std::string("paragraph 1"));
        QCOMPARE(bound["done"]["clock"]["minutes"].get<int>(), 60);
        QCOMPARE(bound["done"]["evidence"].get<std::string>(), std::string("paper"));
        QVERIFY(bound["next"]["on"].is_null());
        QCOMPARE(bound["next"]["left"].get<int>(), 600);
        QCOMPARE(bound["standing"].get<std::string>(), std::string("nearing"));
    }
    void ofOneBalloonOnADay() {
        const auto rows = ctl({"directives", "--balloon", "QE-ONE", "--on", "2025-03-05", "--json"}).document()["rows"];
        QCOMPARE(rows.size(), std::size_t{1});
        QVERIFY(rows[0]["done"].is_null());
        QCOMPARE(rows[0]["next"]["on"].get<std::string>(), std::string("2025-03-31"));
        QCOMPARE(rows[0]["next"]["left"].get<int>(), 26);
    }
    void itIsInTheDueListToo() {
        const auto rows = ctl({"due", "--balloon", "QE-TWO", "--on", "2025-04-01", "--json"}).document()["rows"];
        QCOMPARE(rows.size(), std::size_t{1});
        QCOMPARE(rows[0]["requirement"].get<std::string>(), std::string("directive/AD-1"));
        QCOMPARE(rows[0]["standing"].get<std::string>(), std::string("unproven"));
        QCOMPARE(rows[0]["because"].get<std::string>(), std::string("directive-unknown"));
    }
    void forPeopleItIsATable() {
        const auto said = ctl({"directives", "--on", "2025-04-01"});
        QCOMPARE(said.code, 0);
        QVERIFY2(said.out.contains("AD-1 rev. 0") && said.out.contains("done 2025-03-10, paragraph 1"),
                 said.out.constData());
    }
    void theStatusOfABalloonIsAPaper() {
        const auto file = m_folder.filePath(QStringLiteral("status.pdf"));
        const auto written = ctl({"directives", "--balloon", "QE-ONE", "--on", "2025-04-01", "--to", file});
        QVERIFY2(written.code == 0, written.err.constData());
        QFile paper(file);
        QVERIFY(paper.open(QIODevice::ReadOnly));
        QVERIFY(paper.read(5) == "%PDF-");
        QCOMPARE(ctl({"directives", "--balloon", "QE-ONE", "--on", "2025-04-01", "--to", file}).code, 2); // it is there
    }
    void anUnknownBalloonIsBadInput() {
        QCOMPARE(ctl({"directives", "--balloon", "QE-NONE", "--on", "2025-04-01"}).code, 2);
    }
};

CROWNRING_TEST(DirectivesCallTest)

}

#include "directives_call_test.moc"
