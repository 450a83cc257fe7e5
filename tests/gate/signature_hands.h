// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Two hands that say what entries say of the visit at hand, never through the acts of the program, and what is
/// counted.

#include "acts/post.h"
#include "answers/due.h"
#include "signature_model.h"
#include "signature_shed.h"
#include "store/scratch.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

namespace signature_model_test {

using namespace crownring;
using namespace crownring::testing;
using nlohmann::json;

template <class Number>
Number any(Number below) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(Number{0}, below));
}
template <class... Words>
std::string oneOf(Words... words) {
    return *rc::gen::element<std::string>(words...);
}

struct Counts {
    std::map<std::string, int> refused; ///< by what the model names
    int released = 0, listed = 0, needless = 0, revoked = 0, unsupported = 0, approved = 0, again = 0;
};

/// A release, with what it was signed by: corrections change it afterwards.
struct Signed {
    model::Visit visit;
    std::map<std::string, model::Defect> defects;
    model::Day on = 0;
};

class SignatureHands {
protected:
    SignatureHands() : m_other(Scratch::openedAt(m_scratch.file())) {
        posted(*m_scratch.record, shed);
        posted(*m_scratch.record, shedsOwnList());
    }

    Record& hand() { return any(2) == 0 ? *m_scratch.record : *m_other; }
    [[nodiscard]] CivilDate on() const { return addDays(day("2026-01-31"), m_day); }
    [[nodiscard]] json entry(const char* kind) const {
        return {{"entry", kind}, {"on", on().iso()}, {"by", "Ada Rhos"}, {"inspection", m_visit.name}};
    }
    Receipt say(const json& line) { return posted(hand(), line.dump()); }
    /// By a certificate that came with the balloon: no visit does it.
    void reviewed() {
        auto review = doneUnder("15c/1", m_day, "E1", "ml.arc-review");
        review.update({{"signatory", "Eva Amt"}, {"licence", "A 1"}});
        say(review);
    }
    bool isTaken(const std::string& lines) { return problemsOf(hand(), lines).empty(); }
    [[nodiscard]] json done(const std::string& item, const std::string& requirement) const {
        return doneUnder(m_visit.name, m_day, item, requirement);
    }
    [[nodiscard]] static json doneUnder(const std::string& inspection, model::Day day, const std::string& item,
                                        const std::string& requirement) {
        return {{"entry", "requirement.done"},
                {"on", addDays(testing::day("2026-01-31"), day).iso()},
                {"item", item},
                {"requirement", requirement},
                {"ref", inspection}};
    }

    /// The record has the exceptions with their titles and in the order of its due list.
    [[nodiscard]] json inItsOrder(json closed) {
        const auto list = due(hand(), {}, on()).value();
        auto wanted = closed.value("excepted", json::array());
        closed.erase("excepted");
        for (const auto& row : list.rows)
            for (const auto& each : wanted)
                if (each.at("item") == row.item->id.text() && each.at("requirement") == row.requirement->id.text())
                    closed["excepted"].push_back({{"item", each.at("item")},
                                                  {"requirement", each.at("requirement")},
                                                  {"title", row.requirement->title.written()},
                                                  {"standing", standingText(row.state.standing)}});
        return closed;
    }

    model::Visit m_visit;
    model::Day m_day = 0;

private:
    Scratch m_scratch;
    std::unique_ptr<Record> m_other;
};

}
