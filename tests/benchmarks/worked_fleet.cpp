// SPDX-License-Identifier: GPL-3.0-or-later
#include "worked_fleet.h"

#include <cstdio>

namespace crownring::bench {

namespace {

constexpr int typesOfAKind = 6;
constexpr int gores = 24;
constexpr int rows = 20;

LimitStated limit(int type, int item, const char* quantity, const char* unit) {
    LimitStated limit;
    limit.type = TypeName(typeName(type, item));
    limit.kind = itemKinds[static_cast<std::size_t>(item)];
    limit.quantity = quantity;
    limit.unit = unit;
    limit.source = "Made-up manual, page " + std::to_string(30 + type);
    return limit;
}

LimitStated strength(int type) {
    auto stated = limit(type, 0, "grab-strength", "N");
    stated.least = 133.4;
    stated.conditions.direction = "warp";
    stated.conditions.jaw = Millimetres(25);
    return stated;
}

LimitStated permeability(int type) {
    auto stated = limit(type, 0, "air-permeability", "mm/s");
    stated.most = 45;
    stated.conditions.pressure = Pascals(100);
    stated.conditions.area = SquareCentimetres(20);
    return stated;
}

LimitStated atMost(LimitStated limit, double most) {
    limit.most = most;
    return limit;
}

LimitStated atLeast(LimitStated limit, double least) {
    limit.least = least;
    return limit;
}

ReadingTaken pull(int balloon, int nth) {
    ReadingTaken reading;
    reading.quantity = "grab-strength";
    reading.unit = "N";
    reading.held = nth % 3 == 0;
    reading.value = reading.held ? 133.4 : 140 + (balloon * 7 + nth * 31) % 300;
    reading.conditions.direction = "warp";
    reading.conditions.jaw = Millimetres(25);
    reading.method = "grab, 25 mm jaws, warp";
    return reading;
}

ReadingTaken airflow(int balloon, int nth) {
    ReadingTaken reading;
    reading.quantity = "air-permeability";
    reading.unit = "mm/s";
    reading.value = 5 + (balloon + nth * 3) % 38;
    reading.conditions.pressure = Pascals(100);
    reading.conditions.area = SquareCentimetres(20);
    reading.method = "ISO 9237, 100 Pa, 20 cm2";
    return reading;
}

void readings(int balloon, std::vector<NumberedEntry>& into) {
    constexpr int visits = 4;
    constexpr int inAVisit = 5;
    for (int visit = 0; visit < visits; ++visit)
        for (int i = 0; i < inAVisit; ++i) {
            const int nth = visit * inAVisit + i;
            auto reading = i < 3 ? pull(balloon, nth) : airflow(balloon, nth);
            reading.item = itemName(balloon, 0);
            // Two places are gone back to; the others are elsewhere each time.
            reading.place =
                i == 0 || i == 3 ? PanelPlace{3, rows} : PanelPlace{1 + (balloon + nth) % gores, rows - nth % 9};
            into.push_back(written(addDays(firstDay, 300 + visit * 500), 'r', balloon, nth, std::move(reading)));
        }
}

void defects(int balloon, std::vector<NumberedEntry>& into) {
    const auto day = addDays(firstDay, 1900 + balloon % 200);
    const auto basket = itemName(balloon, 1);
    const DefectId worn(balloonName(balloon).text() + "/worn");
    if (balloon % 3 == 0)
        into.push_back(
            written(day, 'w', balloon, 0,
                    DefectFound{worn, basket, "rawhide worn through at one corner", Severity::Minor, {}, {}, {}, {}}));
    if (balloon % 9 == 0) {
        DefectDeferred deferred{
            worn, basket, "rawhide on order; the floor is sound", addDays(day, 400), {}, PersonId("insp. 7"), {}};
        if (balloon % 2 == 0)
            deferred.untilMinutes = Minutes(40'000);
        into.push_back(written(day, 'w', balloon, 1, std::move(deferred)));
    }
    const auto burner = itemName(balloon, 2);
    const DefectId leaking(balloonName(balloon).text() + "/leaking");
    if (balloon % 7 == 0) {
        into.push_back(written(
            day, 'l', balloon, 0,
            DefectFound{leaking, burner, "a seal of the blast valve leaks", Severity::Barring, {}, {}, {}, {}}));
        into.push_back(
            written(addDays(day, 5), 'l', balloon, 1, DefectCleared{leaking, burner, "seal replaced", {}, {}}));
    }
}

void events(int balloon, std::vector<NumberedEntry>& into) {
    if (balloon % 8 == 0)
        into.push_back(written(addDays(firstDay, 700), 'e', balloon, 0,
                               EventReported{balloonName(balloon), "hard-landing", {}, {}}));
    if (balloon % 25 == 0)
        into.push_back(written(addDays(firstDay, 800), 'e', balloon, 1,
                               EventReported{itemName(balloon, 0), "over-temperature", Celsius(131), Minutes(3)}));
}

}

Registration balloonName(int number) { return Registration("QE-" + std::to_string(100000 + number)); }

ItemId itemName(int balloon, int item) { return ItemId("I" + std::to_string(balloon) + "-" + std::to_string(item)); }

std::string typeName(int balloon, int item) {
    return std::string(itemKindName(itemKinds[static_cast<std::size_t>(item)])) + " type " +
           std::to_string(balloon % typesOfAKind);
}

NumberedEntry written(CivilDate on, char what, int of, int nth, Body body) {
    std::array<char, 37> id{};
    std::snprintf(id.data(), id.size(), "0197b2c4-%04x-7%03x-8a5e-%012x", static_cast<unsigned>(what),
                  static_cast<unsigned>(nth), static_cast<unsigned>(of));
    Entry entry;
    entry.id = EntryId(id.data());
    entry.on = on;
    entry.by = "insp. 7";
    entry.body = std::move(body);
    return {std::move(entry), 0};
}

void stateLimits(std::vector<NumberedEntry>& into) {
    int nth = 0;
    const auto state = [&](LimitStated limit) { into.push_back(written(firstDay, 't', 0, ++nth, std::move(limit))); };
    for (int type = 0; type < typesOfAKind; ++type) {
        state(strength(type));
        state(permeability(type));
        state(atMost(limit(type, 0, "tell-tale", "degC"), 127));
        state(atMost(limit(type, 1, "broken-strands", "count"), 2));
        state(atLeast(limit(type, 1, "runner-thickness", "mm"), 12));
        state(atLeast(limit(type, 2, "burner-leak-test", "kPa"), 700));
        state(atMost(limit(type, 3, "relief-valve-age", "year"), 10));
    }
    PersonEntitled person{PersonId("insp. 7"), "independent-certifying-staff", "made up", {}, {}};
    into.push_back(written(firstDay, 'p', 0, 0, std::move(person)));
}

void work(int balloon, std::vector<NumberedEntry>& into) {
    readings(balloon, into);
    defects(balloon, into);
    events(balloon, into);
}

}
