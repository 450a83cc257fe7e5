// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/approve_return.h"
#include "acts/open_inspection.h"
#include "acts/sign.h"
#include "answers/bench_file.h"
#include "answers/forecast/station_letter.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/use_fault.h"
#include "words/problem_words.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

struct Signer {
    Capacity capacity;
    CivilDate on;
    std::optional<TimeOfDay> time;
};

/// In what capacity, and when, somebody signs by the options of an act.
template <class Options>
Result<Signer> signerFrom(const Options& options) {
    const auto when = whenFrom(options.on, options.time);
    if (!when)
        return tl::unexpected(when.error());
    const auto capacity = capacityFrom(options.capacity);
    if (!capacity)
        return problem(BenchFault::NoCapacityToSignIn, {options.capacity});
    return Signer{*capacity, when->on, when->time};
}

Json jsonOf(const std::vector<Work>& works) {
    auto array = Json::array();
    for (const auto& work : works)
        array.push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
    return array;
}

/// What the entries of a receipt accomplish.
Result<std::vector<Work>> accomplishedBy(Record& record, const Receipt& receipt) {
    std::vector<Work> works;
    for (const auto& id : receipt.ids) {
        const auto line = record.line(id);
        if (!line)
            return tl::unexpected(line.error());
        if (const auto* done = *line ? std::get_if<RequirementDone>(&(*line)->entry.body) : nullptr)
            works.push_back({done->item, done->requirement});
    }
    return works;
}

Result<std::vector<Work>> workFrom(const std::vector<std::string>& said) {
    std::vector<Work> works;
    for (const auto& each : said) {
        const auto at = each.find('=');
        if (at == std::string::npos)
            return problem(UseFault::NoWork, {each});
        works.push_back({ItemId(each.substr(0, at)), RequirementId(each.substr(at + 1))});
    }
    return works;
}

/// Its balloon, its items and its work, and nothing besides.
Result<Opening> openingFromLetter(Opening opening, const std::string& file) {
    const auto text = contentOf(file);
    if (!text)
        return tl::unexpected(text.error());
    auto letter = letterFrom(*text);
    if (!letter) {
        letter.error().where.file = file;
        return tl::unexpected(letter.error());
    }
    opening.balloon = letter->balloon;
    opening.items = letter->items;
    for (const auto& work : letter->works)
        opening.work.push_back({work.item, work.requirement});
    return opening;
}

Result<Opening> openingFrom(Record& record, const InspectionOpenOptions& options, Visit visit, CivilDate on) {
    Opening opening;
    opening.visit = visit;
    opening.on = on;
    opening.by = options.by;
    opening.order = options.order;
    if (!options.balloon.empty())
        opening.balloon = Registration(options.balloon);
    for (const auto& item : options.items)
        opening.items.emplace_back(item);
    if (!options.letter.empty())
        return openingFromLetter(std::move(opening), options.letter);
    auto offer = offerInspection(record, opening.balloon, opening.items, on, visit);
    if (!offer)
        return tl::unexpected(offer.error());
    if (opening.items.empty())
        for (const auto& item : offer->due.items)
            opening.items.push_back(item.id);
    auto work = workFrom(options.work);
    if (!work)
        return tl::unexpected(work.error());
    opening.work = std::move(*work);
    if (opening.work.empty() && !options.nothing)
        for (const auto& each : offer->proposals)
            if (each.due)
                opening.work.push_back({each.row->item->id, each.row->requirement->id});
    return opening;
}

/// What would be signed, and what stands in the way.
int showDraft(const Common& common, const InspectionId& inspection, const Signing& signing, const std::string& on) {
    const auto record = openToAsk(common, on);
    if (!record)
        return BadInput;
    const auto draft = draftRelease(*record, inspection, signing);
    if (!draft)
        return refuse(draft.error());
    auto sections = Json::array();
    for (const auto& section : draft->sections) {
        auto paragraphs = Json::array();
        for (const auto& each : section.paragraphs)
            paragraphs.push_back(words::said(each).toStdString());
        sections.push_back({{"heading", words::said(section.heading).toStdString()}, {"paragraphs", paragraphs}});
    }
    auto refusals = Json::array();
    for (const auto& each : draft->refusals)
        refusals.push_back({{"refusal", refusalName(each.kind)},
                            {"line", each.line},
                            {"item", each.item ? Json(each.item->text()) : Json()},
                            {"text", words::message(each).toStdString()},
                            {"mend", words::mend(each).toStdString()},
                            {"rule", each.rule}});
    print({{"inspection", inspection.text()},
           {"may_sign", draft->refusals.empty()},
           {"refusals", refusals},
           {"statement", draft->statement.text},
           {"source", draft->statement.source},
           {"sections", sections},
           {"accomplishes", jsonOf(draft->accomplishments)}});
    return draft->refusals.empty() ? Done : AnswerIsNo;
}

}

