// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/known_events.h"
#include "rules/shed.h"
#include "said.h"
#include "test_class.h"

#include <QDir>

namespace programme_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::shed;

namespace {

/// A programme of two good requirements; `patch` replaces what is at a JSON pointer.
std::string withPatch(const QByteArray& find, const QByteArray& replacement) {
    QByteArray text = R"({"programme": "p", "revision": "1", "title": "t", "source": "s", "requirements": [
        {"id": "a", "title": "t", "source": "s", "kinds": ["envelope"], "action": "inspect",
         "limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}]},
        {"id": "b", "title": "t", "source": "s", "kinds": ["basket"], "action": "test", "triggered_by": ["fire"]}]})";
    return text.replace(find, replacement).toStdString();
}

}

/// Programme documents: what is read, what is refused and where, what ships.
class ProgrammeTest : public QObject {
    Q_OBJECT
private slots:
    void everyKeyIsRead() {
        const auto programme =
            programmeFrom(R"({"programme": "p.1", "revision": "7", "title": "T", "source": "S", "note": "N",
            "requirements": [{"id": "r", "title": "Rt", "source": "Rs", "note": "Rn", "kinds": ["cylinder", "hose"],
                "types": ["T-1"], "serials": [{"from": "1", "to": "9"}, {"from": "20"}], "action": "replace",
                "limits": [{"clock": "months", "every": 12, "first": 24, "tolerance": 1, "day": "month-end", "look_ahead": 2}],
                "whichever": "last", "next_from": "kept", "window": {"days": 30}, "starts_from": "made",
                "tolerance_for": "positioning", "satisfied_by": ["x"], "once": true, "ended_by": ["y"],
                "force": "recommended", "blocks": "filling", "operations": ["for-hire"], "triggered_by": ["fire"],
                "by_method": {"proof": 120}, "exempt_until": {"limits": [{"clock": "minutes", "every": 9000}]}, "at_most": 2}]})");
        QVERIFY2(programme, programme ? "" : text(programme.error()).c_str());
        Requirement expected;
        expected.id = RequirementId("r");
        expected.title = "Rt";
        expected.source = "Rs";
        expected.note = "Rn";
        expected.kinds = {ItemKind::Cylinder, ItemKind::Hose};
        expected.types = {"T-1"};
        expected.serials = {{"1", "9"}, {"20", std::nullopt}};
        expected.action = Action::Replace;
        expected.limits = {{ClockName::Months, 12, 24, 1, DayRule::MonthEnd, 2}};
        expected.whichever = Whichever::Last;
        expected.nextFrom = NextFrom::Kept;
        expected.window = {{ClockName::Days, 30}};
        expected.startsFrom = StartsFrom::Made;
        expected.toleranceFor = ToleranceFor::Positioning;
        expected.satisfiedBy = {RequirementId("x")};
        expected.once = true;
        expected.endedBy = {RequirementId("y")};
        expected.force = Force::Recommended;
        expected.blocks = Blocks::Filling;
        expected.operations = {"for-hire"};
        expected.triggeredBy = {"fire"};
        expected.byMethod = {{"proof", 120}};
        expected.exemptUntil = {{ClockName::Minutes, 9000}};
        expected.atMost = 2;
        QCOMPARE(programme->requirements, std::vector{expected});
        QCOMPARE(programme->id, ProgrammeId("p.1"));
        QCOMPARE(programme->revision + programme->title.written() + programme->source.written() +
                     programme->note.written(),
                 std::string("7TSN"));
    }

    void whatIsAbsentHasItsSettledDefault() {
        const auto requirement = rule(R"("limits": [{"clock": "months", "every": 12}])");
        QCOMPARE(requirement.whichever, Whichever::First);
        QCOMPARE(requirement.nextFrom, NextFrom::Done);
        QCOMPARE(requirement.startsFrom, StartsFrom::Done);
        QCOMPARE(requirement.toleranceFor, ToleranceFor::Flight);
        QCOMPARE(requirement.force, Force::Mandatory);
        QCOMPARE(requirement.blocks, Blocks::Flight);
        QCOMPARE(requirement.limits.front(),
                 (Limit{ClockName::Months, 12, std::nullopt, 0, DayRule::Same, std::nullopt}));
    }

    void aProgrammeIsRefusedAt_data() {
        QTest::addColumn<QByteArray>("find");
        QTest::addColumn<QByteArray>("replacement");
        QTest::addColumn<QString>("path");
        const auto refused = [](const char* why, const char* find, const char* replacement, const char* path) {
            QTest::newRow(why) << QByteArray(find) << QByteArray(replacement) << QString(path);
        };
        refused("an interval of nothing", "12}", "0}", "/requirements/0/limits/1/every");
        refused("an interval beyond any clock", "12}", "10000000001}", "/requirements/0/limits/1/every");
        refused("an interval beyond any integer", "12}", "18446744073709551615}", "/requirements/0/limits/1/every");
        refused("half a month", "12}", "0.5}", "/requirements/0/limits/1/every");
        refused("an interval as text", "12}", "\"12\"}", "/requirements/0/limits/1/every");
        refused("a limit without an interval", ", \"every\": 12}", "}", "/requirements/0/limits/1/every");
        refused("a clock that no item has", "\"months\"", "\"years\"", "/requirements/0/limits/1/clock");
        refused("a misspelt key of a limit", "12}", "12, \"tolerence\": 1}", "/requirements/0/limits/1/tolerence");
        refused("a misspelt key of a requirement", "\"triggered_by\"", "\"trigered_by\": [\"x\"], \"triggered_by\"",
                "/requirements/1/trigered_by");
        refused("a key that needs escaping", "12}", "12, \"a/b~c\": 1}", "/requirements/0/limits/1/a~1b~0c");
        refused("an unknown kind of item", "\"basket\"", "\"gondola\"", "/requirements/1/kinds/0");
        refused("an unknown action", "\"test\"", "\"bless\"", "/requirements/1/action");
        refused("an empty title", "\"title\": \"t\", \"source\": \"s\", \"kinds\": [\"basket\"]",
                "\"title\": \"\", \"source\": \"s\", \"kinds\": [\"basket\"]", "/requirements/1/title");
        refused("no revision", "\"revision\": \"1\", ", "", "/revision");
        refused("a misspelt key of the programme", "\"requirements\"", "\"requirments\"", "/requirments");
        refused("an id twice", "\"id\": \"b\"", "\"id\": \"a\"", "/requirements/1/id");
        refused("kept without a window", "\"id\": \"a\",", "\"id\": \"a\", \"next_from\": \"kept\",",
                "/requirements/0/window");
        refused("an empty range of serial numbers", "\"id\": \"a\",",
                "\"id\": \"a\", \"serials\": [{\"from\": \"1\"}, {\"from\": \"10\", \"to\": \"9\"}],",
                "/requirements/0/serials/1");
        refused("an empty window", "\"id\": \"a\",", "\"id\": \"a\", \"window\": {},", "/requirements/0/window");
    }
    void aProgrammeIsRefusedAt() {
        QFETCH(QByteArray, find);
        QFETCH(QByteArray, replacement);
        QFETCH(QString, path);
        QVERIFY(programmeFrom(withPatch("", "")));
        const auto programme = programmeFrom(withPatch(find, replacement));
        QVERIFY(!programme);
        QCOMPARE(programme.error().code(), Code::BadProgramme);
        QCOMPARE(QString::fromStdString(programme.error().where.key), path);
        QVERIFY2(isSaid(programme.error()), qPrintable(words::line(programme.error())));
    }

    void aProgrammeWithoutARequirementIsRefused() {
        const auto programme =
            programmeFrom(R"({"programme": "p", "revision": "1", "title": "t", "source": "s", "requirements": []})");
        QVERIFY(!programme);
        QCOMPARE(programme.error().where.key, std::string("/requirements"));
    }
    void nothingWouldEverMakeItDue() {
        for (const auto* keys : {R"("limits": [])", R"("once": true)"}) {
            const auto programme = programmeFrom(withPatch("\"triggered_by\": [\"fire\"]", keys));
            QVERIFY(!programme);
            QVERIFY(programme.error().where.key.starts_with("/requirements/1"));
        }
    }
    void anIntervalByMethodNeedsALimitOnMonths() {
        const auto programme =
            programmeFrom(withPatch("\"triggered_by\": [\"fire\"]",
                                    R"("limits": [{"clock": "days", "every": 1}], "by_method": {"proof": 12})"));
        QVERIFY(!programme);
        QVERIFY(programme.error().where.key.starts_with("/requirements/1"));
    }
    void theMendSaysWhatIsAllowed() {
        QCOMPARE(spokenMend(programmeFrom(withPatch("12}", "0}")).error()),
                 std::string("give a whole number from 1 to 10000000000"));
        QCOMPARE(spokenMend(programmeFrom(withPatch("\"test\"", "\"bless\"")).error()),
                 std::string("give one of inspect, test, service, replace, retire, comply"));
    }

    void whatIsNoJsonIsRefused_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("words") << QByteArray("hello");
        QTest::newRow("a list") << QByteArray("[]");
        QTest::newRow("a number") << QByteArray("1");
        QTest::newRow("cut short") << QByteArray("{\"programme\": \"p\"");
        QTest::newRow("something after it") << QByteArray("{} {}");
        QTest::newRow("not UTF-8") << QByteArray("{\"programme\": \"\xff\"}");
        QTest::newRow("a key twice") << QByteArray(R"({"programme": "p", "programme": "q"})");
        QTest::newRow("nested without end") << QByteArray("{\"requirements\": ") + QByteArray(200'000, '[');
        QTest::newRow("nested deeply and closed")
            << QByteArray("{\"a\": ") + QByteArray(200'000, '[') + QByteArray(200'000, ']') + "}";
    }
    void whatIsNoJsonIsRefused() {
        QFETCH(QByteArray, text);
        const auto programme = programmeFrom(text.toStdString());
        QVERIFY(!programme);
        QCOMPARE(programme.error().code(), Code::BadJson);
        QVERIFY(!canonicalProgramme(text.toStdString()));
    }
    void aKeyTwiceIsNamed() {
        QCOMPARE(programmeFrom(R"({"programme": "p", "programme": "q"})").error().where.key, std::string("programme"));
    }
    void theSameKeyInTwoObjectsIsNotTwice() { QVERIFY(programmeFrom(withPatch("", ""))); }

    void documentsThatSayTheSameHaveOneCanonicalText() {
        const auto a = canonicalProgramme(withPatch("", ""));
        const auto b = canonicalProgramme(
            withPatch("{\"clock\": \"months\", \"every\": 12}", "{ \"every\" :12,\n \"clock\":\"months\"}"));
        QVERIFY(a && b);
        QCOMPARE(*a, *b);
        QVERIFY(a->find('\n') == std::string::npos &&
                a->starts_with("{\"programme\":\"p\",\"requirements\":[{\"action\":"));
        QCOMPARE(*canonicalProgramme(*a), *a);
        QVERIFY(*a != *canonicalProgramme(withPatch("12}", "13}")));
    }

    /// Each event makes something due by a programme that ships, with its source, whatever the regime.
    void everyKnownEventMakesSomethingDue() {
        for (const auto& event : knownEvents) {
            int made = 0;
            for (const auto& text : shelf()) {
                const auto programme = programmeFrom(text).value();
                for (const auto& asked : programme.requirements)
                    if (std::ranges::find(asked.triggeredBy, event.name) != asked.triggeredBy.end()) {
                        ++made;
                        QVERIFY2(asked.force == Force::Mandatory, std::string(event.name).c_str());
                        QVERIFY2(!event.of || asked.kinds == std::vector{*event.of}, std::string(event.name).c_str());
                    }
            }
            QVERIFY2(made > 0, std::string(event.name).c_str());
        }
    }
    void theShelfHoldsEveryProgrammeThatShips() {
        const QDir programmes(CROWNRING_SOURCE_DIR "/assets/programmes");
        const auto files = programmes.entryList({"*.json"});
        QVERIFY(!files.isEmpty());
        QCOMPARE(shelf().size(), static_cast<std::size_t>(files.size()));
        for (const auto& name : files) {
            QFile file(programmes.filePath(name));
            QVERIFY(file.open(QIODevice::ReadOnly));
            const auto text = canonicalProgramme(file.readAll().toStdString());
            QVERIFY2(text, text ? "" : (name.toStdString() + ": " + crownring::text(text.error())).c_str());
            QVERIFY(std::ranges::find(shelf(), *text) != shelf().end());
            const auto programme = programmeFrom(*text);
            QCOMPARE(QString::fromStdString(programme->id.text()) + ".json", name);
            QCOMPARE(shelfText(programme->id), std::string_view(*text));
        }
        QVERIFY(shelfText(ProgrammeId("unheard-of")).empty());
    }
};

CROWNRING_TEST(ProgrammeTest)

}

#include "programme_test.moc"
