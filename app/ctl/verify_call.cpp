// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"
#include "ctl/call.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

int run(bool json, const Common& common) {
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto verdict = record->verify();
    const auto questions = record->questions();
    if (!verdict)
        return refuse(verdict.error());
    if (!questions)
        return refuse(questions.error());
    if (json) {
        nlohmann::ordered_json answer{{"entries", verdict->entries},
                                      {"intact", verdict->intact},
                                      {"first_bad", verdict->firstBad
                                                        ? nlohmann::ordered_json(verdict->firstBad->text())
                                                        : nlohmann::ordered_json()}};
        if (!verdict->reason.empty())
            answer["reason"] = verdict->reason;
        answer["questions"] = nlohmann::ordered_json::array();
        for (const auto& question : *questions)
            answer["questions"].push_back(questionJson(question));
        print(answer);
    } else {
        std::cout << verdict->entries << " entries, " << (verdict->intact ? "the chain is intact" : "NOT INTACT")
                  << "\n";
        if (!verdict->intact)
            std::cout << (verdict->firstBad ? "First bad entry " + verdict->firstBad->text() + ": " : "")
                      << verdict->reason << "\n";
        std::cout << questions->size() << " open questions\n";
        for (const auto& question : *questions)
            std::cout << "  " << (question.stamp.id.empty() ? "" : question.stamp.at.on().iso() + " ")
                      << questionText(question) << "\n";
    }
    return verdict->intact ? Done : AnswerIsNo;
}

int rebuildRecord(const Common& common) {
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

void addVerify(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("verify", "Recompute the chain over all entries; list the open questions");
    auto json = std::make_shared<bool>(false);
    call->add_flag("--json", *json, "Answer as JSON");
    call->footer(
        "Exit status 1 when an entry is not what was written. Open questions are contradictions between entries;\n"
        "they do not break the chain. The chain shows an alteration; only copies held by others prove against\n"
        "someone who rewrites everything.");
    call->callback([=, &common, &chosen] { chosen = [=, &common] { return run(*json, common); }; });
}

void addRebuild(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("rebuild", "Make all projections anew from the journal");
    call->add_flag_callback(
        "--json", [] {}, "Answer as JSON (the answer always is)");
    call->callback([&common, &chosen] { chosen = [&common] { return rebuildRecord(common); }; });
}

}