int run(const InspectionOpenOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto visit = visitFrom(options.visit);
    if (!visit)
        return refuse(Problem{BenchFault::NoVisit, {options.visit, listed(visitNames())}});
    return write(common, [&](Record& record) -> Results<std::string> {
        auto opening = openingFrom(record, options, *visit, *on);
        if (!opening)
            return tl::unexpected(std::vector{opening.error()});
        const auto name = openInspection(record, record, *opening);
        if (!name)
            return tl::unexpected(name.error());
        const auto file = benchFile(record, *name, *on);
        if (!file)
            return tl::unexpected(std::vector{file.error()});
        auto lines = Json::array();
        for (const auto& work : workLines(file->inspection, file->items))
            lines.push_back({{"line", work.line->id},
                             {"item", work.item ? Json(work.item->id.text()) : Json()},
                             {"title", work.line->title},
                             {"required", work.line->required}});
        return printed({{"opened", name->text()},
                        {"on", on->iso()},
                        {"visit", options.visit},
                        {"work", jsonOf(file->inspection.opened.body.work)},
                        {"lines", std::move(lines)}});
    });
}

int run(const InspectionSignOptions& options, const Common& common) {
    const auto signer = signerFrom(options);
    if (!signer)
        return refuse(signer.error());
    Signing signing{outcomeFrom(options.outcome).value_or(Outcome::Released),
                    PersonId(options.by),
                    signer->capacity,
                    options.data,
                    options.limitations,
                    signer->on,
                    options.outstanding,
                    {}};
    if (!options.until.empty()) {
        const auto until = CivilDate::parse(options.until);
        if (!until)
            return refuse(until.error());
        signing.within.until = *until;
    }
    if (options.minutes > 0)
        signing.within.minutes = Minutes(options.minutes);
    if (options.flights > 0)
        signing.within.flights = options.flights;
    const InspectionId inspection(options.inspection);
    if (options.draft)
        return showDraft(common, inspection, signing, options.on);
    const auto code = codeIn(options.codeFile);
    if (!code)
        return refuse(code.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = sign(record, record, inspection, signing, signer->time, {*code});
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto done = accomplishedBy(record, *receipt);
        if (!done)
            return tl::unexpected(std::vector{done.error()});
        return printed({{"signed", inspection.text()},
                        {"outcome", options.outcome},
                        {"on", signer->on.iso()},
                        {"by", options.by},
                        {"accomplished", jsonOf(*done)},
                        {"entry", receipt->ids.front().text()}});
    });
}

int run(const InspectionApproveOptions& options, const Common& common) {
    const auto signer = signerFrom(options);
    if (!signer)
        return refuse(signer.error());
    const InspectionId inspection(options.inspection);
    const auto code = codeIn(options.codeFile);
    if (!code)
        return refuse(code.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = approveReturn(record, record, inspection,
                                           {PersonId(options.by), signer->capacity, signer->on}, signer->time, {*code});
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto done = accomplishedBy(record, *receipt);
        const auto file = benchFile(record, inspection, signer->on);
        if (!done || !file)
            return tl::unexpected(std::vector{done ? file.error() : done.error()});
        return printed({{"approved", inspection.text()},
                        {"on", signer->on.iso()},
                        {"by", options.by},
                        {"counts_from", done->empty() ? Json() : Json(file->inspection.closed->stamp.at.on().iso())},
                        {"accomplished", jsonOf(*done)},
                        {"entry", receipt->ids.front().text()}});
    });
}

}
