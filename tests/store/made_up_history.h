// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Random histories of a small fleet, with everything that paper does: late, doubled, contradictory, corrected, voided.

#include "record/entry.h"

#include <random>
#include <string>
#include <vector>

namespace crownring::testing {

class MadeUpHistory {
public:
    MadeUpHistory(unsigned seed, int size) : m_random(seed) {
        for (int i = 0; i < itemCount; ++i)
            add(entered(i));
        for (int i = 0; i < balloonCount; ++i)
            add(BalloonEntered{balloon(i), {}, {}}, 0);
        add(PersonEntitled{PersonId("P"), "repair-station", "R 1", {}, {}}, 0);
        for (int i = 0; i < inspectionCount; ++i)
            add(opened(i));
        if (chance(30))
            add(entered(pick(itemCount)));
        for (int i = 0; i < size; ++i)
            step();
    }

    /// References come first; an amendment stands after what it amends.
    std::vector<Entry> entries;

    /// The same entries in another order that respects references.
    [[nodiscard]] std::vector<Entry> shuffled() {
        std::vector<Entry> order;
        std::vector<Entry> waiting = entries;
        std::shuffle(waiting.begin(), waiting.end(), m_random);
        std::stable_partition(waiting.begin(), waiting.end(), [](const Entry& each) {
            return isCast(each.body) && !std::holds_alternative<InspectionOpened>(each.body);
        });
        std::stable_partition(waiting.begin(), waiting.end(), [](const Entry& each) { return isCast(each.body); });
        const auto has = [&](const EntryId& id) {
            return std::any_of(order.begin(), order.end(), [&](const Entry& each) { return each.id == id; });
        };
        while (!waiting.empty())
            for (auto next = waiting.begin(); next != waiting.end(); ++next) {
                const auto target = amends(*next);
                if (target && !has(*target))
                    continue;
                order.push_back(*next);
                waiting.erase(next);
                break;
            }
        return order;
    }

    static CivilDate dayAt(int number) { return CivilDate::fromDayNumber(20'000 + number); }
    static constexpr int lastDay = 60;

private:
    static constexpr int itemCount = 4;
    static constexpr int balloonCount = 3;

    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_random); }
    bool chance(int percent) { return pick(100) < percent; }
    static constexpr int inspectionCount = 2;
    /// What others speak of.
    static bool isCast(const Body& body) {
        return std::holds_alternative<ItemEntered>(body) || std::holds_alternative<BalloonEntered>(body) ||
               std::holds_alternative<PersonEntitled>(body) || std::holds_alternative<InspectionOpened>(body);
    }
    static InspectionId inspection(int number) { return InspectionId("V" + std::to_string(number)); }
    static ItemId item(int number) { return ItemId("I" + std::to_string(number)); }
    static Registration balloon(int number) { return Registration("B" + std::to_string(number)); }

    void add(Body body, int onDay = -1) {
        Entry entry;
        // Ids in no particular order, so that ties by id are ties by something else than arrival.
        entry.id = EntryId(std::to_string((entries.size() * 7919 + 13) % 1009) + "-" + std::to_string(entries.size()));
        entry.on = dayAt(onDay >= 0 ? onDay : pick(lastDay));
        if (chance(25))
            entry.time = TimeOfDay(pick(3) * 6 + 6, 0);
        entry.body = std::move(body);
        entries.push_back(std::move(entry));
    }

    Body entered(int number) {
        ItemEntered body;
        body.item = item(number);
        body.kind = static_cast<ItemKind>(pick(itemKindCount));
        if (chance(40))
            body.broughtForward = {Minutes(pick(5000)), Landings(pick(90)), Inflations(pick(90))};
        if (chance(30))
            body.broughtForward.minutes.reset();
        return body;
    }

    Body opened(int number) {
        InspectionOpened body{inspection(number), "us-annual", {item(pick(itemCount))}, {}, {}, {}};
        if (const auto second = item(pick(itemCount)); second != body.items.front())
            body.items.push_back(second);
        return body;
    }

    /// What becomes of an inspection, whoever would take it: the gate is not asked.
    Body matter() {
        const auto of = inspection(pick(inspectionCount));
        const PersonId person("P");
        switch (pick(9)) {
        case 0:
        case 1: {
            InspectionClosed body;
            body.inspection = of;
            body.outcome = chance(70) ? Outcome::Discrepancies : static_cast<Outcome>(pick(3));
            body.signatory = person;
            return body;
        }
        case 2:
        case 3:
            return ReturnApproved{of, {}, person, "repair-station", {}};
        case 4:
            return ReleaseRevoked{of, "too early"};
        case 6:
        case 7: {
            ReviewSigned body;
            body.balloon = balloon(pick(balloonCount));
            body.item = item(pick(itemCount));
            body.act = static_cast<ReviewAct>(pick(reviewActCount));
            body.form = "Form";
            body.certificate = "7";
            if (body.act != ReviewAct::Recommendation)
                body.expires = dayAt(pick(lastDay));
            body.reviewer = person;
            body.capacity = "authority";
            return body;
        }
        case 5: {
            ReleaseIncomplete body;
            body.inspection = of;
            body.signatory = person;
            body.capacity = "repair-station";
            body.limitations = "the check flight";
            body.outstanding = {{"check-flight", {}, "Check flight"}};
            return body;
        }
        default: {
            auto body = done();
            body.ref = of.text();
            return body;
        }
        }
    }

