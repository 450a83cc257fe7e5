// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/wear/wear_desk.h"

#include "bench/reading/quantity.h"
#include "registry/reading_said.h"
#include "rules/due/reckoned.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/sentence.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

using namespace words;

namespace {

constexpr double nearHours = 50; ///< by the middle of the forecast; common practice, no source

QString figure(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

/// By the reading, then by the forecast: what is beyond its limit stands as what grounds.
int standingOf(const WearSeries& series) {
    if (series.why == NoForecast::Beyond)
        return static_cast<int>(Reckoned::Lapsed);
    if (series.toLimit)
        return static_cast<int>(series.toLimit->middle.value() <= nearHours ? Reckoned::Nearing : Reckoned::Clear);
    return -1;
}

/// The worse, the smaller; what nothing is foretold of comes last.
int weightOf(int standing) { return standing < 0 ? reckonedCount : standing; }

QString whyNot(NoForecast why) {
    switch (why) {
    case NoForecast::TooFewReadings:
        return WearDesk::tr("no forecast: fewer than three readings whose hours are known");
    case NoForecast::SameHours:
        return WearDesk::tr("no forecast: all readings were taken at the same hours");
    case NoForecast::MayNever:
        return WearDesk::tr("no forecast: by these readings it may never be met");
    case NoForecast::WearsAway:
        return WearDesk::tr("no forecast: the readings go away from the limit");
    case NoForecast::NoLimit:
        return WearDesk::tr("no forecast: no limit is stated for the type");
    case NoForecast::Beyond:
        return WearDesk::tr("the latest reading is beyond the limit");
    case NoForecast::ClockUnknown:
        return WearDesk::tr("no forecast: the item's clock is not known on that day");
    }
    return {};
}

QString trendOf(const WearSeries& series) {
    constexpr double hundred = 100;
    const auto& slope = series.trend->slope;
    return WearDesk::tr("%1 each 100 h, at 95 % from %2 to %3, by %n readings", nullptr,
                        static_cast<int>(series.readings))
        .arg(figure(slope.middle * hundred, 2), figure(slope.low * hundred, 2), figure(slope.high * hundred, 2));
}

QString metOf(const WearSeries& series) {
    const auto& left = *series.toLimit;
    const auto hours = left.middle.value() <= 0
                           ? WearDesk::tr("by its trend the limit is met already")
                           : WearDesk::tr("limit met in about %1 h, at 95 % from %2 to %3 h")
                                 .arg(figure(left.middle.value(), 0), figure(std::max(0.0, left.low.value()), 0),
                                      figure(left.high.value(), 0));
    if (!series.metOn || left.middle.value() <= 0)
        return hours;
    return WearDesk::tr("%1: about %2, from %3 to %4 at the pace of the last two years")
        .arg(hours, inward(series.metOn->middle.iso()), inward(series.metOn->low.iso()),
             inward(series.metOn->high.iso()));
}

QString detailOf(const WearSeries& series) {
    const auto latest = words::said(Argument(series.latest));
    QStringList lines{series.limit ? WearDesk::tr("%1, limit %2").arg(latest, words::said(Argument(*series.limit)))
                                   : latest};
    if (series.trend)
        lines += trendOf(series);
    if (series.toLimit)
        lines += metOf(series);
    if (series.why)
        lines += whyNot(*series.why);
    if (series.leftOut > 0)
        lines += WearDesk::tr("%n readings of unknown hours are left out", nullptr, static_cast<int>(series.leftOut));
    return lines.join(u'\n');
}

Choice lineOf(const WearSeries& series) {
    const auto what = words::said(inPlace(quantityTerm(series.quantity), series.place));
    return {
        inward(series.quantity + "/" + placeSlug(series.place)), what, detailOf(series), -1, standingOf(series), false};
}

QString nameOf(BasketPlace place) { return words::said(Term{Term::Of::Zone, std::string(basketPlaceName(place))}); }

/// What is read there as a rule: trade usage, no source.
const char* usualAt(BasketPlace place) {
    switch (place) {
    case BasketPlace::Floor:
        return "floor-thickness";
    case BasketPlace::Runner1:
    case BasketPlace::Runner2:
    case BasketPlace::Runner3:
    case BasketPlace::Runner4:
        return "runner-thickness";
    case BasketPlace::Corner1:
    case BasketPlace::Corner2:
    case BasketPlace::Corner3:
    case BasketPlace::Corner4:
        return "broken-strands";
    case BasketPlace::Rim:
        return "rope-handle-diameter";
    default:
        return "wicker-break";
    }
}

Choice placeOf(BasketPlace place, const std::vector<WearSeries>& told) {
    Choice choice{inward(std::string(basketPlaceName(place))), nameOf(place), {}, 0, -1, false};
    const WearSeries* worst = nullptr;
    for (const auto& series : told) {
        if (series.place.basket != place)
            continue;
        ++choice.number;
        if (!worst || weightOf(standingOf(series)) < weightOf(standingOf(*worst)))
            worst = &series;
    }
    if (!worst)
        return choice;
    choice.standing = standingOf(*worst);
    choice.detail = words::said(Argument(worst->latest));
    if (worst->toLimit)
        choice.detail =
            WearDesk::tr("%1 · %2 h").arg(choice.detail, figure(std::max(0.0, worst->toLimit->middle.value()), 0));
    return choice;
}

}

void WearDesk::movedIn() { connect(&house().fleet, &Fleet::changed, this, &WearDesk::look); }

void WearDesk::setItem(const QString& item) {
    if (item == m_item)
        return;
    m_item = item;
    m_place.clear();
    m_told.clear();
    emit itemChanged();
    emit placeChanged();
    look();
}

void WearDesk::setPlace(const QString& place) {
    if (place == m_place)
        return;
    m_place = place;
    show();
    emit placeChanged();
}

QString WearDesk::placeName() const {
    const auto place = basketPlaceFrom(outward(m_place));
    return place ? nameOf(*place) : QString();
}

void WearDesk::look() {
    const auto turn = ++m_turn;
    const auto sheet = house().fleet.sheet();
    const auto* item = sheet && !m_item.isEmpty() ? sheet->item(ItemId(outward(m_item))) : nullptr;
    m_basket = item && item->kind == ItemKind::Basket;
    if (!item) {
        m_told.clear();
        return show();
    }
    using Answer = Result<std::vector<WearSeries>>;
    hear(house().desk.ask(
             [id = item->id, on = sheet->on()](Record& record) -> Answer { return wearOf(record, id, on); }),
         this, [this, turn](const Answer& told) {
             if (turn != m_turn || !told)
                 return;
             m_told = *told;
             show();
         });
}

void WearDesk::show() {
    std::vector<Choice> places;
    for (int at = 0; m_basket && at < basketPlaceCount; ++at)
        places.push_back(placeOf(static_cast<BasketPlace>(at), m_told));
    m_places.show(std::move(places));
    std::vector<Choice> lines;
    for (const auto& series : m_told)
        if (m_place.isEmpty() || inward(placeSlug(series.place)) == m_place)
            lines.push_back(lineOf(series));
    std::ranges::stable_sort(lines, {}, [](const Choice& line) { return weightOf(line.standing); });
    m_series.show(std::move(lines));
    emit changed();
}

QVariantMap WearDesk::givenFor(const QString& place) const {
    const auto at = basketPlaceFrom(outward(place));
    if (!at)
        return {};
    const auto* quantity = quantityNamed(usualAt(*at));
    return {{QStringLiteral("place"), place},
            {QStringLiteral("quantity"),
             QString::fromUtf8(quantity->slug.data(), static_cast<qsizetype>(quantity->slug.size()))},
            {QStringLiteral("unit"),
             QString::fromUtf8(quantity->unit.data(), static_cast<qsizetype>(quantity->unit.size()))}};
}

}
