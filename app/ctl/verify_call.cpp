// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/use_fault.h"
#include "words/question_text.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <sstream>

namespace crownring::ctl {

namespace {

/// The entry that is not what was written, or that is behind what is not what it gives.
nlohmann::ordered_json firstOf(const Verdict& verdict) {
    const auto& first = verdict.firstBad ? verdict.firstBad : verdict.behind;
    return first ? nlohmann::ordered_json(first->text()) : nlohmann::ordered_json();
}

/// That entry as people find it: "entry 12 of 2026-11-20, QE-OVA flew …".
std::string entryText(Record& record, const EntryId& id, const words::Titles& titles) {
    const auto line = record.line(id);
    if (!line || !*line)
        return "entry " + id.text();
    return "entry " + std::to_string((*line)->number) + " of " + nowOf(**line).on.iso() + ", " +
           plainly(words::Sentences::of(**line, titles));
}

void printVerdict(Record& record, const Verdict& verdict, const words::Titles& titles) {
    std::cout << counted(verdict.entries, "entry", "entries") << ", "
              << (verdict.intact         ? "the chain is intact"
                  : verdict.rebuildMends ? "the chain is intact, BUT NOT WHAT WAS COMPUTED FROM IT"
                                         : "NOT INTACT")
              << "\n";
    if (verdict.intact)
        return;
    if (verdict.firstBad)
        std::cout << "First bad is " << entryText(record, *verdict.firstBad, titles) << ": ";
    std::cout << (verdict.reason ? words::said(*verdict.reason).toStdString() : "") << "\n";
    if (verdict.behind)
        std::cout << "Behind it is " << entryText(record, *verdict.behind, titles) << "\n";
}

/// What `post` answered once: each that was named, then the lines of the file.
Results<std::vector<Acknowledged>> expectedOf(const VerifyOptions& options) {
    std::vector<Acknowledged> expected;
    std::vector<Problem> problems;
    const auto add = [&](const std::string& text, const Where& where) {
        if (auto end = acknowledgedFrom(text))
            expected.push_back(std::move(*end));
        else
            problems.push_back({UseFault::NotAnAcknowledgement, {text}, where});
    };
    for (const auto& each : options.expect)
        add(each, {});
    if (!options.expectFrom.empty()) {
        const auto content = contentOf(options.expectFrom);
        if (!content)
            return tl::unexpected(std::vector{content.error()});
        std::istringstream lines(*content);
        std::string line;
        for (int number = 1; std::getline(lines, line); ++number) {
            if (!line.empty() && line.back() == '\r')
                line.pop_back();
            if (!line.empty())
                add(line, {options.expectFrom, number, {}});
        }
    }
    if (!problems.empty())
        return tl::unexpected(std::move(problems));
    return expected;
}

}

int run(const VerifyOptions& options, const Common& common) {
    const auto expected = expectedOf(options);
    if (!expected)
        return refuse(expected.error());
    const auto record = openToAsk(common, Prove::ByTheCall);
    if (!record)
        return BadInput;
    // From what is found not intact nothing else can be asked.
    const auto titles = options.json ? words::Titles() : titlesIn(*record);
    const auto questions = record->questions();
    const auto verdict = record->verify();
    const auto missing = record->missing(*expected);
    if (!verdict)
        return refuse(verdict.error());
    if (!missing && verdict->intact)
        return refuse(missing.error());
    if (!questions && verdict->intact)
        return refuse(questions.error());
    if (options.json) {
        nlohmann::ordered_json answer{
            {"entries", verdict->entries}, {"intact", verdict->intact}, {"first_bad", firstOf(*verdict)}};
        if (!verdict->projection.empty())
            answer["projection"] = verdict->projection;
        if (verdict->reason)
            answer["reason"] = words::said(*verdict->reason).toStdString();
        if (!expected->empty()) {
            answer["missing"] = missing ? nlohmann::ordered_json::array() : nlohmann::ordered_json();
            for (const auto& end : missing.value_or(std::vector<Acknowledged>{}))
                answer["missing"].push_back(acknowledgedText(end));
        }
        answer["questions"] = nlohmann::ordered_json::array();
        for (const auto& question : questions.value_or(std::vector<Question>{}))
            answer["questions"].push_back(questionJson(question));
        print(answer);
    } else {
        printVerdict(*record, *verdict, titles);
        for (const auto& end : missing.value_or(std::vector<Acknowledged>{}))
            std::cout << "MISSING: entry " << end.sequence << " of writer " << end.writer.text()
                      << " is no longer as it was acknowledged (" << acknowledgedText(end) << ")\n";
        if (!expected->empty() && missing && missing->empty())
            std::cout << counted(std::ssize(*expected), "expected entry is", "expected entries are") << " there\n";
        const auto open = questions.value_or(std::vector<Question>{});
        std::cout << (questions ? counted(std::ssize(open), "open question", "open questions")
                                : "What questions are open cannot be told")
                  << "\n";
        for (const auto& question : open)
            std::cout << "  " << (question.stamp.id.empty() ? "" : question.stamp.at.on().iso() + " ")
                      << words::questionText(question, titles).toStdString() << "\n";
    }
    return verdict->intact && missing && missing->empty() ? Done : AnswerIsNo;
}

int run(const RebuildOptions&, const Common& common) {
    const auto record = open(common, OpenMode::Existing, Prove::ByTheCall);
    if (!record)
        return BadInput;
    const auto done = record->rebuild();
    if (!done)
        return refuse(done.error());
    print({{"rebuilt", true}});
    return Done;
}

}
