// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/fabric_words.h"

#include "bench/reading/quantity.h"
#include "measure/unit.h"
#include "words/bench_sentences.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

using namespace words;

namespace {

QString whole(double value) { return QLocale().toString(std::round(value), 'f', 0); }

QString hours(Hours of) { return FabricWords::tr("%1 h").arg(whole(of.value())); }

Choice answer(const QString& question, const QString& text) { return {question, question, text, -1, -1, false}; }

QString band(const FabricChannel& channel, const ToldBand<double>& band) {
    const auto value = [&](const std::optional<double>& at) { return FabricWords::value(channel, *at); };
    if (band.isWhole())
        return FabricWords::tr("%1 to %2, most likely about %3")
            .arg(value(band.low), value(band.high), value(band.middle));
    return band.low ? FabricWords::tr("most likely above %1").arg(value(band.low))
                    : FabricWords::tr("most likely below %1").arg(value(band.high));
}

QString day(const Ahead& ahead, Hours more) {
    const auto on = ahead.dayAfter(more);
    return on ? inward(on->iso()) : FabricWords::tr("not within a hundred years at its pace");
}

QString lifeText(const ToldOutlook& outlook) {
    const auto more = [&](const std::optional<Hours>& at) { return hours(*at - outlook.flown); };
    const auto& life = outlook.life;
    switch (outlook.end) {
    case LifeEnd::Over:
        break;
    case LifeEnd::NotKnown:
        return FabricWords::tr("Most likely not before %1 more. A later end is not known.").arg(more(life.low));
    case LifeEnd::OutOfSight:
        return FabricWords::tr("Not before %1 more; its end is not within sight.").arg(more(life.low));
    case LifeEnd::InSight:
        return FabricWords::tr("in %1 to %2 more, most likely about %3")
            .arg(more(life.low), more(life.high), more(life.middle));
    }
    return FabricWords::tr("It is most likely at its limit already: test it before it flies.");
}

QString datesText(const ToldOutlook& outlook, const Ahead& ahead) {
    const auto on = [&](const std::optional<Hours>& at) { return day(ahead, *at - outlook.flown); };
    const auto& life = outlook.life;
    if (!life.isWhole())
        return FabricWords::tr("not before %1").arg(on(life.low));
    return FabricWords::tr("%1 to %2, most likely about %3").arg(on(life.low), on(life.high), on(life.middle));
}

QString nextText(const Ahead& ahead) {
    return ahead.day ? FabricWords::tr("%1, in %2 flown").arg(inward(ahead.day->iso()), hours(ahead.hours))
                     : FabricWords::tr("in %1 flown: no inspection of it is due").arg(hours(ahead.hours));
}

}

QString FabricWords::channel(const FabricChannel& channel) { return words::said(testedAs(channel.series)); }

QString FabricWords::unit(const FabricChannel& channel) {
    return inward(unitOf(*quantityNamed(channel.quantity)).shown);
}

QString FabricWords::value(const FabricChannel& channel, double value) {
    const int decimals = value < 10 ? 1 : 0;
    return tr("%1 %2").arg(QLocale().toString(value, 'f', decimals), unit(channel));
}

QString FabricWords::value(const FabricChannel& channel, const Figure& figure) {
    return value(channel, figure.value());
}

QString FabricWords::reading(const FabricChannel& channel, const FollowedReading& reading) {
    const auto figure = value(channel, reading.value);
    return reading.held ? tr("held at %1").arg(figure) : figure;
}

QString FabricWords::limit(const FabricChannel& channel, const Figure& limit) {
    const auto figure = tr("%1 %2").arg(BenchWords::figure(limit.value()), unit(channel));
    return channel.rises ? tr("at most %1").arg(figure) : tr("at least %1").arg(figure);
}

QString FabricWords::chance(double chance) {
    if (chance < 0.01)
        return tr("under 1 %");
    return chance > 0.99 ? tr("over 99 %") : tr("%1 %").arg(whole(100 * chance));
}

QString FabricWords::panels(const FabricRecord& record, const FollowedSet& set) {
    const auto& name = record.lots[set.lot];
    const auto lot = name.empty() ? tr("lot not known") : tr("lot %1").arg(inward(name));
    if (set.patch)
        return tr("panel at %1, %2").arg(BenchSentences::place(*set.patch), lot);
    return tr("panels that it came with, %1").arg(lot);
}

