// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "words/question_text.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

/// The entry that is not what was written, or that is behind what is not what it gives.
nlohmann::ordered_json firstOf(const Verdict& verdict) {
    const auto& first = verdict.firstBad ? verdict.firstBad : verdict.behind;
    return first ? nlohmann::ordered_json(first->text()) : nlohmann::ordered_json();
}

}

int run(const VerifyOptions& options, const Common& common) {
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto verdict = record->verify();
    const auto questions = record->questions();
    if (!verdict)
        return refuse(verdict.error());
    if (!questions && verdict->intact)
        return refuse(questions.error());
    if (options.json) {
        nlohmann::ordered_json answer{
            {"entries", verdict->entries}, {"intact", verdict->intact}, {"first_bad", firstOf(*verdict)}};
        if (!verdict->projection.empty())
            answer["projection"] = verdict->projection;
        if (verdict->reason)
            answer["reason"] = words::said(*verdict->reason).toStdString();
        answer["questions"] = nlohmann::ordered_json::array();
        for (const auto& question : questions.value_or(std::vector<Question>{}))
            answer["questions"].push_back(questionJson(question));
        print(answer);
    } else {
        std::cout << verdict->entries << " entries, "
                  << (verdict->intact         ? "the chain is intact"
                      : verdict->rebuildMends ? "the chain is intact, BUT NOT WHAT WAS COMPUTED FROM IT"
                                              : "NOT INTACT")
                  << "\n";
        if (!verdict->intact)
            std::cout << (verdict->firstBad ? "First bad entry " + verdict->firstBad->text() + ": " : "")
                      << (verdict->reason ? words::said(*verdict->reason).toStdString() : "") << "\n";
        const auto open = questions.value_or(std::vector<Question>{});
        std::cout << open.size() << " open questions\n";
        for (const auto& question : open)
            std::cout << "  " << (question.stamp.id.empty() ? "" : question.stamp.at.on().iso() + " ")
                      << words::questionText(question).toStdString() << "\n";
    }
    return verdict->intact ? Done : AnswerIsNo;
}

int run(const RebuildOptions&, const Common& common) {
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto done = record->rebuild();
    if (!done)
        return refuse(done.error());
    print({{"rebuilt", true}});
    return Done;
}

}
