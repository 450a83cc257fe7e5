// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt_text.h"
#include "answers/wording/wording_lines.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/document_text.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/use_fault.h"
#include "problem/faults/wording_fault.h"
#include "words/spoken.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

using TextJson = nlohmann::ordered_json;

const words::Spoken textLanguage;

TextJson adoptedJson(const WordingLine& line) {
    if (!line.adopted)
        return {};
    return {{"organisation", line.adopted->organisation},
            {"on", line.adopted->on.iso()},
            {"entry", line.adopted->entry.text()}};
}

TextJson lineJson(const WordingLine& line) {
    auto confirmed = TextJson::array();
    for (const auto& each : line.confirmed)
        confirmed.push_back({{"by", each.confirmation.said.confirmedBy.text()},
                             {"capacity", each.confirmation.said.capacity},
                             {"licence", each.confirmation.said.licence},
                             {"on", each.confirmation.on.iso()},
                             {"against", each.confirmation.said.against},
                             {"counts", each.counts},
                             {"entry", each.confirmation.entry.text()}});
    return {{line.isText() ? "text" : "checklist", line.named.id()},
            {"revision", line.named.revision},
            {"title", line.named.title},
            {"digest", line.named.digest},
            {"source", line.source},
            {"ships", line.ships},
            {"read", line.read},
            {"adopted", line.isText() ? adoptedJson(line) : TextJson()},
            {"is_confirmed", line.isConfirmed()},
            {"confirmed", confirmed}};
}

std::string stateOf(const WordingLine& line) {
    if (line.isText() && !line.adopted)
        return "not adopted";
    if (!line.isConfirmed())
        return "not confirmed";
    // Each serves what his capacity may sign, under the rules of one state.
    std::string all;
    for (const auto& [confirmation, counts] : line.confirmed)
        if (counts)
            all += (all.empty() ? "" : "; ") + confirmation.said.confirmedBy.text() + " (" +
                   confirmation.said.capacity + "), " + confirmation.on.iso() + ", against " +
                   confirmation.said.against;
    return all;
}

Result<WordingLine> lineOf(Books& books, const std::string& id, const std::string& revision, CivilDate on) {
    const auto lines = wordingsOn(books, on);
    if (!lines)
        return tl::unexpected(lines.error());
    auto line = wordingIn(*lines, id, revision);
    if (line)
        return std::move(*line);
    Listed ids;
    for (const auto& each : *lines)
        ids.list.emplace_back(each.named.id());
    return problem(WordingFault::NoSuchText, {id, std::move(ids)});
}

Results<std::vector<TextAdopted>> adoptedFrom(const TextAdoptOptions& options) {
    std::vector<TextAdopted> texts;
    for (int i = 0; i < statementTextCount; ++i) {
        const auto text = static_cast<StatementText>(i);
        if (options.text == "all" || idOf(text).text() == options.text)
            texts.push_back(asShipped(text, options.organisation));
    }
    if (options.body.empty())
        return texts;
    auto body = contentOf(options.body);
    if (!body)
        return tl::unexpected(std::vector{body.error()});
    while (!body->empty() && (body->back() == '\n' || body->back() == '\r'))
        body->pop_back();
    for (auto& each : texts) {
        each.body = *body;
        each.revision = options.revision;
        each.source = options.source;
        each.title = options.title.empty() ? each.title : options.title;
    }
    return texts;
}

}

int run(const TextListOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto lines = wordingsOn(*record, record.on);
    if (!lines)
        return refuse(lines.error());
    if (options.json) {
        auto list = TextJson::array();
        for (const auto& each : *lines)
            list.push_back(lineJson(each));
        print({{"on", record.on.iso()}, {"texts", list}});
        return Done;
    }
    paper::Table table{{{"Text or checklist"}, {"Revision"}, {"Adopted by"}, {"Confirmed by"}}, {}, {}};
    for (const auto& each : *lines)
        table.rows.push_back(
            {each.named.id(), each.named.revision, each.adopted ? each.adopted->organisation : "-", stateOf(each)});
    std::cout << paper::toText({"Wording on " + record.on.iso(), {}, {}, {}, {table}}, textLanguage);
    return Done;
}

int run(const TextShowOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto line = lineOf(*record, options.text, options.revision, record.on);
    if (!line)
        return refuse(line.error());
    if (options.json) {
        auto json = lineJson(*line);
        json["note"] = line->note;
        if (line->isText())
            json["body"] = line->body;
        else
            json["document"] = TextJson::parse(line->body);
        print(json);
        return Done;
    }
    std::cout << line->named.title << "\n" << line->named.id() << ", revision " << line->named.revision << "\n\n";
    if (line->isText())
        std::cout << line->body << "\n\n";
    std::cout << "Source: " << line->source << "\n";
    if (!line->note.empty())
        std::cout << line->note << "\n";
    if (line->adopted)
        std::cout << "Adopted by " << line->adopted->organisation << " from " << line->adopted->on.iso() << "\n";
    std::cout << "Digest: " << line->named.digest << "\nConfirmed: " << stateOf(*line) << "\n";
    return Done;
}

int run(const TextAdoptOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    auto texts = adoptedFrom(options);
    if (!texts)
        return refuse(texts.error());
    if (texts->empty()) {
        Listed ids;
        for (const auto& each : shippedWordings())
            ids.list.emplace_back(each.wording.text);
        return refuse(Problem{WordingFault::NoSuchText, {options.text, std::move(ids)}});
    }
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = adoptTexts(record, record, *texts, *on, options.by);
        if (!receipt)
            return tl::unexpected(receipt.error());
        auto adopted = TextJson::array();
        for (std::size_t i = 0; i < texts->size(); ++i)
            adopted.push_back({{"text", (*texts)[i].text.text()},
                               {"revision", (*texts)[i].revision},
                               {"digest", digestOf(wordingOf((*texts)[i]))},
                               {"entry", receipt->ids[i].text()}});
        return printed({{"adopted", adopted}, {"organisation", options.organisation}, {"on", on->iso()}});
    });
}

int run(const TextConfirmOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto capacity = capacityFrom(options.capacity);
    if (!capacity)
        return refuse(Problem{BenchFault::NoCapacityToSignIn, {options.capacity}});
    return write(common, [&](Record& record) -> Results<std::string> {
        auto line = lineOf(record, options.text, options.revision, *on);
        if (!line)
            return tl::unexpected(std::vector{line.error()});
        if (!options.digest.empty()) // what was read elsewhere is what is in use
            line->named.digest = options.digest;
        const auto receipt =
            confirmTexts(record, record, {line->named}, {options.against, PersonId(options.by), *capacity, *on});
        if (!receipt)
            return tl::unexpected(receipt.error());
        return printed({{"confirmed", line->named.id()},
                        {"revision", line->named.revision},
                        {"digest", line->named.digest},
                        {"by", options.by},
                        {"on", on->iso()},
                        {"against", options.against},
                        {"entry", receipt->ids.front().text()}});
    });
}

}
