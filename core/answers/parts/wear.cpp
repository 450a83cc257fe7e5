// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/wear.h"

#include "answers/flown_hours.h"
#include "answers/type_book.h"
#include "bench/reading/quantity.h"
#include "problem/faults/use_fault.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace crownring {

namespace {

using Reading = Stamped<ReadingTaken>;
/// By quantity, as the list has them, then by place.
using SeriesAt = std::tuple<std::ptrdiff_t, std::optional<BasketPlace>, Zone, std::optional<int>, std::optional<int>>;

class WearRead {
public:
    WearRead(Books& books, const ItemFacts& item, CivilDate on) : m_books(books), m_item(item), m_on(on) {}

    Result<std::vector<WearSeries>> read() {
        const auto book = typeBook(m_books, m_on);
        if (!book)
            return tl::unexpected(book.error());
        for (const auto& limit : book->limits)
            if (limit.kind == m_item.kind && m_item.type && limit.type.text() == *m_item.type)
                m_limits.push_back(limit);
        const auto taken = m_books.fabric({m_item.id}, m_on, [this](const FabricHistory& history) { sort(history); });
        if (!taken)
            return tl::unexpected(taken.error());
        if (const auto cut = beginAnewAtParts(); !cut)
            return tl::unexpected(cut.error());
        for (const auto& [at, readings] : m_readings)
            for (const auto& reading : readings)
                m_hours.want(m_item.id, reading.stamp.at.on());
        m_hours.want(m_item.id, m_on);
        m_hours.want(m_item.id, paceFrom());
        if (const auto asked = m_hours.read(m_books); !asked)
            return tl::unexpected(asked.error());
        std::vector<WearSeries> series;
        for (const auto& [at, readings] : m_readings)
            if (!readings.empty())
                series.push_back(seriesFrom(readings));
        return series;
    }

private:
    void sort(const FabricHistory& history) {
        for (const auto& reading : history.readings)
            if (const auto* quantity = quantityNamed(reading.body.quantity);
                quantity && quantity->traits.wears && measuredFrom(reading.body)) {
                const auto& place = reading.body.place;
                m_readings[{quantity - allQuantities().data(), place.basket, place.zone, place.gore, place.row}]
                    .push_back(reading);
            }
        for (auto& [at, readings] : m_readings)
            for (const auto& repair : history.repairs) {
                if (repair.body.place.basket && !readings.empty() && repair.body.place == readings.front().body.place)
                    beginAnew(readings, repair.stamp.at.on(), repair.stamp);
                else if (const auto found = foundBy(readings, repair.body.defect))
                    beginAnew(readings, repair.stamp.at.on(), *found);
            }
    }

    /// The stamp of the reading that found a defect.
    [[nodiscard]] std::optional<Stamp> foundBy(const std::vector<Reading>& readings,
                                               const std::optional<DefectId>& defect) const {
        for (const auto& mark : m_item.defects)
            for (const auto& reading : readings)
                if (defect && mark.defect == *defect && mark.failed == reading.stamp.id)
                    return reading.stamp;
        return std::nullopt;
    }

    /// Of the day of the repair what was read up to `last` was read of the old piece.
    static void beginAnew(std::vector<Reading>& readings, CivilDate day, const Stamp& last) {
        std::erase_if(readings, [&](const Reading& each) { return each.stamp.at.on() < day || !(last < each.stamp); });
    }

    Result<void> beginAnewAtParts() {
        for (auto& [at, readings] : m_readings)
            for (const auto& mark : m_item.defects) {
                const auto found = foundBy(readings, mark.defect);
                if (!found)
                    continue;
                const auto told = m_books.told({Subject::Defect, mark.defect.text(), {kindName<PartReplaced>()}, m_on});
                if (!told)
                    return tl::unexpected(told.error());
                for (const auto& line : *told)
                    if (!line.voided)
                        beginAnew(readings, nowOf(line).on, *found);
            }
        return {};
    }

