// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/flight_log.h"
#include "record/entry_json.h"
#include "registry/flight_said.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

namespace flight_log_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

FlightLogPreview preview(const std::string& text, const FlightLogChoices& choices = {}) {
    return previewFlightLog(text, "log.csv", choices);
}

/// "QE-RYE 2025-12-31 07:34Z 55", one for each flight.
QStringList said(const FlightLogPreview& preview) {
    QStringList lines;
    for (const auto& flight : preview.flights)
        lines << QString::fromStdString(flight.balloon.text() + " " + flight.on.iso() + " " +
                                        (flight.time ? flight.time->iso() : "-") + " " +
                                        std::to_string(flight.flight.use.minutes.value()));
    return lines;
}

/// "3 Duration bad-quantity", one for each problem.
QStringList refused(const FlightLogPreview& preview) {
    QStringList lines;
    for (const auto& bad : preview.badRows)
        lines << QString::fromStdString(std::to_string(bad.where.line) + " " + bad.where.key + " " +
                                        std::string(codeName(bad.code())));
    return lines;
}

bool isOpen(const FlightLogPreview& preview, OpenChoice choice) {
    return std::find(preview.open.begin(), preview.open.end(), choice) != preview.open.end();
}

std::string fileText(const char* name) {
    std::ifstream file(std::string(CROWNRING_SOURCE_DIR) + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

}

class FlightLogTest : public QObject {
    Q_OBJECT
private slots:
    void aWholeRowBecomesAFlight() {
        const auto log = preview(
            "Registration,Date,Take-off (UTC),Duration,Landings,Inflations,Max temp (°C),Tethered,Pilot,Remarks\n"
            "QE-RYE,2025-12-31,07:34,0:55,3,2,87.5,yes,pilot 7,\"calm, misty\"\n");
        QVERIFY(log.complete());
        QCOMPARE(log.flights.size(), std::size_t{1});
        const auto& flight = log.flights[0];
        QCOMPARE(flight.balloon, Registration("QE-RYE"));
        QCOMPARE(flight.flight.balloon, Registration("QE-RYE"));
        QCOMPARE(flight.on.iso(), std::string("2025-12-31"));
        QCOMPARE(flight.time, std::optional(TimeOfDay(7, 34)));
        QCOMPARE(flight.flight.use, (Usage{Minutes(55), Landings(3), Inflations(2)}));
        QCOMPARE(flight.flight.hottest, std::optional(Celsius(87.5)));
        QVERIFY(flight.flight.tethered);
        QCOMPARE(flight.by, std::string("pilot 7"));
        QCOMPARE(flight.note, std::string("calm, misty"));
        QCOMPARE(flight.line, 2);
    }

    void whatNoFlightIsLikelyToBeIsRefused() {
        const auto log = preview("reg;date;hours\nA;1899-06-01;1:00\nA;2025-06-01;90\nA;2025-06-02;100:00\n"
                                 "A;1960-01-01;12:00\nA;2025-06-03;12:01\n");
        QCOMPARE(refused(log), QStringList({"2 date bad-date", "3 hours bad-quantity", "4 hours bad-quantity",
                                            "6 hours bad-quantity"}));
        QCOMPARE(log.flights.size(), std::size_t{1});
        QVERIFY(spokenMessage(log.badRows[1]).find("90:00") != std::string::npos);
    }

    /// A log takes the same names as the record: characters are counted there and here.
    void aRegistrationIsWhatTheRecordTakesForOne() {
        const auto letters = [](int count) { return QString(count, QChar(0x0436)).toStdString(); };
        for (const auto& name : {std::string("QE-RYE"), letters(150), letters(200), letters(201), std::string(200, 'x'),
                                 std::string(201, 'x'), std::string("QE\x01RYE")}) {
            const auto log = preview("Registration,Date,Duration\n" + name + ",2025-12-31,0:55\n");
            const auto entry = entryFrom({{"entry", "balloon.entered"}, {"on", "2025-12-31"}, {"balloon", name}});
            QCOMPARE(log.flights.size() == 1, entry.has_value());
            QCOMPARE(entry.has_value(), isUsableName(name));
        }
        QVERIFY(isUsableName(letters(200)) && !isUsableName(letters(201)));
    }
    void whatIsNotSaidIsOneLandingOneInflationFreeFlight() {
        const auto log = preview("balloon;date;minutes\nQE-RYE;2025-12-31;55\n");
        QCOMPARE(log.flights.at(0).flight.use, (Usage{Minutes(55), Landings(1), Inflations(1)}));
        QVERIFY(!log.flights[0].flight.tethered);
        QVERIFY(!log.flights[0].flight.hottest);
        QVERIFY(!log.flights[0].time);
    }

    void theHeaderMayStandBelowATitleAndColumnsInAnyOrder() {
        const auto log = preview("Fahrtenbuch 2025;;\n\nDauer (min);Kennzeichen;Datum\n55;QE-RYE;31.12.2025\n");
        QCOMPARE(log.headerLine, 3);
        QCOMPARE(said(log), QStringList{"QE-RYE 2025-12-31 - 55"});
    }

    void logsOfFourLanguages() {
        QCOMPARE(said(preview("Immatriculation;Date;Durée (h)\nQE-RYE;31/12/2025;1,5\n")),
                 QStringList{"QE-RYE 2025-12-31 - 90"});
        QCOMPARE(said(preview("Matrícula;Fecha;Duración\nQE-RYE;31/12/2025;1:30\n")),
                 QStringList{"QE-RYE 2025-12-31 - 90"});
        QCOMPARE(said(preview("Kennzeichen;Datum;Start (UTC);Landung (UTC)\nQE-RYE;31.12.2025;07:30;09:00\n")),
                 QStringList{"QE-RYE 2025-12-31 07:30Z 90"});
        QCOMPARE(said(preview("Registration,Date,Hours\nQE-RYE,12/31/2025,1.5\n")),
                 QStringList{"QE-RYE 2025-12-31 - 90"});
    }

    void oneDateSettlesTheOrderOfAll() {
        const auto british = preview("reg,date,min\nA,03/04/2025,50\nA,25/04/2025,50\n");
        QCOMPARE(said(british), (QStringList{"A 2025-04-03 - 50", "A 2025-04-25 - 50"}));
        const auto american = preview("reg,date,min\nA,03/04/2025,50\nA,04/25/2025,50\n");
        QCOMPARE(said(american), (QStringList{"A 2025-03-04 - 50", "A 2025-04-25 - 50"}));
    }

    void anAmbiguousOrderIsAskedForAndTheRowsWait() {
        const std::string text = "reg,date,min\nA,03/04/2025,50\nA,2025-04-05,51\nA,05/06/2025,52\n";
        const auto log = preview(text);
        QVERIFY(isOpen(log, OpenChoice::DateOrder));
        QVERIFY(!log.complete());
        QCOMPARE(log.waiting, (std::vector{2, 4}));
        QCOMPARE(said(log), QStringList{"A 2025-04-05 - 51"}); // ISO never waits
        FlightLogChoices choices;
        choices.dateOrder = DateOrder::MonthDayYear;
        const auto chosen = preview(text, choices);
        QVERIFY(chosen.complete());
        QCOMPARE(said(chosen), (QStringList{"A 2025-03-04 - 50", "A 2025-04-05 - 51", "A 2025-05-06 - 52"}));
        QVERIFY(preview("reg,date,min\nA,2025-03-04,50\n").complete());
    }

    void twoOrdersInOneFileAreAskedForAndTheOthersRefusedThen() {
        const std::string text = "reg,date,min\nA,31/12/2025,50\nA,12/31/2025,51\nA,01/02/2025,52\n";
        QVERIFY(isOpen(preview(text), OpenChoice::DateOrder));
        QCOMPARE(preview(text).waiting, std::vector{4});
        FlightLogChoices choices;
        choices.dateOrder = DateOrder::DayMonthYear;
        QCOMPARE(refused(preview(text, choices)), QStringList{"3 date bad-date"});
    }

    void aLogHoldsNoFlightsToCome() {
        FlightLogChoices choices;
        choices.notAfter = CivilDate::fromYearMonthDay(2025, 11, 1);
        // Read with the month first, the second date would lie ahead: so the day comes first.
        QCOMPARE(said(preview("reg,date,min\nA,03/04/2025,50\nA,10/12/2024,50\nA,06/11/2025,50\n", choices)),
                 (QStringList{"A 2025-03-04 - 50", "A 2024-10-12 - 50", "A 2025-06-11 - 50"}));
        QCOMPARE(refused(preview("reg,date,min\nA,2025-11-02,50\nA,2025-11-01,50\n", choices)),
                 QStringList{"2 date bad-date"});
    }

    void yearsOfTwoDigitsAreToldAbout() {
        const auto log = preview("reg;date;min\nA;31.12.25;50\n");
        QCOMPARE(said(log), QStringList{"A 2025-12-31 - 50"});
        QCOMPARE(log.remarks.size(), std::size_t{1});
        QVERIFY(preview("reg;date;min\nA;31.12.2025;50\n").remarks.empty());
    }

    void theUnitOfBareNumbersIsFoundFromTheColumn() {
        const auto minutes = [](const char* cells, const FlightLogChoices& choices = {}) {
            return said(preview(std::string("reg;date;duration\n") + cells, choices));
        };
        QCOMPARE(minutes("A;2025-01-01;55\nA;2025-01-02;90\n"),
                 (QStringList{"A 2025-01-01 - 55", "A 2025-01-02 - 90"}));
        QCOMPARE(minutes("A;2025-01-01;1.5\nA;2025-01-02;0.75\n"),
                 (QStringList{"A 2025-01-01 - 90", "A 2025-01-02 - 45"}));
        QCOMPARE(minutes("A;2025-01-01;1:05\nA;2025-01-02;50 min\n"),
                 (QStringList{"A 2025-01-01 - 65", "A 2025-01-02 - 50"}));
    }

    void aBareNumberThatMayBeEitherIsAskedFor() {
        const std::string text = "reg;date;duration\nA;2025-01-01;1.35\nA;2025-01-02;1.10\n";
        QVERIFY(isOpen(preview(text), OpenChoice::DurationUnit));
        QVERIFY(preview(text).flights.empty());
        FlightLogChoices choices;
        choices.bareDuration = BareDuration::HoursPointMinutes;
        QCOMPARE(said(preview(text, choices)), (QStringList{"A 2025-01-01 - 95", "A 2025-01-02 - 70"}));
        choices.bareDuration = BareDuration::Hours;
        QCOMPARE(said(preview(text, choices)), (QStringList{"A 2025-01-01 - 81", "A 2025-01-02 - 66"}));
        QVERIFY(isOpen(preview("reg;date;duration\nA;2025-01-01;2\n"), OpenChoice::DurationUnit));
    }

    void theTimesOfTheRowBearOutTheUnit() {
        QCOMPARE(said(preview("reg;date;take-off;landing time;duration\nA;2025-01-01;07:00;08:35;1.35\n")),
                 QStringList{"A 2025-01-01 - 95"});
    }

    void theDurationComesFromTheTimesOverMidnightToo() {
        QCOMPARE(
            said(preview("reg;date;take-off;landing time\nA;2025-01-01;23:30;00:40\nA;2025-01-02;07:00:00;08:00:40\n")),
            (QStringList{"A 2025-01-01 - 70", "A 2025-01-02 - 61"}));
    }

    void aTimeOfAnUnknownZoneStaysInTheNote() {
        const auto log = preview("reg;date;take-off;min;note\nA;2025-07-01;19:10;50;calm\n");
        QVERIFY(!log.flights.at(0).time);
        QCOMPARE(log.flights[0].note, std::string("calm"));
        QCOMPARE(log.flights[0].flight.takeOff.value().iso(), std::string("19:10Z"));
        QCOMPARE(spoken(sourceOf(log.flights[0].flight)), std::string("take-off 19:10, zone not stated"));
        QCOMPARE(log.remarks.size(), std::size_t{1});
        FlightLogChoices choices;
        choices.timesAreUtc = true;
        QCOMPARE(said(preview("reg;date;take-off;min\nA;2025-07-01;19:10;50\n", choices)),
                 QStringList{"A 2025-07-01 19:10Z 50"});
    }

    void aTimeWithAnOffsetMovesToUtcAndSoDoesTheDay() {
        QCOMPARE(said(preview("reg;date;min\nA;2025-07-01T01:10:00+02:00;50\nA;2025-07-01T19:10Z;51\n")),
                 (QStringList{"A 2025-06-30 23:10Z 50", "A 2025-07-01 19:10Z 51"}));
    }

    void temperaturesInFahrenheitAreConverted() {
        QCOMPARE(preview("reg,date,min,max temp (°F)\nA,2025-01-01,50,212\n").flights.at(0).flight.hottest,
                 std::optional(Celsius(100)));
        QCOMPARE(preview("reg,date,min,max temp\nA,2025-01-01,50,95\n").flights.at(0).flight.hottest,
                 std::optional(Celsius(95)));
        const auto open = preview("reg,date,min,max temp\nA,2025-01-01,50,212\nA,2025-01-02,50,\n");
        QVERIFY(isOpen(open, OpenChoice::TemperatureUnit));
        QCOMPARE(open.waiting, std::vector{2});
    }

    void fuelTemperatureOfTheAirAndLoadAreTaken() {
        const auto log = preview("reg;date;min;Fuel used (kg);OAT (°C);Load (kg)\nA;2025-01-01;60;38,5;-3;340\n"
                                 "A;2025-01-02;60;80 l;;\nA;2025-01-03;60;-;;\n");
        QVERIFY(log.complete());
        const auto& weighed = log.flights.at(0).flight;
        QCOMPARE(weighed.fuelWeighed, std::optional(Kilograms(38.5)));
        QVERIFY(!weighed.fuelRead);
        QCOMPARE(weighed.outside, std::optional(Celsius(-3)));
        QCOMPARE(weighed.load, std::optional(Kilograms(340)));
        QCOMPARE(log.flights.at(1).flight.fuelRead, std::optional(Litres(80))); // the cell's unit goes before
        QVERIFY(!log.flights.at(1).flight.fuelWeighed);
        QVERIFY(!log.flights.at(2).flight.fuelWeighed && !log.flights.at(2).flight.load);
    }
    void poundsGallonsAndFahrenheitAreConverted() {
        const auto flight = preview("reg;date;min;Fuel used (US gal);OAT (°F);Load (lb)\nA;2025-01-01;60;20;50;750\n")
                                .flights.at(0)
                                .flight;
        QCOMPARE(flight.fuelRead, std::optional(Litres(75.7)));
        QCOMPARE(flight.outside, std::optional(Celsius(10)));
        QCOMPARE(flight.load, std::optional(Kilograms(340.2)));
        QCOMPARE(preview("reg;date;min;Fuel used (lb)\nA;2025-01-01;60;85\n").flights.at(0).flight.fuelWeighed,
                 std::optional(Kilograms(38.6)));
    }
    void aUnitThatNothingStatesIsAskedForAndNeverGuessed() {
        const std::string text = "reg;date;min;fuel used;load\nA;2025-01-01;60;38;340\nA;2025-01-02;60;;\n";
        const auto log = preview(text);
        QVERIFY(isOpen(log, OpenChoice::FuelUnit) && isOpen(log, OpenChoice::LoadUnit));
        QCOMPARE(log.waiting, std::vector{2});
        FlightLogChoices choices;
        choices.fuelUnit = AmountUnit::Litres;
        choices.loadUnit = AmountUnit::Kilograms;
        const auto chosen = preview(text, choices);
        QVERIFY(chosen.complete());
        QCOMPARE(chosen.flights.at(0).flight.fuelRead, std::optional(Litres(38)));
        QVERIFY(preview("reg;date;min;fuel used\nA;2025-01-01;60;38 kg\n").complete());
        QVERIFY(
            isOpen(preview("reg;date;min;fuel used (gal)\nA;2025-01-01;60;20\n"), OpenChoice::FuelUnit)); // imperial?
        const auto warm = preview("reg;date;min;OAT\nA;2025-01-01;60;59\n"); // 15 °C; nobody flies at 59
        QVERIFY(isOpen(warm, OpenChoice::TemperatureUnit) && warm.flights.empty());
    }
    void whatIsNoAmountIsRefusedWhereItStands() {
        const auto log = preview("reg;date;min;Fuel used (kg);Load (kg)\nA;2025-01-01;60;much;340\n"
                                 "A;2025-01-02;60;0;340\nA;2025-01-03;60;38;340 l\nA;2025-01-04;60;38;9000\n");
        QCOMPARE(refused(log), (QStringList{"2 Fuel used (kg) bad-quantity", "3 Fuel used (kg) bad-quantity",
                                            "4 Load (kg) bad-quantity", "5 Load (kg) bad-quantity"}));
        QCOMPARE(spokenMessage(log.badRows.at(1)), std::string("'0' is not from 0.1 to 3000 kg"));
        QVERIFY(log.flights.empty());
    }

    void everyBadRowIsListedWithLineColumnAndCode() {
        const auto log = preview("Registration;Date;Duration;Landings;Max temp;Tethered;Take-off\n"
                                 ";2025-01-01;50;1;;;\n"         // 2
                                 "A;31.11.2025;50;1;;;\n"        // 3
                                 "A;;50;1;;;\n"                  // 4
                                 "A;2025-01-01;1:7O;1;;;\n"      // 5
                                 "A;2025-01-01;;1;;;\n"          // 6
                                 "A;2025-01-01;0;1;;;\n"         // 7
                                 "A;2025-01-01;50;many;;;\n"     // 8
                                 "A;2025-01-01;50;201;;;\n"      // 9
                                 "A;2025-01-01;50;1;hot;;\n"     // 10
                                 "A;2025-01-01;50;1;;perhaps;\n" // 11
                                 "A;2025-01-01;50;1;;;25:00\n"   // 12
                                 "A;2025-01-01;1,5;1\n"          // 13
                                 "A;2025-01-01;50;1;;;;;7\n"     // 14
                                 "A;2025-01-01;50;1;;;07:00\n"   // good
                                 "A;x;y;z;;;\n"                  // 16, three times bad
                                 "A;2025-01-01;\"50;1\n");       // 17
        QCOMPARE(refused(log),
                 (QStringList{"2 Registration csv-bad-row", "3 Date bad-date", "4 Date csv-bad-row",
                              "5 Duration bad-quantity", "6 Duration csv-bad-row", "7 Duration bad-quantity",
                              "8 Landings bad-quantity", "9 Landings bad-quantity", "10 Max temp bad-quantity",
                              "11 Tethered bad-value", "12 Take-off bad-date", "13  csv-bad-row", "14  csv-bad-row",
                              "16 Date bad-date", "16 Duration bad-quantity", "16 Landings bad-quantity",
                              "17  csv-bad-row"}));
        for (const auto& bad : log.badRows) {
            QCOMPARE(bad.where.file, std::string("log.csv"));
            QVERIFY2(isSaid(bad), qPrintable(words::line(bad)));
        }
        QCOMPARE(log.flights.size(), std::size_t{1});
        QCOMPARE(log.rows, 16);
    }

    void landingBeforeTakeOffIsNoFlightOfTwentyThreeHours() {
        QCOMPARE(
            refused(preview("reg;date;take-off;landing time\nA;2025-01-01;08:00;07:00\nA;2025-01-01;08:00;08:00\n")),
            (QStringList{"2 landing time csv-bad-row", "3 landing time csv-bad-row"}));
    }

    void withoutAUsableHeaderTheFileIsRefused() {
        for (const auto* text :
             {"", "1;2;3\n4;5;6\n", "reg;date\nA;2025-01-01\n", "date;min\n2025-01-01;50\n", "reg;min\nA;50\n"}) {
            const auto log = preview(text);
            QVERIFY(log.refused);
            QCOMPARE(log.refused->code(), Code::CsvNoHeader);
            QVERIFY(spokenMend(*log.refused).find("registration") != std::string::npos);
            QVERIFY(log.flights.empty());
        }
        QVERIFY(spokenMessage(*preview("reg;date\nA;2025-01-01\n").refused).find("'reg', 'date'") != std::string::npos);
    }

    void theUserSaysWhichColumnIsWhichAndWhichBalloonItIs() {
        FlightLogChoices choices;
        choices.columns = {{LogColumn::Duration, 1}, {LogColumn::Date, 0}};
        choices.balloon = Registration("QE-RYE");
        QCOMPARE(said(preview("when;how long\n2025-01-01;50\n", choices)), QStringList{"QE-RYE 2025-01-01 - 50"});
        choices.columns = {{LogColumn::Note, -1}};
        QVERIFY(preview("date;min;note\n2025-01-01;50;secret\n", choices).flights.at(0).note.empty());
    }

    void registrationGoesBeforeBalloonButHoursAndMinutesAreNotChosenBetween() {
        QCOMPARE(said(preview("Balloon;Registration;date;min\nThe Plum;QE-RYE;2025-01-01;50\n")),
                 QStringList{"QE-RYE 2025-01-01 - 50"});
        const auto log = preview("reg;date;hours;minutes\nA;2025-01-01;1;35\n");
        QVERIFY(isOpen(log, OpenChoice::Columns));
        QVERIFY(spoken(log.remarks.at(0)).find("'hours' and 'minutes'") != std::string::npos);
    }

    void fuelThatIsNotReadIsToldOf() {
        for (const char* heading : {"fuel", "Gas [l]", "Propane"}) {
            const auto log = preview("reg;date;min;" + std::string(heading) + "\nA;2025-01-01;50;38\n");
            QCOMPARE(said(log), QStringList{"A 2025-01-01 - 50"});
            QCOMPARE(log.remarks.size(), std::size_t{1});
            QVERIFY(spoken(log.remarks[0]).find("call it 'fuel used'") != std::string::npos);
        }
        QVERIFY(preview("reg;date;min;fuel_kg\nA;2025-01-01;50;38\n").remarks.empty());
    }

    void aColumnOfPlacesIsNoTakeOffTime() {
        const auto log = preview("reg;date;start;landing;min\nA;2025-01-01;Ovel Green;Tarn Field;50\n");
        QCOMPARE(said(log), QStringList{"A 2025-01-01 - 50"});
        QCOMPARE(log.remarks.size(), std::size_t{2});
    }

    void theDecimalMarkMayBeHeldTo() {
        FlightLogChoices choices;
        choices.decimalMark = '.';
        QCOMPARE(refused(preview("reg;date;hours\nA;2025-01-01;1,5\nA;2025-01-01;1.5\n", choices)),
                 QStringList{"2 hours bad-quantity"});
    }

    void theDemoLogHasTwoBadRowsOf25() {
        const auto log = previewFlightLog(fileText("/demo_data/flight_log.csv"), "flight_log.csv");
        QCOMPARE(log.rows, 25);
        QCOMPARE(log.flights.size(), std::size_t{23});
        QCOMPARE(refused(log), (QStringList{"18 Duration bad-quantity", "26 Date bad-date"}));
        QVERIFY(log.open.empty());
    }
};

CROWNRING_TEST(FlightLogTest)

}

#include "flight_log_test.moc"
