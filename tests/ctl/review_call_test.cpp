// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl review: signed, listed, shown.

#include "acts/confirmed_wording.h"
#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

using namespace crownring::testing;

namespace {

constexpr const char* reviewedBalloon = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"part-ml-hot-air","balloons":["QE-ONE"]}
{"entry":"requirement.done","on":"2025-01-20","item":"E1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2024-07-01","item":"E1","requirement":"ml.arc-review","ref":"ARC 1","signatory":"Odo Vale","licence":"QE.CAO.0031","expires":"2025-07-01"}
{"entry":"person.entitled","on":"2024-06-01","person":"Cai Mo","capacity":"airworthiness-review-staff","licence":"ARS 3","organisation":"Lakeside","approval":"QE.CAO.0031"})";

}

class ReviewCallTest : public QObject, OwnRecord {
    Q_OBJECT

    Answer sign(const QStringList& more) {
        return ctl(QStringList{"review", "sign", "--balloon", "QE-ONE", "--form", "EASA Form 15c", "--certificate",
                               "ARC 2", "--by", "Cai Mo", "--as", "airworthiness-review-staff", "--on", "2025-06-01"} +
                   more);
    }

private slots:
    void initTestCase() {
        QCOMPARE(ctl({"post", "-"}, reviewedBalloon).code, 0);
        const auto wording = adoptedAsShipped("2024-06-01") +
                             confirmedBy("Cai Mo", crownring::Capacity::AirworthinessReviewStaff, "2024-06-02");
        QCOMPARE(ctl({"post", "-"}, QByteArray::fromStdString(wording)).err, QByteArray());
    }

    void anotherDateThanTheRuleGivesIsRefusedAndBothAreSaid() {
        const auto answer = sign({"--expires", "2026-06-01"});
        QCOMPARE(answer.code, 2);
        QVERIFY2(answer.err.contains("2026-06-01") && answer.err.contains("2026-07-01"), answer.err.constData());
        QCOMPARE(ctl({"review", "list", "--on", "2025-06-02", "--json"}).document().at("reviews").size(),
                 std::size_t{0});
    }
    void itIsSignedListedAndShown() {
        const auto answer = sign({"--findings", "nothing"});
        QVERIFY2(answer.code == 0, answer.err.constData());
        const auto made = answer.document();
        QCOMPARE(made.at("expires").get<std::string>(), std::string("2026-07-01"));
        QCOMPARE(made.at("authorisation").get<std::string>(), std::string("ARS 3, Lakeside, QE.CAO.0031"));
        const auto list = ctl({"review", "list", "--balloon", "QE-ONE", "--on", "2025-06-02", "--json"}).document();
        QCOMPARE(list.at("reviews").size(), std::size_t{1});
        QCOMPARE(ctl({"review", "list", "--on", "2025-05-31", "--json"}).document().at("reviews").size(),
                 std::size_t{0});
        const auto shown = ctl({"review", "show", "ARC 2", "--on", "2025-06-02", "--json"}).document();
        QVERIFY(shown.at("supported").get<bool>());
        QVERIFY(ctl({"review", "show", "ARC 2", "--on", "2025-06-02"}).out.contains("Cai Mo"));
        const auto file = m_folder.filePath("review.pdf");
        QCOMPARE(ctl({"review", "print", "ARC 2", "--on", "2025-06-02", "--to", file}).code, 0);
        QVERIFY(QFile(file).size() > 1000);
        QCOMPARE(ctl({"review", "show", "ARC 9", "--on", "2025-06-02"}).code, 2);
        const auto due = ctl({"due", "--on", "2025-06-02", "--json"}).document().at("rows");
        for (const auto& row : due)
            if (row.at("requirement") == "ml.arc-review")
                QCOMPARE(row.at("limits")[0].at("due").get<std::string>(), std::string("2026-07-01"));
    }
    /// The scan of what was issued is kept beside what was signed, as on the screen; what is refused keeps none.
    void theScanOfTheCertificateIsKeptWithIt() {
        const auto fileOf = [&](const char* name, const QByteArray& content) {
            QFile file(path(name));
            return file.open(QIODevice::WriteOnly) && file.write(content) == content.size() ? file.fileName()
                                                                                            : QString();
        };
        const auto scan = fileOf("scan.ppm", "P6 20 30 255\n" + QByteArray(20 * 30 * 3, '\x7f'));
        const auto text = fileOf("no-scan.png", "no picture");
        const auto inspected =
            R"({"entry":"requirement.done","on":"2026-01-10","item":"E1","requirement":"ml.inspection"})";
        QCOMPARE(ctl({"post", "-"}, inspected).code, 0);
        const auto extended = [&](const QStringList& more) {
            return ctl(QStringList{"review", "sign", "--balloon", "QE-ONE", "--act", "extension", "--form",
                                   "EASA Form 15c", "--certificate", "ARC 2/1", "--by", "Cai Mo", "--as",
                                   "airworthiness-review-staff", "--on", "2026-06-20"} +
                       more);
        };
        for (const auto& file : {text, path("not-there.png")}) {
            const auto refused = extended({"--photograph", scan, "--photograph", file});
            QCOMPARE(refused.code, 2);
            QVERIFY2(refused.err.contains(file.toUtf8()), refused.err.constData());
        }
        QCOMPARE(extended({"--photograph", scan, "--expires", "2030-01-01"}).code, 2); // not what the rule gives
        const auto reviews = [&] {
            return ctl({"review", "list", "--on", "2026-07-01", "--json"}).document().at("reviews");
        };
        QCOMPARE(reviews().size(), std::size_t{1});
        const auto signedNow = extended({"--photograph", scan, "--photograph", scan});
        QVERIFY2(signedNow.code == 0, signedNow.err.constData());
        const auto digests = signedNow.document().at("photographs");
        QCOMPARE(digests.size(), std::size_t{1}); // the same twice is one
        QCOMPARE(digests.at(0).get<std::string>().size(), std::size_t{64});
        QVERIFY(ctl({"review", "show", "ARC 2/1", "--on", "2026-07-01"}).out.contains("1 photograph in the record"));
        QCOMPARE(ctl({"verify"}).code, 0);
    }
    void whoMayNotIsRefused() {
        const auto answer = ctl({"review", "sign", "--balloon", "QE-ONE", "--form", "F", "--certificate", "9", "--by",
                                 "Odo Vale", "--as", "authority", "--on", "2025-06-10"});
        QCOMPARE(answer.code, 2);
        QVERIFY2(answer.err.contains("ML.A.901(b)"), answer.err.constData());
    }
};

CROWNRING_TEST(ReviewCallTest)

#include "review_call_test.moc"
