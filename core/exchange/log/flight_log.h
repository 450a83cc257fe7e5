// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A flight log as CSV with a header row becomes flights that are proposed; nothing is written to the record here.
///
///     Registration;Date;Take-off (UTC);Duration;Landings;Max temp (°C)
///     QE-RYE;31.12.2025;07:34;0:55;1;87
///
/// Columns are found by name (`headingFrom`), in any order. A flight needs a date, a balloon (or one chosen for the
/// whole file) and a duration, or take-off and landing times in its place. What is empty or has no column counts as one
/// landing, one inflation, free flight.
///
/// **Dates.** The order of day and month is found from the whole column; where no date settles it, it is asked for
/// (`OpenChoice::DateOrder`) and the rows wait. ISO dates never wait.
/// **Time aloft.** A unit is taken from the cell, else from the heading, else found from the whole column, else asked
/// for. The duration column wins over the times; a difference of more than five minutes is told.
/// **Times.** A take-off time enters the record only as UTC: when the heading or the cell says UTC, Z or an offset, or
/// the user does (`timesAreUtc`). Any other time is of an unknown zone; it is not converted, serves to tell the time
/// aloft, and is kept as the log has it. The day is the day that the log states; only a time with an offset that is
/// not zero moves it to the day of UTC.
/// **What flew.** A column of an envelope, a basket, a burner or cylinders names what flew instead of what is fitted of
/// that kind; a column of a kit names all. The names become items of the record when the flights are held against it.
/// **Temperatures.** Without a unit, °C is taken while all figures are below 140: a hot envelope in °F starts there
/// (60 °C), one in °C must not get there (common practice, no source). Above, the unit is asked for. The same of the
/// air's temperature from 45 on.
/// **Fuel used and load** have the unit of the cell, else of the heading, else it is asked for: kilograms, pounds, and
/// of fuel litres and US gallons. What was on board is no fuel used, and a column called "fuel" alone is not read.

#include "exchange/log/log_heading.h"
#include "problem/problem.h"
#include "registry/flight_proposal.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// What the user says against, or in addition to, what is found.
struct FlightLogChoices {
    std::map<LogColumn, int> columns; ///< number of the file's column, from 0; -1: none of them
    std::optional<DateOrder> dateOrder;
    std::optional<BareDuration> bareDuration;
    std::optional<TemperatureUnit> temperatureUnit;
    std::optional<AmountUnit> fuelUnit;
    std::optional<AmountUnit> loadUnit;  ///< a weight
    std::optional<char> decimalMark;     ///< '.' or ',': figures with the other one are refused
    std::optional<Registration> balloon; ///< of every row, when the file does not say
    bool timesAreUtc = false;
    std::optional<CivilDate>
        notAfter; ///< today: flights after it are refused, and are no evidence for an order of dates
};

/// What the file leaves open.
enum class OpenChoice {
    Columns, ///< two columns may be meant; `remarks` names them
    DateOrder,
    DurationUnit,
    TemperatureUnit,
    FuelUnit,
    LoadUnit,
};

struct FlightLogPreview {
    std::optional<Problem>
        refused; ///< the whole file: FileUnreadable, CsvNoHeader; then nothing else is filled but columns
    std::vector<LogHeading> columns;
    char separator = ',';
    int headerLine = 0;
    int rows = 0;                        ///< below the header, blank ones not counted
    std::vector<FlightProposal> flights; ///< good rows
    std::vector<Problem> badRows;        ///< each with line and column; a row may have several
    std::vector<int> waiting;            ///< lines that wait for an open choice
    std::vector<OpenChoice> open;        ///< to be settled by `FlightLogChoices` before anything is accepted
    std::optional<DateOrder> dateOrder;  ///< chosen or found; any where dates need none
    std::optional<BareDuration> bareDuration;
    std::vector<Phrase> remarks; ///< what the user should know

    /// Every row is a flight and nothing is open.
    [[nodiscard]] bool complete() const { return !refused && open.empty() && badRows.empty(); }
};

/// @param file its name, for problems
[[nodiscard]] FlightLogPreview previewFlightLog(std::string_view bytes, const std::string& file,
                                                const FlightLogChoices& choices = {});

}
