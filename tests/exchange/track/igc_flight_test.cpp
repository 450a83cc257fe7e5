// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/igc_flight.h"
#include "exchange/track/made_track.h"
#include "registry/flight_said.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>
#include <fstream>
#include <functional>
#include <iterator>

namespace igc_flight_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const Profile usual = {{0, 0},    {4, 120},  {9, 310}, {15, 260}, {22, 540}, {30, 620},
                       {37, 380}, {43, 180}, {48, 60}, {51, 90},  {55, 19}};
const Profile low = {{0, 0}, {2, 40}, {12, 60}, {20, 30}, {27, 80}, {33, 8}, {35, -6}};
const Profile stepped = {{0, 0}, {3, 150}, {9, 150}, {12, 320}, {20, 320}, {26, 90}, {31, 90}, {35, 0}};
const Profile hoveringFirst = {{0, 0}, {1, 18}, {4, 18}, {10, 260}, {28, 240}, {38, 0}};
const Profile intoTheValley = {{0, 0}, {3, 90}, {15, -120}, {30, -60}, {45, -210}};
const Profile upTheHill = {{0, 0}, {6, 260}, {25, 420}, {36, 230}};
const Profile hop = {{0, 0}, {1, 25}, {4, 25}, {6, 0}};

using Story = std::function<void(MadeTrack&)>;

struct Shape {
    const char* name;
    Story story;
};

const std::vector<Shape> shapes = {
    {"evening",
     [](MadeTrack& t) {
         t.stand(7);
         t.fly(usual, 3);
         t.stand(6);
     }},
    {"hardly any wind",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(usual, 0.5);
         t.stand(10);
     }},
    {"fast",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(usual, 7);
         t.stand(10);
     }},
    {"very fast above",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(usual, 10);
         t.stand(10);
     }},
    {"low all the way",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(low, 2.5);
         t.stand(10);
     }},
    {"level stops, little wind",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(stepped, 0.4);
         t.stand(10);
     }},
    {"level stops, no wind",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(stepped, 0);
         t.stand(10);
     }},
    {"hovers before it climbs",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(hoveringFirst, 0.3);
         t.stand(10);
     }},
    {"down into the valley",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(intoTheValley, 3);
         t.stand(10);
     }},
    {"up the hill",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(upTheHill, 3);
         t.stand(10);
     }},
    {"tethered hop",
     [](MadeTrack& t) {
         t.stand(12);
         t.fly(hop, 0);
         t.stand(10);
     }},
    {"driven to the field and home",
     [](MadeTrack& t) {
         t.drive(15, 22, 0);
         t.stand(30);
         t.fly(usual, 3);
         t.stand(25);
         t.drive(30, 22, 0);
         t.stand(3);
     }},
    {"driven over hills",
     [](MadeTrack& t) {
         t.stand(2);
         t.drive(25, 20, 60);
         t.stand(30);
         t.fly(usual, 3);
         t.stand(20);
         t.drive(30, 24, 80);
     }},
    {"home on the motorway",
     [](MadeTrack& t) {
         t.stand(10);
         t.fly(usual, 3);
         t.stand(20);
         t.drive(6, 18, 20);
         t.motorway(20, 31, 60);
         t.drive(6, 18, 20);
         t.stand(5);
     }},
    {"walked to the road afterwards",
     [](MadeTrack& t) {
         t.stand(10);
         t.fly(usual, 3);
         t.stand(1.5);
         t.walk(3);
         t.stand(15);
     }},
    {"short rest on the ground",
     [](MadeTrack& t) {
         t.stand(2);
         t.fly(usual, 4);
         t.stand(1.5);
     }},
    {"two of a day",
     [](MadeTrack& t) {
         t.stand(15);
         t.fly(usual, 3);
         t.stand(20);
         t.drive(25, 20, 20);
         t.stand(90);
         t.drive(25, 20, 20);
         t.stand(25);
         t.fly(low, 2);
         t.stand(10);
     }},
    {"silent for four minutes aloft",
     [](MadeTrack& t) {
         t.stand(7);
         t.silence(20, 24);
         t.fly(usual, 3);
         t.stand(6);
     }},
    {"silent for twelve minutes aloft",
     [](MadeTrack& t) {
         t.stand(7);
         t.silence(20, 32);
         t.fly(usual, 3);
         t.stand(6);
     }},
};

struct Recorder {
    const char* name;
    MadeNoise noise;
};

const std::vector<Recorder> recorders = {
    {"pressure, 1 s", {3, 1, 0, true, 1, 1}},        {"pressure, 5 s", {3, 1, 0, true, 5, 2}},
    {"pressure, 10 s", {4, 1, 0, true, 10, 3}},      {"pressure, 20 s", {3, 1, 0, true, 20, 4}},
    {"satellites, 1 s", {3, 1.5, 2.5, false, 1, 5}}, {"satellites, 5 s", {4, 2, 2.5, false, 5, 6}},
};

