// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric_channel.h"

#include "problem/faults/fabric_fault.h"

#include <algorithm>
#include <array>
#include <span>

namespace crownring {

namespace {

constexpr std::array followedQuantities{"grab-strength", "strip-strength", "air-permeability"};
/// Those, and what is held against its limit and not followed: seconds are of the instrument that timed them.
constexpr std::array boundedQuantities{"grab-strength", "strip-strength", "air-permeability", "permeability-time"};

std::vector<FabricChannel> channelsFor(const TypeBook& book, std::span<const char* const> quantities) {
    std::vector<FabricChannel> channels;
    for (const auto* quantity : quantities)
        for (const auto& limit : book.limits)
            if (const auto channel = channelOf(limit);
                channel && limit.quantity == quantity && std::ranges::find(channels, *channel) == channels.end())
                channels.push_back(*channel);
    return channels;
}

TypeBook ofType(TypeBook book, const std::string& type) {
    std::erase_if(book.limits, [&](const StatedLimit& limit) { return limit.type.text() != type; });
    return book;
}

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
        std::ranges::find(boundedQuantities, limit.quantity) == boundedQuantities.end())
        return std::nullopt;
    const bool rises = quantityNamed(limit.quantity)->good == Good::Lower;
    return FabricChannel{limit.quantity, seriesOf(limit.quantity, limit.conditions), rises};
}

std::vector<FabricChannel> channelsOf(const TypeBook& book) {
    auto ofBodies = book;
    std::erase_if(ofBodies.limits, [](const StatedLimit& limit) { return limit.asksIn() != Zone::Envelope; });
    return channelsFor(ofBodies, followedQuantities);
}

std::vector<FabricChannel> channelsOf(const TypeBook& book, const std::string& type) {
    return channelsOf(ofType(book, type));
}

std::vector<FabricChannel> boundedOf(const TypeBook& book, const std::string& type) {
    return channelsFor(ofType(book, type), boundedQuantities);
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
