// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/fabric_marks.h"

#include "screen/fabric/fabric_words.h"
#include "words/bench_sentences.h"
#include "words/bench_words.h"
#include "words/border.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

using namespace words;

namespace {

QString figure(double value) { return QLocale().toString(value, 'f', value < 10 ? 1 : 0); }

double shareOf(const FabricSight& sight, const Figure& value) { return sight.at().share(value, sight.of().limit); }

/// All panels with their lots, by row from the mouth and gore.
std::vector<PanelMark> bareMarks(const FabricSight& sight) {
    std::vector<PanelMark> marks;
    const auto lots = sight.lots();
    for (int row = 1; row <= sight.of().rows; ++row)
        for (int gore = 1; gore <= sight.of().gores; ++gore) {
            const auto& set = sight.record().sets[sight.setAt(gore, row)];
            auto& mark = marks.emplace_back();
            mark.gore = gore;
            mark.row = row;
            mark.repaired = set.patch.has_value();
            if (const auto lot = std::ranges::find(lots, set.lot); lot != lots.end()) {
                mark.lot = static_cast<int>(lot - lots.begin()) + 1;
                mark.lotName = inward(sight.record().lots[set.lot]);
            }
        }
    return marks;
}

PanelMark* markAt(std::vector<PanelMark>& marks, const FabricSight& sight, const PanelPlace& place) {
    const auto& of = sight.of();
    if (place.zone != Zone::Envelope || !place.gore || !place.row || *place.gore > of.gores || *place.row > of.rows)
        return nullptr;
    return &marks[static_cast<std::size_t>((*place.row - 1) * of.gores + *place.gore - 1)];
}

std::vector<PanelMark> listed(std::vector<PanelMark> marks) {
    std::erase_if(marks, [](const PanelMark& mark) {
        return mark.reading == panel::Reading::None && mark.lot == 0 && !mark.repaired;
    });
    return marks;
}

bool isOf(const FabricSight& sight, const FollowedSet& set) { return set.envelope == sight.envelope; }

/// The readings of the envelope, by day.
std::vector<std::size_t> readingsOf(const FabricSight& sight) {
    std::vector<std::size_t> numbers;
    for (std::size_t at = 0; at < sight.record().readings.size(); ++at)
        if (isOf(sight, sight.record().sets[sight.record().fleet.readings[at].set]))
            numbers.push_back(at);
    std::ranges::stable_sort(numbers, {}, [&](std::size_t at) { return sight.record().readings[at].on; });
    return numbers;
}

AgeingReading readingAt(const FabricSight& sight, std::size_t number, std::size_t shownSet) {
    const auto& row = sight.record().fleet.readings[number];
    const auto& followed = sight.record().readings[number];
    const auto& set = sight.record().sets[row.set];
    AgeingReading reading;
    reading.hours = row.hours;
    reading.value = followed.value.value();
    reading.kind = followed.held ? ageing::Kind::AtLeast : ageing::Kind::Value;
    reading.fails = followed.judgement == Judgement::Fails;
    reading.ofThisPlace = row.set == shownSet;
    reading.day = inward(followed.on.iso());
    reading.place = BenchSentences::place(followed.place);
    reading.lot = inward(sight.record().lots[set.lot]);
    reading.says = FabricWords::reading(sight.at(), followed);
    reading.judgement = BenchWords::judgement(followed.judgement);
    return reading;
}

}

std::vector<PanelMark> FabricMarks::read(const FabricSight& sight) {
    auto marks = bareMarks(sight);
    for (const auto number : readingsOf(sight)) {
        const auto& followed = sight.record().readings[number];
        auto* mark = markAt(marks, sight, followed.place);
        // Of no panel of this envelope, or of one that was replaced since.
        if (mark == nullptr || sight.record().fleet.readings[number].set != sight.setAt(mark->gore, mark->row))
            continue;
        mark->reading = followed.judgement == Judgement::Fails ? panel::Reading::Fails
                        : followed.held                        ? panel::Reading::Held
                                                               : panel::Reading::Value;
        mark->share = shareOf(sight, followed.value);
        mark->text = figure(followed.value.value());
        const auto says = tr("%1, on %2").arg(FabricWords::reading(sight.at(), followed), inward(followed.on.iso()));
        mark->says = mark->count == 0 ? says : tr("%1; before that %2").arg(says, mark->says);
        ++mark->count;
    }
    return listed(std::move(marks));
}

std::vector<PanelMark> FabricMarks::expected(const FabricSight& sight, const FabricOutlook& outlook,
                                             double hoursAhead) {
    auto marks = bareMarks(sight);
    for (auto& mark : marks) {
        const auto forecast = outlook.at(sight.setAt(mark.gore, mark.row), mark.row, hoursAhead);
        if (!forecast)
            continue;
        mark.reading = panel::Reading::Forecast;
        mark.share = shareOf(sight, sight.at().figure(forecast->value.middle));
        mark.text = figure(forecast->value.middle);
        mark.says = tr("%1, between %2 and %3; chance that it is beyond its limit: %4")
                        .arg(FabricWords::value(sight.at(), forecast->value.middle), figure(forecast->value.low),
                             figure(forecast->value.high), FabricWords::chance(forecast->below));
    }
    return listed(std::move(marks));
}

AgeingCurve FabricMarks::curve(const FabricSight& sight, const FabricOutlook* outlook) {
    const auto& of = sight.of();
    const auto shown = outlook ? outlook->weakest().set : sight.record().setAt(sight.envelope, {1, of.rows});
    AgeingCurve curve;
    curve.title = tr("%1: %2").arg(inward(of.id.text()), FabricWords::channel(sight.at()));
    curve.unit = FabricWords::unit(sight.at());
    curve.quantity = BenchWords::quantity(sight.at().quantity);
    curve.limit = of.limit.value();
    curve.limitIsLeast = !sight.at().rises;
    curve.limitSays = tr("%1 (%2)").arg(FabricWords::limit(sight.at(), of.limit), inward(of.source));
    curve.hoursNow = sight.record().sets[shown].use.hours;
    for (const auto number : readingsOf(sight))
        curve.readings.push_back(readingAt(sight, number, shown));
    if (outlook)
        for (const auto& [hours, band] : outlook->curve)
            curve.band.push_back({hours, band.low, band.middle, band.high});
    curve.caution = FabricWords::noSubstitute();
    return curve;
}

}
