// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/log_heading.h"
#include "test_class.h"

#include <QtTest>

namespace log_heading_test {

using namespace crownring;

class LogHeadingTest : public QObject {
    Q_OBJECT
private slots:
    void namesAreUnderstood_data() {
        QTest::addColumn<QString>("meaning");
        const auto row = [](const char* heading, const char* meaning) { QTest::newRow(heading) << meaning; };
        row("Registration", "balloon");
        row("Kennzeichen", "balloon");
        row("Immatriculation", "balloon");
        row("Matrícula", "balloon");
        row("DATE", "date");
        row("Datum (TT.MM.JJJJ)", "date");
        row("Fecha", "date");
        row("Take-off (UTC)", "take-off");
        row("Startzeit UTC", "take-off");
        row("Décollage", "take-off");
        row("Hora de despegue (local)", "take-off");
        row("Landing time", "landing");
        row("Landung", "landing");
        row("Heure d'atterrissage", "landing");
        row("Aterrizaje", "landing");
        row("Duration", "duration");
        row("Duration (h:mm)", "duration");
        row("Dauer min", "duration");
        row("Fahrtdauer [Minuten]", "duration");
        row("Durée de vol", "duration");
        row("Duración (h)", "duration");
        row("minutes", "duration");
        row("Flight time in hours", "duration");
        row("Landings", "landings");
        row("Anzahl Landungen", "landings");
        row("Nombre d'atterrissages", "landings");
        row("Inflations", "inflations");
        row("Füllungen", "inflations");
        row("Gonflages", "inflations");
        row("max_temp_c", "max-temp");
        row("Höchsttemperatur °C", "max-temp");
        row("Temperatura máxima (°F)", "max-temp");
        row("Fuel used (kg)", "fuel-used");
        row("fuel_l", "fuel-used");
        row("Gasverbrauch [kg]", "fuel-used");
        row("Consommation de gaz (l)", "fuel-used");
        row("Combustible consumido (kg)", "fuel-used");
        row("Fuel", ""); // on board, or left: nobody knows
        row("Fuel cylinders", "cylinders");
        row("OAT (°C)", "outside-temp");
        row("Außentemperatur", "outside-temp");
        row("oat_c", "outside-temp");
        row("Load (kg)", "load");
        row("Zuladung", "load");
        row("Tethered", "tethered");
        row("Vol captif", "tethered");
        row("Pilot", "by");
        row("Pilote", "by");
        row("Bemerkungen", "note");
        row("Observaciones", "note");
        row("Passengers", "");
        row("Duration of the briefing", "");
        row("Distance (km)", "");
        row("", "");
    }
    void namesAreUnderstood() {
        QFETCH(QString, meaning);
        const auto heading = headingFrom(QTest::currentDataTag());
        QCOMPARE(heading.meaning ? QString::fromStdString(std::string(logColumnName(*heading.meaning))) : QString(),
                 meaning);
    }

    void unitsStandInBracketsOrBehind() {
        QCOMPARE(headingFrom("Duration (h)").durationUnit, std::optional(BareDuration::Hours));
        QCOMPARE(headingFrom("Duration (h.mm)").durationUnit, std::optional(BareDuration::HoursPointMinutes));
        QCOMPARE(headingFrom("Duration (hh:mm)").durationUnit, std::optional<BareDuration>());
        QCOMPARE(headingFrom("Dauer in Minuten").durationUnit, std::optional(BareDuration::Minutes));
        QCOMPARE(headingFrom("Minutes").durationUnit, std::optional(BareDuration::Minutes));
        QCOMPARE(headingFrom("Max temp °F").temperatureUnit, std::optional(TemperatureUnit::Fahrenheit));
        QCOMPARE(headingFrom("Fuel used (litres)").amountUnit, std::optional(AmountUnit::Litres));
        QCOMPARE(headingFrom("fuel_kg").amountUnit, std::optional(AmountUnit::Kilograms));
        QCOMPARE(headingFrom("Load lb").amountUnit, std::optional(AmountUnit::Pounds));
        QCOMPARE(headingFrom("Fuel used").amountUnit, std::optional<AmountUnit>());
        QCOMPARE(headingFrom("Date (MM/DD/YYYY)").dateOrder, std::optional(DateOrder::MonthDayYear));
        QVERIFY(headingFrom("Start (UTC)").utc);
        QVERIFY(!headingFrom("Start (local)").utc);
    }

    void everyColumnHasAStableName() {
        for (const auto column : logColumns())
            QCOMPARE(logColumnFrom(logColumnName(column)), std::optional(column));
        QVERIFY(!logColumnFrom("passengers"));
    }
};

CROWNRING_TEST(LogHeadingTest)

}

#include "log_heading_test.moc"
