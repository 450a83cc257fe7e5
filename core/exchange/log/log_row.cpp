// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/log_row.h"

#include "exchange/text/plain_text.h"
#include "measure/duration_text.h"
#include "measure/unit.h"
#include "problem/faults/table_fault.h"
#include "registry/likely_flight.h"

#include <algorithm>
#include <cstdlib>

namespace crownring {

const std::vector<DateOrder> dateOrders = {DateOrder::DayMonthYear, DateOrder::MonthDayYear, DateOrder::YearMonthDay};
const std::vector<BareDuration> bareDurations = {BareDuration::Minutes, BareDuration::Hours,
                                                 BareDuration::HoursPointMinutes};
const std::vector<TemperatureUnit> temperatureUnits = {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit};

namespace {

constexpr int minutesOfDay = 24 * 60;
constexpr int secondsOfDay = minutesOfDay * 60;

std::optional<WrittenTime> timeIn(std::string_view cell, const LogHeading* heading, bool timesAreUtc) {
    const auto [date, behind] = dateAndTime(cell);
    auto time = readTime(behind.empty() ? cell : behind);
    if (time && !time->offsetMinutes && (timesAreUtc || (heading && heading->utc)))
        time->offsetMinutes = 0;
    return time;
}

/// A cell read under the form that holds, or under every form when that is open: `different` when they do not agree.
template <class Value>
struct Reading {
    std::optional<Value> value;
    bool different = false;
};

template <class Form, class Read>
auto readUnder(std::optional<Form> form, const std::vector<Form>& forms, Read read) {
    Reading<typename decltype(read(forms.front()))::value_type> reading;
    if (form) {
        reading.value = read(*form);
        return reading;
    }
    for (const auto each : forms)
        if (const auto value = read(each)) {
            reading.different = reading.different || (reading.value && reading.value != value);
            reading.value = value;
        }
    return reading;
}

class RowReader {
public:
    RowReader(const CsvRow& row, const LogColumns& columns, const LogForms& forms, const FlightLogChoices& choices,
              const std::string& file)
        : m_row(row), m_columns(columns), m_forms(forms), m_choices(choices), m_file(file) {}

    LogRowRead read() {
        if (!fitsHeader())
            return std::move(m_read);
        m_times = timesOf(m_row, m_columns, m_choices.timesAreUtc);
        m_flight.line = m_row.line;
        readBalloon();
        readOn();
        checkTimes();
        readMinutes();
        readCounts();
        readTemperature(LogColumn::MaxTemperature, m_forms.temperatureUnit, m_flight.flight.hottest);
        readTemperature(LogColumn::Outside, m_forms.outsideUnit, m_flight.flight.outside);
        readFuel();
        readLoad();
        readTethered();
        readKit();
        m_flight.by = std::string(cell(LogColumn::By));
        m_flight.note = std::string(cell(LogColumn::Note));
        placeInTime();
        if (m_read.problems.empty() && !m_read.waits)
            m_read.flight = std::move(m_flight);
        return std::move(m_read);
    }

private:
    [[nodiscard]] std::string_view cell(LogColumn column) const { return m_columns.cell(m_row, column); }

    void refuse(LogColumn column, TableFault fault, Arguments arguments = {}) {
        const auto* heading = m_columns.heading(column);
        const auto key = heading ? heading->text : std::string(logColumnName(column));
        m_read.problems.push_back(Problem{fault, std::move(arguments), {m_file, m_row.line, key}});
    }

    bool fitsHeader() {
        if (m_columns.fits(m_row))
            return true;
        m_read.problems.push_back(Problem{
            TableFault::FieldsNotAsHeader, {m_row.fields.size(), m_columns.headings.size()}, {m_file, m_row.line, {}}});
        return false;
    }

    void readBalloon() {
        const auto text = cell(LogColumn::Balloon);
        if (text.empty() && !m_choices.balloon)
            refuse(LogColumn::Balloon, TableFault::NoBalloon);
        else if (!text.empty() && !isUsableName(text))
            refuse(LogColumn::Balloon, TableFault::NotARegistration, {longestName});
        else
            m_flight.balloon = m_choices.balloon ? *m_choices.balloon : Registration(text);
        m_flight.flight.balloon = m_flight.balloon;
    }

    void readOn() {
        const auto text = dateText(m_row, m_columns);
        const auto date =
            readUnder(m_forms.dateOrder, dateOrders, [&](DateOrder order) { return readDate(text, order); });
        if (text.empty())
            refuse(LogColumn::Date, TableFault::NoDate);
        else if (!date.value)
            refuse(LogColumn::Date, notADate(text), {text});
        else if (date.different)
            m_read.waits = true;
        else if (m_choices.notAfter && *date.value > *m_choices.notAfter)
            refuse(LogColumn::Date, TableFault::LaterThanToday, {text});
        else if (*date.value < firstLikelyDay())
            refuse(LogColumn::Date, TableFault::BeforeBalloons, {text});
        else
            m_flight.on = *date.value;
    }

