// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/gathering.h"

#include "answers/fabric/left_out_phrase.h"
#include "bench/reading/doubt.h"
#include "fabric/likelihood/heat.h"
#include "problem/faults/fabric_fault.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

namespace crownring {

namespace {

bool isWithin(const std::optional<int>& at, const std::optional<int>& first, const std::optional<int>& last) {
    return at ? (!first || *at >= *first) && (!last || *at <= *last) : !first && !last;
}

/// Does what was stated speak of this panel? A place that is not known in full lies in what has no bounds there.
bool speaksOf(const FabricStated& stated, const PanelPlace& place) {
    return isWithin(place.gore, stated.firstGore, stated.lastGore) &&
           isWithin(place.row, stated.firstRow, stated.lastRow);
}

/// Is every panel of the envelope spoken of? Where its panels are not counted, by what has no bounds.
bool isStatedThroughout(const std::vector<Stamped<FabricStated>>& stated, const FollowedEnvelope& envelope) {
    const auto isStated = [&](const PanelPlace& place) {
        return std::ranges::any_of(stated, [&](const auto& each) { return speaksOf(each.body, place); });
    };
    for (int gore = 1; gore <= envelope.gores; ++gore)
        for (int row = 1; row <= envelope.rows; ++row)
            if (!isStated({gore, row}))
                return false;
    return envelope.gores > 0 && envelope.rows > 0 ? !stated.empty() : isStated({});
}

/// A panel that was put in speaks for the tests at its own place.
bool holds(const FollowedSet& set, const PanelPlace& place) {
    return set.patch ? *set.patch == place : !set.came || speaksOf(*set.came, place);
}

}

std::size_t FabricRecord::numberOf(const ItemId& envelope) const {
    return static_cast<std::size_t>(std::ranges::find(envelopes, envelope, &FollowedEnvelope::id) - envelopes.begin());
}

double FabricRecord::lnLimit(std::size_t envelope) const {
    return std::log(channel.falling(envelopes[envelope].limit));
}

std::size_t FabricRecord::setAt(std::size_t envelope, const PanelPlace& place) const {
    const auto& of = envelopes[envelope];
    for (auto set = of.firstSet + of.setCount; set-- > of.firstSet;)
        if (holds(sets[set], place))
            return set;
    return of.firstSet;
}

bool FabricRecord::isThere(std::size_t set) const {
    const auto& followed = sets[set];
    return !followed.patch || setAt(followed.envelope, *followed.patch) == set;
}

std::vector<Occurrence> overheatingsOf(const ItemFacts& item) {
    std::vector<Occurrence> heats;
    std::ranges::copy_if(item.events, std::back_inserter(heats), [](const Occurrence& each) {
        return each.event == "over-temperature" && each.hottest && each.lasted;
    });
    return heats;
}

Result<void> FabricGathering::take(const ItemFacts& envelope, const StatedLimit& limit, const FabricHistory& history) {
    const auto& minutes = envelope.clock.minutes;
    if (!minutes)
        return problem(FabricFault::HoursUnknown, {envelope.id});
    const auto type = std::ranges::find_if(m_book.types, [&](const TypeDescribed& each) {
        return each.kind == ItemKind::Envelope && each.type == limit.type;
    });
    FollowedEnvelope followed;
    followed.id = envelope.id;
    followed.type = limit.type.text();
    followed.limit = boundOf(limit)->as(unitOf(*quantityNamed(limit.quantity)));
    followed.source = limit.source;
    followed.conditions = limit.conditions;
    followed.gores = type == m_book.types.end() ? 0 : type->gores.value_or(0);
    followed.rows = type == m_book.types.end() ? 0 : type->rows.value_or(0);
    followed.hours = hoursOf(*minutes);
    followed.firstSet = m_record.sets.size();
    m_record.envelopes.push_back(followed);

    m_heats.clear();
    m_panels.clear();
    if (auto done = addHeats(envelope); !done)
        return done;
    const auto named = std::ranges::find_if(history.stated, [](const auto& each) { return !each.body.fabric.empty(); });
    const auto cloth = named == history.stated.end() ? std::string() : named->body.fabric;
    addSets(history, cloth);
    if (auto done = addPatches(envelope, history, cloth); !done)
        return done;
    for (const auto& reading : history.readings)
        if (auto done = addReading(reading, limit); !done)
            return done;
    const auto& original = m_record.sets[followed.firstSet];
    m_heatAll = m_heatAll + doseAt(original, followed.hours);
    m_flownAll = m_flownAll + followed.hours;
    return {};
}

Result<void> FabricGathering::addHeats(const ItemFacts& envelope) {
    for (const auto& heat : overheatingsOf(envelope)) {
        const auto then = m_hours.at(envelope.id, heat.stamp.at.on());
        if (!then)
            return tl::unexpected(then.error());
        if (*then)
            m_heats.push_back({**then, *heat.hottest, hoursOf(*heat.lasted)});
    }
    return {};
}

/// What is not stated of any lot comes first, so that what is stated later is found before it.
void FabricGathering::addSets(const FabricHistory& history, const std::string& cloth) {
    if (!isStatedThroughout(history.stated, m_record.envelopes.back()))
        newSet({}, cloth, Hours(0));
    for (const auto& [stamp, stated] : history.stated) {
        auto& set = m_record.sets[newSet(stated.lot, stated.fabric.empty() ? cloth : stated.fabric, Hours(0))];
        set.came = stated;
        if (stated.lastRow)
            set.use.row = heightOf(*stated.lastRow);
    }
}

Result<void> FabricGathering::addPatches(const ItemFacts& envelope, const FabricHistory& history,
                                         const std::string& cloth) {
    for (const auto& repair : history.repairs) {
        const auto& [stamp, made] = repair;
        const auto then = m_hours.at(history.item, stamp.at.on());
        if (!then)
            return tl::unexpected(then.error());
        if (!*then)
            continue;
        const auto of = m_cloths.find(made.lot);
        auto& set = m_record.sets[newSet(made.lot, of == m_cloths.end() ? cloth : of->second, **then)];
        set.patch = made.place;
        set.use.row = heightOf(*made.place.row);
        auto& from = m_panels.back().stamp;
        from = stamp;
        for (const auto& reading : history.readings)
            if (from < reading.stamp && answers(repair, reading, envelope.defects))
                from = reading.stamp;
    }
    return {};
}

double FabricGathering::heightOf(int row) const {
    const int rows = m_record.envelopes.back().rows;
    return rows > 1 ? std::clamp((row - 1.0) / (rows - 1.0), 0.0, 1.0) : 1.0;
}

std::size_t FabricGathering::newSet(const std::string& lot, const std::string& cloth, Hours fittedAt) {
    const auto number = m_record.sets.size();
    auto& envelope = m_record.envelopes.back();
    FollowedSet set;
    set.envelope = m_record.envelopes.size() - 1;
    set.lot = numberOfLot(lot, cloth);
    set.fittedAt = fittedAt;
    set.use.hours = (envelope.hours - fittedAt).value();
    set.use.dose = doseAt(set, envelope.hours).value();
    m_record.fleet.lotOfSet.push_back(set.lot);
    m_record.sets.push_back(std::move(set));
    m_panels.push_back({number, {}});
    ++envelope.setCount;
    return number;
}

std::size_t FabricGathering::numberOfLot(const std::string& lot, const std::string& cloth) {
    const auto known = m_cloths.find(lot);
    const auto& stated = cloth.empty() && known != m_cloths.end() ? known->second : cloth;
    const auto& fabric = stated.empty() ? m_record.envelopes.back().type : stated;
    auto& fabrics = m_record.fabrics;
    const auto ofFabric = static_cast<std::size_t>(std::ranges::find(fabrics, fabric) - fabrics.begin());
    if (ofFabric == fabrics.size())
        fabrics.push_back(fabric);
    auto& fabricOfLot = m_record.fleet.fabricOfLot;
    for (std::size_t at = 0; at < fabricOfLot.size(); ++at)
        if (fabricOfLot[at] == ofFabric && m_record.lots[at] == lot)
            return at;
    fabricOfLot.push_back(ofFabric);
    m_record.lots.push_back(lot);
    return fabricOfLot.size() - 1;
}

std::size_t FabricGathering::setAt(const PanelPlace& place, const Stamp& when) const {
    for (auto at = m_panels.rbegin(); at != m_panels.rend(); ++at)
        if (const auto& set = m_record.sets[at->set]; holds(set, place) && (!set.patch || at->stamp < when))
            return at->set;
    return m_panels.front().set;
}

Hours FabricGathering::doseAt(const FollowedSet& set, Hours ofEnvelope) const {
    std::vector<Overheating> heats;
    for (const auto& heat : m_heats)
        if (heat.hours >= set.fittedAt)
            heats.push_back({heat.hours - set.fittedAt, heat.hottest, heat.lasted});
    return heatDose(heats, ofEnvelope - set.fittedAt);
}

void FabricGathering::leaveOut(const EntryId& entry, Phrase why) {
    m_record.leftOut.push_back({m_record.envelopes.size() - 1, entry, std::move(why)});
}

Result<void> FabricGathering::addReading(const Stamped<ReadingTaken>& taken, const StatedLimit& limit) {
    const auto& [stamp, reading] = taken;
    const auto then = m_hours.at(reading.item, stamp.at.on());
    if (!then)
        return tl::unexpected(then.error());
    const auto measured = measuredFrom(reading);
    if (!*then || !measured) {
        leaveOut(stamp.id, *then ? messageOf(measured.error()) : Phrase{LeftOutPhrase::BeforeEnvelope, {}});
        return {};
    }
    const auto judged = judge(*measured, std::span(&limit, 1));
    if (judged.judgement == Judgement::Incomparable || judged.judgement == Judgement::NoLimit) {
        leaveOut(stamp.id, judged.reason);
        return {};
    }
    if (measured->value.value() <= 0) {
        leaveOut(stamp.id, {LeftOutPhrase::NothingOnAScaleOfRatios, {}});
        return {};
    }
    if (const auto doubted = doubt(*measured, unitOf(*quantityNamed(measured->quantity)));
        doubted && !reading.confirmed) {
        leaveOut(stamp.id, doubted->question);
        return {};
    }
    const auto number = setAt(reading.place, stamp);
    const auto& set = m_record.sets[number];
    SetReading row;
    row.set = number;
    row.hours = (**then - set.fittedAt).value();
    row.row = reading.place.row ? heightOf(*reading.place.row) : set.use.row;
    row.dose = doseAt(set, **then).value();
    const double ln = std::log(m_record.channel.falling(measured->value));
    row.observed = {measured->held ? Seen::AtLeast : Seen::Exactly, ln, 0};
    m_record.fleet.readings.push_back(row);
    m_record.readings.push_back(
        {stamp.id, stamp.at.on(), reading.place, measured->value, measured->held, judged.judgement});
    return {};
}

void FabricGathering::finish() {
    m_record.fleet.fabrics = m_record.fabrics.size();
    for (auto& set : m_record.sets)
        set.use.dosePerHour = m_flownAll > Hours(0) ? m_heatAll / m_flownAll : 0;
    std::vector<std::size_t> order(m_record.readings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t at) { return m_record.fleet.readings[at].set; });
    std::vector<SetReading> rows;
    std::vector<FollowedReading> readings;
    for (const auto at : order) {
        rows.push_back(m_record.fleet.readings[at]);
        readings.push_back(std::move(m_record.readings[at]));
    }
    m_record.fleet.readings = std::move(rows);
    m_record.readings = std::move(readings);
}

}
