// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A random order of what two hands say of visits: whatever a signature may not state is refused, and what it may state
/// is taken word for word as the model makes it.

#include "answers/bench_file.h"
#include "answers/due.h"
#include "gate/signature_work.h"

namespace signature_model_test {

/// What happens, in any order, held against the model after each step.
class Walk : WorkHands {
public:
    explicit Walk(Counts& counts) : m_counts(counts) {
        if (any(3) > 0) {
            reviewed();
            m_credits.push_back({"", {{"E1", "ml.arc-review"}}, false});
        }
        open();
    }

    void step() {
        const int what = any(100);
        if (what < 3)
            setCode();
        else if (what < 31)
            settle();
        else if (what < 34)
            sayOfWording();
        else if (what < 54)
            pull();
        else if (what < 60)
            find();
        else if (what < 65)
            defer();
        else if (what < 73)
            clear();
        else if (what < 76)
            m_day += 1 + any(6);
        else if (what < 80)
            correct();
        else if (what < 82)
            revoke();
        else if (what < 86)
            approve();
        else if (what < 88)
            handOver();
        else if (what < 90)
            release();
        else if (what < 92)
            tidy();
        else
            close();
    }
    void compareStandings() {
        const auto list = due(hand(), {}, on()).value();
        for (const auto& row : list.rows) {
            const std::pair key{row.item->id.text(), row.requirement->id.text()};
            const bool credited = std::ranges::any_of(
                m_credits, [&](const auto& credit) { return !credit.revoked && credit.work.contains(key); });
            if (key.second == "ml.inspection")
                RC_ASSERT((row.state.evidence == Evidence::Signed) == credited);
            if (key.second == "ml.arc-review")
                RC_ASSERT((row.state.evidence == Evidence::Paper) == credited);
        }
        // Each list that is pending grounds what was inspected, and tells how much of it stands; no other does.
        const auto grounded = toldOfLists(list);
        StandingLists expected;
        for (const auto& each : m_lists)
            for (const auto& item : each.items)
                if (each.pending)
                    expected[{item, each.name()}] =
                        static_cast<int>(model::standing(each, m_defects, m_credits, m_lists, m_day).size());
        RC_ASSERT(grounded == expected);
        // What is not put right, or in a visit that nobody signed, stands.
        for (const auto& [name, defect] : m_defects) {
            const bool stands = std::ranges::any_of(
                list.rows, [id = "defect/" + name](const DueRow& row) { return row.requirement->id.text() == id; });
            RC_ASSERT(stands == model::isOpen(defect, {}, m_credits, m_day));
        }
    }

private:
    void tidy() {
        if (any(2) == 0)
            everythingConfirmed();
        for (const auto& [line, item] : m_visit.asked())
            if (!m_visit.isDone(line, item))
                settleAs(line, item, "done", false);
        for (const auto& [direction, gore] : {std::pair("warp", 1), {"warp", 2}, {"weft", 1}})
            pullAt(direction, gore, {{}, 300, true});
        for (const auto& [place, made] : std::map(m_pulled)) // of earlier visits, too
            if (made.back().newtons < 100 || !made.back().calibrated || isWeak(made))
                pullAt(place.first, place.second, {{}, 300, true});
        while (anyOpen())
            clear();
    }
    void find() {
        const auto name = "D" + std::to_string(m_defects.size() + 1);
        model::Defect defect{
            oneOf("E1", "E1", "B1"), oneOf("minor", "deferrable", "grounding", "barring"), {}, false, {}};
        auto found = entry("defect.found");
        for (const auto& [place, made] : m_visit.pulls)
            if (made.newtons < 100)
                defect.reading = made.id, defect.at = place, defect.item = "E1";
        found.update({{"defect", name}, {"item", defect.item}, {"what", "torn"}, {"severity", defect.grade}});
        if (!defect.reading.empty())
            found["reading"] = defect.reading;
        say(found);
        m_defects[name] = defect;
    }
    [[nodiscard]] bool isOpenHere(const model::Defect& defect) const {
        return model::isOpen(defect, m_visit.name, m_credits, m_day);
    }
    std::pair<const std::string, model::Defect>* anyOpen() {
        std::vector<std::pair<const std::string, model::Defect>*> all;
        for (auto& each : m_defects)
            if (isOpenHere(each.second))
                all.push_back(&each);
        return all.empty() ? nullptr : all.at(any(all.size()));
    }
    void defer() {
        auto* const defect = anyOpen();
        if (!defect)
            return;
        const auto person = oneOf("Ada Rhos", "Ada Rhos", "Ole Berg", "Una Past", "Nobody Known");
        const bool entitled = person == "Ada Rhos" || person == "Ole Berg" || (person == "Una Past" && m_day == 0);
        const bool may = entitled && defect->second.reading.empty() && defect->second.grade != "grounding";
        const int until = m_day + any(12);
        auto deferral = entry("defect.deferred");
        deferral.update({{"defect", defect->first},
                         {"item", defect->second.item},
                         {"reason", "later"},
                         {"until", addDays(day("2026-01-31"), until).iso()},
                         {"agreed_by", person}});
        RC_ASSERT(isTaken(deferral.dump()) == may);
        if (may)
            defect->second.deferredUntil = until;
    }
    void clear() { clear(any(3) == 0); }
    /// @param outside of the visit, in the name of who may; what a reading found is read again in one
    void clear(bool outside) {
        if (auto* const defect = anyOpen()) {
            if (!defect->second.reading.empty()) // read again in its place first
                pullAt(defect->second.at.first, defect->second.at.second, {{}, 300, true});
            auto clearing = entry("defect.cleared");
            clearing.update({{"defect", defect->first}, {"item", defect->second.item}, {"what", "mended"}});
            outside = outside && defect->second.reading.empty();
            if (outside)
                clearing.erase("inspection");
            say(clearing);
            if (outside)
                defect->second.mended = true;
            else
                defect->second.mendedIn.insert(m_visit.name);
        }
    }
    [[nodiscard]] bool isWeak(const std::vector<model::Pull>& pulls) const {
        return model::isWeak(pulls, m_visit.name, m_credits, m_day);
    }
    [[nodiscard]] json closing(const std::string& outcome, const std::string& person) const {
        auto closed = entry("inspection.closed");
        closed.update({{"outcome", outcome},
                       {"signatory", person},
                       {"capacity", "independent-certifying-staff"},
                       {"licence", "QE.66.1"},
                       {"manuals", {"Manual T, revision 1"}}});
        if (outcome == "released")
            closed["statement"] = model::statement(m_visit.items);
        for (const auto& [item, requirement] : model::excepted(m_visit, m_credits, m_lists))
            closed["excepted"].push_back({{"item", item}, {"requirement", requirement}});
        if (std::ranges::any_of(m_pulled, [this](const auto& each) { return isWeak(each.second); }))
            closed["excepted"].push_back({{"item", "E1"}, {"requirement", "fabric/grab-strength"}});
        return closed;
    }
    void close() {
        const auto outcome = oneOf("released", "released", "released", "discrepancies");
        closeAs(outcome, oneOf("Ada Rhos", "Ada Rhos", "Ada Rhos", "Una Past"), any(7));
    }
    /// All is done and put right, and so it is signed.
    void release() {
        everythingConfirmed();
        tidy();
        closeAs("released", "Ada Rhos", -1);
    }
    /// All is done but what was found last: that is signed as a list, and mostly put right soon.
    void handOver() {
        everythingConfirmed();
        tidy();
        find();
        const auto lists = m_lists.size();
        closeAs("discrepancies", "Ada Rhos", -1);
        if (m_lists.size() == lists || any(4) == 0)
            return;
        while (anyOpen())
            clear(true);
        approve();
        approve();
    }
    void closeAs(const std::string& outcome, const std::string& person, int slip) {
        auto against = model::forbidden(m_visit, m_defects, m_day, person, m_credits);
        if (outcome == "discrepancies") {
            for (const char* listed : {"grounding", "defect"})
                against.erase(listed);
            const bool any = std::ranges::any_of(
                m_defects, [&](const auto& each) { return isOpenHere(each.second) && m_visit.has(each.second.item); });
            if (!any && model::excepted(m_visit, m_credits, m_lists).empty())
                against.insert("nothing to list");
        }
        against.merge(wordingAgainst(outcome == "released", true));
        auto closed = inItsOrder(closing(outcome, person));
        std::string behind;
        switch (slip) {
        case 0:
            closed["statement"] = "This aircraft is fit to fly.";
            against.insert("other text");
            break;
        case 1:
            behind = entry("line.settled").dump();
            behind.insert(behind.size() - 1, R"(,"line":"look","item":"E1","state":"done")");
            against.insert("word behind");
            break;
        case 2:
            if (outcome == "released" && !m_visit.accomplishes().contains({"E1", "ml.arc-review"})) {
                behind = done("E1", "ml.arc-review").dump();
                against.insert("not accomplished");
            }
            break;
        case 3:
            if (closed.contains("excepted")) {
                closed.erase("excepted");
                against.insert("exception left out");
            }
            break;
        default:
            break;
        }
        if (m_keys.contains(person))
            closed = sealed(closed);
        std::string lines = signedLine(closed, person, Purpose::Closing, slip >= 0, against);
        if (outcome == "released")
            for (const auto& [item, requirement] : m_visit.accomplishes())
                lines += "\n" + done(item, requirement).dump();
        if (!behind.empty())
            lines += "\n" + behind;
        const auto refused = problemsOf(hand(), lines);
        const bool taken = refused.empty();
        RC_ASSERT(!taken || against.empty());
        if (!taken && against.empty())
            qWarning("%s of %s on day %d: %s", outcome.c_str(), m_visit.name.c_str(), m_day,
                     text(refused.front()).c_str());
        m_counts.take(against);
        m_counts.needless += !taken && against.empty() ? 1 : 0;
        if (!taken)
            return;
        if (outcome == "released") {
            ++m_counts.released;
            m_credits.push_back({m_visit.name, m_visit.accomplishes(), false, m_day});
            m_signed.push_back({m_visit, m_defects, m_day});
        } else {
            ++m_counts.listed;
            model::List list{
                m_visit.name,          m_visit.items, m_day, {}, {}, model::excepted(m_visit, m_credits, m_lists),
                m_visit.accomplishes()};
            for (const auto& [name, defect] : m_defects)
                if (m_visit.has(defect.item)) {
                    if (isOpenHere(defect))
                        list.defects.insert(name);
                    else if (!defect.mended && !defect.mendedIn.contains(m_visit.name))
                        list.hangOn[name] = defect.mendedIn;
                }
            m_lists.push_back(list);
        }
        ++m_day; // what is said later that day without a time would stand before the signature
        open();
    }
    /// Somebody approves the return to service after one of the lists, with what its inspection did, or something else.
    void approve() {
        if (m_lists.empty())
            return;
        auto& list = m_lists.at(any(m_lists.size()));
        const auto person = oneOf("Ada Rhos", "Ada Rhos", "Ada Rhos", "Una Past");
        auto against = wordingAgainst(true, false);
        if (!list.pending)
            against.insert("answered");
        else if (!model::standing(list, m_defects, m_credits, m_lists, m_day).empty())
            against.insert("stands");
        if (list.pending && person != "Ada Rhos")
            against.insert("approver");
        json approval = {{"entry", "return.approved"},
                         {"on", on().iso()},
                         {"by", person},
                         {"inspection", list.inspection},
                         {"statement", model::statement(list.items)},
                         {"signatory", person},
                         {"capacity", "independent-certifying-staff"},
                         {"licence", "QE.66.1"}};
        auto work = list.withdrawn ? decltype(list.work){} : list.work;
        if (const int which = any(7); which == 0) {
            approval["statement"] = "It is fit to fly.";
            against.insert("other approval");
        } else if (which == 1 && !work.empty()) {
            work.erase(work.begin());
            against.insert("left out");
        } else if (which == 2 && !work.contains({"E1", "ml.arc-review"})) {
            work.emplace("E1", "ml.arc-review");
            against.insert("never done");
        }
        std::string lines = signedLine(approval, person, Purpose::Return, true, against);
        for (const auto& [item, requirement] : work)
            lines += "\n" + doneUnder(list.inspection, list.on, item, requirement).dump();
        const bool taken = isTaken(lines);
        RC_ASSERT(taken == against.empty());
        m_counts.take(against);
        if (!taken)
            return;
        ++(list.withdrawn ? m_counts.again : m_counts.approved);
        list.pending = false;
        m_credits.push_back({list.inspection, work, false, m_day});
        ++m_day;
    }
    void correct() {
        if (m_signed.empty())
            return;
        auto& under = m_signed.at(any(m_signed.size()));
        if (under.visit.pulls.empty())
            return;
        auto& reading = std::next(under.visit.pulls.begin(), any(static_cast<int>(under.visit.pulls.size())))->second;
        reading.newtons = any(2) == 0 ? 60 : 250;
        for (auto& [place, made] : m_pulled)
            for (auto& each : made)
                if (each.id == reading.id)
                    each.newtons = reading.newtons;
        say({{"entry", "entry.corrected"},
             {"on", on().iso()},
             {"by", "Ada Rhos"},
             {"note", "misread"},
             {"replaces", reading.id},
             {"with", {{"value", reading.newtons}}}});
        const auto file = benchFile(hand(), InspectionId(under.visit.name), on()).value();
        const bool supported = model::forbidden(under.visit, under.defects, under.on, "Ada Rhos", m_credits).empty();
        RC_ASSERT(file.unsupported.empty() == supported);
        m_counts.unsupported += supported ? 0 : 1;
    }
    void revoke() {
        const auto credit = m_credits.empty() ? model::Credit() : m_credits.at(any(m_credits.size()));
        if (credit.inspection.empty())
            return;
        const auto isOfIt = [&](const model::Credit& each) { return each.inspection == credit.inspection; };
        const bool holds =
            std::ranges::any_of(m_credits, [&](const model::Credit& each) { return isOfIt(each) && !each.revoked; });
        const json taken = {{"entry", "release.revoked"},
                            {"on", on().iso()},
                            {"by", "Ada Rhos"},
                            {"inspection", credit.inspection},
                            {"reason", "signed too early"}};
        std::set<std::string> against;
        const bool isTakenBack = isTaken(signedLine(taken, "Ada Rhos", Purpose::Revocation, true, against));
        RC_ASSERT(isTakenBack == (holds && against.empty()));
        if (m_counts.take(against))
            return;
        for (auto& each : m_credits)
            each.revoked |= isOfIt(each);
        ++m_counts.revoked;
        for (auto& list : m_lists)
            if (list.inspection == credit.inspection && isTakenBack) {
                list.pending = list.withdrawn = true;
                ++m_day; // an approval of the same day without a time would stand before its withdrawal
            }
    }

    Counts& m_counts;
    std::map<std::string, model::Defect> m_defects;
    std::vector<model::Credit> m_credits;
    std::vector<Signed> m_signed;
    std::vector<model::List> m_lists;
};

}
