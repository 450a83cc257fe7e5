// SPDX-License-Identifier: GPL-3.0-or-later

/// What the bench asks of a form besides: the grade of a repair, the panel where a reading failed; and where the
/// keyboard stands first. All of it is invented.

#include "form_hand.h"
#include "screen/bench/bench_hands.h"
#include "test_class.h"

namespace needed_fields_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Shop;

namespace {

QString keyAt(EntryForm& form, int row) {
    return QString::fromStdString(form.fields()->fields().at(static_cast<std::size_t>(row)).key);
}
bool offersNothing(EntryForm& form, std::string_view key) {
    return std::ranges::any_of(FormHand::field(form, key).choices,
                               [](const Choice& each) { return each.value.isEmpty(); });
}
const QString visit = QStringLiteral("V-1");
const char* const repairWithoutGrade =
    R"({"entry":"inspection.opened","id":"v1","on":"2026-11-20","inspection":"V-1","visit":"part-ml-repair","balloon":"QE-SML","items":["ENV-1","BRN-1"]}
{"entry":"work.performed","id":"w1","on":"2026-11-20","by":"insp. A","inspection":"V-1","item":"BRN-1","what":"new O-ring","data":"Flare manual, 4"})";

}

class NeededFieldsTest : public QObject {
    Q_OBJECT
private slots:
    /// 14 CFR 43.9(d), Part 43 Appendix A; ML.A.304 (from memory): a repair is minor or major.
    void theGradeOfARepairIsNeeded() {
        Shop shop;
        QVERIFY(shop.ready());
        In<EntryForm> form(shop.house);
        form.beginAtBench(QStringLiteral("work.performed"), visit, {}, QStringLiteral("BRN-1"));
        QVERIFY(!FormHand::field(form, "grade").required && offersNothing(form, "grade"));
        form.askGrade();
        QVERIFY(FormHand::field(form, "grade").required && !offersNothing(form, "grade"));
        FormHand::set(form, "what", "new O-rings");
        FormHand::set(form, "data", "Flare manual, 4");
        form.save();
        QVERIFY(form.isOpen() && !FormHand::problemAt(form, "grade").isEmpty());
    }
    void aReasonOpensTheFieldThatAnswersIt() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, repairWithoutGrade));
        In<EntryForm> form(shop.house);
        form.correct(QStringLiteral("w1"), QStringLiteral("grade"));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 10'000);
        QVERIFY(FormHand::field(form, "grade").required);
        QCOMPARE(keyAt(form, form.firstRow()), QStringLiteral("grade"));
        FormHand::set(form, "grade", "minor");
        FormHand::set(form, "what", "new O-rings, all four"); // a wrong description is put right there too
        FormHand::set(form, "by", "insp. A");
        form.save(); // tried out first
        QTRY_VERIFY_WITH_TIMEOUT(!form.saving(), 10'000);
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        QTRY_COMPARE_WITH_TIMEOUT(saved.size(), 1, 10'000);
        const auto line = shop.ask([](Record& record) { return record.line(EntryId("w1")).value(); });
        const auto& work = std::get<WorkPerformed>(nowOf(*line).body);
        QCOMPARE(work.grade, std::optional(Grade::Minor));
        QCOMPARE(work.what, std::string("new O-rings, all four"));
    }
    /// What a reading found is put right in its place.
    void thePanelThatFailedIsProposedAndNeeded() {
        Shop shop;
        QVERIFY(shop.ready());
        In<EntryForm> form(shop.house);
        form.beginAtBench(QStringLiteral("repair.made"), visit, QStringLiteral("D26-001"), QStringLiteral("ENV-1"));
        form.askPlace({{QStringLiteral("gore"), 3}, {QStringLiteral("row"), 9}});
        QCOMPARE(FormHand::field(form, "gore").value, QStringLiteral("3"));
        QCOMPARE(FormHand::field(form, "row").value, QStringLiteral("9"));
        QVERIFY(FormHand::field(form, "gore").required && FormHand::field(form, "row").required);
        form.askPlace({{QStringLiteral("gore"), 2}, {QStringLiteral("zone"), QStringLiteral("parachute")}});
        QCOMPARE(FormHand::field(form, "zone").value, QStringLiteral("parachute"));
    }
    /// The same may be done on other items, of other balloons: that stands below what the form is about.
    void whatIsDoneOnAnItemOpensAtIt() {
        Shop shop;
        QVERIFY(shop.ready());
        In<EntryForm> form(shop.house);
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("QE-SML"), QStringLiteral("ENV-1"),
                   QStringLiteral("ml.inspection"));
        FormHand::set(form, "by", "");
        QCOMPARE(keyAt(form, form.firstRow()), QStringLiteral("item"));
        form.begin(QStringLiteral("requirement.done"), QStringLiteral("QE-SML"));
        QCOMPARE(keyAt(form, form.firstRow()), QStringLiteral("item")); // which is to be chosen
    }
};

CROWNRING_TEST(NeededFieldsTest, QGuiApplication)

}

#include "needed_fields_test.moc"
