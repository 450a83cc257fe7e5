// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Quantities in the cells of a log: time aloft, counts, temperatures, yes and no. Decimal point and comma are both
/// read; figures in groups ("1,250" for one thousand two hundred and fifty) are not.

#include "measure/amount.h"
#include "measure/count.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace crownring {

/// What a bare number means as time aloft.
enum class BareDuration {
    Minutes,           ///< 95
    Hours,             ///< 1.58
    HoursPointMinutes, ///< 1.35 is one hour and thirty-five minutes
};

/// Reads time aloft, rounded to the nearest whole minute. 1:35, 1:35:20, "1 h 35", "95 min", "1.6 h" mean the same
/// whatever `bare` is; a number alone follows it. @return nothing for anything else and beyond `longestFlight`.
[[nodiscard]] std::optional<Minutes> readDuration(std::string_view text, BareDuration bare);
/// The same, but nothing for a bare number of hours beyond 24: as evidence for what a column means, 55 is no number of
/// hours (common practice, no source: flights of more than a day are rare records).
[[nodiscard]] std::optional<Minutes> likelyDuration(std::string_view text, BareDuration bare);

[[nodiscard]] std::optional<std::int64_t> readCount(std::string_view text);

enum class TemperatureUnit { Celsius, Fahrenheit };

/// A temperature in °C to one decimal; `bare` is the unit where the cell has none.
[[nodiscard]] std::optional<Celsius> readCelsius(std::string_view text, TemperatureUnit bare);

enum class AmountUnit { Kilograms, Pounds, Litres, UsGallons };

/// An amount of fuel or a weight as it is written: "38,5", "38.5 kg", "20 US gal".
struct WrittenAmount {
    double value = 0;
    std::optional<AmountUnit> unit;
};
[[nodiscard]] std::optional<WrittenAmount> readAmount(std::string_view text);
/// The unit of a word, folded: "kg", "lbs", "litres", "us gal".
[[nodiscard]] std::optional<AmountUnit> amountUnitNamed(std::string_view word);
[[nodiscard]] constexpr bool isWeight(AmountUnit unit) {
    return unit == AmountUnit::Kilograms || unit == AmountUnit::Pounds;
}
/// In kilograms or in litres, to one decimal. The pound and the gallon are exact by definition (NIST SP 811, from
/// memory).
[[nodiscard]] double inKilogramsOrLitres(double value, AmountUnit unit);

/// Yes or no in English, German, French or Spanish, a cross, 1 or 0.
[[nodiscard]] std::optional<bool> readYesNo(std::string_view text);

}