    WearSeries seriesFrom(const std::vector<Reading>& readings) {
        const auto& latest = readings.back().body;
        const auto& quantity = *quantityNamed(latest.quantity);
        const auto measured = *measuredFrom(latest);
        WearSeries series{latest.quantity, latest.place, measured.value};
        std::vector<WearReading> worn;
        for (const auto& reading : readings) {
            const auto hours = m_hours.at(m_item.id, reading.stamp.at.on());
            if (hours && *hours)
                worn.push_back({**hours, measuredFrom(reading.body)->value.value()});
        }
        series.readings = worn.size();
        series.leftOut = readings.size() - worn.size();
        const auto trend = wearTrend(worn);
        if (trend)
            series.trend = *trend;
        const auto decision = decide(measured, m_limits);
        const bool isDown = quantity.good == Good::Higher;
        if (decision.limit) {
            series.limit = isDown ? decision.limit->needed() : decision.limit->most;
            series.source = decision.limit->source;
        }
        series.why = whyNot(series, decision, trend);
        series.way = isDown ? Wears::Down : Wears::Up;
        if (const auto now = m_hours.at(m_item.id, m_on))
            series.now = *now;
        if (!series.why)
            foretell(series);
        return series;
    }

    static std::optional<NoForecast> whyNot(const WearSeries& series, const Decision& decision,
                                            const tl::expected<WearTrend, NoForecast>& trend) {
        if (decision.judgement == Judgement::Fails)
            return NoForecast::Beyond;
        if (!trend)
            return trend.error();
        return series.limit ? std::nullopt : std::optional(NoForecast::NoLimit);
    }

    void foretell(WearSeries& series) const {
        const auto met = limitMet(*series.trend, series.limit->value(), series.way);
        if (!met)
            series.why = met.error();
        else if (!series.now)
            series.why = NoForecast::ClockUnknown;
        else {
            series.toLimit = {met->low - *series.now, met->middle - *series.now, met->high - *series.now};
            series.metOn = daysOf(*series.toLimit, *series.now);
        }
    }

    [[nodiscard]] CivilDate paceFrom() const {
        constexpr int monthsOfPace = 24; // as that of headlines (02)
        return std::max(m_item.entered, addMonths(m_on, -monthsOfPace, DayRule::Same));
    }

    [[nodiscard]] std::optional<Between<CivilDate>> daysOf(const Between<Hours>& toLimit, Hours now) const {
        const auto before = m_hours.at(m_item.id, paceFrom());
        const auto days = daysBetween(paceFrom(), m_on).value();
        if (!before || !*before || days <= 0 || now <= **before)
            return std::nullopt;
        const double daysOfAnHour = static_cast<double>(days) / (now - **before).value();
        constexpr double furthest = 20 * 365.25;
        if (toLimit.high.value() * daysOfAnHour > furthest)
            return std::nullopt;
        const auto dayOf = [&](Hours left) {
            return addDays(m_on, static_cast<std::int64_t>(std::max(0.0, left.value() * daysOfAnHour)));
        };
        return Between<CivilDate>{dayOf(toLimit.low), dayOf(toLimit.middle), dayOf(toLimit.high)};
    }

    Books& m_books;
    const ItemFacts& m_item;
    CivilDate m_on;
    std::vector<StatedLimit> m_limits;
    std::map<SeriesAt, std::vector<Reading>> m_readings; ///< by stamp
    FlownHours m_hours;
};

}

Result<std::vector<WearSeries>> wearOf(Books& books, const ItemId& item, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty())
        return problem(UseFault::NoItemOnThatDay, {item, on});
    return WearRead(books, facts->front(), on).read();
}

std::string placeSlug(const PanelPlace& place) {
    if (place.basket)
        return std::string(basketPlaceName(*place.basket));
    std::string slug = place.zone == Zone::Envelope ? "" : std::string(zoneName(place.zone));
    const auto add = [&](const char* word, const std::optional<int>& number) {
        if (number)
            slug += (slug.empty() ? "" : "-") + std::string(word) + "-" + std::to_string(*number);
    };
    add("gore", place.gore);
    add("row", place.row);
    return slug;
}

}
