// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/asked_series.h"
#include "test_class.h"

#include <QtTest>

namespace asked_series_test {

using namespace crownring;

namespace {

/// An envelope and a basket; fabric is pulled at two places, the tell-tale is read by one line, and wicker by another.
BenchFile opened() {
    BenchFile file;
    ItemFacts envelope, basket;
    envelope.id = ItemId("E1");
    envelope.kind = ItemKind::Envelope;
    envelope.type = "T";
    basket.id = ItemId("B1");
    basket.kind = ItemKind::Basket;
    file.items = {envelope, basket};
    auto& inspection = file.inspection;
    inspection.id = InspectionId("I");
    inspection.opened.body.visit = visitName(Visit::PartMlInspection);
    inspection.checklist.sections = {{"all", "All"}};
    const auto line = [&](const char* id, ItemKind kind, std::vector<AskedReading> readings) {
        ChecklistLine made;
        made.id = id;
        made.section = "all";
        made.kinds = {kind};
        made.sources = {{Regime::PartMl, "s"}};
        made.readings = std::move(readings);
        inspection.checklist.lines.push_back(std::move(made));
    };
    line("skin", ItemKind::Envelope, {{"grab-strength", false, true}, {"air-permeability", false, true}});
    line("label", ItemKind::Envelope, {{"tell-tale", true, false}});
    line("wicker", ItemKind::Basket, {{"wicker-break", true, false}});
    LimitStated pull;
    pull.type = TypeName("T");
    pull.kind = ItemKind::Envelope;
    pull.quantity = "grab-strength";
    pull.unit = "N";
    pull.least = 100;
    pull.places = 2;
    file.limits = {limitFrom(pull).value()};
    return file;
}

void take(BenchFile& file, const char* item, const char* quantity, const char* unit, double value, int gore = 0) {
    Said<ReadingTaken> said;
    said.id = EntryId(std::to_string(file.inspection.readings.size()));
    said.body.item = ItemId(item);
    said.body.quantity = quantity;
    said.body.unit = unit;
    said.body.value = value;
    if (gore > 0)
        said.body.place = {gore, 1};
    file.inspection.readings.push_back(std::move(said));
}

std::vector<std::string> quantities(const std::vector<AskedSeries>& series) {
    std::vector<std::string> names;
    for (const auto& each : series)
        names.push_back(each.of.quantity);
    return names;
}

const AskedFor skin{ItemId("E1"), "skin", "grab-strength"};
const AskedFor label{ItemId("E1"), "label", "tell-tale"};
const AskedFor air{ItemId("E1"), "skin", "air-permeability"};
const AskedFor wicker{ItemId("B1"), "wicker", "wicker-break"};

}

class AskedSeriesTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsStillWantedComesFirstInWorkingOrder() {
        auto file = opened();
        using Names = std::vector<std::string>;
        QCOMPARE(quantities(askedSeries(file)),
                 (Names{"grab-strength", "tell-tale", "wicker-break", "air-permeability"}));
        QCOMPARE(among(askedSeries(file), skin)->count.wanted, 2);
        QCOMPARE(among(askedSeries(file), label)->count.wanted, 1); // the line asks, no limit is stated
        QCOMPARE(among(askedSeries(file), air)->count.wanted, 0);
        take(file, "E1", "grab-strength", "N", 150, 1);
        take(file, "E1", "grab-strength", "N", 150, 2);
        QCOMPARE(quantities(askedSeries(file)),
                 (Names{"tell-tale", "wicker-break", "grab-strength", "air-permeability"}));
        QVERIFY(!among(askedSeries(file), {ItemId("E2"), "skin", "grab-strength"}));
    }
    void oneStaysUntilThereAreEnoughAndThenGoesOn() {
        auto file = opened();
        const auto next = [&](const AskedFor& here) {
            const auto series = askedSeries(file);
            return nextSeries(series, here)->of;
        };
        take(file, "E1", "grab-strength", "N", 150, 1);
        QVERIFY(next(skin) == skin);
        take(file, "E1", "grab-strength", "N", 150, 2);
        QVERIFY(next(skin) == label);
        // What nobody asks for may be read; after it one goes on too.
        QVERIFY(next(air) == label);
        take(file, "E1", "tell-tale", "degC", 110);
        take(file, "B1", "wicker-break", "mm", 10);
        QVERIFY(next(wicker) == wicker); // nothing is left: there is nowhere to go
        QVERIFY(!nextSeries({}, skin));
    }
};

CROWNRING_TEST(AskedSeriesTest)

}

#include "asked_series_test.moc"
