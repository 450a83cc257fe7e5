// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"
#include "record/random_entries.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

namespace entry_json_test {

using namespace crownring;

namespace {

Entry entry(const char* line) {
    const auto read = entryFrom(std::string_view(line));
    return read ? *read : throw std::runtime_error(text(read.error()));
}

/// What the record stores of a line.
std::string stored(const char* line) { return canonicalText(entry(line)); }

}

class EntryJsonTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsWrittenIsReadBackExactly() {
        QVERIFY(rc::check("an entry of any kind", [] {
            const auto one = *random::anyEntry();
            const auto line = canonicalText(one);
            const auto read = entryFrom(std::string_view(line));
            if (!read)
                RC_FAIL(text(read.error()) + " in " + line);
            RC_ASSERT(*read == one);
            RC_ASSERT(canonicalText(*read) == line);
            RC_CLASSIFY(true, std::string(kindName(one.body)));
        }));
    }

    void theCanonicalTextHasSortedKeysNoSpacesAndNoDefaults() {
        QCOMPARE(stored(R"({ "on":"2024-05-01", "entry":"flight.logged", "minutes":60, "balloon":"QE-ABC", "landings":1,
                             "inflations": 1, "tethered":false, "note":"", "by":"" })"),
                 std::string(R"({"balloon":"QE-ABC","entry":"flight.logged","minutes":60,"on":"2024-05-01"})"));
        QCOMPARE(
            stored(
                R"({"entry":"item.entered","on":"2024-05-01","item":"C1","kind":"cylinder","made":"2016-05","serial":null,
                            "brought_forward":{"minutes":0,"landings":0,"inflations":0}})"),
            std::string(
                R"({"entry":"item.entered","item":"C1","kind":"cylinder","made":"2016-05","on":"2024-05-01"})"));
        QCOMPARE(
            stored(R"({"entry":"event.reported","on":"2024-05-01","event":"hard-landing","item":"B1","note":"é\n"})"),
            std::string("{\"entry\":\"event.reported\",\"event\":\"hard-landing\",\"item\":\"B1\",\"note\":\"é\\n\","
                        "\"on\":\"2024-05-01\"}"));
    }

    void equalStatementsHaveOneCanonicalText() {
        QCOMPARE(
            stored(R"({"entry":"flight.logged","on":"2024-05-01","balloon":"A","minutes":60,"max_temp_c":100})"),
            stored(R"({"minutes":60,"max_temp_c":1e2,"balloon":"\u0041","on":"2024-05-01","entry":"flight.logged"})"));
    }

    void aFlightHasOneLandingAndOneInflationUnlessSaidOtherwise() {
        const auto use = [](const char* line) { return std::get<FlightLogged>(entry(line).body).use; };
        QVERIFY((use(R"({"entry":"flight.logged","on":"2024-05-01","balloon":"A","minutes":60})") ==
                 Usage{Minutes(60), Landings(1), Inflations(1)}));
        QVERIFY((
            use(R"({"entry":"flight.logged","on":"2024-05-01","balloon":"A","minutes":60,"landings":3,"inflations":0})") ==
            Usage{Minutes(60), Landings(3), Inflations(0)}));
    }

    void whatWasBroughtForwardIsZeroWhenLeftOutAndUnknownWhenNull() {
        const auto forward = [](const char* keys) { return std::get<ItemEntered>(entry(keys).body).broughtForward; };
        QVERIFY(forward(R"({"entry":"item.entered","on":"2024-05-01","item":"B1","kind":"basket"})") == newFigures);
        QVERIFY((forward(R"({"entry":"item.entered","on":"2024-05-01","item":"B1","kind":"basket",
                             "brought_forward":{"minutes":600,"landings":null}})") ==
                 Figures{Minutes(600), std::nullopt, Inflations(0)}));
    }

    void aStatedClockHasOnlyTheFiguresThatThePaperHas() {
        const auto done = std::get<RequirementDone>(
            entry(
                R"({"entry":"requirement.done","on":"2024-05-01","item":"E1","requirement":"annual","clock":{"minutes":600}})")
                .body);
        QVERIFY((done.clock == Figures{Minutes(600), std::nullopt, std::nullopt}));
    }

    // The order within one day where no time is stated: the record's own rule (fitting 00:00, flight 12:00,
    // accomplishment and reading 18:00, removal 23:59, all else 00:00).
    void withoutATimeTheKindDecidesTheMoment() {
        const auto time = [](const char* kind, nlohmann::json keys) {
            keys["entry"] = kind;
            keys["on"] = "2024-05-01";
            const auto at = momentOf(*entryFrom(keys));
            const auto minute = static_cast<int>(at.minutes() - Moment::startOf(at.on()).minutes());
            return TimeOfDay(minute / 60, minute % 60).iso();
        };
        const nlohmann::json place = {{"balloon", "A"}, {"item", "B1"}};
        QCOMPARE(time("item.fitted", place), std::string("00:00Z"));
        QCOMPARE(time("item.removed", place), std::string("23:59Z"));
        QCOMPARE(time("flight.logged", {{"balloon", "A"}, {"minutes", 1}}), std::string("12:00Z"));
        QCOMPARE(time("requirement.done", {{"item", "B1"}, {"requirement", "annual"}}), std::string("18:00Z"));
        QCOMPARE(time("reading.taken", {{"item", "B1"}, {"quantity", "grab-strength"}, {"value", 1}, {"unit", "N"}}),
                 std::string("18:00Z"));
        QCOMPARE(time("item.entered", {{"item", "B1"}, {"kind", "basket"}}), std::string("00:00Z"));
        QCOMPARE(time("balloon.entered", {{"balloon", "A"}}), std::string("00:00Z"));
        QCOMPARE(time("event.reported", {{"balloon", "A"}, {"event", "fire"}}), std::string("00:00Z"));
        QCOMPARE(time("programme.adopted", {{"programme", "p"}, {"everything", true}}), std::string("00:00Z"));
        QCOMPARE(time("entry.voided", {{"voids", "e1"}, {"reason", "twice"}}), std::string("00:00Z"));
        QCOMPARE(time("entry.corrected", {{"replaces", "e1"}, {"with", {{"note", "x"}}}}), std::string("00:00Z"));
        QCOMPARE(time("item.removed", {{"balloon", "A"}, {"item", "B1"}, {"time", "06:45Z"}}), std::string("06:45Z"));
    }

    void aFileIsReadWholeAndEveryBadLineIsListed() {
        const auto good = entriesFrom("\xEF\xBB\xBF"
                                      R"({"entry":"balloon.entered","on":"2024-05-01","balloon":"A"})"
                                      "\r\n\n  \t\r\n"
                                      R"({"entry":"balloon.entered","on":"2024-05-01","balloon":"B"})",
                                      "two.jsonl");
        QVERIFY(good);
        QCOMPARE(good->size(), std::size_t(2));
        QCOMPARE(good->at(0).line, 1);
        QCOMPARE(good->at(1).line, 4);

        const auto bad = entriesFrom("{}\n"
                                     R"({"entry":"balloon.entered","on":"2024-05-01","balloon":"A"})"
                                     "\nnot json\n",
                                     "bad.jsonl");
        QVERIFY(!bad);
        QCOMPARE(bad.error().size(), std::size_t(2));
        QCOMPARE(bad.error()[0].where, (Where{"bad.jsonl", 1, "entry"}));
        QCOMPARE(bad.error()[1].where, (Where{"bad.jsonl", 3, ""}));
        QVERIFY(entriesFrom("", "empty.jsonl")->empty());
    }

    void theDemoFleetIsAFileOfEntries() {
        QFile file(CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto fleet = entriesFrom(file.readAll().toStdString(), "fleet.jsonl");
        if (!fleet)
            QFAIL(text(fleet.error().front()).c_str());
        QVERIFY(fleet->size() > 1000);
    }

    void noBytesWhateverBringItDown() {
        QVERIFY(rc::check("any bytes", [](const std::string& bytes) { (void)entriesFrom(bytes, "x"); }));
    }
};

CROWNRING_TEST(EntryJsonTest)

}

#include "entry_json_test.moc"
