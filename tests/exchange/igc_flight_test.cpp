// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/igc_flight.h"
#include "exchange/made_track.h"

#include <QtTest>

#include <cmath>
#include <fstream>
#include <functional>
#include <iterator>

using namespace crownring;

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
};

QTEST_APPLESS_MAIN(IgcFlightTest)
#include "igc_flight_test.moc"
