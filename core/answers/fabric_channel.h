// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What of fabric is followed: by the bounds that the manuals of types put on it.

#include "answers/type_book.h"
#include "fabric/outlook/life.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// A quantity that is followed, in one test. Strength falls as fabric ages; permeability rises, and the model follows
/// its reciprocal.
struct FabricChannel {
    std::string quantity;
    SeriesKey series;
    bool rises = false;
    bool operator==(const FabricChannel&) const = default;

    /// What falls, as the model has it: newtons, or the reciprocal of mm/s. @pre of the channel's quantity
    [[nodiscard]] double falling(const Figure& figure) const;
    /// From what falls back to figures in the quantity's own unit.
    [[nodiscard]] Band turned(const Band& band) const {
        return rises ? Band{1 / band.high, 1 / band.middle, 1 / band.low} : band;
    }
    /// A figure of the quantity, given in its own unit.
    [[nodiscard]] Figure figure(double value) const { return {value, unitOf(*quantityNamed(quantity))}; }
    /// 1 at the limit, more is better.
    [[nodiscard]] double share(const Figure& value, const Figure& limit) const {
        return rises ? limit / value : value / limit;
    }
};

/// The bound of the quantity that retires fabric: the least that must be reached, or the most. Nothing where the limit
/// has none above zero.
[[nodiscard]] std::optional<Figure> boundOf(const StatedLimit& limit);

/// What a limit has followed; nothing where it bounds no fabric, or nothing that is followed.
[[nodiscard]] std::optional<FabricChannel> channelOf(const StatedLimit& limit);

/// What the manual of a type bounds of the body of its envelope and is followed: strength first.
[[nodiscard]] std::vector<FabricChannel> channelsOf(const TypeBook& book, const std::string& type);

/// What readings of the type are held against: also those of its vents and its mouth, and those that are timed in
/// seconds of their own instrument, of which nothing is foretold.
[[nodiscard]] std::vector<FabricChannel> boundedOf(const TypeBook& book, const std::string& type);

/// What is followed of one envelope. UnknownReference where it is none in the record on that day, or its manual bounds
/// nothing that is followed; MissingKey where its type is not known.
[[nodiscard]] Result<std::vector<FabricChannel>> channelsOf(Books& books, const ItemId& envelope, CivilDate on);
/// All that is followed of any envelope.
[[nodiscard]] std::vector<FabricChannel> channelsOf(const TypeBook& book);

}
