// SPDX-License-Identifier: GPL-3.0-or-later

/// The label that hangs on a component says what it is, what was done, who signed, and whether it is released.

#include "sheets/every_visit.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace labels_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* twoCylinders =
    R"({"entry":"item.entered","on":"2016-05-01","item":"C8","kind":"cylinder","serial":"7787"}
{"entry":"item.entered","on":"2016-05-01","item":"C9","kind":"cylinder","serial":"7788"})";
constexpr const char* onOne =
    R"({"entry":"work.performed","on":"2026-06-01","by":"Ada Rhos","what":"new valve","data":"Manual 9","grade":"minor","item":"C9")";

}

class LabelsTest : public QObject {
    Q_OBJECT

    static paper::Label labelOn(const EveryVisit& visit, const char* on = "2026-06-02") {
        const auto file = visit.file(on);
        return labelOf(file, file.items.front(), english);
    }

private slots:
    void aReleasedComponentHasACertificateAndALabel_data() {
        QTest::addColumn<Visit>("visit");
        QTest::newRow("Part-ML") << Visit::PartMlComponent;
        QTest::newRow("14 CFR") << Visit::UsComponent;
    }
    void aReleasedComponentHasACertificateAndALabel() {
        QFETCH(Visit, visit);
        EveryVisit made(visit);
        QCOMPARE(labelOn(made).status, std::string("NOT RELEASED (draft)"));
        QVERIFY(made.sign().isEmpty());
        const auto kinds = sheetsOf(made.file());
        QVERIFY(std::ranges::count(kinds, SheetKind::Component) == 1 &&
                std::ranges::count(kinds, SheetKind::Labels) == 1);
        QVERIFY(std::ranges::count(kinds, SheetKind::Release) == 0);
        const auto label = labelOn(made);
        QCOMPARE(label.status, std::string("Released"));
        QVERIFY(!label.bars);
        const auto text = made.paper(SheetKind::Labels);
        for (const char* each : {"B9", "basket, B-4", "88", "patched a panel", "2026-06-02", "WO 7", "No EASA Form 1"})
            QVERIFY2(text.contains(each), qPrintable(each + text));
        // Its report and its page of a logbook say no other thing of it.
        const auto report = made.paper(SheetKind::Report);
        QVERIFY2(report.contains("released") && !report.contains("releases no"), qPrintable(report));
        const auto page = made.paper(SheetKind::Logbook);
        QVERIFY2(!page.contains("the envelope's clock") && page.contains("basket B9"), qPrintable(page));
        QVERIFY2(text.contains(visit == Visit::UsComponent ? "Ines Holt, 2026-06-02, A&P 6, IA"
                                                           : "Ada Rhos, 2026-06-02, QE.66.1"),
                 qPrintable(text));
        const auto json = inspectionJson(made.file(), english);
        QVERIFY(json.at("labels").at(0).at("released").get<bool>());
    }

    void whatIsNotReleasedSaysSo() {
        EveryVisit abandoned(Visit::PartMlComponent);
        QVERIFY(abandoned.sign(Outcome::Abandoned).isEmpty());
        QCOMPARE(labelOn(abandoned).status, std::string("NOT RELEASED"));
        QVERIFY(labelOn(abandoned).bars);
        EveryVisit withdrawn(Visit::PartMlComponent);
        QVERIFY(withdrawn.sign().isEmpty());
        withdrawn.shop.say(
            R"({"entry":"release.revoked","on":"2026-06-05","by":"Ada Rhos","reason":"the wrong basket")" +
            withdrawn.shop.about() + "}");
        QCOMPARE(labelOn(withdrawn, "2026-06-06").status, std::string("NOT RELEASED (withdrawn)"));
    }

    void aRecordOfWorkOnItemsReleasesNothing() {
        Shop shop;
        shop.say(R"({"entry":"item.entered","on":"2016-05-01","item":"C9","kind":"cylinder","serial":"7788"})");
        shop.adopt("part-ml-hot-air");
        Opening opening;
        opening.visit = Visit::PartMlInspection;
        opening.items = shop.items = {ItemId("C9")};
        opening.on = day("2026-06-01");
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.carriedOut();
        QVERIFY(shop.sign(Shop::signing()));
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-02")).value();
        QCOMPARE(labelOf(file, file.items.front(), english).status, std::string("NOT RELEASED (record of work)"));
    }

    void whatNobodyWorkedOnHasNoLabel() {
        // 14 CFR 43.9(a), ML.A.801(e) (from memory): the work performed, and no more.
        Shop shop;
        shop.say(twoCylinders);
        shop.adopt("part-ml-hot-air");
        Opening opening;
        opening.visit = Visit::PartMlRepair;
        opening.items = shop.items = {ItemId("C8"), ItemId("C9")};
        opening.on = day("2026-06-01");
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.say(onOne + shop.about() + "}");
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-02")).value();
        const auto sheet = labelSheet(file, english);
        QCOMPARE(sheet.subtitle, std::string("C9"));
        for (const auto& block : sheet.blocks)
            if (const auto* labels = std::get_if<paper::Labels>(&block)) {
                QCOMPARE(labels->labels.size(), std::size_t{1});
                QCOMPARE(labels->labels.front().title, std::string("C9"));
            }
        QCOMPARE(inspectionJson(file, english).at("labels").size(), std::size_t{1});
    }

    void everyPaperHasANameThatIsAsked() {
        for (const auto& name : sheetNames())
            QCOMPARE(std::string(sheetName(*sheetFrom(name))), name);
        QVERIFY(!sheetFrom("form-one"));
    }
};

CROWNRING_TEST(LabelsTest, QCoreApplication)

}

#include "labels_test.moc"
