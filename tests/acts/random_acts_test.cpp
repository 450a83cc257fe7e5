// SPDX-License-Identifier: GPL-3.0-or-later

/// Random walks of acts over one record: in no order of them is a release reached while a barring defect or a required
/// line is open. What is open is kept here beside the record, by nothing of its own reckoning.

#include "shop.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <map>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Two required lines, one of them with a pull at two places, and one that is not.
constexpr const char* checklist =
    R"({"checklist":"short","revision":"1","title":"Short","source":"invented for tests","sections":[{"id":"all","title":"All"}],"lines":[)"
    R"({"id":"look","section":"all","kinds":["envelope"],"title":"Look","look_for":"Holes.","sources":{"part-ml":"invented"}},)"
    R"({"id":"pull","section":"all","kinds":["envelope"],"title":"Pull","look_for":"Strength.","sources":{"part-ml":"invented"},"readings":[{"quantity":"grab-strength","placed":true}]},)"
    R"({"id":"extra","section":"all","kinds":["envelope"],"title":"Extra","look_for":"Dirt.","sources":{"part-ml":"invented"},"required":false}]})";

struct Defect {
    bool barring = true;
    bool open = true;
    std::optional<CivilDate> deferredUntil;
    std::string reading; ///< that failed
};

/// From 0 on, below a bound; as evenly at the first case as at the last.
template <class Number>
Number any(Number below) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(Number{0}, below));
}

/// What the walk itself knows.
struct Known {
    std::map<std::string, std::string> settled;        ///< by line: as what
    std::map<int, std::pair<std::string, bool>> pulls; ///< by gore: the latest, and whether it passes
    std::map<std::string, Defect> defects;

    [[nodiscard]] bool isBarred(CivilDate on) const {
        return std::ranges::any_of(defects, [&](const auto& each) {
            const auto& defect = each.second;
            // What was put off with a limit bars from then on, whatever its grade.
            return defect.open &&
                   (!defect.reading.empty() || (defect.deferredUntil ? *defect.deferredUntil < on : defect.barring));
        });
    }
    [[nodiscard]] bool isAnyLineOpen() const {
        return std::ranges::any_of(std::array{"look", "pull"}, [&](const char* line) { return !isSettled(line); });
    }
    [[nodiscard]] bool isSettled(const std::string& line) const {
        const auto state = settled.find(line);
        return state != settled.end() && state->second != "open";
    }
    [[nodiscard]] bool isAnyLineDone() const {
        return std::ranges::any_of(settled, [](const auto& line) { return line.second == "done"; });
    }
    /// A pull that fails and that neither a new one nor a defect answers.
    [[nodiscard]] bool isWeak() const {
        return std::ranges::any_of(pulls, [&](const auto& pull) {
            const auto& [reading, passes] = pull.second;
            return !passes && std::ranges::none_of(defects, [&reading = reading](const auto& each) {
                return each.second.reading == reading;
            });
        });
    }
};

struct Counts {
    int released = 0;
    int listed = 0;
    int barred = 0;   ///< refused while a barring defect was open
    int lineOpen = 0; ///< refused while a required line was open
    int deferrals = 0;
    int turnedAway = 0; ///< deferrals by who is not entitled
    int needless = 0;   ///< refused though the walk knows of nothing that is in the way
};

class Walk {
public:
    explicit Walk(Counts& counts) : m_counts(counts) {
        m_shop.say(
            both(R"({"entry":"checklist.adopted","on":"2020-01-01","checklist":"short","document":)", checklist, "}"));
        m_shop.say(confirmedLine(namedChecklist(nlohmann::json::parse(checklist).dump()).value(), "2020-01-02",
                                 "Ada Rhos", Capacity::IndependentCertifyingStaff));
        openAnother();
    }

