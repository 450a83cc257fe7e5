// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a signature may state (02, "What a signature states"), reckoned beside the program: by nothing of its code,
/// from what was said and taken by the record. For one envelope with its basket, burner and cylinder under Part-ML, a
/// short checklist and one manual; all of it is invented.

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace crownring::testing::model {

using Day = int; ///< counted from the first of the walk

struct Line {
    std::string state = "open";
    bool saysWhy = false;
};

struct Pull {
    std::string id;
    double newtons = 0;
    bool calibrated = true;
    std::string visit{};
};

struct Defect {
    std::string item;
    std::string grade;
    std::string reading; ///< that failed
    bool mended = false; ///< outside a visit
    std::optional<Day> deferredUntil;
    std::pair<std::string, int> at{}; ///< where that reading was: direction and gore
    std::set<std::string> mendedIn{}; ///< visits
};

/// What a release accomplished, and whether it was withdrawn.
struct Credit {
    std::string inspection;
    std::set<std::pair<std::string, std::string>> work; ///< item, requirement
    bool revoked = false;
    Day on = 0;
};

/// The visit was released by that day, or its list answered, and that was never withdrawn.
inline bool isSigned(const std::string& visit, const std::vector<Credit>& credits, Day on) {
    const auto isOfIt = [&](const Credit& each) { return each.inspection == visit; };
    return std::ranges::any_of(credits, [&](const Credit& each) { return isOfIt(each) && each.on <= on; }) &&
           std::ranges::none_of(credits, [&](const Credit& each) { return isOfIt(each) && each.revoked; });
}

/// What failed stays so until it is pulled again, in calibration and in a visit that is signed or in hand: a figure
/// that nobody answers for, or no more, shows nothing. What fails in the visit in hand is a matter of its defect.
/// @param pulls of one place, as they were made
inline bool isWeak(const std::vector<Pull>& pulls, const std::string& visit, const std::vector<Credit>& credits,
                   Day on) {
    const auto failed = std::find_if(pulls.rbegin(), pulls.rend(), [](const Pull& each) { return each.newtons < 100; });
    return failed != pulls.rend() && failed->visit != visit &&
           std::none_of(pulls.rbegin(), failed, [&](const Pull& each) {
               return each.calibrated && (each.visit == visit || isSigned(each.visit, credits, on));
           });
}

/// What was put right in a visit counts for that visit, and for whatever else once it is signed.
inline bool isOpen(const Defect& defect, const std::string& visit, const std::vector<Credit>& credits, Day on) {
    return !defect.mended && std::ranges::none_of(defect.mendedIn, [&](const std::string& each) {
        return each == visit || isSigned(each, credits, on);
    });
}

/// A list of discrepancies that was signed: what was on it, and what its inspection did.
struct List {
    std::string inspection;
    std::vector<std::string> items;
    Day on = 0;
    std::set<std::string> defects;                          ///< open when it was signed
    std::map<std::string, std::set<std::string>> hangOn{};  ///< closed by then by visits alone, and by which
    std::set<std::pair<std::string, std::string>> excepted; ///< item, requirement
    std::set<std::pair<std::string, std::string>> work;     ///< done, and not counted before the approval
    bool pending = true;
    bool withdrawn = false; ///< an approval of it was: what was done is never counted any more

    [[nodiscard]] bool has(const std::string& item) const { return std::ranges::find(items, item) != items.end(); }
    [[nodiscard]] std::string name() const { return "list/" + inspection; }
};

struct Visit {
    std::string name;
    std::vector<std::string> items; ///< in the order of the opening
    bool review = false;            ///< the airworthiness review is part of the work
    Day opened = 0;
    std::map<std::pair<std::string, std::string>, Line> lines; ///< by line and item
    std::map<std::pair<std::string, int>, Pull> pulls;         ///< by direction and gore: the latest
    std::optional<std::string> closed;                         ///< its outcome

    [[nodiscard]] bool has(const std::string& item) const { return std::ranges::find(items, item) != items.end(); }
    [[nodiscard]] std::string state(const std::string& line, const std::string& item) const {
        const auto known = lines.find({line, item});
        return known == lines.end() ? "open" : known->second.state;
    }
    [[nodiscard]] bool isDone(const std::string& line, const std::string& item) const {
        return state(line, item) == "done";
    }
    /// The lines that the checklist has for what is inspected; which of them are required.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> asked() const {
        std::vector<std::pair<std::string, std::string>> all{{"look", "E1"}, {"pull", "E1"}, {"papers", ""}};
        if (has("B1"))
            all.emplace_back("weave", "B1");
        if (has("R1"))
            all.insert(all.end(), {{"flame", "R1"}, {"shell", "C1"}});
        if (review)
            all.insert(all.end(), {{"documents", ""}, {"survey", ""}});
        return all;
    }
    /// Two pulls along the warp and one along the weft, at least 100 N each: what the manual states.
    [[nodiscard]] bool isPulledEnough() const {
        const auto at = [&](const char* direction) {
            return std::ranges::count_if(pulls, [&](const auto& each) { return each.first.first == direction; });
        };
        return at("warp") >= 2 && at("weft") >= 1;
    }
    [[nodiscard]] std::set<std::pair<std::string, std::string>> accomplishes() const {
        std::set<std::pair<std::string, std::string>> work;
        for (const auto& item : items) {
            const bool onItem = item == "E1"   ? isDone("look", "E1") || isDone("pull", "E1") || isDone("extra", "E1")
                                : item == "B1" ? isDone("weave", "B1")
                                : item == "R1" ? isDone("flame", "R1")
                                               : isDone("shell", "C1");
            if (onItem)
                work.emplace(item, "ml.inspection");
        }
        return work; // the review is an act of its own
    }
};

