// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/bench_file.h"

#include "bench/reading/limit_phrase.h"
#include "measure/unit.h"
#include "registry/reading_phrase.h"
#include "registry/reading_said.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace crownring {

namespace {

bool isOf(const StatedLimit& limit, const ItemFacts& item) {
    return limit.kind == item.kind && item.type && limit.type.text() == *item.type;
}

/// At how many places the quantity was read so that the limit speaks of it; those that name none are one place.
int placesRead(const BenchFile& file, const ItemFacts& item, const AskedReading& asked, const StatedLimit* limit) {
    const auto serves = [&](const ReadingTaken& reading) {
        if (!limit)
            return true;
        const auto measured = measuredFrom(reading);
        if (!measured || measured->zone != limit->asksIn())
            return false;
        const auto judgement = decide(*measured, {limit, 1}).judgement;
        return judgement != Judgement::NoLimit && judgement != Judgement::Incomparable;
    };
    std::set<std::tuple<Zone, std::optional<int>, std::optional<int>>> places;
    int unplaced = 0;
    for (const auto* reading : speakingReadings(file.inspection)) {
        const auto& body = reading->body;
        if (body.item != item.id || body.quantity != asked.quantity || !serves(body))
            continue;
        if (asked.placed)
            places.emplace(body.place.zone, body.place.gore, body.place.row);
        else
            ++unplaced;
    }
    return unplaced + static_cast<int>(places.size());
}

}

Visit BenchFile::visit() const { return visitFrom(inspection.opened.body.visit).value_or(Visit::PartMlInspection); }

Argument titleOf(const BenchFile& file, const RequirementId& requirement) {
    const auto title = file.titles.find(requirement);
    return title == file.titles.end() ? Argument(requirement) : title->second;
}

Argument titleOfVisit(const BenchFile& file) {
    const auto& work = file.inspection.opened.body.work;
    if (isOfItsVisit(file.visit(), work))
        return termOf(file.visit());
    Listed titles;
    std::set<RequirementId> seen;
    for (const auto& each : work)
        if (seen.insert(each.requirement).second)
            titles.list.push_back(titleOf(file, each.requirement));
    return titles;
}

const ItemFacts* BenchFile::item(const ItemId& id) const {
    const auto found = std::ranges::find(items, id, &ItemFacts::id);
    return found == items.end() ? nullptr : &*found;
}

const ItemFacts* BenchFile::envelope() const {
    const auto found = std::ranges::find(items, ItemKind::Envelope, &ItemFacts::kind);
    return found == items.end() ? nullptr : &*found;
}

const TypeDescribed* BenchFile::type(const ItemFacts& item) const {
    const auto found = std::ranges::find_if(types, [&](const TypeDescribed& each) {
        return each.kind == item.kind && item.type && each.type.text() == *item.type;
    });
    return found == types.end() ? nullptr : &*found;
}

std::vector<StatedLimit> BenchFile::limitsOf(const ItemFacts& item) const {
    std::vector<StatedLimit> found;
    for (const auto& limit : limits)
        if (isOf(limit, item))
            found.push_back(limit);
    return found;
}

bool BenchFile::isCalibrated(const TesterId& tester, CivilDate day) const {
    return std::ranges::any_of(calibrations,
                               [&](const Calibration& each) { return each.tester == tester && each.covers(day); });
}

const Instrument* BenchFile::instrument(const TesterId& tester, CivilDate day) const {
    return instrumentOn(calibrations, tester, day);
}

const Instrument* instrumentOn(std::span<const Calibration> calibrations, const TesterId& tester, CivilDate day) {
    const Instrument* latest = nullptr;
    for (const auto& each : calibrations)
        if (each.tester == tester && each.covers(day) && (!latest || each.instrument.saysWhat() || !latest->saysWhat()))
            latest = &each.instrument;
    return latest;
}

bool takesThePlaceOf(const ReadingTaken& later, const ReadingTaken& earlier) {
    if (later.place != earlier.place || later.quantity != earlier.quantity ||
        later.conditions.direction != earlier.conditions.direction || later.item != earlier.item ||
        nominalSizes(later.conditions) != nominalSizes(earlier.conditions))
        return false;
    const auto* quantity = quantityNamed(later.quantity);
    return later.place.isOnePanel() || !quantity || !quantity->traits.placed;
}

ReadingState stateOf(const BenchFile& file, const ReadingTaken& reading) {
    const auto* item = file.item(reading.item);
    return stateOf(reading, item ? file.limitsOf(*item) : std::vector<StatedLimit>{});
}

