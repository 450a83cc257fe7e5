// SPDX-License-Identifier: GPL-3.0-or-later

/// What stands at the head of an item (02, "Headline"): among its mandatory rows that block flight the worst, among
/// equal ones that comes first; a recommended row or one of filling never does.

#include "screen/balloons/item_model.h"
#include "screen/demo_house.h"
#include "screen/desk/busy_for_hire.h"
#include "test_class.h"

#include <QTest>

namespace item_headline_test {

using namespace crownring;
using namespace crownring::screen;

class ItemHeadlineTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;
    [[nodiscard]] const FleetSheet& sheet() { return *m_demo->house.fleet.sheet(); }

    static std::optional<CivilDate> dayOf(const DueRow& row) {
        std::optional<CivilDate> first;
        for (const auto& limit : row.state.limits)
            if (const auto* reach = limit.calendar(); reach && (!first || reach->due < *first))
                first = reach->due;
        return first;
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
        QVERIFY(m_demo->settled());
    }
    void cleanupTestCase() { m_demo.reset(); }

    void onlyWhatGroundsHeadsAnItem() {
        int unbound = 0;
        for (const auto& item : sheet().items()) {
            const auto* head = sheet().worstOf(item.id);
            unbound += head == nullptr && !sheet().rowsOf(item.id).empty();
            QVERIFY(!head || isBinding(*head));
            for (const auto* row : sheet().rowsOf(item.id))
                QVERIFY(!isBinding(*row) || (head && head->state.standing <= row->state.standing));
        }
        QVERIFY(unbound > 0); // loose cylinders, of which only filling is asked
    }
    /// Not what has the smaller share left: 578 days of ten years would hide 77 of one.
    void ofWhatIsClearTheFirstToComeHeadsIt() {
        int several = 0;
        for (const auto& item : sheet().items()) {
            const auto* head = sheet().worstOf(item.id);
            if (!head || head->state.standing != Standing::Clear || !dayOf(*head))
                continue;
            for (const auto* row : sheet().rowsOf(item.id))
                if (isBinding(*row) && row->state.standing == Standing::Clear && dayOf(*row)) {
                    several += row != head;
                    QVERIFY2(*dayOf(*head) <= *dayOf(*row) || head->state.limits.size() > 1, item.id.text().c_str());
                }
        }
        QVERIFY(several > 0);
    }
    /// As of balloons (02, "Headline"): hours end at the pace of the last two years, long before the date.
    void hoursAtTheRecentPaceHeadIt() {
        DemoHouse small(DemoHouse::Filled::Empty);
        QVERIFY(small.ready() && isPosted(small.house, busyForHire()));
        const ItemId envelope("ENV-1");
        const auto head = [&]() -> std::string {
            const auto sheet = small.house.fleet.sheet();
            const auto* row = sheet && sheet->item(envelope) ? sheet->worstOf(envelope) : nullptr;
            return row ? row->requirement->id.text() : "";
        };
        QTRY_COMPARE_WITH_TIMEOUT(head(), std::string("us.hundred-hour"), 20'000);
    }
    void ofALooseCylinderItIsSaidWhereItIsBound() {
        const auto* loose = sheet().item(ItemId("CYL-4085"));
        QVERIFY(loose && !loose->balloon && !loose->out);
        const auto line = itemLine(sheet(), *loose, false);
        QCOMPARE(line.standing, -1);
        QVERIFY2(line.word.contains(QStringLiteral("bound only on a balloon")), qPrintable(line.word));
    }
};

CROWNRING_TEST(ItemHeadlineTest, QCoreApplication)

}

#include "item_headline_test.moc"
