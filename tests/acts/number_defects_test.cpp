// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/number_defects.h"
#include "acts/shop.h"
#include "record/new_id.h"
#include "test_class.h"

#include <QTest>

namespace number_defects_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

NumberedEntry found(const char* on, const char* what, std::string_view name = unnumbered) {
    Entry entry;
    entry.id = newEntryId();
    entry.on = *CivilDate::parse(on);
    DefectFound body;
    body.defect = DefectId(std::string(name));
    body.item = ItemId("E1");
    body.what = what;
    body.severity = Severity::Minor;
    entry.body = std::move(body);
    return {std::move(entry), 0};
}

std::vector<std::string> numbersOf(const std::vector<NumberedEntry>& entries) {
    std::vector<std::string> numbers;
    for (const auto& each : entries)
        numbers.push_back(std::get<DefectFound>(each.entry.body).defect.text());
    return numbers;
}

}

/// Defects are numbered within their year, one after the other, whoever writes them down.
class NumberDefectsTest : public QObject {
    Q_OBJECT
private slots:
    void eachHasTheNextNumberOfItsYear() {
        Shop shop;
        auto& record = shop.record();
        for (int round = 0; round < 5; ++round) {
            std::vector<NumberedEntry> entries{found("2026-05-01", "a"), found("2026-05-02", "b")};
            QVERIFY(numberDefects(record, entries));
            QVERIFY(post(record, record, entries, {}));
        }
        std::vector<NumberedEntry> next{found("2026-06-01", "c"), found("2025-06-01", "d"), found("2026-06-01", "e"),
                                        found("2026-06-01", "f", "the shop's own")};
        QVERIFY(numberDefects(record, next));
        QCOMPARE(numbersOf(next), (std::vector<std::string>{"D26-011", "D25-001", "D26-012", "the shop's own"}));
    }
};

CROWNRING_TEST(NumberDefectsTest)

}

#include "number_defects_test.moc"