ReadingState stateOf(const ReadingTaken& reading, std::span<const StatedLimit> limits) {
    ReadingState state;
    auto measured = measuredFrom(reading);
    if (!measured) {
        state.judgement = Judgement::Incomparable;
        state.reason = messageOf(measured.error());
        return state;
    }
    const auto judged = judge(*measured, limits);
    state.judgement = judged.judgement;
    state.reason = judged.reason;
    if (judged.limit) {
        state.share = judged.limit->shareOf(*measured);
        state.limit = boundsOf(*judged.limit);
        state.unit = judged.limit->unit();
        state.retires = judged.limit->retires;
        state.source = judged.limit->source;
    }
    state.measured = std::move(*measured);
    return state;
}

ReadingTaken asTheManualStates(const BenchFile& file, const ReadingTaken& reading) {
    const auto* unit = stateOf(file, reading).unit;
    return unit ? readIn(*unit, reading) : reading;
}

Argument whatOf(const BenchFile& file, const DefectMark& found) {
    if (!found.reading || !found.what.empty())
        return whatOf(found);
    auto inItsUnit = found;
    inItsUnit.reading = asTheManualStates(file, *found.reading);
    return whatOf(inItsUnit);
}

Argument whatOf(const BenchFile& file, const DefectFound& found) {
    if (!found.what.empty())
        return found.what;
    Argument reading = Phrase{ReadingPhrase::AReading, {}};
    for (const auto& each : file.inspection.readings)
        if (each.id == found.reading) {
            const auto limit = stateOf(file, each.body).limit;
            reading = said(asTheManualStates(file, each.body));
            if (limit)
                reading = Phrase{ReadingPhrase::WithLimit, {std::move(reading), *limit}};
        }
    return Phrase{ReadingPhrase::Failed, {std::move(reading)}};
}

std::vector<const Said<ReadingTaken>*> speakingReadings(const Inspection& inspection) {
    std::vector<const Said<ReadingTaken>*> speaking;
    for (const auto& reading : inspection.readings) {
        const auto earlier =
            std::ranges::find_if(speaking, [&](const auto* each) { return takesThePlaceOf(reading.body, each->body); });
        if (earlier != speaking.end())
            speaking.erase(earlier);
        speaking.push_back(&reading);
    }
    return speaking;
}

std::vector<LimitCount> limitCounts(const BenchFile& file, const ItemFacts& item, const AskedReading& asked) {
    std::vector<LimitCount> counts;
    for (const auto& limit : file.limits)
        if (isOf(limit, item) && limit.quantity == asked.quantity)
            counts.push_back({&limit, placesRead(file, item, asked, &limit), std::max(limit.places.value_or(1), 1)});
    if (counts.empty())
        counts.push_back({nullptr, placesRead(file, item, asked, nullptr), asked.required ? 1 : 0});
    return counts;
}

ReadingCount readingCount(const BenchFile& file, const ItemFacts& item, const AskedReading& asked) {
    ReadingCount count;
    int most = 0;
    for (const auto& each : limitCounts(file, item, asked)) {
        count.wanted += each.wanted;
        count.taken += each.limit ? std::min(each.taken, each.wanted) : each.taken;
        if (each.limit && each.wanted > most) {
            most = each.wanted;
            count.source = each.limit->source;
        }
    }
    return count;
}

bool isRead(const BenchFile& file, const ItemFacts& item, std::span<const AskedReading> asked) {
    return std::ranges::any_of(asked, [&](const AskedReading& each) {
        const auto counts = limitCounts(file, item, each);
        return counts.front().limit && std::ranges::all_of(counts, &LimitCount::enough);
    });
}

std::optional<Argument> highestTemperature(const BenchFile& file) {
    const Said<ReadingTaken>* highest = nullptr;
    Figure reached;
    for (const auto* reading : speakingReadings(file.inspection))
        if (const auto measured = measuredFrom(reading->body);
            measured && measured->quantity == "tell-tale" && (!highest || measured->value > reached)) {
            highest = reading;
            reached = measured->value;
        }
    if (!highest)
        return std::nullopt;
    const auto body = asTheManualStates(file, highest->body);
    const auto* named = unitNamed(body.unit, Dimension::Temperature);
    const auto unit = named ? std::string(named->symbol) : body.unit;
    if (body.below)
        return Phrase{ReadingPhrase::StepShown, {body.value, InUnit{*body.below, unit}}};
    return InUnit{body.value, unit};
}

}
