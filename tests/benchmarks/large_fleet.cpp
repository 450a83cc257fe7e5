// SPDX-License-Identifier: GPL-3.0-or-later
#include "large_fleet.h"

#include "acts/adopt.h"
#include "worked_fleet.h"

#include <QtCore/QDir>
#include <QtCore/QFile>

#include <stdexcept>

namespace crownring::bench {

namespace {

constexpr int requirementsPerItem = 5;

constexpr int days = 2190;

std::string programmeText() {
    std::string text =
        R"({"programme":"bench","revision":"1","title":"Five requirements","source":"made up","requirements":[)";
    for (int i = 0; i < requirementsPerItem; ++i)
        text += std::string(i ? "," : "") + R"({"id":"bench.)" + std::to_string(i) + R"(","title":"Requirement )" +
                std::to_string(i) + R"(","source":"made up","kinds":["envelope","basket","burner","cylinder"],)" +
                (i == 0 ? R"("triggered_by":["hard-landing","over-temperature"],)" : "") +
                R"("action":"inspect","limits":[{"clock":"months","every":)" + std::to_string(60 + i) +
                R"(},{"clock":"minutes","every":)" + std::to_string(30000 + 600 * i) + "}]}";
    return text + "]}";
}

void append(Record& record, std::vector<NumberedEntry>& waiting) {
    const auto receipt = record.append(std::move(waiting), "bench");
    if (!receipt)
        throw std::runtime_error(text(receipt.error().front()));
    waiting.clear();
}

void enterBalloon(int balloon, std::vector<NumberedEntry>& waiting) {
    waiting.push_back(
        written(firstDay, 'b', balloon, 0, BalloonEntered{balloonName(balloon), "made up", {"for-hire"}}));
    for (int i = 0; i < itemsPerBalloon; ++i) {
        const auto item = itemName(balloon, i);
        ItemEntered entered{item,
                            itemKinds[static_cast<std::size_t>(i)],
                            "S" + item.text(),
                            typeName(balloon, i),
                            DayOrMonth(firstDay),
                            newFigures};
        waiting.push_back(written(firstDay, 'i', balloon, i, std::move(entered)));
        waiting.push_back(written(firstDay, 'f', balloon, i, ItemFitted{balloonName(balloon), item, {}}));
        for (int r = 0; r < requirementsPerItem; ++r)
            waiting.push_back(written(addDays(firstDay, 30 + r * 7), 'd', balloon, i * requirementsPerItem + r,
                                      RequirementDone{item, RequirementId("bench." + std::to_string(r)), {}, {}, {}}));
    }
    work(balloon, waiting);
}

}

std::string folder() {
    const auto named = qEnvironmentVariable("CROWNRING_BENCH_FOLDER");
    return (named.isEmpty() ? QDir::tempPath() : named).toStdString();
}

CivilDate askedDay() { return addDays(firstDay, days + 10); }

Entry flightOf(int balloon, int nth, const std::string& id) {
    Entry entry;
    entry.id = EntryId(id);
    entry.on = addDays(firstDay, nth * 4 % days);
    entry.time = TimeOfDay(5 + nth % 3, 30);
    entry.by = "pilot 7";
    FlightLogged flight;
    flight.balloon = balloonName(balloon);
    flight.use.minutes = Minutes(40 + (balloon + nth) % 60);
    entry.body = flight;
    return entry;
}

std::unique_ptr<Record> largeFleet(const std::string& file, const FleetSize& size) {
    const bool made = QFile::exists(QString::fromStdString(file));
    auto opened = openRecord(file, OpenMode::OrCreate, WriterId("bench"));
    if (!opened)
        throw std::runtime_error(text(opened.error()));
    auto record = std::move(*opened);
    if (made)
        return record;
    std::vector<NumberedEntry> waiting;
    stateLimits(waiting);
    for (int balloon = 0; balloon < size.balloons; ++balloon)
        enterBalloon(balloon, waiting);
    append(*record, waiting);
    if (!adopt(*record, *record, programmeText(), "bench", BoundEverything{}, firstDay, "bench"))
        throw std::runtime_error("the programme was refused");
    constexpr std::size_t batch = 250'000;
    for (int flight = 0; flight < size.flights; ++flight) {
        const int balloon = flight % size.balloons;
        waiting.push_back({flightOf(balloon, flight / size.balloons, "fl" + std::to_string(flight)), 0});
        if (waiting.size() == batch)
            append(*record, waiting);
    }
    append(*record, waiting);
    return record;
}

}
