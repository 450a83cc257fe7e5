// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "bench/reading/quantity.h"
#include "test_class.h"

#include <QDir>
#include <QtTest>

#include <algorithm>
#include <set>
#include <sstream>

namespace checklist_scope_test {

using namespace crownring;

namespace {

const Checklist& shipped(std::string_view id) {
    static const auto all = [] {
        std::vector<Checklist> checklists;
        for (const auto& text : checklistShelf())
            checklists.push_back(checklistFrom(text).value());
        return checklists;
    }();
    return *std::ranges::find(all, id, &Checklist::id);
}

constexpr std::array periodic{Visit::PartMlInspection, Visit::UsAnnual, Visit::UsHundredHour};

QString said(const ChecklistLine& line) { return QString::fromStdString(line.title + ". " + line.lookFor); }

/// Whether one line of the visit, in that section, for that kind of item ("" for once a visit), says all of the words
/// that are separated by spaces.
bool covers(std::string_view visit, const std::string& section, const std::string& kind, const QString& words) {
    const auto& checklist = shipped("hot-air-inspection");
    const auto lines = linesFor(checklist, visitFrom(visit).value());
    return std::ranges::any_of(lines, [&](const ChecklistLine* line) {
        const auto of = itemKindFrom(kind);
        const bool ofKind = of ? std::ranges::find(line->kinds, *of) != line->kinds.end() : line->kinds.empty();
        const auto text = said(*line);
        return line->section == section && ofKind && std::ranges::all_of(words.split(' '), [&](const QString& word) {
                   return text.contains(word, Qt::CaseInsensitive);
               });
    });
}

struct ScopeItem {
    const char* section;
    const char* kind;
    const char* words;
};

// AMC1 ML.A.302(d), ELA2 balloons, hot-air: system, item and detail. Presence of the items from memory, wording from
// memory with less confidence; to be checked against the current text.
const std::vector<ScopeItem> amcScope = {{"papers", "envelope", "identification serial registration"},
                                         {"envelope", "envelope", "crown ring corrosion"},
                                         {"envelope", "envelope", "crown line length attachment"},
                                         {"envelope", "envelope", "vertical load tapes whole length"},
                                         {"envelope", "envelope", "joints crown ring flying wires"},
                                         {"envelope", "envelope", "horizontal mouth edge joints"},
                                         {"inflated", "envelope", "fabric holes repair"},
                                         {"envelope", "envelope", "fabric overheated weak"},
                                         {"envelope", "envelope", "strength fabric warp weft"},
                                         {"envelope", "envelope", "permeability"},
                                         {"closing", "envelope", "check flight porosity"},
                                         {"rigging", "envelope", "flying wires heat length"},
                                         {"rigging", "envelope", "karabiners corrosion lock"},
                                         {"envelope", "envelope", "tell-tale highest"},
                                         {"envelope", "envelope", "melting link"},
                                         {"inflated", "envelope", "control lines knots length attachments"},
                                         {"inflated", "envelope", "pulleys guide rings attachment"},
                                         {"inflated", "envelope", "parachute centring load lines overlap"},
                                         {"inflated", "envelope", "rapid deflation"},
                                         {"inflated", "envelope", "turning vents"},
                                         {"envelope", "envelope", "scoop skirt attachment"},
                                         {"papers", "burner", "identification serial"},
                                         {"burner", "burner", "frame welds bent dent fatigue corrosion"},
                                         {"burner", "burner", "gimbal worn"},
                                         {"fuel-system", "burner", "leak test valves"},
                                         {"burner", "burner", "hoses service life O-ring"},
                                         {"burner", "burner", "pilot lights"},
                                         {"burner", "burner", "pressure gauges"},
                                         {"burner", "burner", "igniters"},
                                         {"burner", "burner", "main valves leak"},
                                         {"burner", "burner", "whisper liquid-fire"},
                                         {"burner", "burner", "coils welds jets distorted"},
                                         {"burner", "burner", "flange screws"},
                                         {"papers", "basket", "identification serial"},
                                         {"basket", "basket", "weave holes sharp inside"},
                                         {"basket", "basket", "frame"},
                                         {"basket", "basket", "wires thimbles ferrules"},
                                         {"basket", "basket", "hangers"},
                                         {"basket", "basket", "floor cracks"},
                                         {"basket", "basket", "runners"},
                                         {"basket", "basket", "rawhide attachment floor"},
                                         {"basket", "basket", "rope handles padding"},
                                         {"basket", "basket", "cylinder straps"},
                                         {"basket", "basket", "pilot occupant restraint"},
                                         {"papers", "cylinder", "periodic test valid"},
                                         {"cylinders", "cylinder", "cylinder dents corrosion"},
                                         {"cylinders", "cylinder", "liquid valve O-rings"},
                                         {"cylinders", "cylinder", "vapour valve"},
                                         {"cylinders", "cylinder", "couplings O-rings"},
                                         {"cylinders", "cylinder", "relief valve age manual"},
                                         {"cylinders", "cylinder", "fixed level gauge"},
                                         {"cylinders", "cylinder", "contents gauge moves"},
                                         {"cylinders", "cylinder", "padded cover straps"},
                                         {"instruments", "instrument", "altimeter variometer envelope temperature"},
                                         {"instruments", "instrument", "battery"},
                                         {"instruments", "", "altimeter variometer envelope temperature"},
                                         {"instruments", "", "quick release"},
                                         {"instruments", "", "radio operational check"},
                                         {"instruments", "", "transponder operational check"},
                                         {"instruments", "", "fire extinguisher expiry seal"},
                                         {"instruments", "", "first-aid complete expired"},
                                         {"papers", "", "records"},
                                         {"papers", "", "directive"},
                                         {"papers", "", "bulletins"},
                                         {"papers", "", "placards"},
                                         {"papers", "", "flight manual revision"}};

// 14 CFR Part 43 App. D: (b)(1) fabric and skin, (b)(2) systems and components, (b)(3) envelope and related parts, (c)
// instruments, restraint and systems, (j) miscellaneous: from memory. (d)(7) lines, hoses, clamps: read in a
// third-party copy. (i) radio: read.
const std::vector<ScopeItem> appendixDScope = {
    {"papers", "", "cleaning opening"},                   // (a): opened and cleaned before the inspection
    {"inflated", "envelope", "fabric holes tears seams"}, // (b)(1) and (b)(3): deterioration, evidence of failure
    {"envelope", "envelope", "fabric mildew coating"},
    {"envelope", "envelope", "load tapes abrasion stitching"}, // (b)(1): insecure attachment of fittings
    {"rigging", "envelope", "karabiners"},
    {"rigging", "envelope", "flying wires"},
    {"basket", "basket", "weave"},
    {"basket", "basket", "wires"},
    {"inflated", "envelope", "parachute opens closes"}, // (b)(2): unsatisfactory operation
    {"inflated", "envelope", "control lines"},
    {"burner", "burner", "main valves"},
    {"burner", "burner", "pilot lights"},
    {"cylinders", "cylinder", "cylinder dents"},
    {"instruments", "instrument", "mounting display marked"}, // (c): poor condition, mounting, marking, operation
    {"instruments", "instrument", "respond"},
    {"basket", "basket", "restraint"},   // (c): seats and belts
    {"burner", "burner", "hoses loose"}, // (d)(7)
    {"fuel-system", "hose", "leak"},
    {"fuel-system", "cylinder", "leak test"},
    {"instruments", "", "radio antenna"}, // (i)
    {"instruments", "", "equipment"}};    // (j)

// AMC1 to Appendix II, part C: from memory, the table was not read.
const std::vector<std::pair<const char*, const char*>> ownersScope = {{"envelope", "fabric repair"},
                                                                      {"envelope", "nose line"},
                                                                      {"envelope", "banners sewing"},
                                                                      {"envelope", "melting link"},
                                                                      {"envelope", "temperature cables"},
                                                                      {"envelope", "crown line"},
                                                                      {"envelope", "scoop skirt"},
                                                                      {"burner", "cleaning lubrication"},
                                                                      {"burner", "piezo igniter"},
                                                                      {"burner", "jets"},
                                                                      {"burner", "corner buffers"},
                                                                      {"burner", "valves closing handle"},
                                                                      {"basket", "trim"},
                                                                      {"basket", "runners wheels"},
                                                                      {"basket", "rope handles"},
                                                                      {"basket", "seat belts"},
                                                                      {"cylinder", "O-rings outlet"},
                                                                      {"instrument", "batteries"},
                                                                      {"instrument", "quick-disconnect"}};

// 14 CFR Part 43 App. A(c): (7), (25), (27) read in FAA-H-8083-11; the other items and all numbers from memory.
const std::vector<std::pair<const char*, const char*>> usOwnersScope = {{"(5)", "safety wiring cotter"},
                                                                        {"(6)", "lubrication disassembly"},
                                                                        {"(7)", "fabric repair load tape"},
                                                                        {"(9)", "coating basket"},
                                                                        {"(10)", "preservative"},
                                                                        {"(11)", "upholstery"},
                                                                        {"(15)", "seats"},
                                                                        {"(22)", "prefabricated fuel"},
                                                                        {"(24)", "batteries"},
                                                                        {"(25)", "pilot main nozzles"},
                                                                        {"(26)", "fasteners"},
                                                                        {"(27)", "interchange basket burner"}};

bool says(const ChecklistLine& line, const QString& words) {
    const auto text = said(line);
    return std::ranges::all_of(words.split(' '),
                               [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}

/// The checklists that ship: complete by the rules' scope, sourced, in working order.
class ChecklistScopeTest : public QObject {
    Q_OBJECT
private slots:
    void theShelfHoldsEveryChecklistThatShips() {
        const QDir folder(CROWNRING_SOURCE_DIR "/assets/checklists");
        const auto files = folder.entryList({"*.json"});
        QCOMPARE(files.size(), 3);
        QCOMPARE(checklistShelf().size(), static_cast<std::size_t>(files.size()));
        for (const auto& name : files) {
            QFile file(folder.filePath(name));
            QVERIFY(file.open(QIODevice::ReadOnly));
            const auto text = canonicalChecklist(file.readAll().toStdString());
            QVERIFY2(text, text ? "" : (name.toStdString() + ": " + crownring::text(text.error())).c_str());
            QVERIFY(std::ranges::find(checklistShelf(), *text) != checklistShelf().end());
            QCOMPARE(QString::fromStdString(checklistFrom(*text)->id) + ".json", name);
            QCOMPARE(checklistText(checklistFrom(*text).value()), *text);
        }
    }

    void theScopeOfTheRulesIsCovered_data() {
        QTest::addColumn<QString>("visit");
        QTest::addColumn<QString>("section");
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("words");
        const auto add = [](const char* visit, const ScopeItem& item) {
            QTest::addRow("%s: %s: %s%s", visit, item.section, *item.kind ? "" : "(once) ", item.words)
                << visit << item.section << item.kind << item.words;
        };
        for (const auto& item : amcScope)
            add("part-ml-inspection", item);
        for (const auto& item : appendixDScope)
            for (const auto* visit : {"us-annual", "us-hundred-hour"})
                add(visit, item);
    }
    void theScopeOfTheRulesIsCovered() {
        QFETCH(QString, visit);
        QFETCH(QString, section);
        QFETCH(QString, kind);
        QFETCH(QString, words);
        QVERIFY(covers(visit.toStdString(), section.toStdString(), kind.toStdString(), words));
    }
    void whatIsInNoScopeIsNotCovered() {
        QVERIFY(!covers("part-ml-inspection", "envelope", "envelope", "propeller"));
        QVERIFY(!covers("part-ml-inspection", "envelope", "basket", "crown ring"));
        QVERIFY(!covers("us-annual", "papers", "", "review certificate"));
    }

    // Part-ML, Appendix II(b)(6), names the heavy landing; 49 CFR 180.203: an aluminium cylinder at 176 °C (350 °F).
    void eachEventHasItsLinesForWhatItMayHaveHurt() {
        for (const auto* visit : {"part-ml-special", "us-special"}) {
            QVERIFY(covers(visit, "impact", "basket", "hard landing wires hangers runners frame"));
            QVERIFY(covers(visit, "impact", "cylinder", "hard landing dents valves"));
            QVERIFY(covers(visit, "impact", "burner", "hard landing frame"));
            QVERIFY(covers(visit, "wire-contact", "envelope", "wire contact melted load tapes cable"));
            QVERIFY(covers(visit, "wire-contact", "cylinder", "wire contact leak"));
            QVERIFY(covers(visit, "immersion", "envelope", "immersion mildew dried"));
            QVERIFY(covers(visit, "immersion", "cylinder", "immersion valves"));
            QVERIFY(covers(visit, "impact", "envelope", "dragged maximum allowable damage"));
            QVERIFY(covers(visit, "over-temperature", "envelope", "over-temperature warp weft"));
            QVERIFY(covers(visit, "fire", "cylinder", "fire 176 350 condemned"));
            QVERIFY(covers(visit, "fire", "envelope", "flame fabric load tapes"));
        }
    }

    void everyTaskOfAPilotOwnerIsThere() {
        const auto& checklist = shipped("pilot-owner-tasks");
        const auto partMl = linesFor(checklist, Visit::PartMlOwnerTasks);
        for (const auto& [kind, words] : ownersScope)
            QVERIFY2(std::ranges::any_of(partMl,
                                         [&, words = words, kind = kind](const ChecklistLine* line) {
                                             return says(*line, words) &&
                                                    std::ranges::find(line->kinds, itemKindFrom(kind)) !=
                                                        line->kinds.end();
                                         }),
                     words);
        const auto us = linesFor(checklist, Visit::UsOwnerTasks);
        for (const auto& [item, words] : usOwnersScope)
            QVERIFY2(std::ranges::any_of(us,
                                         [&, words = words, item = item](const ChecklistLine* line) {
                                             return says(*line, words) &&
                                                    line->ownerRule.find(std::string("A(c)") + item) !=
                                                        std::string::npos;
                                         }),
                     words);
        // A task that was not done need not be settled; who may do it must be.
        for (const auto& line : checklist.lines)
            QCOMPARE(line.required, line.section == "papers");
    }
    // Appendix II(b)(4), (5), (6) and (9): no calibrated tools, no special testing, no special inspection, no part of
    // the annual or 100-hour inspection.
    void anOwnersTaskIsNoInspectionAndNeedsNoTester() {
        for (const auto& line : shipped("pilot-owner-tasks").lines) {
            QVERIFY2(!line.tester && line.readings.empty(), line.id.c_str());
            QCOMPARE(line.visits.size(), std::size_t(1));
            QVERIFY2(isOfOwnersTasks(line.visits.front()), line.id.c_str());
        }
        for (const auto& line : shipped("hot-air-inspection").lines)
            QVERIFY2(line.ownerRule.empty(), line.id.c_str());
    }

    void everyVisitHasItsLinesAndEachLineAVisit() {
        std::set<const ChecklistLine*> reached;
        std::size_t shippedLines = 0;
        for (const auto* id : {"hot-air-inspection", "pilot-owner-tasks", "maintenance-work"}) {
            shippedLines += shipped(id).lines.size();
            for (const auto visit : allVisits) {
                const auto lines = linesFor(shipped(id), visit);
                const auto* of = isOfOwnersTasks(visit) ? "pilot-owner-tasks"
                                 : isMaintenance(visit) ? "maintenance-work"
                                                        : "hot-air-inspection";
                QCOMPARE(!lines.empty(), std::string_view(id) == of);
                reached.insert(lines.begin(), lines.end());
            }
        }
        QCOMPARE(reached.size(), shippedLines);
    }

    void theLinesAreInWorkingOrder() {
        const std::vector<std::string> order = {
            "papers",           "event",     "impact",   "wire-contact", "immersion", "fire",
            "over-temperature", "inflated",  "envelope", "rigging",      "basket",    "instruments",
            "burner",           "cylinders", "hoses",    "fuel-system",  "closing"};
        std::vector<std::string> sections;
        for (const auto& line : shipped("hot-air-inspection").lines)
            if (sections.empty() || sections.back() != line.section)
                sections.push_back(line.section);
        QCOMPARE(sections, order);
    }
    // ML.A.402(b)(4): tools are calibrated where necessary. A load or a flow of air cannot be read without a tester.
    void whatIsMeasuredOnTheFabricOfAPeriodicInspectionNeedsATester() {
        for (const auto visit : periodic)
            for (const auto* line : linesFor(shipped("hot-air-inspection"), visit))
                for (const auto& reading : line->readings)
                    QVERIFY2(!reading.placed || line->tester, line->id.c_str());
    }

    // Common practice, no source: what wears is read where it is looked at, so that it has a trend.
    void whatWearsIsReadWhereItIsLookedAt() {
        const std::vector<std::pair<const char*, const char*>> worn = {
            {"basket.runners", "runner-thickness"},     {"basket.floor", "floor-thickness"},
            {"basket.sides", "wicker-break"},           {"basket.handles", "rope-handle-diameter"},
            {"basket.wires", "broken-strands"},         {"basket.wires", "wire-diameter"},
            {"rigging.flying-wires", "broken-strands"}, {"rigging.flying-wires", "wire-diameter"},
            {"rigging.carabiners", "carabiner-wear"},   {"envelope.tape-joints", "tape-joint-broken-stitches"}};
        for (const auto visit : periodic) {
            const auto lines = linesFor(shipped("hot-air-inspection"), visit);
            for (const auto& [id, quantity] : worn) {
                const auto line =
                    std::ranges::find_if(lines, [id = id](const ChecklistLine* each) { return each->id == id; });
                QVERIFY2(line != lines.end(), id);
                QVERIFY2(std::ranges::find((*line)->readings, AskedReading{quantity, false, false}) !=
                             (*line)->readings.end(),
                         quantity);
                QVERIFY2(std::ranges::any_of((*line)->kinds, [q = quantityNamed(quantity)](
                                                                 ItemKind kind) { return q->isReadOf(kind); }),
                         quantity);
            }
            for (const auto& each : allQuantities())
                QVERIFY2(!each.traits.wears ||
                             std::ranges::any_of(worn, [&](const auto& pair) { return each.slug == pair.second; }),
                         std::string(each.slug).c_str());
        }
    }

    // A manufacturer's checklist asks for the highest temperature on the label at every annual.
    void theTellTaleIsReadAtEveryPeriodicInspection() {
        for (const auto visit : periodic) {
            const auto lines = linesFor(shipped("hot-air-inspection"), visit);
            QVERIFY(std::ranges::any_of(lines, [](const ChecklistLine* line) {
                return line->required && line->photograph && line->onlyWith.empty() &&
                       std::ranges::find(line->readings, AskedReading{"tell-tale", true, false}) !=
                           line->readings.end();
            }));
        }
    }

    void lookForIsShortAndTitlesDiffer() {
        for (const auto* id : {"hot-air-inspection", "pilot-owner-tasks"}) {
            std::set<std::string> seen;
            for (const auto& line : shipped(id).lines) {
                QVERIFY2(line.lookFor.size() <= 400, line.id.c_str());
                const auto visit = line.visits.empty() ? std::string() : std::string(visitName(line.visits.front()));
                QVERIFY2(seen.insert(line.title + visit).second, line.title.c_str());
            }
        }
    }
};

CROWNRING_TEST(ChecklistScopeTest)

}

#include "checklist_scope_test.moc"