std::vector<Choice> FabricWords::answers(const FabricSight& sight, const FabricOutlook& outlook) {
    const auto& channel = sight.at();
    const auto& weakest = outlook.weakest().outlook;
    const auto chanceText = [](const std::optional<double>& told) {
        return told ? chance(*told) : tr("not known from these readings");
    };
    std::vector<Choice> answers;
    answers.push_back(answer(channel.rises ? tr("How porous it is now, where it is worst")
                                           : tr("How strong it is now, where it is weakest"),
                             band(channel, weakest.strength)));
    answers.push_back(answer(tr("Until its limit, %1").arg(limit(channel, sight.of().limit)), lifeText(weakest)));
    if (weakest.byReadings && weakest.life.low)
        answers.push_back(
            answer(tr("On which day, at its pace of the last two years"), datesText(weakest, sight.ahead)));
    answers.push_back(answer(tr("Its next test"), nextText(sight.ahead)));
    answers.push_back(
        answer(tr("Chance that one test there fails then, with the scatter of tests"), chanceText(weakest.failsNext)));
    answers.push_back(
        answer(tr("Chance that the fabric itself is beyond its limit by then"), chanceText(weakest.belowByNext)));
    return answers;
}

std::vector<Choice> FabricWords::sets(const FabricSight& sight, const FabricOutlook& outlook) {
    std::vector<Choice> rows;
    for (const auto& set : outlook.forecast.sets) {
        const auto& followed = sight.record().sets[set.set];
        const auto known = set.readings == 0 ? tr("never read")
                           : set.held == set.readings
                               ? tr("%n tests, all held", nullptr, static_cast<int>(set.readings))
                               : tr("%n tests, %1 held", nullptr, static_cast<int>(set.readings)).arg(set.held);
        const auto strength = set.outlook.byReadings ? band(sight.at(), set.outlook.strength) : QString();
        rows.push_back({QString::number(set.set), panels(sight.record(), followed),
                        joined({tr("%1 flown").arg(hours(set.outlook.flown)), known, strength}, QStringLiteral("; ")),
                        -1, -1, set.set == outlook.weakest().set});
    }
    return rows;
}

std::vector<Choice> FabricWords::pulls(const FabricSight& sight, const FabricOutlook& outlook) {
    std::vector<Choice> rows;
    for (const auto& [pull, worth] : outlook.forecast.pulls) {
        const auto test = pull.proof ? tr("A pull that holds or breaks at %1").arg(value(sight.at(), *pull.proof))
                          : sight.at().rises ? tr("One more reading")
                                             : tr("A pull until it breaks, on a panel that is replaced anyway");
        const double spared = worth.bandNow > 0 ? 1 - worth.bandThen / worth.bandNow : 0;
        rows.push_back(
            {test, test,
             tr("would narrow the %1 between early and late end to about %2: %3 less")
                 .arg(hours(Hours(worth.bandNow)), hours(Hours(worth.bandThen)), chance(std::max(0.0, spared))),
             -1, -1, false});
    }
    return rows;
}

QString FabricWords::ground(const ForecastGrounds& grounds) {
    QStringList says;
    if (grounds.ground == Ground::HeldOnly)
        says += grounds.broken == 0
                    ? tr("Only held tests bound this: how much more the fabric would hold, nobody has tried.")
                    : tr("Hardly any test of this fabric was pulled until it broke (%1); the others only bound it.")
                          .arg(grounds.broken);
    if (grounds.ground == Ground::Prior && grounds.isOfOneAge)
        says +=
            tr("All tests of this fabric that tell its strength were made at one age: how fast it ages is assumed, not "
               "read.");
    else if (grounds.ground == Ground::Prior)
        says += tr("This rests on what is assumed of such fabric, not on your readings.");
    if (grounds.isBeyondFlown)
        says += tr("The end lies beyond what any envelope of this fabric has flown when it was tested (%1).")
                    .arg(hours(Hours(grounds.mostFlown)));
    return says.join(u' ');
}

QString FabricWords::fitted(const FabricOutlook& outlook) {
    return tr("From %1 tests of %2 envelopes, fitted together: %3 draws, worth %4 independent ones for its early end; "
              "chains "
              "agree to %5 (R-hat, 1.00 is best).")
        .arg(outlook.readings)
        .arg(outlook.envelopes)
        .arg(outlook.draws)
        .arg(QLocale().toString(outlook.weakest().effectiveDraws, 'f', 0),
             QLocale().toString(outlook.worstRHat, 'f', 2));
}

QString FabricWords::leftOut(const FabricSight& sight) {
    QStringList why;
    int count = 0;
    for (const auto& each : sight.record().leftOut) {
        if (each.envelope != sight.envelope)
            continue;
        ++count;
        if (const auto says = words::said(each.why); !why.contains(says))
            why += says;
    }
    return count == 0 ? QString()
                      : tr("Not counted, %n readings: %1.", nullptr, count).arg(why.join(QStringLiteral("; ")));
}

QString FabricWords::noSubstitute() {
    return tr("A forecast plans tests and is no substitute for one. What retires fabric is the test that the manual of "
              "its type asks for.");
}

}
