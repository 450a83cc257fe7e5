// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether something is in service at the end of a day.

#include "civil/moment.h"
#include "measure/amount.h"
#include "problem/argument.h"
#include "record/kinds/service.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// What befell that of which a part was taken out.
enum class Hurt {
    No,
    Overheated,
    Fire,
};

/// It is laid up, sold, scrapped, lost, away or kept apart.
struct OutOfService {
    ServiceState state = ServiceState::LaidUp;
    CivilDate since;
    std::string to{};                   ///< with `Sold` and `Away`: to whom; may be empty
    std::optional<Registration> with{}; ///< of an item: the balloon that it is fitted to is, and the item with it
    std::optional<ItemId> part{};       ///< of an item: what it is a part of is, and the item with it
    bool takenOut = false;            ///< with `part`: it came out of that while that was kept apart, unreleased since
    std::optional<Celsius> hottest{}; ///< with `Condemned`: nobody said so, it was overheated
    Hurt by = Hurt::No;               ///< with `takenOut`: nobody said that it was kept apart, this befell it
    bool operator==(const OutOfService&) const = default;
};

/// "laid up since 2026-03-01".
[[nodiscard]] Argument reasonOf(const OutOfService& out);

/// A balloon took another registration.
struct Renaming {
    Stamp stamp;
    Registration from;
    Registration to;
    bool operator==(const Renaming&) const = default;
};

/// "flies as QE-NEW since 2026-03-01".
[[nodiscard]] Argument reasonOf(const Renaming& renaming);

/// When nothing more may have flown of what went out of service at `at`: what states no time went at some time of that
/// day, and a flight of the day may have been before.
[[nodiscard]] Moment outFrom(Moment at);

}