    void step() {
        const int what = any(100);
        if (what < 24)
            settle();
        else if (what < 44)
            pull();
        else if (what < 52)
            find(any(2) == 0);
        else if (what < 60)
            defer();
        else if (what < 74)
            clear();
        else if (what < 77)
            m_day = addDays(m_day, 1 + any(19));
        else
            sign(what < 92 ? Outcome::Released : Outcome::Discrepancies);
    }

private:
    static std::string both(const char* before, const std::string& middle, const char* after) {
        return before + middle + after;
    }
    [[nodiscard]] std::string common(const char* kind) const {
        return both(R"({"entry":")", kind, R"(","on":")") + m_day.iso() + R"(","item":"E1",)" +
               m_shop.about().substr(1);
    }
    Receipt say(const char* kind, const std::string& keys) { return m_shop.say(common(kind) + keys + "}"); }

    void openAnother() {
        m_shop.inspection = InspectionId("I-" + std::to_string(++m_inspections));
        m_shop.say(
            both(R"({"entry":"inspection.opened","on":")", m_day.iso(), "\"") +
            R"(,"visit":"part-ml-inspection","balloon":"QE-ONE","items":["E1"],"work":[{"item":"E1","requirement":"ml.inspection"}],"checklist":)" +
            checklist + m_shop.about() + "}");
        m_known.settled.clear();
        m_known.pulls.clear();
        m_shop.say(common("reading.taken") + R"(,"quantity":"tell-tale","unit":"degC","value":110,"below":116})");
    }
    void settle() {
        const std::string line = *rc::gen::element("look", "pull", "look", "pull", "extra");
        const std::string state = *rc::gen::element("done", "done", "done", "done", "not-applicable", "open");
        say("line.settled",
            both(R"(,"line":")", line, R"(","state":")") + state + '"' +
                (state == "not-applicable" ? R"(,"why":"other","finding":"as the manual has it")" : ""));
        m_known.settled[line] = state;
    }
    void pull() {
        const auto gore = 1 + any(3);
        pullAt(gore, any(6) > 0);
    }
    void pullAt(int gore, bool passes) {
        const auto id =
            say("reading.taken",
                R"(,"quantity":"grab-strength","unit":"N","direction":"warp","row":16,"tester":"F-1","gore":)" +
                    std::to_string(gore) + R"(,"value":)" + (passes ? "300" : "120"))
                .ids.at(0);
        m_known.pulls[gore] = {id.text(), passes};
    }
    void find(bool barring) {
        const auto name = "D-" + std::to_string(m_known.defects.size() + 1);
        Defect defect{barring, true, {}, {}};
        std::string keys =
            both(R"(,"what":"weak","defect":")", name, R"(","severity":")") + (barring ? "barring" : "minor") + '"';
        for (const auto& [gore, reading] : m_known.pulls)
            if (!reading.second) {
                defect.reading = reading.first;
                m_foundAt[name] = gore;
            }
        if (!defect.reading.empty())
            keys += both(R"(,"reading":")", defect.reading, "\"");
        say("defect.found", keys);
        m_known.defects[name] = defect;
    }
    /// Any defect that is open, now and then one that is cleared; nothing when there is none.
    std::pair<const std::string, Defect>* anyDefect() {
        const bool alsoCleared = any(8) == 0;
        std::vector<std::pair<const std::string, Defect>*> among;
        for (auto& each : m_known.defects)
            if (each.second.open || alsoCleared)
                among.push_back(&each);
        return among.empty() ? nullptr : among.at(any(among.size()));
    }
    void defer() {
        auto* const defect = anyDefect();
        if (!defect)
            return;
        // Una's entitlement ended on the first day; a private pilot puts off only what does not bar flight.
        const std::string person = *rc::gen::element("Ada Rhos", "Ada Rhos", "Una Past", "Pia Lund");
        // What a reading beyond the limit found, nobody.
        const bool mayAgree = defect->second.reading.empty() &&
                              (person == "Ada Rhos" || (person == "Una Past" && m_day <= day("2026-06-01")) ||
                               (person == "Pia Lund" && !defect->second.barring));
        const auto until = addDays(m_day, any(15));
        const auto problems =
            problemsOf(m_shop.record(), common("defect.deferred") + both(R"(,"defect":")", defect->first, "\"") +
                                            both(R"(,"until":")", until.iso(), "\"") +
                                            both(R"(,"reason":"later","agreed_by":")", person, "\"}"));
        RC_ASSERT(problems.empty() == mayAgree);
        ++(mayAgree ? m_counts.deferrals : m_counts.turnedAway);
        if (mayAgree && defect->second.open)
            defect->second.deferredUntil = until;
    }
    void clear() {
        if (auto* const defect = anyDefect()) {
            if (const auto at = m_foundAt.find(defect->first); at != m_foundAt.end())
                pullAt(at->second, true); // read again in its place
            say("defect.cleared", both(R"(,"what":"new panel","defect":")", defect->first, "\""));
            defect->second.open = false;
        }
    }
    void sign(Outcome outcome) {
        auto by = Shop::signing();
        by.outcome = outcome;
        by.on = m_day;
        const bool barred = m_known.isBarred(m_day);
        const bool lineOpen = m_known.isAnyLineOpen();
        const bool weak = m_known.isWeak();
        const bool few = m_known.pulls.size() < 2 && m_known.isSettled("pull");
        const bool nothingDone = !m_known.isAnyLineDone();
        const auto answer = m_shop.sign(by);
        RC_ASSERT(!answer || outcome == Outcome::Abandoned || !nothingDone);
        if (outcome == Outcome::Released) {
            if (answer) {
                RC_ASSERT(!barred);
                RC_ASSERT(!lineOpen);
                RC_ASSERT(!weak);
            }
            m_counts.released += answer ? 1 : 0;
            m_counts.barred += !answer && barred ? 1 : 0;
            m_counts.lineOpen += !answer && lineOpen ? 1 : 0;
            m_counts.needless += !answer && !barred && !lineOpen && !weak && !few && !nothingDone ? 1 : 0;
        } else {
            m_counts.listed += answer ? 1 : 0;
        }
        if (answer)
            openAnother();
    }

    Shop m_shop;
    Counts& m_counts;
    Known m_known;
    std::map<std::string, int> m_foundAt; ///< the gore of the reading that found a defect
    CivilDate m_day = day("2026-06-01");
    int m_inspections = 0;
};

}

class RandomActsTest : public QObject {
    Q_OBJECT
private slots:
    void noOrderOfActsReleasesWhatIsBarred() {
        Counts counts;
        QVERIFY(rc::check([&] {
            Walk walk(counts);
            for (int i = 0; i < 60; ++i)
                walk.step();
        }));
        qInfo("released %d, discrepancies %d; refused: barring defect %d, line open %d; deferred %d, turned away %d",
              counts.released, counts.listed, counts.barred, counts.lineOpen, counts.deferrals, counts.turnedAway);
        QVERIFY(counts.released > 0 && counts.listed > 0);
        QVERIFY(counts.barred > 0 && counts.lineOpen > 0);
        QVERIFY(counts.deferrals > 0 && counts.turnedAway > 0);
        // And nothing else stands in the way of a release than what the walk knows.
        QCOMPARE(counts.needless, 0);
    }
};

CROWNRING_TEST(RandomActsTest, QCoreApplication)
#include "random_acts_test.moc"