    static TableFault notADate(std::string_view text) {
        const bool inAnother =
            std::any_of(dateOrders.begin(), dateOrders.end(), [&](DateOrder order) { return readDate(text, order); });
        if (allDigits(text))
            return inAnother ? TableFault::NotInTheOrderButDigits : TableFault::NotADateButDigits;
        return inAnother ? TableFault::NotInTheOrder : TableFault::NotADate;
    }

    [[nodiscard]] bool hasOtherMark(std::string_view text) const {
        return m_choices.decimalMark && text.find(*m_choices.decimalMark == ',' ? '.' : ',') != std::string_view::npos;
    }

    void readMinutes() {
        const auto text = cell(LogColumn::Duration);
        const auto between = minutesBetween(m_times);
        if (text.empty()) {
            if (between && between->value() > 0)
                m_flight.flight.use.minutes = *between;
            else
                refuseMissingDuration();
            return;
        }
        const auto minutes =
            readUnder(m_forms.bareDuration, bareDurations, [&](BareDuration bare) { return readDuration(text, bare); });
        if (!minutes.value || hasOtherMark(text))
            refuse(LogColumn::Duration, TableFault::NotATimeAloft, {text});
        else if (minutes.different)
            m_read.waits = true;
        else if (minutes.value->value() < 1)
            refuse(LogColumn::Duration, TableFault::TooShort);
        else if (*minutes.value > longestLikelyFlight)
            refuse(LogColumn::Duration, TableFault::UnlikelyLong, {text, hoursAndMinutes(*minutes.value)});
        else
            takeMinutes(*minutes.value, between);
    }

    void takeMinutes(Minutes minutes, std::optional<Minutes> between) {
        constexpr std::int64_t tolerated = 5;
        m_flight.flight.use.minutes = minutes;
        m_read.timesDiffer = between && std::abs((*between - minutes).value()) > tolerated;
    }

    void checkTimes() {
        for (const auto column : {LogColumn::TakeOff, LogColumn::Landing})
            if (const auto text = cell(column); !text.empty() && !timeIn(text, nullptr, false))
                refuse(column, TableFault::NotATimeOfDay, {text});
    }

    void refuseMissingDuration() {
        if (!m_read.problems.empty())
            return;
        if (m_times.takeOff && m_times.landing)
            return refuse(LogColumn::Landing, TableFault::TimesGiveNone,
                          {cell(LogColumn::TakeOff), cell(LogColumn::Landing)});
        refuse(LogColumn::Duration, TableFault::NoTimeAloft);
    }

    template <class Quantity>
    void readCountOf(LogColumn column, Quantity& into) {
        const auto text = cell(column);
        const auto count = readCount(text);
        if (text.empty())
            return;
        if (count && *count <= mostOfOneFlight)
            into = Quantity(*count);
        else
            refuse(column, TableFault::NotACount, {text, mostOfOneFlight});
    }

    void readCounts() {
        readCountOf(LogColumn::Landings, m_flight.flight.use.landings);
        readCountOf(LogColumn::Inflations, m_flight.flight.use.inflations);
    }

    void readTemperature(LogColumn column, std::optional<TemperatureUnit> form, std::optional<Celsius>& into) {
        const auto text = cell(column);
        if (text.empty() || text == "-")
            return;
        const auto celsius =
            readUnder(form, temperatureUnits, [&](TemperatureUnit unit) { return readCelsius(text, unit); });
        if (!celsius.value || *celsius.value < coldestTaken || *celsius.value > hottestTaken || hasOtherMark(text))
            refuse(column, TableFault::NotATemperature, {text, coldestTaken.value(), hottestTaken.value()});
        else if (celsius.different)
            m_read.waits = true;
        else
            into = celsius.value;
    }

    /// In kilograms or litres, with the unit that it is in; nothing where the cell is empty, refused or has to wait.
    std::optional<WrittenAmount> amountIn(LogColumn column, std::optional<AmountUnit> form) {
        const auto text = cell(column);
        if (text.empty() || text == "-")
            return std::nullopt;
        auto amount = readAmount(text);
        if (!amount || hasOtherMark(text)) {
            refuse(column, TableFault::NotAnAmount, {text});
            return std::nullopt;
        }
        if (!amount->unit)
            amount->unit = form;
        if (!amount->unit) {
            m_read.waits = true;
            return std::nullopt;
        }
        amount->value = inKilogramsOrLitres(amount->value, *amount->unit);
        return amount;
    }

