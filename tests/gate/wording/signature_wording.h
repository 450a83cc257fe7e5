// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is said of the wording in a walk, and reckoned of it: who confirmed what, and took it back.

#include "acts/confirmed_wording.h"
#include "gate/signature_hands.h"

namespace signature_model_test {

class WordingHands : protected SignatureHands {
protected:
    WordingHands() {
        if (any(8) > 0)
            adopt();
    }

    void sayOfWording() {
        if (!m_adopted)
            adopt();
        else if (any(3) == 0)
            takeBack();
        else
            confirm();
    }
    /// What stands against signing; a list of Part-ML has no statement, an approval no checklist.
    [[nodiscard]] std::set<std::string> wordingAgainst(bool statement, bool list) const {
        std::set<std::string> against;
        if (statement && !m_adopted)
            against.insert("not adopted");
        else if (statement && !isConfirmed(m_ofText))
            against.insert("wording");
        if (list && !isConfirmed(m_ofList))
            against.insert("checklist");
        return against;
    }
    void everythingConfirmed() {
        if (!m_adopted)
            adopt();
        if (!isConfirmed(m_ofText))
            confirmAs(true, "Ada Rhos", false);
        if (!isConfirmed(m_ofList))
            confirmAs(false, "Ada Rhos", false);
    }

private:
    struct Said {
        std::string id;
        bool serves = true; ///< Ole Berg's word, an owner's, serves no inspection
    };

    static bool isConfirmed(const std::vector<Said>& all) { return std::ranges::any_of(all, &Said::serves); }
    void adopt() {
        posted(hand(), adoptedLine(shipped(StatementText::PartMlRelease).wording, on().iso().c_str()));
        m_adopted = true;
    }
    void confirm() {
        confirmAs(any(2) == 0, oneOf("Ada Rhos", "Ada Rhos", "Ada Rhos", "Ole Berg", "Una Past"), any(8) == 0);
    }
    void confirmAs(bool text, const std::string& person, bool ofOther) {
        const bool isOwner = person == "Ole Berg";
        auto what = text ? named(shipped(StatementText::PartMlRelease).wording)
                         : namedChecklist(json::parse(checklist).dump()).value();
        if (ofOther)
            what.digest = std::string(64, '0');
        const auto line = confirmedLine(what, on().iso().c_str(), person,
                                        isOwner ? Capacity::PilotOwner : Capacity::IndependentCertifyingStaff);
        // The checklist of the walk has no lines for an owner's visit.
        const bool may =
            !ofOther && (person == "Ada Rhos" || (isOwner && text) || (person == "Una Past" && m_day == 0));
        const auto receipt = postText(hand(), hand(), line, "wording.jsonl");
        RC_ASSERT(receipt.has_value() == may);
        if (may)
            (text ? m_ofText : m_ofList).push_back({receipt->ids.front().text(), !isOwner});
    }
    void takeBack() {
        auto& all = any(2) == 0 ? m_ofText : m_ofList;
        if (all.empty())
            return;
        const auto at = std::next(all.begin(), any(static_cast<int>(all.size())));
        const auto person = oneOf("Ada Rhos", "Ada Rhos", "Nobody Known", "");
        json taken = {{"entry", "entry.voided"}, {"on", on().iso()}, {"voids", at->id}, {"reason", "the rule changed"}};
        if (!person.empty())
            taken["by"] = person;
        const bool isTakenBack = isTaken(taken.dump());
        RC_ASSERT(isTakenBack == (person == "Ada Rhos"));
        if (isTakenBack)
            all.erase(at);
    }

    bool m_adopted = false;
    std::vector<Said> m_ofText, m_ofList;
};

}
