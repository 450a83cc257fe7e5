// SPDX-License-Identifier: GPL-3.0-or-later

/// The line on directives: it lists what stands open on the record, is settled with no other, and not before its
/// answers; these are proposed when the visit is opened and given from the line (ML.A.303; 14 CFR 39.7, from memory).

#include "acts/post.h"
#include "screen/bench/bench_hands.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <algorithm>

namespace directive_line_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

constexpr const char* directive =
    R"({"entry":"directive.issued","on":"2026-11-01","directive":"QE-AD 7","revision":"1","title":"Look at the valve","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2026-11-10","source":"invented for tests","applies":{"kinds":["burner"]},"first":{"before_flight":true}})";

const CheckRow* directivesLine(InspectionDesk& desk) {
    for (int part = 0; part < desk.parts()->count(); ++part) {
        desk.setPartAt(part);
        const auto& rows = desk.lines()->rows();
        const auto at = std::ranges::find(rows, QStringLiteral("papers.directives"), &CheckRow::line);
        if (at != rows.end())
            return &*at;
    }
    return nullptr;
}
QVariantMap openOne(InspectionDesk& desk) {
    const auto* line = directivesLine(desk);
    return line && line->directives.size() == 1 ? line->directives.front().toMap() : QVariantMap();
}

void put(EntryForm& form, const char* key, const QString& value) {
    const auto& fields = form.fields()->fields();
    const auto at = std::ranges::find(fields, std::string(key), &FormField::key);
    if (at != fields.end())
        form.setValue(static_cast<int>(at - fields.begin()), value);
}

}

class DirectiveLineTest : public QObject {
    Q_OBJECT
private slots:
    void anOpenDirectiveIsAnsweredBeforeTheLineIsDone() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, directive));
        Desks desks(shop.house);
        desks.opening.begin(QStringLiteral("QE-SML"));
        QTRY_COMPARE_WITH_TIMEOUT(desks.opening.directives()->count(), 1, 20'000);
        QVERIFY(desks.opening.directives()->choices().front().detail.contains(QStringLiteral("BRN-1")));
        QVERIFY(desks.open());
        auto& desk = desks.inspection;
        QTRY_VERIFY_WITH_TIMEOUT(!openOne(desk).isEmpty(), 20'000);
        const auto open = openOne(desk);
        QVERIFY2(open[QStringLiteral("said")].toString().contains(QStringLiteral("QE-AD 7 on BRN-1: lapsed")),
                 qPrintable(open[QStringLiteral("said")].toString()));
        QVERIFY(open[QStringLiteral("against")].toBool());

        desk.settleRest();
        desks.settle();
        QCOMPARE(directivesLine(desk)->state, 0);
        QVERIFY2(!directivesLine(desk)->apart.isEmpty(), "said why it is left alone");
        desk.settle(directivesLine(desk)->at, 1);
        desks.settle();
        QVERIFY2(desk.problem().contains(QStringLiteral("QE-AD 7")), qPrintable(desk.problem()));
        QCOMPARE(directivesLine(desk)->state, 0);

        In<EntryForm> form(shop.house);
        form.beginFor(QStringLiteral("directive.answered"), {open[QStringLiteral("item")].toString()},
                      {{QStringLiteral("inspection"), desk.inspection()},
                       {QStringLiteral("directive"), open[QStringLiteral("directive")]},
                       {QStringLiteral("revision"), open[QStringLiteral("revision")]}});
        put(form, "method", QStringLiteral("paragraph 1"));
        QSignalSpy saved(&form, &EntryForm::saved);
        QTRY_VERIFY_WITH_TIMEOUT((form.save(), QTest::qWait(100), saved.size() == 1), 20'000);
        QTRY_VERIFY_WITH_TIMEOUT(directivesLine(desk)->directives.isEmpty(), 20'000);
        desk.settle(directivesLine(desk)->at, 1);
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(directivesLine(desk)->state, 1, 20'000);
        QVERIFY2(desk.problem().isEmpty(), qPrintable(desk.problem()));
    }
    void anInspectionThatEndedWithAListSpeaksOfTheList() {
        DemoHouse demo;
        QVERIFY2(demo.ready(), qPrintable(demo.house.desk.trouble()));
        In<InspectionDesk> desk(demo.house);
        desk.setInspection(QStringLiteral("KS-2026-015"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.loaded(), 30'000);
        QVERIFY2(desk.defectsSaid().contains(QStringLiteral("3 of 3 still stand")), qPrintable(desk.defectsSaid()));
        QVERIFY2(!desk.defectsSaid().contains(QStringLiteral("in the way of the release")),
                 qPrintable(desk.defectsSaid()));
        QCOMPARE(desk.defects()->count(), 2);
        QCOMPARE(desk.listedBesides()->count(), 1);
        QCOMPARE(desk.listedBesides()->valueAt(0), QStringLiteral("fabric.strength-test"));
    }
};

CROWNRING_TEST(DirectiveLineTest, QCoreApplication)

}

#include "directive_line_test.moc"
