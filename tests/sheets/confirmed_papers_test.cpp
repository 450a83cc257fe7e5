// SPDX-License-Identifier: GPL-3.0-or-later

/// What papers say of the wording: on a draft that it is not confirmed, on what was signed who had confirmed it.

#include "acts/shop.h"
#include "paper/document_text.h"
#include "sheets/sheets.h"
#include "test_class.h"
#include "words/spoken.h"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace confirmed_papers_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const words::Spoken english;

QString textOfRelease(const Shop& shop) {
    return QString::fromStdString(paper::toText(releasePaper(shop.draft(Shop::signing()).file, english), english))
        .simplified();
}

constexpr const char* unconfirmed = "Draft; wording not confirmed against the current rule";

}

class ConfirmedPapersTest : public QObject {
    Q_OBJECT

private slots:
    void aDraftSaysThatItsWordingIsNotConfirmed() {
        Shop shop("[]", Shop::Wordings::OfNobody);
        shop.ready(Visit::PartMlInspection);
        QVERIFY2(textOfRelease(shop).contains(unconfirmed), qPrintable(textOfRelease(shop)));
        const auto json = inspectionJson(shop.draft(Shop::signing()).file, english);
        const auto& wording = json.at("release").at("wording");
        QCOMPARE(wording.at(0).at("text").get<std::string>(), std::string("part-ml-release"));
        QVERIFY(!wording.at(0).at("adopted") && !wording.at(1).at("confirmed"));
    }
    void oneThatIsConfirmedDoesNot() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(!textOfRelease(shop).contains(unconfirmed));
    }
    void whatWasSignedSaysWhoHadConfirmedItInOneLine() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(shop.sign(Shop::signing()));
        const auto text = textOfRelease(shop);
        QVERIFY2(text.contains("Confirmed against the rule as of an invented day, for tests by Ada Rhos, QE.66.1: "
                               "Certificate of release to service (Part-ML), revision 2026-11, on 2020-01-02; Hot-air "
                               "balloon: annual, 100-hour and special inspection, revision "),
                 qPrintable(text));
        const auto json = inspectionJson(shop.draft(Shop::signing()).file, english);
        const auto& confirmed = json.at("closed").at("confirmed");
        QCOMPARE(confirmed.size(), std::size_t{2});
        QCOMPARE(confirmed.at(0).at("digest").get<std::string>(),
                 digestOf(shipped(StatementText::PartMlRelease).wording));
        QCOMPARE(confirmed.at(1).at("checklist").get<std::string>(), std::string("hot-air-inspection"));
    }
    void whatWasSignedBeforeThatWasAskedSaysSo() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        auto closing = nlohmann::json::parse(shop.closing());
        closing.erase("confirmed");
        letIn(shop.record(), closing.dump());
        QVERIFY(textOfRelease(shop).contains("does not say who had confirmed the wording"));
    }
};

CROWNRING_TEST(ConfirmedPapersTest, QCoreApplication)

}

#include "confirmed_papers_test.moc"
