// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/flight_import.h"
#include "acts/small_record.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace flight_import_test {

using namespace crownring;

namespace {

CivilDate day(int number) { return CivilDate::fromDayNumber(20'000 + number); }

FlightProposal flight(const char* balloon, int on, int minutes, std::optional<TimeOfDay> time = {}) {
    FlightProposal proposal;
    proposal.balloon = Registration(balloon);
    proposal.on = day(on);
    proposal.time = time;
    proposal.flight.balloon = proposal.balloon;
    proposal.flight.use.minutes = Minutes(minutes);
    return proposal;
}

SmallRecord valley() { return SmallRecord({{"QE-RYE", day(0)}, {"QE-OVC", day(5)}}); }

QString states(Books& books, const std::vector<FlightProposal>& proposals) {
    QString all;
    const auto judged = judge(books, proposals).value();
    for (const auto& each : judged)
        all += "NLTU"[static_cast<int>(each.state)]; // New, Logged, Twice, Unknown
    return all;
}

std::size_t import(SmallRecord& record, const std::vector<FlightProposal>& proposals) {
    return accept(record, record, judge(record, proposals).value(), "log.csv").value().ids.size();
}

constexpr TimeOfDay dawn(7, 30);
constexpr TimeOfDay dusk(18, 10);

}

class FlightImportTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsAcceptedStandsInTheRecord() {
        auto record = valley();
        auto proposal = flight("QE-RYE", 3, 55, dawn);
        proposal.by = "pilot 7";
        proposal.note = "calm";
        proposal.flight.use.landings = Landings(2);
        proposal.flight.hottest = Celsius(88.5);
        QCOMPARE(import(record, {proposal}), std::size_t{1});
        const auto& entry = record.entries().at(0);
        QCOMPARE(entry.on, day(3));
        QCOMPARE(entry.time, std::optional(dawn));
        QCOMPARE(entry.by, std::string("pilot 7"));
        QCOMPARE(entry.note, std::string("calm"));
        QCOMPARE(std::get<FlightLogged>(entry.body), proposal.flight);
    }

    void importingTwiceChangesNothing() {
        const bool held = rc::check("a second import of any file adds nothing", [] {
            auto record = valley();
            const auto proposals = *rc::gen::container<std::vector<FlightProposal>>(rc::gen::exec([] {
                const auto time = *rc::gen::element<std::optional<TimeOfDay>>(std::nullopt, dawn, dusk);
                return flight(*rc::gen::element("QE-RYE", "QE-OVC", "QE-NONE"), *rc::gen::inRange(0, 8),
                              *rc::gen::element(50, 51), time);
            }));
            import(record, proposals);
            const auto after = record.entries().size();
            RC_ASSERT(import(record, proposals) == 0u);
            RC_ASSERT(record.entries().size() == after);
        });
        QVERIFY(held);
    }

    void theSameFlightIsRecognisedWhereEitherSideStatesNoTime() {
        auto record = valley();
        import(record, {flight("QE-RYE", 1, 50, dawn), flight("QE-RYE", 2, 50)});
        QCOMPARE(states(record, {flight("QE-RYE", 1, 50), flight("QE-RYE", 2, 50, dusk)}), QString("LL"));
        QCOMPARE(states(record, {flight("QE-RYE", 1, 50, dawn), flight("QE-RYE", 1, 51, dawn)}), QString("LN"));
    }

    void anotherTimeIsAnotherFlight() {
        auto record = valley();
        import(record, {flight("QE-RYE", 1, 50, dawn)});
        QCOMPARE(states(record, {flight("QE-RYE", 1, 50, dusk)}), QString("N"));
        QCOMPARE(states(record, {flight("QE-RYE", 3, 50, dawn), flight("QE-RYE", 3, 50, dusk)}), QString("NN"));
    }

    void whatWasInTheAirAtThatTimeIsTheSameFlight() {
        auto record = valley();
        import(record, {flight("QE-RYE", 1, 60, TimeOfDay(7, 30)), flight("QE-RYE", 2, 60, TimeOfDay(23, 30))});
        // A track begins later and ends earlier than the pilot's watch.
        QCOMPARE(states(record, {flight("QE-RYE", 1, 53, TimeOfDay(7, 34))}), QString("L"));
        QCOMPARE(states(record, {flight("QE-RYE", 1, 200, TimeOfDay(6, 0))}), QString("L"));
        // It lasted past midnight.
        QCOMPARE(states(record, {flight("QE-RYE", 3, 30, TimeOfDay(0, 0))}), QString("L"));
        // The next hop begins in the minute in which the one before ended, or was noted so.
        QCOMPARE(states(record, {flight("QE-RYE", 1, 20, TimeOfDay(8, 30))}), QString("N"));
        QCOMPARE(states(record, {flight("QE-RYE", 1, 20, TimeOfDay(8, 28))}), QString("N"));
        QCOMPARE(states(record, {flight("QE-RYE", 1, 20, TimeOfDay(7, 12))}), QString("N"));
        // Another balloon flies at the same time.
        QCOMPARE(states(record, {flight("QE-OVC", 6, 53, TimeOfDay(7, 34))}), QString("N"));
    }

    void theSameTakeOffTwiceInAFileIsACopy() {
        auto record = valley();
        QCOMPARE(states(record, {flight("QE-RYE", 3, 50, dawn), flight("QE-RYE", 3, 50, dawn)}), QString("NT"));
    }

    void equalFlightsWithoutTimesCountAgainstTheRecordOneByOne() {
        auto record = valley();
        QCOMPARE(states(record, {flight("QE-RYE", 3, 50), flight("QE-RYE", 3, 50)}), QString("NN"));
        import(record, {flight("QE-RYE", 3, 50)});
        QCOMPARE(states(record, {flight("QE-RYE", 3, 50), flight("QE-RYE", 3, 50)}), QString("LN"));
        import(record, {flight("QE-RYE", 3, 50), flight("QE-RYE", 3, 50)});
        QCOMPARE(record.entries().size(), std::size_t{2});
    }

    void theSurestPairsAreFoundFirst() {
        auto record = valley();
        import(record, {flight("QE-RYE", 1, 50, dawn), flight("QE-RYE", 1, 50, dusk)});
        // The untimed row must not use up the record's dusk flight.
        QCOMPARE(
            states(record, {flight("QE-RYE", 1, 50), flight("QE-RYE", 1, 50, dawn), flight("QE-RYE", 1, 50, dusk)}),
            QString("NLL"));
    }

    void aBalloonMustBeInTheRecordOnThatDay() {
        auto record = valley();
        QCOMPARE(states(record, {flight("QE-NONE", 3, 50), flight("QE-OVC", 4, 50), flight("QE-OVC", 5, 50),
                                 flight("", 5, 50)}),
                 QString("UUNU"));
        QCOMPARE(import(record, {flight("QE-NONE", 3, 50)}), std::size_t{0});
        QVERIFY(record.entries().empty());
    }

    void acceptingTheSamePreviewTwiceIsRefused() {
        auto record = valley();
        auto proposal = flight("QE-RYE", 3, 55);
        proposal.line = 7;
        const auto preview = judge(record, {proposal}).value();
        QVERIFY(accept(record, record, preview, "log.csv"));
        const auto again = accept(record, record, preview, "log.csv");
        QVERIFY(!again);
        QCOMPARE(again.error().at(0).code(), Code::AlreadyLogged);
        QCOMPARE(again.error().at(0).where, (Where{"log.csv", 7, ""}));
        QCOMPARE(record.entries().size(), std::size_t{1});
    }

    void nothingProposedIsNothingPosted() {
        auto record = valley();
        QCOMPARE(import(record, {}), std::size_t{0});
    }
};

CROWNRING_TEST(FlightImportTest)

}

#include "flight_import_test.moc"
