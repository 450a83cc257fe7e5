// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/fabric_answer.h"
#include "exchange/table/fabric_table.h"
#include "fabric/sampler/ageing_sampler.h"
#include "problem/faults/fabric_fault.h"

#include <cmath>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

struct Fit {
    FabricTable table;
    std::vector<SetOutlook> sets;
    std::vector<std::optional<LotPace>> lots;
    double worstRHat = 1;
    std::size_t draws = 0;

    /// Of the sets of an envelope the weakest.
    [[nodiscard]] ToldOutlook outlookOf(std::size_t envelope) const {
        std::vector<SetOutlook> own;
        for (std::size_t set = 0; set < sets.size(); ++set)
            if (table.envelopeOfSet[set] == envelope)
                own.push_back(sets[set]);
        return toldOf(own[weakestOf(own)]);
    }
};

Result<Fit> fitted(FabricTable table, const FabricFitOptions& options) {
    const auto columns = fleetColumns(table.fleet);
    if (!columns)
        return tl::unexpected(columns.error());
    const auto prior = priorFor(columns->fabrics, options.limit);
    auto settings = settingsFor(*columns);
    settings.seed = options.seed;
    const auto posterior = sampledPosterior(*columns, prior, settings);
    Fit fit;
    fit.table = std::move(table);
    for (std::size_t set = 0; set < columns->sets(); ++set)
        fit.sets.push_back(
            outlookOf(*columns, prior, *posterior, set, std::log(options.limit), fit.table.useOfSet[set]));
    for (std::size_t lot = 0; lot < columns->lots(); ++lot)
        fit.lots.push_back(paceOfLot(*columns, *posterior, lot));
    fit.worstRHat = worstRHat(*posterior);
    fit.draws = posterior->draws();
    return fit;
}

Json answerOf(const Fit& fit) {
    Json envelopes = Json::array();
    for (std::size_t envelope = 0; envelope < fit.table.envelopes.size(); ++envelope) {
        const auto outlook = fit.outlookOf(envelope);
        envelopes.push_back({{"envelope", fit.table.envelopes[envelope]},
                             {"hours_now", outlook.flown.value()},
                             {"life", ctl::jsonOf(outlook.life)},
                             {"fails_next", ctl::jsonOf(outlook.failsNext)},
                             {"enough", outlook.byReadings},
                             {"ground", wordOf(outlook.grounds.ground)},
                             {"beyond_flown", outlook.grounds.isBeyondFlown},
                             {"strength", ctl::jsonOf(outlook.strength)}});
    }
    Json lots = Json::array();
    for (std::size_t lot = 0; lot < fit.lots.size(); ++lot)
        lots.push_back({{"lot", fit.table.lots[lot]},
                        {"fabric", fit.table.fabrics[fit.table.fleet.fabricOfLot[lot]]},
                        {"rate_ratio", fit.lots[lot] ? ctl::jsonOf(fit.lots[lot]->ratio) : Json()},
                        {"faster", fit.lots[lot] ? Json(fit.lots[lot]->faster) : Json()}});
    return {
        {"envelopes", envelopes}, {"lots", lots}, {"convergence", {{"rhat_max", fit.worstRHat}, {"draws", fit.draws}}}};
}

void printCell(const std::optional<double>& figure, int width, int decimals) {
    std::cout << std::setw(width) << std::setprecision(decimals);
    if (figure)
        std::cout << *figure;
    else
        std::cout << "-";
}

void printTable(const Fit& fit) {
    std::cout << std::left << std::setw(18) << "envelope" << std::right << std::setw(8) << "hours" << std::setw(8)
              << "p05" << std::setw(8) << "p50" << std::setw(8) << "p95" << std::setw(12) << "fails next"
              << "\n"
              << std::fixed;
    for (std::size_t envelope = 0; envelope < fit.table.envelopes.size(); ++envelope) {
        const auto outlook = fit.outlookOf(envelope);
        std::cout << std::left << std::setw(18) << fit.table.envelopes[envelope] << std::right << std::setprecision(0)
                  << std::setw(8) << outlook.flown.value();
        for (const auto& at : {outlook.life.low, outlook.life.middle, outlook.life.high})
            printCell(at ? std::optional(at->value()) : std::nullopt, 8, 0);
        printCell(outlook.failsNext, 12, 3);
        std::cout << "  " << sentenceOf(outlook.grounds) << "\n";
    }
    std::cout << "Life in hours flown at the crown. " << noSubstitute << "\n";
}

}

int run(const FabricFitOptions& options, const Common&) {
    const auto bytes = contentOf(options.readings);
    if (!bytes)
        return refuse(bytes.error());
    auto table = readFabricTable(*bytes, options.readings);
    if (!table)
        return refuse(table.error());
    if (table->fleet.readings.empty())
        return refuse(Problem{FabricFault::NoEnvelopeTested, {}, {options.readings, 0, {}}});
    const auto fit = fitted(std::move(*table), options);
    if (!fit)
        return refuse(fit.error());
    if (options.json)
        print(answerOf(*fit));
    else
        printTable(*fit);
    return Done;
}

}
