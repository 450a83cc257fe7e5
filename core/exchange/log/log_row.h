// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One row of a flight log. Inside the exchange room only.

#include "exchange/log/flight_log.h"
#include "exchange/log/log_columns.h"
#include "exchange/text/written_time.h"

#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace crownring {

/// The columns that name what flew, and of which kind that is; the whole kit has none.
inline constexpr std::array<std::pair<LogColumn, std::optional<ItemKind>>, 5> kitColumns = {{
    {LogColumn::Envelope, ItemKind::Envelope},
    {LogColumn::Basket, ItemKind::Basket},
    {LogColumn::Burner, ItemKind::Burner},
    {LogColumn::Cylinders, ItemKind::Cylinder},
    {LogColumn::Kit, std::nullopt},
}};

/// How the columns are written: chosen, stated or found; what is absent is open.
struct LogForms {
    std::optional<DateOrder> dateOrder;
    std::optional<BareDuration> bareDuration;
    std::optional<TemperatureUnit> temperatureUnit; ///< of the fabric
    std::optional<TemperatureUnit> outsideUnit;
    std::optional<AmountUnit> fuelUnit;
    std::optional<AmountUnit> loadUnit;
};

extern const std::vector<DateOrder> dateOrders;
extern const std::vector<BareDuration> bareDurations;
extern const std::vector<TemperatureUnit> temperatureUnits;

/// Take-off and landing of a row, with what the headings and the user say about UTC.
struct LogTimes {
    std::optional<WrittenTime> takeOff;
    std::optional<WrittenTime> landing;
};
[[nodiscard]] LogTimes timesOf(const CsvRow& row, const LogColumns& columns, bool timesAreUtc);

/// Minutes from take-off to landing, over midnight where the landing reads earlier; nothing when either is missing,
/// only one says its zone, or more than twelve hours would lie between them (common practice, no source: rather an
/// error of writing than a flight).
[[nodiscard]] std::optional<Minutes> minutesBetween(const LogTimes& times);

/// The date's part of the date cell.
[[nodiscard]] std::string_view dateText(const CsvRow& row, const LogColumns& columns);

struct LogRowRead {
    std::optional<FlightProposal> flight;
    std::vector<Problem> problems;
    bool waits = false;       ///< for an open choice
    bool localTime = false;   ///< a take-off time without a zone is kept as the log has it
    bool timesDiffer = false; ///< from the duration, by more than five minutes
};

[[nodiscard]] LogRowRead readLogRow(const CsvRow& row, const LogColumns& columns, const LogForms& forms,
                                    const FlightLogChoices& choices, const std::string& file);

}