/// All that stands against releasing the visit on that day; each in a word.
inline std::set<std::string> forbidden(const Visit& visit, const std::map<std::string, Defect>& defects, Day on,
                                       const std::string& person, const std::vector<Credit>& credits) {
    std::set<std::string> against;
    if (visit.closed)
        against.insert("closed");
    if (on < visit.opened)
        against.insert("order");
    for (const auto& [line, item] : visit.asked()) {
        const auto known = visit.lines.find({line, item});
        if (known == visit.lines.end() || known->second.state == "open")
            against.insert("line open");
        else if (known->second.state == "not-applicable" && !known->second.saysWhy)
            against.insert("no reason");
    }
    if (!against.contains("line open") &&
        std::ranges::none_of(visit.lines, [](const auto& each) { return each.second.state == "done"; }))
        against.insert("nothing looked at");
    const auto extra = visit.lines.find({"extra", "E1"});
    if (extra != visit.lines.end() && extra->second.state == "not-applicable" && !extra->second.saysWhy)
        against.insert("no reason");
    if (visit.isDone("pull", "E1") && !visit.isPulledEnough())
        against.insert("too few");
    for (const auto& [place, pull] : visit.pulls) {
        if (!pull.calibrated)
            against.insert("tester");
        const bool answered =
            std::ranges::any_of(defects, [id = pull.id](const auto& each) { return each.second.reading == id; });
        if (pull.newtons < 100 && !answered)
            against.insert("fails");
    }
    for (const auto& [name, defect] : defects) {
        if (!isOpen(defect, visit.name, credits, on) || !visit.has(defect.item))
            continue;
        const bool deferred = defect.deferredUntil.has_value();
        if (!defect.reading.empty() || defect.grade == "grounding")
            against.insert("grounding");
        else if (deferred ? on > *defect.deferredUntil : defect.grade != "minor")
            against.insert("defect");
    }
    if (person != "Ada Rhos")
        against.insert("person");
    return against;
}

inline std::set<std::pair<std::string, std::string>> credited(const std::vector<Credit>& credits) {
    std::set<std::pair<std::string, std::string>> known;
    for (const auto& credit : credits)
        if (!credit.revoked)
            known.insert(credit.work.begin(), credit.work.end());
    return known;
}

/// What is mandatory on the items and neither accomplished now nor credited before, and each list that grounds one:
/// item and requirement.
inline std::set<std::pair<std::string, std::string>> excepted(const Visit& visit, const std::vector<Credit>& credits,
                                                              const std::vector<List>& lists) {
    auto known = visit.accomplishes();
    known.merge(credited(credits));
    std::set<std::pair<std::string, std::string>> lacking;
    for (const auto& item : visit.items)
        if (!known.contains({item, "ml.inspection"}))
            lacking.emplace(item, "ml.inspection");
    if (!known.contains({"E1", "ml.arc-review"}))
        lacking.emplace("E1", "ml.arc-review");
    for (const auto& list : lists)
        for (const auto& item : visit.items)
            if (list.pending && list.has(item))
                lacking.emplace(item, list.name());
    return lacking;
}

/// What of a list still stands: defects that are open, deferred ones too, and what nobody did since.
inline std::set<std::string> standing(const List& list, const std::map<std::string, Defect>& defects,
                                      const std::vector<Credit>& credits, const std::vector<List>& lists, Day on) {
    std::set<std::string> left;
    for (const auto& defect : list.defects)
        if (isOpen(defects.at(defect), {}, credits, on))
            left.insert(defect);
    // A release that is withdrawn put nothing right, whatever the day: then it was open as the list was signed.
    for (const auto& [defect, visits] : list.hangOn)
        if (isOpen(defects.at(defect), {}, credits, on) &&
            std::ranges::none_of(visits, [&](const std::string& visit) { return isSigned(visit, credits, on); }))
            left.insert(defect);
    const auto known = credited(credits);
    for (const auto& [item, requirement] : list.excepted) {
        const auto other =
            std::ranges::find_if(lists, [name = requirement](const List& each) { return each.name() == name; });
        if (other == lists.end() ? !known.contains({item, requirement}) : other->pending)
            left.insert(item + " " + requirement);
    }
    return left;
}

/// The wording of AMC M.A.801(e)1 (read in a UK consolidated copy; with "Part-ML" from memory); less than an aircraft
/// is named.
inline std::string statement(const std::vector<std::string>& items) {
    std::string names;
    for (const auto& item : items)
        names += (names.empty() ? "" : "; ") + std::string(item == "E1"   ? "envelope E1"
                                                           : item == "B1" ? "basket B1"
                                                           : item == "R1" ? "burner R1"
                                                                          : "cylinder C1");
    const auto what = items.size() == 4 ? "the aircraft is" : "of the aircraft the following alone (" + names + ") is";
    return "Certifies that the work specified except as otherwise specified was carried out in accordance with Part-ML "
           "and in respect to that work " +
           what + " considered ready for release to service.";
}

}
