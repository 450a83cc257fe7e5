// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl: codes of signatories are set, listed and signed with; never written on the command line.

#include "acts/confirmed_wording.h"
#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

using namespace crownring::testing;

namespace {

constexpr const char* signingShop = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"part-ml-hot-air","balloons":["QE-ONE"]}
{"entry":"requirement.done","on":"2025-01-20","item":"E1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2024-07-01","item":"E1","requirement":"ml.arc-review","ref":"ARC 1","signatory":"Odo Vale","licence":"QE.CAO.0031","expires":"2025-07-01"}
{"entry":"person.entitled","on":"2024-06-01","person":"Kit Moor","capacity":"mechanic","licence":"L 2"}
{"entry":"person.entitled","on":"2024-06-01","person":"Cai Mo","capacity":"airworthiness-review-staff","licence":"ARS 3","organisation":"Lakeside","approval":"QE.CAO.0031"})";

const QByteArray codeOfCai = "basket wire 7\n";

}

class SignatoryCallTest : public QObject, OwnRecord {
    Q_OBJECT

    QString file(const char* name, const QByteArray& content) {
        QFile written(m_folder.filePath(QString::fromLatin1(name)));
        if (!written.open(QIODevice::WriteOnly) || written.write(content) != content.size())
            return {};
        return written.fileName();
    }
    Answer set(const char* name, const QStringList& more, const QByteArray& input = {}) {
        return ctl(QStringList{"signatory", "code", "--name", name} + more, input);
    }
    Answer review(const QStringList& more, const QByteArray& input = {}) {
        return ctl(QStringList{"review", "sign", "--balloon", "QE-ONE", "--form", "EASA Form 15c", "--certificate",
                               "ARC 2", "--by", "Cai Mo", "--as", "airworthiness-review-staff", "--on", "2025-06-01"} +
                       more,
                   input);
    }

private slots:
    void initTestCase() {
        QCOMPARE(ctl({"post", "-"}, signingShop).code, 0);
        const auto wording = adoptedAsShipped("2024-06-01") +
                             confirmedBy("Cai Mo", crownring::Capacity::AirworthinessReviewStaff, "2024-06-02");
        QCOMPARE(ctl({"post", "-"}, QByteArray::fromStdString(wording)).err, QByteArray());
    }

    void whoIsInTheRecordSetsOne() {
        const auto short8 = set("Cai Mo", {"--code-file", "-", "--on", "2025-01-01"}, "short\n");
        QCOMPARE(short8.code, 2);
        QVERIFY2(short8.err.contains("at least 8"), short8.err.constData());
        QCOMPARE(set("Cai Mo", {"--code-file", "-", "--on", "2025-01-01"}, "\n").code, 2);
        QCOMPARE(set("Cai Mo", {"--code-file", m_folder.filePath("none")}).code, 2);
        QCOMPARE(set("Nobody Known", {"--code-file", "-"}, codeOfCai).code, 2);
        const auto made = set("Cai Mo", {"--code-file", "-", "--on", "2025-01-01"}, codeOfCai);
        QVERIFY2(made.code == 0, made.err.constData());
        const auto list = ctl({"signatory", "list", "--json"}).document().at("signatories");
        QCOMPARE(list.size(), std::size_t{1});
        QCOMPARE(list[0].at("name").get<std::string>(), std::string("Cai Mo"));
        QCOMPARE(list[0].at("key"), made.document().at("key"));
        QVERIFY(ctl({"signatory", "list"}).out.contains("Cai Mo"));
        QVERIFY(!ctl({"journal", "--json"}).out.contains("basket wire"));
    }
    void aSecondIsProvenByTheFirst() {
        const auto other = file("other", "crown ring 19");
        QCOMPARE(set("Cai Mo", {"--code-file", other, "--on", "2025-01-02"}).code, 2);
        QCOMPARE(set("Cai Mo", {"--code-file", other, "--before-file", other, "--on", "2025-01-02"}).code, 2);
        const auto first = file("first", codeOfCai);
        const auto changed = set("Cai Mo", {"--code-file", other, "--before-file", first, "--on", "2025-01-02"});
        QVERIFY2(changed.code == 0, changed.err.constData());
    }
    void aForgottenOneIsSetByAnotherWhichIsAsked() {
        const auto kits = file("kits", "of kit, long");
        const QStringList reset{"--code-file",    file("first", codeOfCai),
                                "--by",           "Kit Moor",
                                "--by-code-file", kits,
                                "--reason",       "forgotten",
                                "--on",           "2025-01-03"};
        const auto unknown = set("Cai Mo", reset);
        QCOMPARE(unknown.code, 2);
        QVERIFY2(unknown.err.contains("Kit Moor"), unknown.err.constData());
        QCOMPARE(set("Kit Moor", {"--code-file", kits, "--on", "2025-01-03"}).code, 0);
        const auto made = set("Cai Mo", reset);
        QVERIFY2(made.code == 0, made.err.constData());
        QCOMPARE(made.document().at("set_by_another").get<std::string>(), std::string("Kit Moor"));
        QVERIFY(ctl({"verify"}).out.contains("code-by-another") || ctl({"verify"}).out.contains("Kit Moor"));
    }
    void aReviewIsSignedWithIt() {
        const auto without = review({});
        QCOMPARE(without.code, 2);
        QVERIFY2(without.err.contains("Cai Mo has a code since 2025-01-03"), without.err.constData());
        const auto wrong = review({"--code-file", "-"}, "crown ring 19");
        QCOMPARE(wrong.code, 2);
        QVERIFY2(wrong.err.contains("not the code of Cai Mo"), wrong.err.constData());
        const auto made = review({"--code-file", "-"}, codeOfCai);
        QVERIFY2(made.code == 0, made.err.constData());
        const auto shown = ctl({"review", "show", "ARC 2", "--on", "2025-06-02", "--json"}).document();
        QCOMPARE(shown.at("proof").at("key"),
                 ctl({"signatory", "list", "--json"}).document().at("signatories")[0].at("key"));
        const auto paper = ctl({"review", "show", "ARC 2", "--on", "2025-06-02"}).out;
        QVERIFY2(paper.contains("Signed with the signatory's own code (key "), paper.constData());

        const QStringList voiding{"review",   "void",       "ARC 2", "--by",      "Cai Mo",
                                  "--reason", "misprinted", "--on",  "2025-06-03"};
        QCOMPARE(ctl(voiding).code, 2);
        QCOMPARE(ctl(voiding + QStringList{"--code-file", "-"}, "crown ring 19").code, 2);
        const auto voided = ctl(voiding + QStringList{"--code-file", "-"}, codeOfCai);
        QVERIFY2(voided.code == 0, voided.err.constData());
        QCOMPARE(ctl({"review", "show", "ARC 2", "--on", "2025-06-04"}).code, 2);
    }
};

CROWNRING_TEST(SignatoryCallTest)

#include "signatory_call_test.moc"
