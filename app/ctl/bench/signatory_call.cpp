// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/own_code.h"
#include "acts/revoke.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/document_text.h"
#include "trust/codes_told.h"
#include "words/spoken.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

namespace {

const words::Spoken signatoryLanguage;

/// Of each person the one in force, by name.
std::vector<CodeSet> inForceNow(const std::vector<CodeSet>& codes) {
    std::vector<CodeSet> latest;
    for (const auto& each : codes)
        if (inForce(codes, each.said.signatory.text()) == &each)
            latest.push_back(each);
    std::ranges::sort(latest, {}, [](const CodeSet& each) { return each.said.signatory; });
    return latest;
}

nlohmann::ordered_json codeJson(const CodeSet& code) {
    return {{"name", code.said.signatory.text()},
            {"since", code.stamp.at.on().iso()},
            {"key", code.said.key},
            {"set_by_another", code.isByAnother() ? nlohmann::ordered_json(code.by) : nlohmann::ordered_json()},
            {"reason", code.said.reason},
            {"entry", code.entry.text()}};
}

}

int run(const SignatoryCodeOptions& options, const Common& common) {
    CodeSetting setting;
    setting.signatory = PersonId(options.name);
    setting.reason = options.reason;
    if (!options.by.empty())
        setting.other = PersonId(options.by);
    for (const auto& [file, into] : {std::pair(&options.codeFile, &setting.code),
                                     {&options.beforeFile, &setting.before},
                                     {&options.byCodeFile, &setting.codeOfOther}}) {
        auto code = codeIn(*file);
        if (!code)
            return refuse(code.error());
        *into = std::move(*code);
    }
    const auto when = whenFrom(options.on, options.time);
    if (!when)
        return refuse(when.error());
    setting.on = when->on;
    setting.time = when->time;
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = setCode(record, record, setting);
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto codes = codesTold(record);
        if (!codes)
            return tl::unexpected(std::vector{codes.error()});
        return printed(codeJson(*inForce(*codes, options.name)));
    });
}

int run(const SignatoryListOptions& options, const Common& common) {
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    const auto codes = codesTold(*record);
    if (!codes)
        return refuse(codes.error());
    const auto latest = inForceNow(*codes);
    if (options.json) {
        auto list = nlohmann::ordered_json::array();
        for (const auto& each : latest)
            list.push_back(codeJson(each));
        print({{"signatories", list}});
        return Done;
    }
    if (latest.empty()) {
        std::cout << "Nobody has a code to sign with.\n";
        return Done;
    }
    paper::Table table{{{"Signatory"}, {"Since"}, {"Key"}, {"Set by"}}, {}, {}};
    for (const auto& each : latest)
        table.rows.push_back({each.said.signatory.text(), each.stamp.at.on().iso(), each.said.key,
                              each.isByAnother() ? each.by : each.said.signatory.text()});
    std::cout << paper::toText({"Codes to sign with", {}, {}, {}, {table}}, signatoryLanguage);
    return Done;
}

int run(const InspectionRevokeOptions& options, const Common& common) {
    const auto when = whenFrom(options.on, options.time);
    if (!when)
        return refuse(when.error());
    const auto code = codeIn(options.codeFile);
    if (!code)
        return refuse(code.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = revoke(
            record, record,
            {InspectionId(options.inspection), options.reason, PersonId(options.by), when->on, when->time}, {*code});
        if (!receipt)
            return tl::unexpected(receipt.error());
        return printed({{"revoked", options.inspection},
                        {"on", when->on.iso()},
                        {"by", options.by},
                        {"entry", receipt->ids.front().text()}});
    });
}

}
