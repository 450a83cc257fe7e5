// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/flight_log.h"

#include "exchange/log/log_columns.h"
#include "exchange/log/log_phrase.h"
#include "exchange/log/log_row.h"
#include "exchange/table/csv_table.h"
#include "exchange/text/plain_text.h"
#include "exchange/text/settled_form.h"

#include <algorithm>
#include <cstdlib>
#include <span>

namespace crownring {

namespace {

using Rows = std::span<const CsvRow>;

Phrase linesOf(const std::vector<int>& lines) {
    constexpr std::size_t mostShown = 5;
    Listed first;
    for (std::size_t i = 0; i < std::min(lines.size(), mostShown); ++i)
        first.list.emplace_back(lines[i]);
    return {lines.size() > mostShown ? LogPhrase::LinesAndMore : LogPhrase::Lines, {lines.size(), std::move(first)}};
}

class Preview {
public:
    Preview(const std::string& file, const FlightLogChoices& choices) : m_file(file), m_choices(choices) {}

    FlightLogPreview of(std::string_view bytes) {
        auto table = readCsv(bytes, m_file);
        if (!table) {
            m_preview.refused = table.error();
            return std::move(m_preview);
        }
        m_columns = findColumns(*table, m_choices.columns);
        m_preview.separator = table->separator;
        m_preview.headerLine = table->rows.empty() ? 0 : table->rows[m_columns.headerRow].line;
        const auto rows = Rows(table->rows).subspan(table->rows.empty() ? 0 : m_columns.headerRow + 1);
        forgetColumnsWithoutTimes(rows);
        forgetColumnsOfCounts(rows);
        m_preview.refused = missingColumns(m_columns, m_choices.balloon.has_value(), m_file, m_preview.headerLine);
        m_preview.columns = m_columns.headings;
        if (m_preview.refused)
            return std::move(m_preview);
        if (table->converted)
            remark(LogPhrase::ReadAsWindows1252);
        tellOfFuelUnread();
        takeDoubts();
        settleDates(rows);
        settleDurations(rows);
        settleTemperatures(rows);
        m_forms.fuelUnit = settleAmounts(rows, LogColumn::FuelUsed, m_choices.fuelUnit, OpenChoice::FuelUnit);
        m_forms.loadUnit = settleAmounts(rows, LogColumn::Load, m_choices.loadUnit, OpenChoice::LoadUnit);
        m_preview.badRows = std::move(table->badRows);
        m_preview.rows = static_cast<int>(rows.size() + m_preview.badRows.size());
        readRows(rows);
        return std::move(m_preview);
    }

private:
    void remark(LogPhrase what, Arguments arguments = {}) { m_preview.remarks.push_back({what, std::move(arguments)}); }

    void ask(OpenChoice choice) {
        if (std::find(m_preview.open.begin(), m_preview.open.end(), choice) == m_preview.open.end())
            m_preview.open.push_back(choice);
    }

    /// "Take-off" above a column of villages is not a time.
    void forgetColumnsWithoutTimes(Rows rows) {
        for (const auto column : {LogColumn::TakeOff, LogColumn::Landing}) {
            if (!m_columns.has(column) || m_choices.columns.contains(column))
                continue;
            bool filled = false;
            const bool timed = std::any_of(rows.begin(), rows.end(), [&](const CsvRow& row) {
                const auto cell = m_columns.cell(row, column);
                filled = filled || !cell.empty();
                return !cell.empty() && (readTime(cell) || readTime(dateAndTime(cell).second));
            });
            if (filled && !timed) {
                remark(LogPhrase::NoTimesOfDay, {m_columns.heading(column)->text});
                m_columns.forget(column);
            }
        }
    }

    /// "Cylinders" above 4, 3, 4 says how many flew, not which.
    void forgetColumnsOfCounts(Rows rows) {
        constexpr std::size_t mostDigitsOfACount = 2;
        for (const auto& [column, kind] : kitColumns) {
            if (!m_columns.has(column) || m_choices.columns.contains(column))
                continue;
            bool filled = false;
            const bool named = std::any_of(rows.begin(), rows.end(), [&, column = column](const CsvRow& row) {
                const auto cell = m_columns.cell(row, column);
                filled = filled || !cell.empty();
                return !cell.empty() && !(allDigits(cell) && cell.size() <= mostDigitsOfACount);
            });
            if (filled && !named) {
                remark(LogPhrase::NumbersNoNames, {m_columns.heading(column)->text});
                m_columns.forget(column);
            }
        }
    }

    /// "Fuel" alone is not read, and whoever wrote it thinks that it is.
    void tellOfFuelUnread() {
        for (const auto& heading : m_columns.headings)
            if (!heading.meaning && isOfFuel(heading.text))
                remark(LogPhrase::FuelUnread, {heading.text});
    }

    void takeDoubts() {
        if (m_columns.doubts.empty())
            return;
        m_preview.open.push_back(OpenChoice::Columns);
        m_preview.remarks.insert(m_preview.remarks.end(), m_columns.doubts.begin(), m_columns.doubts.end());
    }

