// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Two hands that say what entries say of the visit at hand, never through the acts of the program, and what is
/// counted.

#include "acts/post.h"
#include "answers/closing.h"
#include "answers/due.h"
#include "gate/trust/proven.h"
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
    /// @return whether there is any
    bool take(const std::set<std::string>& against) {
        for (const auto& each : against)
            ++refused[each];
        return !against.empty();
    }
    int released = 0, listed = 0, needless = 0, revoked = 0, unsupported = 0, approved = 0, again = 0;
};

/// A release, with what it was signed by: corrections change it afterwards.
struct Signed {
    model::Visit visit;
    std::map<std::string, model::Defect> defects;
    model::Day on = 0;
};

/// How much of each pending list stands, by the item and the row that tells it.
using StandingLists = std::map<std::pair<std::string, std::string>, int>;
inline StandingLists toldOfLists(const DueList& list) {
    StandingLists told;
    for (const auto& row : list.rows)
        if (row.requirement->id.text().starts_with("list/")) {
            RC_ASSERT(row.state.standing == Standing::Lapsed && row.requirement->force == Force::Mandatory);
            for (const auto& pending : row.item->lists)
                if ("list/" + pending.inspection.text() == row.requirement->id.text())
                    told[{row.item->id.text(), row.requirement->id.text()}] = pending.count.value().standing;
        }
    return told;
}

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

    /// Somebody sets a code of his own, or replaces it, by the key that he has or by none that he should.
    void setCode() {
        if (!m_withCodes)
            return;
        const auto person = oneOf("Ada Rhos", "Ada Rhos", "Una Past");
        const auto known = m_keys.find(person);
        const char before = known == m_keys.end() ? char(0) : known->second;
        const char by = any(4) == 0 ? '!' : before;
        const auto number = std::to_string(100 + ++m_codes);
        const char key = static_cast<char>('a' + m_codes % 26);
        const bool taken = isTaken(codeOf(person, key, by, "K" + number, on().iso()));
        RC_ASSERT(taken == (by == before));
        if (taken)
            m_keys[person] = key;
    }
    /// With the seal over all that was said of the visit.
    [[nodiscard]] json sealed(json closing) {
        std::vector<EntryId> entries;
        const auto told = hand().told({Subject::Inspection, m_visit.name, {}, CivilDate::last()}).value();
        for (const auto& line : told)
            entries.push_back(line.entry.id);
        closing["seal"]["digest"] = sealDigest(hand(), entries).value();
        for (const auto& each : entries)
            closing["seal"]["entries"].push_back(each.text());
        return closing;
    }
    /// The line as that person signs it: with the proof that the record asks for, or with a slip that `against` names.
    std::string signedLine(json line, const std::string& person, Purpose purpose, bool slips,
                           std::set<std::string>& against) {
        const auto known = m_keys.find(person);
        const int slip = slips ? any(7) : 7;
        if (known == m_keys.end() && slip > 0)
            return line.dump();
        line["id"] = "S" + std::to_string(++m_signatures);
        if (known == m_keys.end()) {
            against.insert("proof of no code");
            return proven(line.dump(), '!', purpose);
        }
        if (slip == 0) {
            against.insert("unproven");
            return line.dump();
        }
        if (slip == 1)
            against.insert("other key");
        if (slip == 2)
            against.insert("other purpose");
        std::vector<NumberedEntry> whole{{entryFrom(line.dump()).value(), 1}};
        RC_ASSERT(complete(whole, hand(), "").has_value()); // what is proven is a text to the last word
        const auto text = proven(canonicalText(whole.front().entry), slip == 1 ? '!' : known->second,
                                 slip == 2 ? Purpose::Code : purpose);
        if (slip != 3)
            return text;
        against.insert("altered");
        auto altered = json::parse(text);
        altered["note"] = "and more";
        return altered.dump();
    }

    model::Visit m_visit;
    model::Day m_day = 0;
    std::map<std::string, char> m_keys; ///< of who has a code of his own

private:
    const bool m_withCodes = any(2) == 0;
    int m_codes = 0;
    int m_signatures = 0;
    Scratch m_scratch;
    std::unique_ptr<Record> m_other;
};

}
