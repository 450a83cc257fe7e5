// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/padded.h"
#include "exchange/track/igc_track.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace igc_track_test {

using namespace crownring;

namespace {

const std::string head = "AXCRMAD\r\nHFDTE010725\r\n";

/// A B record as the FAI specification, Appendix A, "B record - fix" has it (from memory):
/// B HHMMSS DDMMmmmN DDDMMmmmE V PPPPP GGGGG
std::string fix(int second, const std::string& rest = "4624072N01230204WA0036600411") {
    return "B" + padded(second / 3600 % 24, 2) + padded(second / 60 % 60, 2) + padded(second % 60, 2) + rest + "\r\n";
}

std::string tenFixes(int from = 3600) {
    std::string text;
    for (int i = 0; i < 10; ++i)
        text += fix(from + 10 * i);
    return text;
}

std::int64_t secondsOf(const char* date, int second) {
    return std::int64_t{CivilDate::parse(date)->dayNumber()} * 86'400 + second;
}

}

class IgcTrackTest : public QObject {
    Q_OBJECT
private slots:
    void aFixIsReadToTheThousandthOfAMinute() {
        const auto track = readIgc(head + tenFixes(), "t.igc");
        QVERIFY(track);
        QCOMPARE(track->fixes.size(), std::size_t{10});
        QVERIFY(std::abs(track->fixes[0].latitude - (46 + 24.072 / 60)) < 1e-9);
        QVERIFY(std::abs(track->fixes[0].longitude + (12 + 30.204 / 60)) < 1e-9);
        QCOMPARE(track->fixes[0].altitude, 366.0); // pressure goes before satellites
        QVERIFY(track->pressureAltitude);
        QCOMPARE(track->fixes[0].second, secondsOf("2025-07-01", 3600));
    }

    void southEastAndBelowTheSea() {
        const auto track = readIgc(head + fix(10, "4624072S01230204EA-0012-0003") + tenFixes(), "t.igc");
        QVERIFY(track->fixes[0].latitude < -46 && track->fixes[0].longitude > 12);
        QCOMPARE(track->fixes[0].altitude, -12.0);
    }

    void bothFormsOfTheDateRecord() {
        QCOMPARE(readIgc("HFDTEDATE:010725,01\r\n" + tenFixes(), "t.igc")->fixes[0].second,
                 secondsOf("2025-07-01", 3600));
        QCOMPARE(readIgc("HFDTE010799\r\n" + tenFixes(), "t.igc")->fixes[0].second, secondsOf("1999-07-01", 3600));
        QCOMPARE(readIgc("HODTE010780\n" + tenFixes(), "t.igc")->fixes[0].second, secondsOf("1980-07-01", 3600));
    }

    void midnightBringsTheNextDay() {
        const auto track = readIgc(head + tenFixes(86'350), "t.igc");
        QCOMPARE(track->fixes.back().second, secondsOf("2025-07-01", 86'440));
        const auto stated = readIgc(head + tenFixes(86'350) + "HFDTE020725\r\n" + fix(100), "t.igc");
        QCOMPARE(stated->fixes.back().second, secondsOf("2025-07-02", 100));
        const auto later = readIgc(head + tenFixes() + "HFDTE050725\r\n" + tenFixes(), "t.igc");
        QCOMPARE(later->fixes.back().second, secondsOf("2025-07-05", 3690));
    }

    void headersNameBalloonAndPilot() {
        const auto track =
            readIgc(head + "HFPLTPILOTINCHARGE: pilot 22 \r\nHFGIDGLIDERID:QE-HFC\r\n" + tenFixes(), "t.igc");
        QCOMPARE(track->balloon, std::string("QE-HFC"));
        QCOMPARE(track->pilot, std::string("pilot 22"));
    }

    void whatCannotBeUsedIsCounted() {
        const auto track = readIgc(head + tenFixes() + fix(4000, "4624072N01230204WV0036600000") + // no satellites
                                       fix(4010, "4624072X01230204WA0036600411") + "B12\r\n" +     // broken
                                       fix(3610) +                                                 // back in time
                                       fix(4020, "4699999N01230204WA0036600411") +                 // 99 minutes
                                       "LXCRcomment\r\nGABCDEF\r\nK123\r\n?!\r\n" + fix(4030),
                                   "t.igc");
        QCOMPARE(track->fixes.size(), std::size_t{11});
        QCOMPARE(track->withoutPosition, 1);
        QCOMPARE(track->unreadable, 4);
        QCOMPARE(track->otherLines, 1);
    }

    void withoutAPressureSensorTheSatellitesGiveTheAltitude() {
        std::string text = head;
        for (int i = 0; i < 10; ++i)
            text += fix(i * 10, "4624072N01230204WA0000000411");
        const auto track = readIgc(text, "t.igc");
        QVERIFY(!track->pressureAltitude);
        QCOMPARE(track->fixes[0].altitude, 411.0);
    }

    void badTracks_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("no date") << QByteArray::fromStdString("AXCR\r\n" + tenFixes());
        QTest::newRow("a date that does not exist") << QByteArray::fromStdString("HFDTE310625\r\n" + tenFixes());
        QTest::newRow("no fixes") << QByteArray::fromStdString(head);
        QTest::newRow("nine fixes") << QByteArray::fromStdString(head + tenFixes().substr(37));
        std::string flat = head;
        for (int i = 0; i < 10; ++i)
            flat += fix(i * 10, "4624072N01230204WA0000000000");
        QTest::newRow("no altitude") << QByteArray::fromStdString(flat);
        QTest::newRow("a log") << QByteArray("Registration,Date,Duration\nA,2025-01-01,50\n");
    }
    void badTracks() {
        QFETCH(QByteArray, text);
        const auto track = readIgc(text.toStdString(), "t.igc");
        QVERIFY(!track);
        QCOMPARE(track.error().code(), Code::IgcBadTrack);
        QCOMPARE(track.error().where.file, std::string("t.igc"));
    }
};

CROWNRING_TEST(IgcTrackTest)

}

#include "igc_track_test.moc"
