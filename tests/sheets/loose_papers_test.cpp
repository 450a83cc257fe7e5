// SPDX-License-Identifier: GPL-3.0-or-later

/// Papers of items that are on no balloon: they release nothing and say so alike, name what they are about, and are
/// called after the work that was done.

#include "acts/shop.h"
#include "answers/bench_file.h"
#include "paper/document_text.h"
#include "said.h"
#include "sheets/sheets.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A cylinder of the pool whose periodic test was carried out and signed for.
struct Tested {
    Shop shop;
    Tested() {
        shop.say(
            R"({"entry":"item.entered","on":"2016-05-01","item":"C9","kind":"cylinder","serial":"7788","made":"2010-03"})");
        shop.adopt("part-ml-hot-air");
        shop.adopt("lpg-adr");
        Opening opening;
        opening.visit = Visit::PartMlInspection;
        opening.items = shop.items = {ItemId("C9")};
        opening.work = {{ItemId("C9"), RequirementId("adr.periodic-test")}};
        opening.on = day("2026-06-01");
        opening.by = "Ada Rhos";
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.carriedOut();
    }
    [[nodiscard]] QString paper(SheetKind kind) const {
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-02")).value();
        return QString::fromStdString(paper::toText(sheet(kind, file, english), english, 2000));
    }
};

}

class LoosePapersTest : public QObject {
    Q_OBJECT

private slots:
    void theyAreCalledAfterTheWork() {
        const Tested tested;
        for (const auto kind : {SheetKind::Report, SheetKind::Release, SheetKind::Logbook}) {
            const auto text = tested.paper(kind);
            QVERIFY2(text.contains(QStringLiteral("Periodic inspection")), qPrintable(text));
            QVERIFY2(!text.contains(QStringLiteral("100-hour inspection (Part-ML)")),
                     qPrintable(text)); // the visit's name
            QVERIFY2(!text.contains(QStringLiteral("adr.periodic")), qPrintable(text));
        }
    }
    void theySayThatNothingIsReleased() {
        Tested tested;
        const auto answer = tested.shop.sign(Shop::signing());
        QVERIFY2(answer, answer ? "" : text(answer.error().front()).c_str());
        const auto report = tested.paper(SheetKind::Report);
        QVERIFY2(report.contains(QStringLiteral("work signed for; it releases no aircraft and no component")),
                 qPrintable(report));
        const auto release = tested.paper(SheetKind::Release);
        QVERIFY2(!release.contains(QStringLiteral("Released by")), qPrintable(release));
        QVERIFY2(release.contains(QStringLiteral("cylinder C9, serial 7788")), qPrintable(release));
        QVERIFY2(release.contains(QStringLiteral("It releases nothing")), qPrintable(release));
    }
    void onABalloonTheVisitIsWhatWasOpened() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-02")).value();
        QVERIFY(titleOfVisit(file) == Argument(termOf(Visit::PartMlInspection)));
    }
};

CROWNRING_TEST(LoosePapersTest, QCoreApplication)
#include "loose_papers_test.moc"
