// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/padded.h"
#include "exchange/log/flight_log.h"
#include "measure/duration_text.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <set>

namespace flight_log_again_test {

using namespace crownring;

namespace {

/// How a list of flights may be written down.
struct Manner {
    char separator = ',';
    char date = '-';     // '-': ISO, '.': day first, '/': month first
    char duration = 'm'; // 'm': minutes, ':': h:mm, 'u': with the unit in the cell
    bool crLf = false;
    bool mark = false;
};

std::string inQuotes(const std::string& field, char separator) {
    if (field.find_first_of("\"\r\n") == std::string::npos && field.find(separator) == std::string::npos)
        return field;
    std::string result = "\"";
    for (const char c : field)
        result += c == '"' ? std::string("\"\"") : std::string(1, c);
    return result + "\"";
}

std::string written(CivilDate date, char manner) {
    if (manner == '.')
        return padded(date.day(), 2) + "." + padded(date.month(), 2) + "." + std::to_string(date.year());
    if (manner == '/')
        return padded(date.month(), 2) + "/" + padded(date.day(), 2) + "/" + std::to_string(date.year());
    return date.iso();
}

std::string written(Minutes minutes, char manner) {
    return manner == ':' ? hoursAndMinutes(minutes) : std::to_string(minutes.value()) + (manner == 'u' ? " min" : "");
}

std::string written(const std::vector<FlightProposal>& flights, const Manner& manner) {
    const std::string end = manner.crLf ? "\r\n" : "\n";
    std::string text = manner.mark ? "\xEF\xBB\xBF" : "";
    const auto row = [&](std::vector<std::string> fields) {
        for (std::size_t i = 0; i < fields.size(); ++i)
            text += (i == 0 ? "" : std::string(1, manner.separator)) + inQuotes(fields[i], manner.separator);
        text += end;
    };
    row({"Registration", manner.date == '/' ? "Date (MM/DD/YYYY)" : "Date", "Take-off", "Duration (min)", "Landings",
         "Inflations", "Max temp (°C)", "Tethered", "Pilot", "Remarks"});
    for (const auto& each : flights)
        row({each.balloon.text(), written(each.on, manner.date), each.time ? each.time->iso() : "",
             written(each.flight.use.minutes, manner.duration), std::to_string(each.flight.use.landings.value()),
             std::to_string(each.flight.use.inflations.value()),
             each.flight.hottest ? QString::number(each.flight.hottest->value(), 'f', 1).toStdString() : "",
             each.flight.tethered ? "yes" : "", each.by, each.note});
    return text;
}

rc::Gen<std::string> freeText() {
    const auto letter =
        rc::gen::element<std::string>("a", "Z", "7", ",", ";", "\t", "|", "\"", "\n", "\r\n", "é", "ß", "雪", "-");
    return rc::gen::map(rc::gen::container<std::vector<std::string>>(letter),
                        [](const std::vector<std::string>& letters) {
                            std::string all;
                            for (const auto& each : letters)
                                all += each;
                            return all.empty() ? all : "x" + all + "x"; // blanks at the ends are not kept, by intent
                        });
}

rc::Gen<FlightProposal> flight() {
    return rc::gen::exec([] {
        FlightProposal flight;
        flight.balloon = Registration(*rc::gen::element<std::string>("QE-RYE", "QE-OVC", "D-O\"X\"", "N 12;3"));
        flight.on = CivilDate::fromDayNumber(*rc::gen::inRange(3'000, 30'000));
        if (*rc::gen::arbitrary<bool>())
            flight.time = TimeOfDay(*rc::gen::inRange(0, 24), *rc::gen::inRange(0, 60));
        flight.flight.balloon = flight.balloon;
        flight.flight.use = {Minutes(*rc::gen::inRange(1, 721)), Landings(*rc::gen::inRange(0, 201)),
                             Inflations(*rc::gen::inRange(0, 201))};
        if (*rc::gen::arbitrary<bool>())
            flight.flight.hottest = Celsius(*rc::gen::inRange(-600, 4'001) / 10.0);
        flight.flight.tethered = *rc::gen::arbitrary<bool>();
        flight.by = *freeText();
        flight.note = *freeText();
        return flight;
    });
}

rc::Gen<Manner> manner() {
    return rc::gen::build<Manner>(rc::gen::set(&Manner::separator, rc::gen::element(',', ';', '\t', '|')),
                                  rc::gen::set(&Manner::date, rc::gen::element('-', '.', '/')),
                                  rc::gen::set(&Manner::duration, rc::gen::element('m', ':', 'u')),
                                  rc::gen::set(&Manner::crLf), rc::gen::set(&Manner::mark));
}

}

class FlightLogAgainTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsWrittenDownIsReadBack() {
        const bool held = rc::check("any list of flights, written in any manner, is read as it was", [] {
            const auto flights = *rc::gen::container<std::vector<FlightProposal>>(flight());
            const auto how = *manner();
            auto again = previewFlightLog(written(flights, how), "log.csv");
            RC_ASSERT(again.complete());
            for (auto& each : again.flights)
                each.line = 0;
            RC_ASSERT(again.flights == flights);
        });
        QVERIFY(held);
    }

    void anyBytesAreReadWithoutHarmAndNoRowIsLost() {
        const bool held = rc::check("every row below the header is a flight, bad or waiting", [] {
            const auto cell = rc::gen::element<std::string>("A", "2025-01-02", "03/04/2025", "31.12.25", "50", "1:30",
                                                            "1.30", "", "x\"", "\"a\"", "07:00", "212", "yes");
            std::string text = "reg,date,duration,take-off,landing time,max temp,tethered\n";
            const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
                rc::gen::container<std::vector<std::string>>(7, cell));
            for (const auto& row : rows)
                for (std::size_t i = 0; i < row.size(); ++i)
                    text += row[i] + (i + 1 < row.size() ? "," : "\n");
            const auto log = previewFlightLog(text, "log.csv");
            std::set<int> lines(log.waiting.begin(), log.waiting.end());
            for (const auto& bad : log.badRows)
                lines.insert(bad.where.line);
            RC_ASSERT(static_cast<int>(lines.size() + log.flights.size()) == log.rows);
            for (const auto& each : log.flights)
                RC_ASSERT(!lines.contains(each.line));
        });
        QVERIFY(held);
    }
};

CROWNRING_TEST(FlightLogAgainTest)

}

#include "flight_log_again_test.moc"
