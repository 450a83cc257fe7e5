// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/moment.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace moment_test {

using namespace crownring;

class MomentTest : public QObject {
    Q_OBJECT
private slots:
    void aTimeIsWrittenInUtc() {
        QCOMPARE(TimeOfDay::parse("06:45Z")->minutes(), 405);
        QCOMPARE(TimeOfDay::parse("06:45Z")->iso(), std::string("06:45Z"));
        QCOMPARE(TimeOfDay::parse("00:00Z")->minutes(), 0);
        QCOMPARE(TimeOfDay::parse("23:59Z")->minutes(), 1439);
    }

    void anythingElseIsNoTime() {
        for (const auto* text : {"", "06:45", "6:45Z", "24:00Z", "23:60Z", "06:45z", "06:45+01:00", "06-45Z", "-6:45Z",
                                 "+6:45Z", "06:4 Z", "06:45ZZ", "a6:45Z", "0a:45Z"}) {
            const auto time = TimeOfDay::parse(text);
            QVERIFY2(!time, text);
            QCOMPARE(time.error().code(), Code::BadDate);
        }
    }

    void aMomentKnowsItsDayAlsoBefore1970() {
        QVERIFY(rc::check("day and minute", [] {
            const auto on = CivilDate::fromDayNumber(*rc::gen::inRange(-141'349, 2'932'897));
            const auto minute = *rc::gen::inRange(0, 1440);
            const Moment moment(on, TimeOfDay(minute / 60, minute % 60));
            RC_ASSERT(moment.on() == on);
            RC_ASSERT(Moment::startOf(on) <= moment);
            RC_ASSERT(moment < Moment::endOf(on));
        }));
    }

    void tiesGoByIdAsBytes() {
        const Moment noon(*CivilDate::parse("2024-05-01"), TimeOfDay(12, 0));
        QVERIFY((Stamp{noon, EntryId("a")} < Stamp{noon, EntryId("b")}));
        QVERIFY((Stamp{noon, EntryId("Z")} < Stamp{noon, EntryId("a")}));
        QVERIFY(Stamp::before(noon) < (Stamp{noon, EntryId("0")}));
        QVERIFY((Stamp{noon, EntryId("z")} < Stamp{Moment(noon.minutes() + 1), EntryId("a")}));
    }
};

CROWNRING_TEST(MomentTest)

}

#include "moment_test.moc"