    Body flight() {
        FlightLogged body;
        body.balloon = balloon(pick(balloonCount));
        body.use = {Minutes(1 + pick(120)), Landings(pick(4)), Inflations(1)};
        if (chance(25)) {
            body.kit.emplace();
            body.kit->push_back(item(pick(itemCount)));
            if (const auto second = item(pick(itemCount)); chance(50) && second != body.kit->front())
                body.kit->push_back(second);
        }
        return body;
    }

    RequirementDone done() {
        RequirementDone body{item(pick(itemCount)), RequirementId("r" + std::to_string(pick(2))), {}, {}, {}};
        if (chance(40))
            body.clock.minutes = Minutes(pick(6000));
        if (chance(20))
            body.clock.landings = Landings(pick(100));
        return body;
    }

    Body reading() {
        ReadingTaken body;
        body.item = item(pick(itemCount));
        body.quantity = "grab-strength";
        body.unit = "N";
        body.value = 20.0 + pick(4000) / 10.0;
        body.held = chance(30);
        body.confirmed = chance(20);
        if (chance(70))
            body.place = {1 + pick(3), 1 + pick(3)};
        if (chance(60))
            body.conditions.jaw = Millimetres(25);
        if (chance(40))
            body.conditions.direction = chance(50) ? "warp" : "weft";
        if (chance(30))
            body.method = "grab";
        return body;
    }

    Body repair() {
        RepairMade body;
        body.item = item(pick(itemCount));
        body.method = "panel replaced";
        body.place = {1 + pick(3), 1 + pick(3)};
        if (chance(50))
            body.lot = "L" + std::to_string(pick(2));
        if (chance(30))
            body.width = Millimetres(80);
        return body;
    }

    Body fabricStated() {
        FabricStated body;
        body.item = item(pick(itemCount));
        body.lot = "L" + std::to_string(pick(2));
        if (chance(50))
            body.firstRow = 2;
        return body;
    }

    Body life() {
        if (chance(30))
            return ItemState{item(pick(itemCount)), static_cast<ServiceState>(pick(serviceStateCount)), {}};
        if (chance(40)) {
            const auto state = static_cast<ServiceState>(pick(balloonStateCount));
            return BalloonState{balloon(pick(balloonCount)), state,
                                state == ServiceState::Sold && chance(50) ? "a club" : ""};
        }
        const int from = pick(balloonCount);
        return BalloonRenamed{balloon(from), balloon((from + 1 + pick(balloonCount - 1)) % balloonCount)};
    }

    void step() {
        const int what = pick(150);
        if (what < 12)
            add(ItemFitted{balloon(pick(balloonCount)), item(pick(itemCount)), {}});
        else if (what < 20)
            add(ItemRemoved{balloon(pick(balloonCount)), item(pick(itemCount)), {}});
        else if (what < 28) // also to itself, as a correction may make of it
            add(ItemFitted{{}, item(pick(itemCount)), {}, item(pick(itemCount))});
        else if (what < 30)
            add(ItemRemoved{{}, item(pick(itemCount)), {}, item(pick(itemCount))});
        else if (what < 60)
            add(flight());
        else if (what < 72)
            add(done());
        else if (what < 78)
            add(EventReported{item(pick(itemCount)), "hard-landing", {}, {}});
        else if (what < 82)
            add(EventReported{balloon(pick(balloonCount)), "hard-landing", {}, {}});
        else if (what < 91)
            amend(EntryVoided{{}, "a slip"});
        else if (what < 100)
            amend(EntryCorrected{{}, patch()});
        else if (what < 109)
            add(reading());
        else if (what < 112)
            add(repair());
        else if (what < 115)
            add(fabricStated());
        else if (what < 130)
            add(life());
        else
            add(matter());
    }

    std::string patch() {
        switch (pick(6)) {
        case 0:
            return R"({"minutes":)" + std::to_string(1 + pick(200)) + "}";
        case 1:
            return R"({"on":")" + dayAt(pick(lastDay)).iso() + R"("})";
        case 2:
            return R"({"item":"I)" + std::to_string(pick(itemCount)) + R"("})";
        case 3:
            return R"({"kit":null})";
        case 4:
            return R"({"value":)" + std::to_string(50 + pick(200)) + "}";
        default:
            return R"({"time":"07:30Z"})";
        }
    }

    template <class Amendment>
    void amend(Amendment amendment) {
        const auto& target = entries[static_cast<std::size_t>(pick(static_cast<int>(entries.size())))];
        if constexpr (std::is_same_v<Amendment, EntryVoided>)
            amendment.voids = target.id;
        else
            amendment.replaces = target.id;
        add(std::move(amendment));
    }

    std::mt19937 m_random;
};

}
