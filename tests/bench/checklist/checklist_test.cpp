// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "said.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <set>

namespace checklist_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::vector<Visit> visits(allVisits.begin(), allVisits.end());

/// A checklist of two good lines, in which one text is replaced by another.
std::string withPatch(const QByteArray& find, const QByteArray& replacement) {
    QByteArray text = R"({"checklist": "c", "revision": "1", "title": "t", "source": "s",
        "sections": [{"id": "skin", "title": "Skin"}, {"id": "papers", "title": "Papers"}],
        "lines": [
        {"id": "a", "section": "skin", "kinds": ["envelope"], "title": "t", "look_for": "l",
         "sources": {"part-ml": "x", "us-14cfr": "y"}, "readings": [{"quantity": "grab-strength", "placed": true}]},
        {"id": "b", "section": "papers", "kinds": [], "title": "t", "look_for": "l", "sources": {"part-ml": "x"},
         "visits": ["part-ml-special"]}]})";
    return text.replace(find, replacement).toStdString();
}

Checklist read(const std::string& text) { return checklistFrom(text).value(); }

std::vector<std::string> idsOf(const std::vector<const ChecklistLine*>& lines) {
    std::vector<std::string> ids;
    for (const auto* line : lines)
        ids.push_back(line->id);
    return ids;
}

rc::Gen<std::string> anyText() {
    return rc::gen::map(rc::gen::container<std::string>(rc::gen::elementOf(std::string("abc \"\\/\n0"))),
                        [](const std::string& text) { return "§" + text; });
}

template <class T>
std::vector<T> someOf(const std::vector<T>& all) {
    std::vector<T> some;
    for (const auto& each : all)
        if (*rc::gen::arbitrary<bool>())
            some.push_back(each);
    return some;
}

ChecklistLine anyLine(int number, const std::string& section) {
    ChecklistLine line;
    line.id = std::to_string(number) + *anyText();
    std::ranges::replace(line.id, '\n', '-');
    line.section = section;
    for (int kind = 0; kind < itemKindCount; ++kind)
        if (*rc::gen::arbitrary<bool>())
            line.kinds.push_back(static_cast<ItemKind>(kind));
    line.title = *anyText();
    line.lookFor = *anyText();
    for (const auto regime : allRegimes)
        line.sources.emplace_back(regime, *anyText());
    line.visits = someOf(visits);
    if (std::ranges::any_of(line.visits, isOfOwnersTasks))
        line.ownerRule = *anyText();
    line.onlyWith = someOf<RequirementId>({RequirementId("ml.arc-review"), RequirementId("us.annual")});
    const bool envelope = std::ranges::find(line.kinds, ItemKind::Envelope) != line.kinds.end();
    if (!line.kinds.empty())
        for (const auto& quantity : someOf<std::string>({"grab-strength", "tell-tale"}))
            line.readings.push_back({quantity, *rc::gen::arbitrary<bool>(), envelope && *rc::gen::arbitrary<bool>()});
    line.photograph = *rc::gen::arbitrary<bool>();
    line.tester = *rc::gen::arbitrary<bool>();
    line.required = *rc::gen::arbitrary<bool>();
    line.ownLook = *rc::gen::arbitrary<bool>();
    if (*rc::gen::arbitrary<bool>())
        line.asks = askedDirectives;
    return line;
}

Checklist anyChecklist() {
    Checklist checklist{"any", *anyText(), *anyText(), *anyText(), *rc::gen::element<std::string>("", "n"), {}, {}};
    const int sections = *rc::gen::inRange(1, 4);
    for (int i = 0; i < sections; ++i)
        checklist.sections.push_back({"s" + std::to_string(i), *anyText()});
    const int lines = *rc::gen::inRange(1, 6);
    for (int i = 0; i < lines; ++i)
        checklist.lines.push_back(anyLine(i, "s" + std::to_string(i * sections / lines)));
    return checklist;
}

}

