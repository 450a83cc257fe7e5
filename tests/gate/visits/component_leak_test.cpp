// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "test_class.h"

namespace component_leak_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

struct Component {
    const char* kind;
    const char* quantity;
    const char* line;
};
constexpr Component components[] = {{"burner", "burner-leak-test", "work.leak-test"},
                                    {"cylinder", "cylinder-leak-test", "work.leak-test.cylinder"},
                                    {"hose", "hose-leak-test", "work.leak-test.hose"}};

std::string stated(const Component& of) {
    return R"({"entry":"limit.stated","on":"2020-01-01","type":"X-1","kind":)" + quoted(of.kind) + R"(,"quantity":)" +
           quoted(of.quantity) + R"(,"unit":"kPa","least":1500,"source":"Manual X, 4.2"})";
}

/// A component of a type came off the aircraft, and all its lines are done.
void workedOn(Shop& shop, const Component& of) {
    shop.say(R"({"entry":"item.entered","on":"2020-01-01","item":"P1","serial":"88","type":"X-1","kind":)" +
             quoted(of.kind) + "}");
    Opening opening;
    opening.visit = Visit::PartMlComponent;
    opening.items = {ItemId("P1")};
    opening.on = day("2026-06-01");
    opening.by = "Ada Rhos";
    shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
    shop.say(
        R"({"entry":"work.performed","on":"2026-06-01","item":"P1","what":"seals replaced","data":"Manual X, 4","grade":"minor")" +
        shop.about() + "}");
    const auto file = shop.draft(Shop::signing()).file;
    for (const auto& work : workLines(file.inspection, file.items))
        shop.say(R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":)" +
                 quoted(work.line->id) + (work.item ? R"(,"item":"P1")" : "") + shop.about() + "}");
}

std::string leakTested(const Shop& shop, const Component& of, int kilopascals) {
    return R"({"entry":"reading.taken","on":"2026-06-01","item":"P1","unit":"kPa","held_at":)" +
           std::to_string(kilopascals) + R"(,"quantity":)" + quoted(of.quantity) + R"(,"line":)" + quoted(of.line) +
           shop.about() + "}";
}

}

/// Work on the fuel system off the aircraft: where the type's manual states a leak test, its reading is asked
/// (ML.A.402(a); 14 CFR 43.13(a), from memory).
class ComponentLeakTest : public QObject {
    Q_OBJECT
private slots:
    void aLimitAsksForTheReading() {
        for (const auto& of : components) {
            Shop shop;
            shop.say(stated(of));
            workedOn(shop, of);
            expectRefused(shop, Shop::signing(), "no-reading", "Manual X, 4.2");
            shop.say(leakTested(shop, of, 1600));
            expectReleased(shop, Shop::signing());
        }
    }
    void withoutALimitTheLineAloneIsAsked() {
        for (const auto& of : components) {
            Shop shop;
            workedOn(shop, of);
            expectReleased(shop, Shop::signing());
        }
    }
    void aGaugeThatIsNamedIsInCalibration() {
        // ML.A.402(b)(4), from memory; nobody has to name one.
        Shop shop;
        shop.say(stated(components[0]));
        workedOn(shop, components[0]);
        auto reading = leakTested(shop, components[0], 1600);
        reading.insert(reading.size() - 1, R"(,"tester":"F-2")");
        const auto id = shop.say(reading).ids.at(0);
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
        QCOMPARE(shop.draft(Shop::signing()).refusals.front().entry, std::optional(id)); // it leads to the reading
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-01","by":"Ada Rhos","with":{"tester":"F-1"},"replaces":)" +
                 quoted(id.text()) + "}");
        expectReleased(shop, Shop::signing());
    }
    void whatIsNotSaidOfTheWorkLeadsToIt() {
        // 14 CFR 43.9(d), Part 43 Appendix A; ML.A.304 (from memory).
        Shop shop;
        shop.open(Visit::PartMlRepair).carriedOut();
        const auto work =
            shop.say(
                    R"({"entry":"work.performed","on":"2026-06-01","item":"E1","what":"panel sewn","data":"Manual 77, 4")" +
                    shop.about() + "}")
                .ids.at(0);
        const auto refusals = shop.draft(Shop::signing()).refusals;
        const auto grade = std::ranges::find(refusals, ReleaseFault::GradeNotSaid, &Refusal::fault);
        QVERIFY(grade != refusals.end());
        QCOMPARE(grade->entry, std::optional(work));
    }
};

CROWNRING_TEST(ComponentLeakTest, QCoreApplication)

}

#include "component_leak_test.moc"