    template <class Unit>
    void take(LogColumn column, double value, Unit least, Unit most, const char* symbol, std::optional<Unit>& into) {
        if (value < least.value() || value > most.value())
            refuse(column, TableFault::AmountOutside, {cell(column), least.value(), most.value(), symbol});
        else
            into = Unit(value);
    }

    void readFuel() {
        auto& flight = m_flight.flight;
        if (const auto fuel = amountIn(LogColumn::FuelUsed, m_forms.fuelUnit); fuel && isWeight(*fuel->unit))
            take(LogColumn::FuelUsed, fuel->value, leastFuelTaken, mostFuelTaken, "kg", flight.fuelWeighed);
        else if (fuel)
            take(LogColumn::FuelUsed, fuel->value, leastLitresTaken, mostLitresTaken, "l", flight.fuelRead);
    }

    void readLoad() {
        const auto load = amountIn(LogColumn::Load, m_forms.loadUnit);
        if (load && !isWeight(*load->unit))
            refuse(LogColumn::Load, TableFault::NotAnAmount, {cell(LogColumn::Load)});
        else if (load)
            take(LogColumn::Load, load->value, leastLoadTaken, mostLoadTaken, "kg", m_flight.flight.load);
    }

    void readTethered() {
        const auto text = cell(LogColumn::Tethered);
        if (text.empty())
            return;
        if (const auto tethered = readYesNo(text))
            m_flight.flight.tethered = *tethered;
        else
            refuse(LogColumn::Tethered, TableFault::NeitherYesNorNo, {text});
    }

    /// Names, apart by commas, semicolons, slashes or plus signs; which items they are the record says.
    void readKit() {
        for (const auto& [column, kind] : kitColumns) {
            NamedItems named{kind, {}};
            auto rest = cell(column);
            while (!rest.empty()) {
                const auto end = rest.find_first_of(",;/+|\n");
                if (const auto name = trimmed(rest.substr(0, end)); !name.empty())
                    named.written.emplace_back(name);
                rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
            }
            if (!named.written.empty())
                m_flight.named.push_back(std::move(named));
        }
    }

    /// A known offset gives the time in UTC and with it the day; an unknown one keeps the time as the log has it.
    void placeInTime() {
        if (!m_times.takeOff)
            return;
        const int local = m_times.takeOff->seconds / 60;
        if (!m_times.takeOff->offsetMinutes) {
            m_flight.flight.takeOff = TimeOfDay(local / 60, local % 60);
            m_read.localTime = true;
            return;
        }
        const int utc = local - *m_times.takeOff->offsetMinutes;
        const int day = utc < 0 ? -1 : utc / minutesOfDay;
        m_flight.on = addDays(m_flight.on, day);
        m_flight.time = TimeOfDay((utc - day * minutesOfDay) / 60, (utc - day * minutesOfDay) % 60);
    }

    const CsvRow& m_row;
    const LogColumns& m_columns;
    const LogForms& m_forms;
    const FlightLogChoices& m_choices;
    const std::string& m_file;
    LogTimes m_times;
    FlightProposal m_flight;
    LogRowRead m_read;
};

}

LogTimes timesOf(const CsvRow& row, const LogColumns& columns, bool timesAreUtc) {
    LogTimes times;
    auto takeOff = columns.cell(row, LogColumn::TakeOff);
    const auto* heading = columns.heading(LogColumn::TakeOff);
    if (takeOff.empty()) {
        takeOff = dateAndTime(columns.cell(row, LogColumn::Date)).second;
        heading = columns.heading(LogColumn::Date);
    }
    times.takeOff = timeIn(takeOff, heading, timesAreUtc);
    times.landing = timeIn(columns.cell(row, LogColumn::Landing), columns.heading(LogColumn::Landing), timesAreUtc);
    return times;
}

std::optional<Minutes> minutesBetween(const LogTimes& times) {
    if (!times.takeOff || !times.landing ||
        times.takeOff->offsetMinutes.has_value() != times.landing->offsetMinutes.has_value())
        return std::nullopt;
    constexpr int longest = 12 * 3600;
    const auto utc = [](const WrittenTime& time) { return time.seconds - 60 * time.offsetMinutes.value_or(0); };
    const int between = (utc(*times.landing) - utc(*times.takeOff) + 3 * secondsOfDay) % secondsOfDay;
    return between <= longest ? std::optional<Minutes>(Minutes((between + 30) / 60)) : std::nullopt;
}

std::string_view dateText(const CsvRow& row, const LogColumns& columns) {
    return dateAndTime(columns.cell(row, LogColumn::Date)).first;
}

LogRowRead readLogRow(const CsvRow& row, const LogColumns& columns, const LogForms& forms,
                      const FlightLogChoices& choices, const std::string& file) {
    return RowReader(row, columns, forms, choices, file).read();
}

}
