// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/fabric_record.h"

#include "acts/type_book.h"
#include "bench/series.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace crownring {

namespace {

constexpr const char* strength = "grab-strength";
constexpr double minutesOfHour = 60;
constexpr int monthsOfPace = 24;

const StatedLimit* strengthLimit(const TypeBook& book, const std::string& type) {
    const auto found = std::ranges::find_if(book.limits, [&](const StatedLimit& limit) {
        return limit.kind == ItemKind::Envelope && limit.type.text() == type && limit.quantity == strength &&
               (limit.least || limit.proof);
    });
    return found == book.limits.end() ? nullptr : &*found;
}

/// Hours of an item at the ends of days; each day is asked for once.
class Hours {
public:
    Hours(Books& books, ItemId item) : m_books(books), m_item(std::move(item)) {}

    /// Nothing before it was entered: that history is on paper only.
    Result<std::optional<double>> at(CivilDate day) {
        if (const auto known = m_known.find(day); known != m_known.end())
            return std::optional(known->second);
        const auto facts = m_books.facts({std::nullopt, {m_item}}, day);
        if (!facts)
            return tl::unexpected(facts.error());
        if (facts->empty())
            return std::optional<double>();
        const auto& minutes = facts->front().clock.minutes;
        if (!minutes)
            return problem(Code::MissingKey, "the hours of '" + m_item.text() + "' are not known on " + day.iso(),
                           "state its clock with the next inspection");
        return std::optional(m_known[day] = static_cast<double>(minutes->value()) / minutesOfHour);
    }

private:
    Books& m_books;
    ItemId m_item;
    std::map<CivilDate, double> m_known;
};

struct Patch {
    PanelPlace place;
    Stamp stamp;
    double hours = 0; ///< of the envelope then
    std::size_t set = 0;
};

class Gathering {
public:
    Gathering(Books& books, CivilDate on, FabricRecord& record, int rows, const StatedLimit& limit)
        : m_books(books), m_on(on), m_record(record), m_rows(rows), m_limit(limit) {}

    Result<void> take(const ItemId& envelope, const std::vector<JournalLine>& repairs) {
        Hours hours(m_books, envelope);
        const auto now = hours.at(m_on);
        const auto readings = m_books.readings(envelope, m_on);
        if (!now || !readings)
            return tl::unexpected(now ? readings.error() : now.error());
        m_record.envelopes.push_back(envelope);
        const auto original = newSet(0, now->value_or(0));
        std::vector<Patch> patches;
        for (const auto& line : repairs) {
            const auto& entry = line.current ? *line.current : line.entry;
            const auto& made = std::get<RepairMade>(entry.body);
            const auto then = hours.at(entry.on);
            if (!then)
                return tl::unexpected(then.error());
            if (made.place.gore && made.place.row && *then)
                patches.push_back(
                    {made.place, stampOf(entry), **then, newSet(lotNamed(made.lot), now->value_or(**then) - **then)});
        }
        for (const auto& entry : *readings) {
            const auto then = hours.at(entry.on);
            if (!then)
                return tl::unexpected(then.error());
            if (*then)
                takeReading(entry, **then, original, patches);
        }
        return {};
    }

private:
    std::size_t newSet(std::size_t lot, double hoursNow) {
        m_record.envelopeOfSet.push_back(m_record.envelopes.size() - 1);
        m_record.useOfSet.push_back({hoursNow, 0, 0});
        m_record.fleet.lotOfSet.push_back(lot);
        return m_record.fleet.lotOfSet.size() - 1;
    }
    std::size_t lotNamed(const std::string& name) {
        const auto found = std::ranges::find(m_record.lots, name);
        if (found != m_record.lots.end())
            return static_cast<std::size_t>(found - m_record.lots.begin());
        m_record.lots.push_back(name);
        m_record.fleet.fabricOfLot.push_back(0);
        return m_record.lots.size() - 1;
    }
    void takeReading(const Entry& entry, double hours, std::size_t original, const std::vector<Patch>& patches) {
        const auto& reading = std::get<ReadingTaken>(entry.body);
        if (reading.quantity != strength)
            return;
        const auto measured = measuredFrom(reading);
        if (!measured || measured->value <= 0 ||
            (m_limit.conditions.jawMillimetres && seriesOf(*measured) != seriesOf(strength, m_limit.conditions))) {
            ++m_record.leftOut;
            return;
        }
        SetReading row;
        row.set = original;
        row.hours = hours;
        row.row =
            reading.place.row && m_rows > 1 ? std::clamp((*reading.place.row - 1.0) / (m_rows - 1.0), 0.0, 1.0) : 1.0;
        row.observed = {measured->held ? Seen::AtLeast : Seen::Exactly, std::log(measured->value), 0};
        for (const auto& patch : patches)
            if (patch.place == reading.place && patch.stamp < stampOf(entry)) {
                row.set = patch.set;
                row.hours = hours - patch.hours;
            }
        m_record.fleet.readings.push_back(row);
    }

