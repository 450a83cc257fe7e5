// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/unit.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <set>
#include <tuple>

namespace crownring {

namespace {

using namespace paper;

/// All digits of it, for a program; nothing where there is none.
std::string digits(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    return {text.data(), end};
}
std::string digits(const std::optional<double>& value) { return value ? digits(*value) : std::string(); }
template <class Tag>
std::string digits(const std::optional<Amount<Tag>>& amount) {
    return amount ? digits(amount->value()) : std::string();
}
std::string digits(const std::optional<int>& value) { return value ? std::to_string(*value) : std::string(); }

std::string judgementText(const ReadingState& state, const Speech& in) {
    switch (state.judgement) {
    case Judgement::Passes:
        return in.say(SheetPhrase::Passes);
    case Judgement::Fails:
        return in.say(SheetPhrase::Fails);
    case Judgement::Undecided:
        return in.say(SheetPhrase::Undecided, {*state.reason});
    case Judgement::Incomparable:
        return in.say(SheetPhrase::NotComparable, {*state.reason});
    case Judgement::NoLimit:
        return in.say(SheetPhrase::NoLimit);
    }
    return {};
}

std::string testerText(const BenchFile& file, const Said<ReadingTaken>& reading, const Speech& in) {
    const auto& tester = reading.body.tester;
    if (!tester)
        return {};
    return file.isCalibrated(*tester, reading.stamp.at.on()) ? tester->text()
                                                             : in.say(SheetPhrase::NotCalibrated, {*tester});
}

/// By the calibration of the day that the tester was used last.
std::string measuresText(const BenchFile& file, const TesterId& tester, const Speech& in) {
    const Instrument* instrument = nullptr;
    for (const auto& each : file.inspection.readings)
        if (each.body.tester == tester)
            if (const auto* then = file.instrument(tester, each.stamp.at.on()))
                instrument = then;
    for (const auto& each : file.inspection.lines)
        if (each.body.tester == tester && !instrument)
            instrument = file.instrument(tester, each.stamp.at.on());
    if (!instrument || !instrument->saysWhat())
        return in.say(SheetPhrase::MeasuresNotSaid);
    const auto what = whatItMeasures(*instrument);
    const auto& [from, to] = std::tie(instrument->from, instrument->to);
    return from && to ? in.say(SheetPhrase::MeasuresWithin, {what, *from, *to})
           : to       ? in.say(SheetPhrase::MeasuresUpTo, {what, *to})
                      : in.say(Argument(what));
}

/// Item by item as they were opened, test by test, place by place.
std::vector<const Said<ReadingTaken>*> inOrder(const BenchFile& file) {
    std::vector<const Said<ReadingTaken>*> readings;
    for (const auto& reading : file.inspection.readings)
        readings.push_back(&reading);
    const auto key = [&](const Said<ReadingTaken>* reading) {
        const auto& body = reading->body;
        return std::tuple(file.item(body.item) - file.items.data(), seriesOf(body.quantity, body.conditions),
                          body.conditions.direction, body.place.zone, body.place.gore, body.place.row,
                          body.place.basket);
    };
    std::ranges::stable_sort(readings, [&](const auto* a, const auto* b) { return key(a) < key(b); });
    return readings;
}

/// "warp, 25 mm jaws, for 3 s, dry".
std::string testedHow(const ReadingTaken& reading, const Speech& in) {
    auto conditions = conditionsText(reading.conditions, in);
    if (const auto how = circumstancesText(reading.circumstances, in); !how.empty())
        conditions += (conditions.empty() ? "" : ", ") + how;
    return conditions;
}

/// "E1: grab strength, warp, 25 mm jaws; limit at least 133.4 N; with F-1; by A"
std::string testText(const BenchFile& file, const Said<ReadingTaken>& reading, Marks& people, const Speech& in) {
    const auto& body = reading.body;
    const auto conditions = testedHow(body, in);
    auto text = in.say(SheetPhrase::OnItem, {body.item, in.say(quantityTerm(body.quantity)) +
                                                            (conditions.empty() ? "" : ", " + conditions)});
    if (const auto limit = stateOf(file, body).limit)
        text = in.say(SheetPhrase::TestAndLimit, {text, *limit});
    const auto by = people.of(who(reading.by, reading.stamp.at.on()));
    const auto tester = testerText(file, reading, in);
    return tester.empty() ? in.say(SheetPhrase::ReadBy, {text, by}) : in.say(SheetPhrase::AllBy, {text, tester, by});
}

/// Readings at no places, each with its test and limit.
Table readingsInRows(const BenchFile& file, const std::vector<const Said<ReadingTaken>*>& readings, Marks& people,
                     const Speech& in) {
    Table table;
    table.columns = {
        {in.say(SheetPhrase::Item), Align::Left, 1.5},     {in.say(SheetPhrase::QuantityAndTest), Align::Left, 4},
        {in.say(SheetPhrase::Reading), Align::Right, 1.9}, {in.say(SheetPhrase::Limit), Align::Left, 2.2},
        {in.say(SheetPhrase::Result), Align::Left, 1.4},   {in.say(SheetPhrase::Tester), Align::Left, 1.8},
        {in.say(SheetPhrase::By), Align::Left, 0.6}};
    for (const auto* reading : readings) {
        const auto& body = reading->body;
        const auto state = stateOf(file, body);
        const auto conditions = testedHow(body, in);
        table.rows.push_back({body.item.text(),
                              in.say(quantityTerm(body.quantity)) + (conditions.empty() ? "" : ", " + conditions),
                              valueText(asTheManualStates(file, body), in), state.limit ? in.say(*state.limit) : "",
                              judgementText(state, in), testerText(file, *reading, in),
                              people.of(who(reading->by, reading->stamp.at.on()))});
    }
    if (std::ranges::any_of(readings, [](const auto* reading) { return reading->body.held; }))
        table.note = in.say(SheetPhrase::HeldNote);
    return table;
}

/// Readings of one test, two abreast, to be read down the first column and then the second.
Table readingsAbreast(const BenchFile& file, const std::vector<const Said<ReadingTaken>*>& readings, const Speech& in) {
    const auto columns = std::min<std::size_t>(readings.size(), 2);
    const auto rows = (readings.size() + columns - 1) / columns;
    Table table;
    for (std::size_t column = 0; column < columns; ++column)
        table.columns.insert(table.columns.end(), {{in.say(SheetPhrase::Where), Align::Left, 2},
                                                   {in.say(SheetPhrase::Reading), Align::Right, 1.4},
                                                   {in.say(SheetPhrase::Result), Align::Left, 1.6}});
    table.rows.resize(rows);
    for (std::size_t number = 0; number < readings.size(); ++number) {
        const auto& body = readings[number]->body;
        for (const auto& cell : {placeText(body.place, in), valueText(asTheManualStates(file, body), in),
                                 judgementText(stateOf(file, body), in)})
            table.rows[number % rows].push_back(cell);
    }
    if (std::ranges::any_of(readings, [](const auto* reading) { return reading->body.held; }))
        table.note = in.say(SheetPhrase::HeldNote);
    return table;
}

}

void addReadings(Document& document, const BenchFile& file, Marks& people, const Speech& in) {
    std::vector<std::pair<std::string, std::vector<const Said<ReadingTaken>*>>> tests;
    std::vector<const Said<ReadingTaken>*> others;
    for (const auto* reading : inOrder(file)) {
        if (reading->body.place == PanelPlace()) {
            others.push_back(reading);
            continue;
        }
        const auto title = testText(file, *reading, people, in);
        const auto there = std::ranges::find(tests, title, [](const auto& test) { return test.first; });
        (there == tests.end() ? tests.emplace_back(title, std::vector<const Said<ReadingTaken>*>()) : *there)
            .second.push_back(reading);
    }
    for (const auto& [title, readings] : tests) {
        document.blocks.emplace_back(Heading{3, title});
        document.blocks.emplace_back(readingsAbreast(file, readings, in));
    }
    if (!others.empty()) {
        if (!tests.empty())
            document.blocks.emplace_back(Heading{3, in.say(SheetPhrase::ReadAtNoPlace)});
        document.blocks.emplace_back(readingsInRows(file, others, people, in));
    }
}

Table testersTable(const BenchFile& file, const Speech& in) {
    Table table;
    table.columns = {{in.say(SheetPhrase::Tester), Align::Left, 2},
                     {in.say(SheetPhrase::What), Align::Left, 2.5},
                     {in.say(SheetPhrase::Measures), Align::Left, 3},
                     {in.say(SheetPhrase::CalibratedUntil), Align::Left, 2}};
    std::set<TesterId> used;
    for (const auto& reading : file.inspection.readings)
        if (reading.body.tester)
            used.insert(*reading.body.tester);
    for (const auto& line : file.inspection.lines)
        if (line.body.tester)
            used.insert(*line.body.tester);
    for (const auto& tester : used) {
        const Calibration* last = nullptr;
        for (const auto& each : file.calibrations)
            if (each.tester == tester)
                last = &each;
        table.rows.push_back({tester.text(), last ? last->what : "", measuresText(file, tester, in),
                              last ? in.say(last->until) : in.say(SheetPhrase::NoCalibration)});
    }
    return table;
}

Table readingsTable(const BenchFile& file, const Speech& in) {
    Table table;
    for (const auto* key :
         {"item",      "quantity", "value",       "held_at",  "below",  "unit",      "gore",   "row",
          "direction", "jaw_mm",   "pressure_pa", "area_cm2", "tester", "judgement", "reason", "limit",
          "on",        "by",       "zone",        "hold_s",   "dry",    "side",      "temp_c", "place"})
        table.columns.push_back({key, Align::Left, 1});
    for (const auto& reading : file.inspection.readings) {
        const auto& body = reading.body;
        const auto& test = body.conditions;
        const auto& how = body.circumstances;
        const auto state = stateOf(file, body);
        const auto figure = digits(body.value);
        table.rows.push_back({body.item.text(),
                              body.quantity,
                              body.held ? "" : figure,
                              body.held ? figure : "",
                              digits(body.below),
                              body.unit,
                              digits(body.place.gore),
                              digits(body.place.row),
                              test.direction.value_or(""),
                              digits(test.jaw),
                              digits(test.pressure),
                              digits(test.area),
                              body.tester ? body.tester->text() : "",
                              std::string(judgementName(state.judgement)),
                              state.reason ? in.say(*state.reason) : "",
                              state.limit ? in.say(*state.limit) : "",
                              reading.stamp.at.on().iso(),
                              reading.by,
                              std::string(zoneName(body.place.zone)),
                              digits(how.seconds),
                              how.dry ? *how.dry ? "true" : "false" : "",
                              std::string(how.side ? sideName(*how.side) : ""),
                              how.temperature ? digits(how.temperature->value()) : "",
                              std::string(body.place.basket ? basketPlaceName(*body.place.basket) : "")});
    }
    return table;
}

}
