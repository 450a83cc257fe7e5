// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"

#include "text/shown.h"

#include <QtCore/QDate>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>

namespace crownring::ctl {

std::unique_ptr<Record> open(const Common& common, OpenMode mode) {
    if (common.record.empty()) {
        refuse(
            Problem{Code::BadUse, "no record is named", "name one with --record FILE or --record postgresql://…", {}});
        return nullptr;
    }
    auto record = openRecord(common.record, mode, WriterId(common.writer));
    if (!record) {
        refuse(record.error());
        return nullptr;
    }
    if (const auto reason = (*record)->readOnlyReason(); !reason.empty())
        std::cerr << "crownringctl: " << reason << "; it is opened for reading only\n";
    if (const auto unread = (*record)->unreadable())
        for (const auto& question : *unread)
            std::cerr << "crownringctl: [" << questionName(question.kind) << "] " << questionText(question) << "\n";
    return std::move(*record);
}

Result<std::string> contentOf(const std::string& file) {
    std::ostringstream content;
    if (file == "-") {
        content << std::cin.rdbuf();
        return content.str();
    }
    std::ifstream stream(file, std::ios::binary);
    // Opening a folder succeeds; reading it does not.
    if (stream)
        stream.peek();
    if (!stream && !stream.eof())
        return problem(Code::FileUnreadable, "the file cannot be read", "check its name and whether it may be read",
                       {file, 0, {}});
    content << stream.rdbuf();
    return content.str();
}

CivilDate today() { return *CivilDate::parse(QDate::currentDate().toString(Qt::ISODate).toStdString()); }

Result<CivilDate> dayFrom(const std::string& text) { return text.empty() ? today() : CivilDate::parse(text); }

int refuse(const Problem& problem) {
    std::cerr << "crownringctl: [" << codeName(problem.code) << "] " << text(problem) << "\n";
    return BadInput;
}

int refuse(const std::vector<Problem>& problems) {
    constexpr std::size_t most = 50;
    for (std::size_t i = 0; i < problems.size() && i < most; ++i)
        refuse(problems[i]);
    if (problems.size() > most)
        std::cerr << "crownringctl: and " << problems.size() - most << " more problems\n";
    return BadInput;
}

void print(const nlohmann::ordered_json& document) { std::cout << escapedJson(document.dump(2)) << "\n"; }

}
