// SPDX-License-Identifier: GPL-3.0-or-later

/// Limits of fabric among the dates to come. Figures are invented: an hour flown every fourth day, 91 h a year; fabric
/// that falls so that its limit is met at ln(100/30) / 0.2 = 6.02, 602 h, of which 400 are flown.

#include "answers/due.h"
#include "answers/fabric/made_fabric_record.h"
#include "answers/forecast/fabric_ahead.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Two of the envelopes, one of them on a balloon.
void flyOne(Record& record) {
    std::string lines = R"({"entry":"balloon.entered","on":"2022-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2022-01-01","item":"E3","kind":"envelope","made":"2021-06"}
{"entry":"item.entered","on":"2022-01-01","item":"E4","kind":"envelope","made":"2021-06"}
{"entry":"item.fitted","on":"2022-01-01","balloon":"QE-ONE","item":"E3"}
{"entry":"programme.adopted","on":"2022-01-01","programme":"part-ml-hot-air","everything":true}
)";
    for (auto on = day("2022-01-03"); on <= day("2026-05-31"); on = addDays(on, 4))
        lines += R"({"entry":"flight.logged","on":")" + on.iso() + R"(","balloon":"QE-ONE","minutes":60})" + "\n";
    posted(record, lines);
}

std::vector<FabricAhead> aheadBy(Record& record, const DueList& list, const std::shared_ptr<const FabricRecord>& of) {
    const SharedFit fit = std::make_shared<const FabricFit>(fitOf(of).value().value());
    return fabricAhead(record, list, std::span(&fit, 1), list.on).value();
}

}

class FabricAheadTest : public QObject {
    Q_OBJECT

private slots:
    void whatLastsForTwoHundredHoursLastsForTwoYears() {
        Scratch scratch;
        flyOne(*scratch.record);
        const auto list = due(*scratch.record, {}, day("2026-06-01")).value();
        const auto ahead = aheadBy(*scratch.record, list, made({}, 1));
        QCOMPARE(ahead.size(), std::size_t{1});
        QCOMPARE(ahead.front().item->id, ItemId("E3"));
        QCOMPARE(ahead.front().quantity, std::string("grab-strength"));
        QVERIFY(ahead.front().already < 0.01);
        const auto& met = ahead.front().met;
        QVERIFY(met.p10 && met.p50 && met.p90 && *met.p10 < *met.p50 && *met.p50 < *met.p90);
        // 202 h at 91 h a year; its end is known within 45 h, half a year.
        QVERIFY2(std::abs(daysBetween(addDays(list.on, 810), *met.p50).value()) < 180, met.p50->iso().c_str());
    }
    /// Pulls that all held bound the life and date nothing (statistics of the model, `Ground::HeldOnly`).
    void whatReadingsDoNotWarrantIsNotToldOf() {
        Scratch scratch;
        flyOne(*scratch.record);
        const auto list = due(*scratch.record, {}, day("2026-06-01")).value();
        const auto held = made({}, 1);
        for (auto& reading : held->fleet.readings)
            reading.observed.seen = Seen::AtLeast;
        QVERIFY(aheadBy(*scratch.record, list, held).empty());
    }
};

CROWNRING_TEST(FabricAheadTest)

#include "fabric_ahead_test.moc"
