// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The work of a walk: a visit is opened, its lines get a word each, the fabric is pulled.

#include "gate/wording/signature_wording.h"

namespace signature_model_test {

class WorkHands : protected WordingHands {
protected:
    void open() {
        m_visit = {};
        m_visit.name = "V" + std::to_string(++m_visits);
        m_visit.items = {"E1"};
        if (any(2) == 0)
            m_visit.items.emplace_back("B1");
        if (m_visit.items.size() == 2 && any(2) == 0)
            m_visit.items.insert(m_visit.items.end(), {"R1", "C1"});
        m_visit.review = any(2) == 0;
        m_visit.opened = m_day;
        auto opening = entry("inspection.opened");
        opening["visit"] = "part-ml-inspection";
        opening["balloon"] = "QE-ONE";
        opening["items"] = m_visit.items;
        for (const auto& item : m_visit.items)
            opening["work"].push_back({{"item", item}, {"requirement", "ml.inspection"}});
        if (m_visit.review)
            opening["work"].push_back({{"item", "E1"}, {"requirement", "ml.arc-review"}});
        opening["checklist"] = json::parse(checklist);
        say(opening);
        auto dots = entry("reading.taken");
        dots.update({{"item", "E1"}, {"quantity", "tell-tale"}, {"unit", "degC"}, {"value", 110}, {"below", 116}});
        say(dots);
    }
    void settle() {
        auto lines = m_visit.asked();
        lines.emplace_back("extra", "E1");
        const auto [line, item] = lines.at(any(lines.size()));
        const auto state = oneOf("done", "done", "done", "done", "done", "done", "not-applicable", "open");
        settleAs(line, item, state, state == "not-applicable" && any(4) > 0);
    }
    void settleAs(const std::string& line, const std::string& item, const std::string& state, bool why) {
        auto word = entry("line.settled");
        word["line"] = line;
        word["state"] = state;
        if (!item.empty())
            word["item"] = item;
        if (why)
            word.update({{"why", "not-asked"}, {"page", "Manual T, 2"}});
        say(word);
        m_visit.lines[{line, item}] = {state, why};
    }
    void pull() {
        const auto direction = oneOf("warp", "warp", "weft");
        pullAt(direction, 1 + any(3), {{}, any(9) > 0 ? 300.0 : 60.0, any(14) > 0});
    }
    void pullAt(const std::string& direction, int gore, const model::Pull& made) {
        auto reading = entry("reading.taken");
        reading.update({{"item", "E1"},
                        {"quantity", "grab-strength"},
                        {"unit", "N"},
                        {"value", made.newtons},
                        {"direction", direction},
                        {"gore", gore},
                        {"row", 9},
                        {"tester", made.calibrated ? "F-1" : "F-2"}});
        auto& latest = m_visit.pulls[{direction, gore}];
        latest = made;
        latest.id = say(reading).ids.at(0).text();
        latest.visit = m_visit.name;
        m_pulled[{direction, gore}].push_back(latest);
    }

    std::map<std::pair<std::string, int>, std::vector<model::Pull>> m_pulled; ///< by place, in all visits

private:
    int m_visits = 0;
};

}
