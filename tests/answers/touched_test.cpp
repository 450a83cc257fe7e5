// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/touched.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

namespace touched_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"B2","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.removed","on":"2024-06-01","balloon":"QE-ONE","item":"B1","time":"08:00Z"}
{"entry":"item.fitted","on":"2024-06-01","balloon":"QE-ONE","item":"R1","time":"09:00Z"}
{"entry":"item.removed","on":"2024-06-01","balloon":"QE-ONE","item":"R1","time":"11:00Z"}
{"entry":"item.fitted","on":"2024-06-01","balloon":"QE-ONE","item":"B2","time":"12:00Z"})";

constexpr const char* atTen = R"(,"time":"10:00Z")";
constexpr const char* kit = R"(,"kit":["E1","B1"])";
constexpr const char* calledSlip = R"(,"id":"slip")";
constexpr const char* landing =
    R"({"entry":"event.reported","on":"2024-07-01","balloon":"QE-ONE","event":"hard-landing"})";
constexpr const char* voided = R"({"entry":"entry.voided","on":"2024-07-01","voids":"slip","reason":"a slip"})";
constexpr const char* corrected =
    R"({"entry":"entry.corrected","on":"2024-07-01","replaces":"slip","with":{"balloon":"QE-TWO"}})";
constexpr const char* fitted = R"({"entry":"item.fitted","on":"2024-07-01","balloon":"QE-TWO","item":"B1"})";
constexpr int afterThat = 8;

struct Watched {
    Watched() { posted(*scratch.record, shed); }
    /// What the lines touch.
    Touched by(const std::string& lines) {
        const auto before = latestNumber(*scratch.record).value();
        posted(*scratch.record, lines);
        return touchedSince(*scratch.record, *scratch.record, before).value();
    }
    Scratch scratch;
};

std::string flight(const char* on, const char* more = "") {
    return std::string(R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":60,"on":")") + on + "\"" + more + "}";
}

std::set<ItemId> items(std::initializer_list<const char*> names) {
    std::set<ItemId> ids;
    for (const auto* name : names)
        ids.insert(ItemId(name));
    return ids;
}

}

class TouchedTest : public QObject {
    Q_OBJECT
private slots:
    void aFlightTouchesWhatWasAboardThen() {
        Watched record;
        const auto early = record.by(flight("2024-02-01"));
        QVERIFY(!early.everything);
        QCOMPARE(early.items, items({"E1", "B1"}));
        QCOMPARE(early.balloons, std::set{Registration("QE-ONE")});
        QCOMPARE(record.by(flight("2024-07-01")).items, items({"E1", "B2"}));
    }

    void aDayOfSwapsLeavesNothingOut() {
        Watched record;
        QCOMPARE(record.by(flight("2024-06-01", atTen)).items, items({"E1", "B1", "R1", "B2"}));
    }

    void aKitTouchesItsItemsAlone() {
        Watched record;
        const auto touched = record.by(flight("2024-07-01", kit));
        QCOMPARE(touched.items, items({"E1", "B1"}));
        QVERIFY(!touched.everything);
    }

    void nothingWrittenTouchesNothing() {
        Watched record;
        const auto latest = latestNumber(*record.scratch.record).value();
        const auto touched = touchedSince(*record.scratch.record, *record.scratch.record, latest).value();
        QVERIFY(!touched.everything && touched.items.empty() && touched.balloons.empty());
        QCOMPARE(touched.upTo, latest);
    }

    void whatHappensToABalloonTouchesWhatIsOnIt() {
        Watched record;
        const auto touched = record.by(landing);
        QCOMPARE(touched.items, items({"E1", "B2"}));
        QVERIFY(touched.balloons.empty());
    }

    void aVoidTouchesWhatItTakesBack() {
        Watched record;
        posted(*record.scratch.record, flight("2024-02-01", calledSlip));
        const auto touched = record.by(voided);
        QVERIFY(!touched.everything);
        QCOMPARE(touched.items, items({"E1", "B1"}));
    }

    /// What it counted on in between nobody tells any more.
    void aCorrectionAndAVoidAfterOneTouchEverything() {
        Watched record;
        posted(*record.scratch.record, flight("2024-02-01", calledSlip));
        QVERIFY(record.by(corrected).everything);
        QVERIFY(record.by(voided).everything);
    }

    void whatIsFittedTouchesEverything() {
        Watched record;
        QVERIFY(record.by(fitted).everything);
    }

    void soManyAtOnceTouchEverything() {
        Watched record;
        std::string lines;
        for (int i = 0; i < mostTold + afterThat; ++i)
            lines += flight("2024-07-01") + "\n";
        QVERIFY(record.by(lines).everything);
    }
};

CROWNRING_TEST(TouchedTest)

}

#include "touched_test.moc"