    Books& m_books;
    CivilDate m_on;
    FabricRecord& m_record;
    int m_rows;
    const StatedLimit& m_limit;
};

/// Repairs of all items, by item.
Result<std::map<ItemId, std::vector<JournalLine>>> repairsOf(Books& books, CivilDate on) {
    auto told = books.told({Subject::Item, {}, {"repair.made"}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::map<ItemId, std::vector<JournalLine>> repairs;
    for (auto& line : *told)
        repairs[std::get<RepairMade>((line.current ? *line.current : line.entry).body).item].push_back(line);
    return repairs;
}

}

Result<FabricRecord> fabricRecord(Books& books, const std::string& type, CivilDate on) {
    const auto book = typeBook(books, on);
    const auto facts = books.facts({}, on);
    auto repairs = repairsOf(books, on);
    if (!book || !facts || !repairs)
        return tl::unexpected(!book ? book.error() : !facts ? facts.error() : repairs.error());
    const auto* limit = strengthLimit(*book, type);
    if (!limit)
        return problem(Code::UnknownReference, "no strength is stated that fabric of '" + type + "' must have",
                       "enter the limit that its manual states (limit.stated, grab-strength)");
    const auto described = std::ranges::find_if(book->types, [&](const TypeDescribed& each) {
        return each.kind == ItemKind::Envelope && each.type.text() == type;
    });
    FabricRecord record;
    record.type = type;
    record.limit = limit->least ? *limit->least : *limit->proof;
    record.source = limit->source;
    record.lots = {""};
    record.fleet.fabrics = 1;
    record.fleet.fabricOfLot = {0};
    Gathering gathering(books, on, record, described == book->types.end() ? 0 : described->rows.value_or(0), *limit);
    for (const auto& item : *facts)
        if (item.kind == ItemKind::Envelope && item.type == type)
            if (const auto taken = gathering.take(item.id, (*repairs)[item.id]); !taken)
                return tl::unexpected(taken.error());
    std::ranges::stable_sort(record.fleet.readings, {}, &SetReading::set);
    return record;
}

Result<YearlyPace> paceOfItem(Books& books, const ItemId& item, CivilDate on) {
    Hours hours(books, item);
    const auto last = endOfMonth(addMonths(on, -1, DayRule::Same)); // the last whole month
    std::vector<double> flown;
    std::optional<double> before;
    for (int back = monthsOfPace; back >= 0; --back) {
        const auto at = hours.at(endOfMonth(addMonths(last, -back, DayRule::Same)));
        if (!at)
            return tl::unexpected(at.error());
        if (before && *at)
            flown.push_back(**at - *before);
        before = *at;
    }
    const auto months = static_cast<std::int64_t>(flown.size());
    return paceOf(flown, addMonths(last, 1 - months, DayRule::Same).month());
}

}
