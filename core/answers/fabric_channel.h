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

    /// From a figure in the quantity's own unit to the one that falls, and back: they are each other's inverse.
    [[nodiscard]] double turned(double value) const { return rises ? 1 / value : value; }
    [[nodiscard]] Band turned(const Band& band) const {
        return rises ? Band{1 / band.high, 1 / band.middle, 1 / band.low} : band;
    }
};

/// What a limit has followed; nothing where it bounds no fabric, or nothing that is followed.
[[nodiscard]] std::optional<FabricChannel> channelOf(const StatedLimit& limit);

/// What the manual of a type bounds of its fabric: strength first.
[[nodiscard]] std::vector<FabricChannel> channelsOf(const TypeBook& book, const std::string& type);

/// What is followed of one envelope. UnknownReference where it is none in the record on that day, or its manual bounds
/// nothing that is followed; MissingKey where its type is not known.
[[nodiscard]] Result<std::vector<FabricChannel>> channelsOf(Books& books, const ItemId& envelope, CivilDate on);
/// All that is followed of any envelope.
[[nodiscard]] std::vector<FabricChannel> channelsOf(const TypeBook& book);

}