    void settleDates(Rows rows) {
        m_forms.dateOrder = m_choices.dateOrder;
        if (!m_forms.dateOrder)
            m_forms.dateOrder = m_columns.heading(LogColumn::Date)->dateOrder;
        if (!m_forms.dateOrder) {
            const auto settled = settledForm(rows, dateOrders, [&](const CsvRow& row, DateOrder order) {
                auto date = readDate(dateText(row, m_columns), order);
                return date && m_choices.notAfter && *date > *m_choices.notAfter ? std::nullopt : date;
            });
            m_forms.dateOrder = settled.form;
            if (!settled.form) {
                m_preview.open.push_back(OpenChoice::DateOrder);
                remark(settled.contradicts ? LogPhrase::DatesInSeveralOrders : LogPhrase::DatesTellNoOrder);
            }
        }
        m_preview.dateOrder = m_forms.dateOrder;
        const auto shortYears = std::count_if(rows.begin(), rows.end(), [&](const CsvRow& row) {
            const auto text = dateText(row, m_columns);
            return readDate(text, m_forms.dateOrder.value_or(DateOrder::DayMonthYear)) && hasShortYear(text);
        });
        if (shortYears > 0)
            remark(LogPhrase::ShortYears, {shortYears});
    }

    void settleDurations(Rows rows) {
        const auto* heading = m_columns.heading(LogColumn::Duration);
        m_forms.bareDuration = m_choices.bareDuration;
        if (!heading)
            return;
        if (!m_forms.bareDuration)
            m_forms.bareDuration = heading->durationUnit;
        if (!m_forms.bareDuration) {
            const auto settled = settledForm(
                rows, bareDurations, [&](const CsvRow& row, BareDuration bare) { return durationBornOut(row, bare); });
            m_forms.bareDuration = settled.form;
            if (!settled.form) {
                m_preview.open.push_back(OpenChoice::DurationUnit);
                remark(LogPhrase::DurationUnitOpen, {heading->text});
            }
        }
        m_preview.bareDuration = m_forms.bareDuration;
    }

    /// A duration that the row's own times do not speak against.
    [[nodiscard]] std::optional<Minutes> durationBornOut(const CsvRow& row, BareDuration bare) const {
        constexpr std::int64_t tolerated = 5;
        const auto minutes = likelyDuration(m_columns.cell(row, LogColumn::Duration), bare);
        const auto between = minutesBetween(timesOf(row, m_columns, m_choices.timesAreUtc));
        const bool against = minutes && between && std::abs((*between - *minutes).value()) > tolerated;
        return against ? std::nullopt : minutes;
    }

    void settleTemperatures(Rows rows) {
        constexpr Celsius hotInFahrenheit{140};
        constexpr Celsius hotAirInFahrenheit{45};
        m_forms.temperatureUnit = settleTemperature(rows, LogColumn::MaxTemperature, hotInFahrenheit);
        m_forms.outsideUnit = settleTemperature(rows, LogColumn::Outside, hotAirInFahrenheit);
    }

    /// @param unlikely bare figures from here on are no °C
    std::optional<TemperatureUnit> settleTemperature(Rows rows, LogColumn column, Celsius unlikely) {
        const auto* heading = m_columns.heading(column);
        if (m_choices.temperatureUnit || !heading)
            return m_choices.temperatureUnit;
        if (heading->temperatureUnit)
            return heading->temperatureUnit;
        const bool bareAndHigh = std::any_of(rows.begin(), rows.end(), [&](const CsvRow& row) {
            const auto cell = m_columns.cell(row, column);
            const auto celsius = readCelsius(cell, TemperatureUnit::Celsius);
            return celsius && *celsius >= unlikely && celsius != readCelsius(cell, TemperatureUnit::Fahrenheit);
        });
        if (!bareAndHigh)
            return TemperatureUnit::Celsius;
        ask(OpenChoice::TemperatureUnit);
        remark(LogPhrase::TemperatureUnitOpen, {heading->text});
        return std::nullopt;
    }

    std::optional<AmountUnit> settleAmounts(Rows rows, LogColumn column, std::optional<AmountUnit> chosen,
                                            OpenChoice open) {
        const auto* heading = m_columns.heading(column);
        if (chosen || !heading || heading->amountUnit)
            return chosen || !heading ? chosen : heading->amountUnit;
        const bool isBare = std::any_of(rows.begin(), rows.end(), [&](const CsvRow& row) {
            const auto amount = readAmount(m_columns.cell(row, column));
            return amount && !amount->unit;
        });
        if (isBare) {
            ask(open);
            remark(LogPhrase::AmountUnitOpen, {heading->text});
        }
        return std::nullopt;
    }

    void readRows(Rows rows) {
        std::vector<int> local;
        std::vector<int> differing;
        for (const auto& row : rows) {
            auto read = readLogRow(row, m_columns, m_forms, m_choices, m_file);
            m_preview.badRows.insert(m_preview.badRows.end(), read.problems.begin(), read.problems.end());
            if (read.problems.empty() && read.waits)
                m_preview.waiting.push_back(row.line);
            if (!read.flight)
                continue;
            if (read.localTime)
                local.push_back(row.line);
            if (read.timesDiffer)
                differing.push_back(row.line);
            m_preview.flights.push_back(std::move(*read.flight));
        }
        std::stable_sort(m_preview.badRows.begin(), m_preview.badRows.end(),
                         [](const Problem& a, const Problem& b) { return a.where.line < b.where.line; });
        if (!local.empty())
            remark(LogPhrase::ZoneNotStated, {linesOf(local)});
        if (!differing.empty())
            remark(LogPhrase::DurationTaken, {linesOf(differing)});
    }

    const std::string& m_file;
    const FlightLogChoices& m_choices;
    LogColumns m_columns;
    LogForms m_forms;
    FlightLogPreview m_preview;
};

}

FlightLogPreview previewFlightLog(std::string_view bytes, const std::string& file, const FlightLogChoices& choices) {
    return Preview(file, choices).of(bytes);
}

}
