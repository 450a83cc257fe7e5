// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/review/review_refusals.h"

#include "problem/faults/bench_fault.h"
#include "problem/faults/review_fault.h"

namespace crownring {

namespace {

class Asked {
public:
    Asked(const ReviewFile& file, const ReviewSigned& said) : m_file(file), m_said(said) {}

    std::vector<Problem> ask() {
        askEnvelope();
        if (const auto bar = mayReview(m_file.entitlements, m_file.reviewing))
            refuse(ReviewFault::MayNotReview, {bar->why}, "capacity", bar->rule);
        else if (m_said.authorisation != m_file.authorisation)
            refuse(ReviewFault::AuthorisationDiffers, {m_file.authorisation}, "authorisation", "ML.A.904");
        if (!m_file.isAsked)
            refuse(ReviewFault::NoProgramme, {m_said.balloon}, "balloon", "ML.A.901(a)");
        if (m_said.act == ReviewAct::Recommendation)
            return std::move(m_problems);
        for (const auto& each : m_file.against)
            refuse(ReviewFault::StandsAgainst, {each.title, each.item}, {},
                   each.source.empty() ? "ML.A.903(a)(3), (4)" : "ML.A.903(a)(3), (4); " + each.source);
        if (m_said.act == ReviewAct::Review)
            askLines();
        if (m_file.isAsked && m_said.act == ReviewAct::Extension)
            askExtension();
        askPrinted();
        return std::move(m_problems);
    }

private:
    void refuse(ReviewFault fault, Arguments arguments, std::string key, std::string rule) {
        m_problems.push_back(Problem{fault, std::move(arguments), {{}, 0, std::move(key)}, std::move(rule)});
    }
    void askEnvelope() {
        const auto& item = m_file.envelope;
        if (!item || item->kind != ItemKind::Envelope || item->balloon != m_said.balloon)
            refuse(ReviewFault::NotItsEnvelope, {m_said.item, m_said.balloon}, "item", "ML.A.901(a)");
    }
    void askLines() {
        if (!m_said.inspection)
            return;
        if (!m_file.hasLines)
            refuse(ReviewFault::NoLineForReview, {*m_said.inspection}, "inspection", "ML.A.903(a), (b)");
        for (const auto& line : m_file.notDone)
            refuse(ReviewFault::LineNotDone, {line, *m_said.inspection}, "inspection", "ML.A.903(a), (b)");
    }
    void askExtension() {
        if (!m_file.current)
            refuse(ReviewFault::NothingToExtend, {m_said.balloon}, "act", "ML.A.901(c)");
        else if (*m_file.current < m_file.reviewing.on)
            refuse(ReviewFault::ExpiredBefore, {*m_file.current}, "act", "ML.A.901 (from memory)");
        if (m_file.tooOften)
            refuse(ReviewFault::ExtendedTooOften, {m_said.balloon, *m_file.tooOften}, "act", "ML.A.901(c)");
    }
    void askPrinted() {
        if (!m_problems.empty() || !m_file.due || !m_said.expires || isAsTheRuleGives(*m_said.expires, *m_file.due))
            return;
        refuse(ReviewFault::PrintedDiffers, {*m_said.expires, *m_file.due}, "expires",
               m_said.act == ReviewAct::Review ? "ML.A.901(a); ML.A.903(d)" : "ML.A.901(c), (d)");
    }

    const ReviewFile& m_file;
    const ReviewSigned& m_said;
    std::vector<Problem> m_problems;
};

}

std::vector<Problem> refusals(const ReviewFile& file, const ReviewSigned& said) { return Asked(file, said).ask(); }

PrescribedStatement statementOf(const ReviewFile& file, const ReviewSigned& said) {
    const auto* held = heldBy(file.entitlements, file.reviewing.person, file.reviewing.capacity, file.reviewing.on);
    return composedStatement(textOf(said.act), file.wordings.adopted,
                             {{"registration", said.balloon.text()},
                              {"date", file.reviewing.on.iso()},
                              {"expires", said.expires ? said.expires->iso() : ""},
                              {"form", said.form},
                              {"certificate", said.certificate},
                              {"person", said.reviewer.text()},
                              {"licence", file.authorisation},
                              {"organisation", held ? held->organisation : ""},
                              {"approval", held ? held->approval : ""}});
}

WordingAsked wordingAsked(const ReviewFile& file, const ReviewSigned& said) {
    return {&file.wordings, file.entitlements, statementOf(file, said), {}, {{}, said.reviewer}};
}

bool isAsTheRuleGives(CivilDate printed, CivilDate rule) { return printed == rule || addDays(printed, 1) == rule; }

}
