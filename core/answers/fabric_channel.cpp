// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric_channel.h"

#include "problem/faults/fabric_fault.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array followedQuantities{"grab-strength", "strip-strength", "air-permeability"};

}

double FabricChannel::falling(const Figure& figure) const {
    return rises ? 1 / figure.amount<MillimetresPerSecond>().value().value() : figure.amount<Newtons>().value().value();
}

std::optional<Figure> boundOf(const StatedLimit& limit) {
    const auto* quantity = quantityNamed(limit.quantity);
    const auto bound = quantity && quantity->good == Good::Lower ? limit.most : limit.needed();
    return bound && bound->value() > 0 ? bound : std::nullopt;
}

std::optional<FabricChannel> channelOf(const StatedLimit& limit) {
    if (limit.kind != ItemKind::Envelope || !boundOf(limit) ||
        std::ranges::find(followedQuantities, limit.quantity) == followedQuantities.end())
        return std::nullopt;
    const bool rises = quantityNamed(limit.quantity)->good == Good::Lower;
    return FabricChannel{limit.quantity, seriesOf(limit.quantity, limit.conditions), rises};
}

std::vector<FabricChannel> channelsOf(const TypeBook& book) {
    std::vector<FabricChannel> channels;
    for (const auto* quantity : followedQuantities)
        for (const auto& limit : book.limits)
            if (const auto channel = channelOf(limit);
                channel && limit.quantity == quantity && std::ranges::find(channels, *channel) == channels.end())
                channels.push_back(*channel);
    return channels;
}

std::vector<FabricChannel> channelsOf(const TypeBook& book, const std::string& type) {
    auto ofType = book;
    std::erase_if(ofType.limits, [&](const StatedLimit& limit) { return limit.type.text() != type; });
    return channelsOf(ofType);
}

Result<std::vector<FabricChannel>> channelsOf(Books& books, const ItemId& envelope, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {envelope}}, on);
    const auto book = typeBook(books, on);
    if (!facts || !book)
        return tl::unexpected(facts ? book.error() : facts.error());
    if (facts->empty() || facts->front().kind != ItemKind::Envelope)
        return problem(FabricFault::NoEnvelope, {envelope, on});
    const auto& type = facts->front().type;
    if (!type)
        return problem(FabricFault::TypeUnknown, {envelope}, atKey("type"));
    auto channels = channelsOf(*book, *type);
    if (channels.empty())
        return problem(FabricFault::NothingStated, {*type});
    return channels;
}

}
