// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/fabric_answer.h"

#include "problem/faults/fabric_fault.h"

namespace crownring::ctl {

nlohmann::ordered_json jsonOf(const Band& band) {
    return {{"p05", band.low}, {"p50", band.middle}, {"p95", band.high}};
}

nlohmann::ordered_json jsonOf(const std::optional<double>& figure) {
    return figure ? nlohmann::ordered_json(*figure) : nlohmann::ordered_json();
}

nlohmann::ordered_json jsonOf(const ToldBand<double>& band) {
    if (band == ToldBand<double>())
        return nullptr;
    return {{"p05", jsonOf(band.low)}, {"p50", jsonOf(band.middle)}, {"p95", jsonOf(band.high)}};
}

nlohmann::ordered_json jsonOf(const ToldBand<Hours>& band) {
    const auto bare = [](const std::optional<Hours>& at) { return at ? std::optional(at->value()) : std::nullopt; };
    return jsonOf(ToldBand<double>{bare(band.low), bare(band.middle), bare(band.high)});
}

std::string_view wordOf(Ground ground) {
    switch (ground) {
    case Ground::Enough:
        return "enough";
    case Ground::HeldOnly:
        return "held-only";
    case Ground::Prior:
        return "assumed";
    }
    return "";
}

std::string sentenceOf(const ForecastGrounds& grounds) {
    if (grounds.ground == Ground::HeldOnly)
        return grounds.broken == 0 ? "only held tests bound this"
                                   : "hardly any test was pulled until it broke; the others only bound this";
    if (grounds.ground == Ground::Prior && grounds.isOfOneAge)
        return "all that broke was of one age: how fast it ages is assumed, not read";
    if (grounds.ground == Ground::Prior)
        return "rests on what is assumed, not on readings";
    if (grounds.isOpenEnded)
        return "no end within sight";
    return grounds.isBeyondFlown ? "beyond what any envelope of this fabric has flown" : "";
}

Result<FabricChannel> chosenChannel(const std::vector<FabricChannel>& channels, const std::string& quantity) {
    Listed known;
    for (const auto& channel : channels) {
        if (quantity.empty() || channel.quantity == quantity)
            return channel;
        known.list.emplace_back(channel.quantity);
    }
    if (known.list.empty())
        return problem(FabricFault::NoLimitToAskFor, {quantity});
    return problem(FabricFault::AskForAnother, {quantity, std::move(known)});
}

Result<FabricChannel> channelOfFleet(Books& books, const std::string& quantity, CivilDate on) {
    const auto book = typeBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    return chosenChannel(channelsOf(*book), quantity);
}

Result<FabricFit> fittedFleet(Books& books, const FabricChannel& channel, CivilDate on, std::uint64_t seed) {
    auto record = fabricRecord(books, channel, on);
    if (!record)
        return tl::unexpected(record.error());
    auto fit = fitOf(std::make_shared<const FabricRecord>(std::move(*record)), seed);
    if (!fit)
        return tl::unexpected(fit.error());
    return std::move(**fit);
}

}