std::string fileText(const char* name) {
    std::ifstream file(std::string(CROWNRING_SOURCE_DIR) + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::int64_t ofFirstDay(const Fix& fix) {
    return fix.second - std::int64_t{CivilDate::parse("2025-07-01")->dayNumber()} * 86'400;
}

}

/// The take-off and landing that were made into the track are the truth ("time in service", 14 CFR 1.1).
class IgcFlightTest : public QObject {
    Q_OBJECT
private slots:
    void takeOffAndLandingAreFoundWithinAMinute_data() {
        QTest::addColumn<int>("shape");
        QTest::addColumn<int>("recorder");
        QTest::addColumn<int>("seed");
        for (std::size_t s = 0; s < shapes.size(); ++s)
            for (std::size_t r = 0; r < recorders.size(); ++r)
                for (int seed = 1; seed <= 3; ++seed)
                    QTest::addRow("%s, %s, %d", shapes[s].name, recorders[r].name, seed)
                        << static_cast<int>(s) << static_cast<int>(r) << seed;
    }
    void takeOffAndLandingAreFoundWithinAMinute() {
        QFETCH(int, shape);
        QFETCH(int, recorder);
        QFETCH(int, seed);
        MadeTrack made(16 * 3600, static_cast<std::uint32_t>(seed));
        shapes[static_cast<std::size_t>(shape)].story(made);
        auto noise = recorders[static_cast<std::size_t>(recorder)].noise;
        noise.seed += static_cast<std::uint32_t>(100 * seed);
        const auto track = readIgc(made.igc(noise), "t.igc");
        QVERIFY(track);
        const auto flights = flightsIn(*track, "t.igc");
        QVERIFY(flights);
        QCOMPARE(flights->size(), made.takeOffs().size());
        for (std::size_t i = 0; i < flights->size(); ++i) {
            const auto early = ofFirstDay((*flights)[i].takeOff) - made.takeOffs()[i];
            const auto late = ofFirstDay((*flights)[i].landing) - made.landings()[i];
            QVERIFY2(std::abs(early) <= 60 && std::abs(late) <= 60,
                     qPrintable(QString("take-off %1 s, landing %2 s from the truth").arg(early).arg(late)));
            QCOMPARE((*flights)[i].landings, Landings(1));
            QVERIFY(!(*flights)[i].beganAloft && !(*flights)[i].endedAloft);
        }
    }

    void aStopOnTheWayIsALandingOfTheSameFlight() {
        MadeTrack made(16 * 3600, 1);
        made.stand(10);
        made.fly(low, 2);
        made.stand(4);
        made.fly(usual, 2);
        made.stand(10);
        const auto preview = previewTrack(made.igc({}), "two hops.igc");
        QVERIFY(preview);
        QCOMPARE(preview->proposals.size(), std::size_t{1});
        QCOMPARE(preview->proposals[0].flight.use.landings, Landings(2));
        QCOMPARE(preview->proposals[0].flight.use.inflations, Inflations(1));
        QVERIFY(std::abs(preview->proposals[0].flight.use.minutes.value() - (35 + 55)) <= 2); // the stop is not aloft
    }

    void afterAnHourOnTheGroundItIsAnotherFlight() {
        MadeTrack made(6 * 3600, 1);
        made.stand(10);
        made.fly(low, 2);
        made.stand(60);
        made.fly(low, 2);
        made.stand(10);
        QCOMPARE(flightsIn(readIgc(made.igc({}), "t.igc").value(), "t.igc")->size(), std::size_t{2});
    }

    void whoeverStaysOnTheGroundHasNotFlown_data() {
        QTest::addColumn<int>("which");
        QTest::newRow("standing") << 0;
        QTest::newRow("driving") << 1;
        QTest::newRow("driving over hills") << 2;
        QTest::newRow("walking") << 3;
        QTest::newRow("motorway") << 4;
    }
    void whoeverStaysOnTheGroundHasNotFlown() {
        QFETCH(int, which);
        const std::vector<Story> stories = {
            [](MadeTrack& t) { t.stand(60); },
            [](MadeTrack& t) {
                t.stand(5);
                t.drive(40, 22, 0);
                t.stand(5);
            },
            [](MadeTrack& t) {
                t.drive(40, 22, 80);
                t.stand(5);
            },
            [](MadeTrack& t) {
                t.stand(5);
                t.walk(20);
                t.stand(5);
            },
            [](MadeTrack& t) {
                t.stand(5);
                t.drive(5, 20, 10);
                t.motorway(30, 31, 10);
                t.drive(5, 20, 10);
                t.stand(5);
            },
        };
        for (std::uint32_t seed = 1; seed <= 5; ++seed)
            for (const auto& recorder : recorders) {
                MadeTrack made(16 * 3600, seed);
                stories[static_cast<std::size_t>(which)](made);
                const auto preview = previewTrack(made.igc(recorder.noise), "t.igc");
                QVERIFY2(!preview, recorder.name);
                QCOMPARE(preview.error().code(), Code::IgcNoFlight);
                QCOMPARE(preview.error().where.file, std::string("t.igc"));
            }
    }

    void overMidnightTheDayIsThatOfTheTakeOff() {
        MadeTrack made(23 * 3600, 1);
        made.stand(40);
        made.fly(usual, 3);
        made.stand(10);
        const auto preview = previewTrack(made.igc({}), "t.igc").value();
        QCOMPARE(preview.proposals[0].on.iso(), std::string("2025-07-01"));
        QVERIFY(std::abs(preview.proposals[0].time->minutes() - (23 * 60 + 40)) <= 1);
        QVERIFY(std::abs(preview.proposals[0].flight.use.minutes.value() - 55) <= 1);
        QCOMPARE(preview.flights[0].landing.second / 86'400 - preview.flights[0].takeOff.second / 86'400,
                 std::int64_t{1});
    }

    void aRecordingThatBeginsOrEndsAloftIsSaidToBeShort() {
        MadeTrack made(16 * 3600, 1);
        made.stand(10);
        made.fly(usual, 3);
        made.stand(10);
        auto late = made;
        late.cut(made.takeOffs()[0] + 600, made.landings()[0] + 600);
        const auto begun = previewTrack(late.igc({}), "t.igc").value();
        QVERIFY(begun.flights.at(0).beganAloft && !begun.flights[0].endedAloft);
        QVERIFY(std::abs(begun.proposals[0].flight.use.minutes.value() - 45) <= 1);
        QVERIFY(spoken(sourceOf(begun.proposals[0].flight)).find("in the air") != std::string::npos);
        auto early = made;
        early.cut(0, made.landings()[0] - 600);
        const auto ended = previewTrack(early.igc({}), "t.igc").value();
        QVERIFY(!ended.flights.at(0).beganAloft && ended.flights[0].endedAloft);
        QVERIFY(std::abs(ended.proposals[0].flight.use.minutes.value() - 45) <= 1);
    }

    void theProposalSaysWhereItComesFrom() {
        MadeTrack made(16 * 3600, 1);
        made.stand(10);
        made.fly(usual, 3);
        made.stand(10);
        const auto preview =
            previewTrack(made.igc({}, "010725", "B12\r\nB13\r\n"), "/home/someone/evening.igc").value();
        const auto& proposal = preview.proposals.at(0);
        QCOMPARE(proposal.balloon, Registration("QE-HFC"));
        QCOMPARE(proposal.flight.balloon, proposal.balloon);
        QCOMPARE(proposal.by, std::string("pilot 22"));
        QCOMPARE(proposal.note, std::string());
        const Metres highest(std::round(preview.flights[0].highest));
        QCOMPARE(proposal.flight.track, std::optional(TrackSource{"evening.igc", 2, false, false, highest}));
        QCOMPARE(spoken(sourceOf(proposal.flight)), std::string("from track evening.igc, 2 fixes skipped"));
        QVERIFY(std::abs(preview.flights[0].highest - (412 - 47 + 620)) < 10);
        QCOMPARE(previewTrack(made.igc({}), "t.igc", Registration("QE-RYE"))->proposals[0].balloon,
                 Registration("QE-RYE"));
    }

    void wildFixesAreThrownOut() {
        MadeTrack made(16 * 3600, 1);
        made.stand(10);
        made.fly(usual, 3);
        made.stand(10);
        auto text = made.igc({});
        int wild = 0;
        for (auto at = text.find("\r\nB"); at != std::string::npos; at = text.find("\r\nB", at + 37 * 40)) {
            text.replace(at + 9, 7, "1234567"); // another latitude altogether
            ++wild;
        }
        const auto preview = previewTrack(text, "t.igc").value();
        QVERIFY(wild > 10);
        QVERIFY(std::abs(preview.proposals.at(0).flight.use.minutes.value() - 55) <= 1);
        QVERIFY(spoken(sourceOf(preview.proposals[0].flight)).find(std::to_string(wild) + " fixes skipped") !=
                std::string::npos);
    }

    /// demo_data/README.md: 7 minutes on the ground, 55 aloft from 16:11 UTC, 6 on the ground.
    void theDemoTrackIsTheFlightItWasMadeOf() {
        const auto preview = previewTrack(fileText("/demo_data/evening.igc"), "evening.igc").value();
        QCOMPARE(preview.proposals.size(), std::size_t{1});
        QCOMPARE(preview.proposals[0].balloon, Registration("QE-HFC"));
        QCOMPARE(preview.proposals[0].on.iso(), std::string("2026-11-21"));
        QVERIFY(std::abs(preview.proposals[0].time->minutes() - (16 * 60 + 11)) <= 1);
        QVERIFY(std::abs(preview.proposals[0].flight.use.minutes.value() - 55) <= 1);
    }
};

CROWNRING_TEST(IgcFlightTest)

}

#include "igc_flight_test.moc"
