// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the heading of a column of a flight log means, by its name in English, German, French or Spanish, and what it
/// says about the cells below it: a unit, a form of dates, UTC.

#include "exchange/text/written_date.h"
#include "exchange/text/written_quantity.h"
#include "problem/argument.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

enum class LogColumn {
    Balloon, ///< the registration
    Date,
    TakeOff,  ///< a time of day
    Landing,  ///< a time of day
    Duration, ///< time aloft
    Landings, ///< how many
    Inflations,
    MaxTemperature, ///< of the envelope's fabric
    FuelUsed,       ///< burnt on the flight, all cylinders together; what was on board is not this
    Outside,        ///< the air's temperature
    Load,           ///< people and what they took along
    Tethered,
    Envelope,  ///< which flew, where another than what is fitted may
    Basket,    ///< the same
    Burner,    ///< the same
    Cylinders, ///< the same, several
    Kit,       ///< all that flew
    By,        ///< who says so: the pilot
    Note,
};

/// The columns in their order, with stable names for the command line: "balloon", "take-off", "max-temp" …
[[nodiscard]] const std::vector<LogColumn>& logColumns();
[[nodiscard]] std::string_view logColumnName(LogColumn column);
[[nodiscard]] Term termOf(LogColumn column);
[[nodiscard]] std::optional<LogColumn> logColumnFrom(std::string_view name);

struct LogHeading {
    std::string text; ///< as it stands in the file
    std::optional<LogColumn> meaning;
    /// The name names this and nothing else: "registration" does, "balloon" may be the balloon's title.
    bool sure = false;
    std::optional<BareDuration> durationUnit;
    std::optional<TemperatureUnit> temperatureUnit;
    std::optional<AmountUnit> amountUnit;
    std::optional<DateOrder> dateOrder;
    bool utc = false;
};

/// Case, accents and punctuation do not matter; a unit may stand in brackets or behind: "Duration (h)", "Dauer min",
/// "Take-off UTC", "Datum (TT.MM.JJJJ)", "Max temp °F".
[[nodiscard]] LogHeading headingFrom(std::string_view text);

/// It speaks of fuel, whether it was burnt or not: "Fuel", "Gas [l]", "propane".
[[nodiscard]] bool isOfFuel(std::string_view heading);

/// For messages: some names of each column that are understood.
[[nodiscard]] std::string understoodHeadings();

}
