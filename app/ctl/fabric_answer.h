// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How forecasts of fabric are said.

#include "answers/fabric/forecast.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace crownring::ctl {

[[nodiscard]] nlohmann::ordered_json jsonOf(const Band& band);
/// Null where nothing of it is told; what of it is withheld is null in it.
[[nodiscard]] nlohmann::ordered_json jsonOf(const ToldBand<double>& band);
[[nodiscard]] nlohmann::ordered_json jsonOf(const ToldBand<Hours>& band);
[[nodiscard]] nlohmann::ordered_json jsonOf(const std::optional<double>& figure);
/// "enough", "held-only", "assumed".
[[nodiscard]] std::string_view wordOf(Ground ground);
/// What a number must not be read without; empty where there is nothing to add.
[[nodiscard]] std::string sentenceOf(const ForecastGrounds& grounds);

/// The channel of this quantity, the first of all where none is named. BadUse for one that is not among them.
[[nodiscard]] Result<FabricChannel> chosenChannel(const std::vector<FabricChannel>& channels,
                                                  const std::string& quantity);
/// The same of all that is followed of any envelope.
[[nodiscard]] Result<FabricChannel> channelOfFleet(Books& books, const std::string& quantity, CivilDate on);
/// All envelopes of a channel, fitted.
[[nodiscard]] Result<FabricFit> fittedFleet(Books& books, const FabricChannel& channel, CivilDate on,
                                            std::uint64_t seed);

inline constexpr const char* noSubstitute = "A forecast plans tests and takes the place of none.";

}