/// Checklist documents: what is read, what is refused and where, whose lines come when, an organisation's own lines.
class ChecklistTest : public QObject {
    Q_OBJECT
private slots:
    void everyKeyIsRead() {
        const auto checklist = read(R"({"checklist": "c.1", "revision": "7", "title": "T", "source": "S", "note": "N",
            "sections": [{"id": "skin", "title": "Skin"}],
            "lines": [{"id": "l", "section": "skin", "kinds": ["envelope", "hose"], "title": "Lt", "look_for": "Ll",
                "sources": {"us-14cfr": "U", "part-ml": "P"}, "visits": ["us-annual", "us-owner-tasks"],
                "only_with": ["us.annual"], "readings": [{"quantity": "tell-tale", "required": true, "placed": true}],
                "photograph": true, "tester": true, "owner_rule": "O", "required": false,
                "own_look": true, "asks": "directives"}]})");
        ChecklistLine line;
        line.id = "l";
        line.section = "skin";
        line.kinds = {ItemKind::Envelope, ItemKind::Hose};
        line.title = "Lt";
        line.lookFor = "Ll";
        line.sources = {{Regime::PartMl, "P"}, {Regime::Us14Cfr, "U"}};
        line.visits = {Visit::UsAnnual, Visit::UsOwnerTasks};
        line.onlyWith = {RequirementId("us.annual")};
        line.readings = {{"tell-tale", true, true}};
        line.photograph = line.tester = true;
        line.ownerRule = "O";
        line.required = false;
        line.ownLook = true;
        line.asks = "directives";
        QCOMPARE(checklist, (Checklist{"c.1", "7", "T", "S", "N", {{"skin", "Skin"}}, {line}}));
    }

    void listsOfOldAskForDirectivesByTheLinesName() {
        const auto asks = [](const Checklist& list) { return std::ranges::count_if(list.lines, asksForDirectives); };
        int lists = 0;
        for (const auto* texts : {&formerChecklists(), &checklistShelf()})
            for (const auto& text : *texts) {
                const auto list = checklistFrom(text).value();
                QCOMPARE(asks(list), list.id == "hot-air-inspection" ? 1 : 0);
                lists += list.id == "hot-air-inspection" ? 1 : 0;
            }
        QCOMPARE(lists, 4);
    }
    void whatIsAbsentHasItsDefault() {
        const auto line = read(withPatch("", "")).lines.back();
        QVERIFY(line.required && !line.photograph && !line.tester && line.ownerRule.empty() && line.onlyWith.empty());
        QVERIFY(!line.ownLook);
        QCOMPARE(read(withPatch("", "")).lines.front().readings.front(), (AskedReading{"grab-strength", false, true}));
    }

    void aChecklistIsRefusedAt_data() {
        QTest::addColumn<QByteArray>("find");
        QTest::addColumn<QByteArray>("replacement");
        QTest::addColumn<QString>("path");
        const auto refused = [](const char* why, const char* find, const char* replacement, const char* path) {
            QTest::newRow(why) << QByteArray(find) << QByteArray(replacement) << QString(path);
        };
        refused("no revision", "\"revision\": \"1\", ", "", "/revision");
        refused("a misspelt key of a line", "\"look_for\": \"l\",\n", "\"look_for\": \"l\", \"look_fer\": \"l\",\n",
                "/lines/0/look_fer");
        refused("an unknown kind of item", "[\"envelope\"]", "[\"balloon\"]", "/lines/0/kinds/0");
        refused("a regime that there is not", "\"us-14cfr\"", "\"us\"", "/lines/0/sources/us");
        refused("a visit that there is not", "part-ml-special", "part-ml-annual", "/lines/1/visits/0");
        refused("a blank source", "\"y\"", "\" \"", "/lines/0/sources/us-14cfr");
        refused("a line without any source", "{\"part-ml\": \"x\"}", "{}", "/lines/1/sources");
        refused("a quantity that is no word", "grab-strength", "Grab", "/lines/0/readings/0/quantity");
        refused("a section twice", "{\"id\": \"papers\"", "{\"id\": \"skin\"", "/sections/1/id");
        refused("a line id twice", "\"id\": \"b\"", "\"id\": \"a\"", "/lines/1/id");
        refused("a section that is not there", "\"section\": \"papers\"", "\"section\": \"paper\"", "/lines/1/section");
        refused("a visit of a regime without a source", "part-ml-special\"", "part-ml-special\", \"us-special\"",
                "/lines/1/visits/1");
        refused("an owner's task without its rule", "part-ml-special", "part-ml-owner-tasks", "/lines/1/owner_rule");
        refused("an owner's rule without a task", "\"visits\"", "\"owner_rule\": \"r\", \"visits\"",
                "/lines/1/owner_rule");
        refused("a reading of no item", "\"visits\"", "\"readings\": [{\"quantity\": \"q\"}], \"visits\"",
                "/lines/1/readings/0");
        refused("a place on a basket", "[\"envelope\"]", "[\"basket\"]", "/lines/0/readings/0/placed");
        refused("a quantity twice", "true}]", "true}, {\"quantity\": \"grab-strength\"}]",
                "/lines/0/readings/1/quantity");
    }
    void aChecklistIsRefusedAt() {
        QFETCH(QByteArray, find);
        QFETCH(QByteArray, replacement);
        QFETCH(QString, path);
        QVERIFY(checklistFrom(withPatch("", "")));
        const auto checklist = checklistFrom(withPatch(find, replacement));
        QVERIFY(!checklist);
        QCOMPARE(checklist.error().code(), Code::BadValue);
        QCOMPARE(QString::fromStdString(checklist.error().where.key), path);
        QVERIFY2(isSaid(checklist.error()), qPrintable(words::line(checklist.error())));
        QVERIFY(!canonicalChecklist(withPatch(find, replacement)));
    }
    void linesOutOfTheOrderOfTheirSectionsAreRefused() {
        const auto checklist = checklistFrom(
            withPatch("[{\"id\": \"skin\", \"title\": \"Skin\"}, {\"id\": \"papers\", \"title\": \"Papers\"}]",
                      "[{\"id\": \"papers\", \"title\": \"P\"}, {\"id\": \"skin\", \"title\": \"S\"}]"));
        QVERIFY(!checklist);
        QCOMPARE(checklist.error().where.key, std::string("/lines/1/section"));
    }
    void theMendSaysWhatIsAllowed() {
        QCOMPARE(spokenMend(checklistFrom(withPatch("[\"envelope\"]", "[\"balloon\"]")).error()),
                 std::string("give one of envelope, basket, burner, cylinder, hose, instrument, other"));
        QCOMPARE(spokenMend(checklistFrom(withPatch("\"us-14cfr\"", "\"us\"")).error()),
                 std::string("give one of the keys part-ml, us-14cfr"));
    }
    void whatIsNoJsonIsRefused() {
        for (const auto* text :
             {"", "hello", "[]", "{\"checklist\": \"c\"", R"({"checklist": "a", "checklist": "b"})"}) {
            QVERIFY(!checklistFrom(text));
            QCOMPARE(checklistFrom(text).error().code(), Code::BadJson);
        }
    }

    void whatIsWrittenIsReadBackEqual() {
        QVERIFY(rc::check("text of any checklist", [] {
            const auto checklist = anyChecklist();
            const auto text = checklistText(checklist);
            const auto again = checklistFrom(text);
            if (!again)
                RC_FAIL(crownring::text(again.error()) + " in " + text);
            RC_ASSERT(*again == checklist);
            RC_ASSERT(canonicalChecklist(text).value() == text);
        }));
    }
    void documentsThatSayTheSameHaveOneCanonicalText() {
        const auto a = canonicalChecklist(withPatch("", ""));
        const auto b = canonicalChecklist(
            withPatch("\"checklist\": \"c\", \"revision\": \"1\"", "\"revision\" :\"1\",\n\"checklist\": \"c\""));
        QVERIFY(a && b);
        QCOMPARE(*a, *b);
        QCOMPARE(checklistText(read(*a)), *a);
    }

    void aLineComesInTheVisitsOfItsRegime() {
        const auto checklist = read(withPatch("", ""));
        using Ids = std::vector<std::string>;
        QCOMPARE(idsOf(linesFor(checklist, Visit::PartMlInspection)), Ids{"a"});
        QCOMPARE(idsOf(linesFor(checklist, Visit::PartMlSpecial)), Ids{"b"});
        QCOMPARE(idsOf(linesFor(checklist, Visit::UsAnnual)), Ids{"a"});
        QCOMPARE(idsOf(linesFor(checklist, Visit::UsHundredHour)), Ids{"a"});
        QCOMPARE(idsOf(linesFor(checklist, Visit::UsSpecial)), Ids{});
        const auto partMlOnly = read(withPatch(", \"us-14cfr\": \"y\"", ""));
        QCOMPARE(idsOf(linesFor(partMlOnly, Visit::UsAnnual)), Ids{});
    }

    /// What other systems read: the list of visits there is the one of visit.h.
    void theSchemasNameEveryVisitThatThereIs() {
        const auto schema = [](const char* name) {
            QFile file(QStringLiteral(CROWNRING_SOURCE_DIR "/assets/schema/") + QLatin1String(name));
            if (!file.open(QIODevice::ReadOnly))
                qFatal("no schema");
            return nlohmann::json::parse(file.readAll().toStdString());
        };
        std::vector<std::string> names;
        for (const auto visit : allVisits)
            names.emplace_back(visitName(visit));
        const auto line = schema("checklist.schema.json")["definitions"]["line"]["properties"];
        QCOMPARE(line["visits"]["items"]["enum"].get<std::vector<std::string>>(), names);
        std::vector<std::string> regimes;
        for (const auto& [regime, clause] : line["sources"]["properties"].items())
            regimes.push_back(regime);
        QCOMPARE(regimes.size(), allRegimes.size());
        for (const auto& regime : regimes)
            QVERIFY2(regimeFrom(regime), regime.c_str());
        auto told = schema("inspection.opened.schema.json")["properties"]["visit"]["description"].get<std::string>();
        const auto list = spoken(listed(visitNames()));
        QVERIFY2(told.starts_with(list.substr(0, list.rfind(", "))), told.c_str());
        QVERIFY2(told.find(" or " + names.back()) != std::string::npos, told.c_str());
    }

    void ownLinesComeBehindThoseOfTheirSection() {
        const auto base = read(withPatch("", ""));
        auto own = base;
        own.sections = {{"shed", "Our shed"}, {"skin", "another title"}};
        own.lines = {own.lines[1], own.lines[0], own.lines[0]};
        own.lines[0].id = "z";
        own.lines[0].section = "shed";
        own.lines[1].id = "x";
        own.lines[2].id = "y";
        const auto merged = withOwnLines(base, own);
        QVERIFY(merged);
        std::vector<std::string> ids;
        for (const auto& line : merged->lines)
            ids.push_back(line.id);
        QCOMPARE(ids, (std::vector<std::string>{"a", "x", "y", "b", "z"}));
        QCOMPARE(merged->sections,
                 (std::vector<ChecklistSection>{{"skin", "Skin"}, {"papers", "Papers"}, {"shed", "Our shed"}}));
        QCOMPARE(read(checklistText(*merged)), *merged);
    }
    void anOwnLineOfAnIdThatIsTakenIsRefused() {
        const auto base = read(withPatch("", ""));
        auto own = base;
        own.lines[0].id = "free";
        const auto merged = withOwnLines(base, own);
        QVERIFY(!merged);
        QCOMPARE(merged.error().code(), Code::BadValue);
        QCOMPARE(merged.error().where.key, std::string("/lines/1/id"));
    }
};

CROWNRING_TEST(ChecklistTest)

}

#include "checklist_test.moc"
