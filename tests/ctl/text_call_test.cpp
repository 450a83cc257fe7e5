// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl text: wording is listed, adopted as it ships and in an own wording, confirmed, and said on the paper.
/// All of it is invented.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

namespace text_call_test {

using namespace crownring::testing;
using nlohmann::json;

namespace {

std::string ada() {
    return json{{"entry", "person.entitled"},
                {"on", "2020-01-01"},
                {"person", "Ada Rhos"},
                {"capacity", "independent-certifying-staff"},
                {"licence", "QE.66.1"}}
        .dump();
}

}

class TextCallTest : public QObject, OwnRecord {
    Q_OBJECT

    Answer text(const QStringList& arguments) const { return ctl(QStringList{QStringLiteral("text")} + arguments); }
    Answer confirm(const QStringList& more) const {
        return text(QStringList{"confirm", "part-ml-release", "--by", "Ada Rhos", "--as",
                                "independent-certifying-staff", "--against", "ML.A.801 as of an invented day"} +
                    more);
    }
    json release() const { return text({"show", "part-ml-release", "--on", "2026-06-01", "--json"}).document(); }

private slots:
    void initTestCase() { QCOMPARE(ctl({"post", "-"}, QByteArray::fromStdString(ada())).err, QByteArray()); }

    void whatShipsSaysWhereItIsFromAndIsAdoptedByNobody() {
        const auto shown = release();
        QVERIFY(shown.at("adopted").is_null() && shown.at("confirmed").empty() && !shown.at("is_confirmed"));
        QVERIFY(!shown.at("read") && shown.at("ships"));
        QVERIFY(shown.at("source").get<std::string>().find("from memory") != std::string::npos);
        const auto listed = text({"list", "--on", "2026-06-01", "--json"}).document().at("texts");
        QCOMPARE(listed.size(), std::size_t{13}); // ten statements, three checklists
        QVERIFY(text({"list", "--on", "2026-06-01"}).out.contains("not adopted"));
    }
    void whatNobodyAdoptedIsNotConfirmed() {
        const auto answer = confirm({"--on", "2026-05-02"});
        QCOMPARE(answer.code, 2);
        QVERIFY2(answer.err.contains("adopt it first"), answer.err.constData());
    }
    void adoptedAndConfirmedItSaysByWhom() {
        const auto adopted = text({"adopt", "all", "--for", "Lakeside", "--on", "2026-05-01", "--by", "office"});
        QVERIFY2(adopted.code == 0, adopted.err.constData());
        QCOMPARE(adopted.document().at("adopted").size(), std::size_t{10});
        QCOMPARE(confirm({"--on", "2026-05-02", "--digest", QString(64, u'0')}).code, 2);
        const auto confirmed = confirm({"--on", "2026-05-02"});
        QVERIFY2(confirmed.code == 0, confirmed.err.constData());
        const auto shown = release();
        QCOMPARE(shown.at("adopted").at("organisation").get<std::string>(), std::string("Lakeside"));
        QVERIFY(shown.at("is_confirmed"));
        const auto& by = shown.at("confirmed").at(0);
        QCOMPARE(by.at("by").get<std::string>(), std::string("Ada Rhos"));
        QCOMPARE(by.at("licence").get<std::string>(), std::string("QE.66.1"));
        QCOMPARE(by.at("against").get<std::string>(), std::string("ML.A.801 as of an invented day"));
        QCOMPARE(confirmed.document().at("digest"), shown.at("digest"));
        const auto list = text({"confirm", "hot-air-inspection", "--by", "Ada Rhos", "--as",
                                "independent-certifying-staff", "--against", "AMC1 ML.A.302(d)", "--on", "2026-05-02"});
        QVERIFY2(list.code == 0, list.err.constData());
    }
    void anOwnWordingIsHeldAgainstWhatItsRuleWants() {
        const auto file = m_folder.filePath(QStringLiteral("own.txt"));
        const auto adopts = [&](const char* body) {
            QFile own(file);
            if (!own.open(QIODevice::WriteOnly) || own.write(body) < 0)
                qFatal("%s cannot be written", qPrintable(file));
            own.close();
            return text({"adopt", "part-ml-release", "--for", "Lakeside", "--body", file, "--revision", "B", "--on",
                         "2026-05-10"});
        };
        const auto refused = adopts("All was done under {annex}.\n");
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("{aircraft} or {items}"), refused.err.constData());
        QCOMPARE(adopts("Done under {annex}: {aircraft} is released.\n").code, 0);
        const auto shown = release();
        QCOMPARE(shown.at("body").get<std::string>(), std::string("Done under {annex}: {aircraft} is released."));
        QVERIFY(!shown.at("is_confirmed") && !shown.at("ships")); // another revision is unconfirmed again
    }
    void whoMayNotIsRefused() {
        const auto answer = text({"confirm", "us-return-to-service", "--by", "Ada Rhos", "--as",
                                  "independent-certifying-staff", "--against", "14 CFR 43.9", "--on", "2026-05-11"});
        QCOMPARE(answer.code, 2);
    }
    void aTextThatThereIsNotIsNamed() {
        const auto answer = text({"show", "fit-to-fly"});
        QCOMPARE(answer.code, 2);
        QVERIFY2(answer.err.contains("part-ml-release"), answer.err.constData());
    }
};

CROWNRING_TEST(TextCallTest)

}

#include "text_call_test.moc"
