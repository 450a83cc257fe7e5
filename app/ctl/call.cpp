// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"

#include "answers/due.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/store_fault.h"
#include "problem/faults/use_fault.h"
#include "store/new_record.h"
#include "text/blank.h"
#include "text/shown.h"
#include "text/utf8.h"
#include "words/own_code_text.h"
#include "words/problem_words.h"
#include "words/question_text.h"

#include <QtCore/QDate>
#include <QtCore/QDateTime>
#include <nlohmann/json.hpp>

#include <iostream>
#include <iterator>

namespace crownring::ctl {

namespace {

/// Where it cannot be proven, that is said; each answer still proves what it reads.
void proveOnce(Record& record) {
    const auto proven = record.isProven();
    if (proven && *proven)
        return;
    const auto verdict = proven ? record.verify() : tl::unexpected(proven.error());
    if (!verdict)
        std::cerr << "crownringctl: whether the record is intact could not be told: "
                  << words::message(verdict.error()).toStdString() << "\n";
}

}

std::unique_ptr<Record> open(const Common& common, OpenMode mode, Prove prove) {
    if (common.record.empty()) {
        refuse(Problem{UseFault::NoRecordNamed});
        return nullptr;
    }
    auto record = openRecord(common.record, mode, WriterId(common.writer));
    if (!record) {
        refuse(record.error());
        return nullptr;
    }
    if (prove == Prove::First)
        proveOnce(**record);
    const auto reason = (*record)->readOnlyReason();
    if (reason)
        std::cerr << "crownringctl: " << words::message(*reason).toStdString() << "; it is opened for reading only\n";
    if (reason && isDamage(reason->fault))
        return std::move(*record); // nothing else is said from it
    if (const auto unread = (*record)->unreadable(); !unread)
        refuse(unread.error()); // said, and each answer says by itself what it cannot be given without
    else
        for (const auto& question : *unread)
            std::cerr << "crownringctl: [" << questionName(question.kind) << "] "
                      << words::questionText(question).toStdString() << "\n";
    return std::move(*record);
}

Asked openToAsk(const Common& common, Prove prove) {
    Asked asked{open(common, OpenMode::Existing, prove)};
    if (!asked)
        return asked;
    auto state = asked->snapshot();
    if (!state) {
        refuse(state.error());
        return {};
    }
    asked.state = std::move(*state);
    return asked;
}

Asked openToAsk(const Common& common, const std::string& day) {
    const auto on = dayFrom(day);
    if (!on) {
        refuse(on.error());
        return {};
    }
    auto asked = openToAsk(common);
    asked.on = *on;
    return asked;
}

namespace {

Results<std::string> written(const Common& common, const std::function<Results<std::string>(Record&)>& act) {
    auto made = NewRecord::at(common.record, WriterId(common.writer));
    if (!made)
        return tl::unexpected(std::vector{made.error()});
    auto answer = act(made->record());
    if (const auto kept = answer ? made->keep() : Result<void>(); !kept)
        return tl::unexpected(std::vector{kept.error()});
    return answer;
}

}

Scope scopeOf(const std::string& balloon) {
    Scope scope;
    if (!balloon.empty())
        scope.balloon = Registration(balloon);
    return scope;
}

int write(const Common& common, const std::function<Results<std::string>(Record&)>& act) {
    Results<std::string> answer;
    if (NewRecord::isMadeAt(common.record)) {
        answer = written(common, act);
    } else if (const auto record = open(common, OpenMode::OrCreate)) {
        answer = act(*record);
    } else {
        return BadInput;
    }
    if (!answer)
        return refuse(answer.error());
    std::cout << *answer << "\n";
    return Done;
}

Result<std::string> contentOf(const std::string& file, std::size_t most) {
    return file == "-" ? wholeStream(std::cin, "standard input", most) : wholeFile(file, most);
}

Result<std::string> codeIn(const std::string& file) {
    if (file.empty())
        return std::string();
    auto content = contentOf(file);
    if (!content)
        return content;
    for (const char end : {'\n', '\r'})
        if (content->ends_with(end))
            content->pop_back();
    if (!isUtf8(*content))
        return problem(EntryFault::NotUtf8, {}, {file, 0, {}});
    if (isBlank(*content))
        return problem(EntryFault::Blank, {}, {file, 0, {}});
    return words::codeTyped(QString::fromStdString(*content));
}

CivilDate today() { return *CivilDate::parse(QDate::currentDate().toString(Qt::ISODate).toStdString()); }

Result<CivilDate> dayFrom(const std::string& text) { return text.empty() ? today() : CivilDate::parse(text); }

std::optional<TimeOfDay> timeOn(CivilDate day) {
    const auto now = QDateTime::currentDateTimeUtc().time();
    return day == today() ? std::optional(TimeOfDay(now.hour(), now.minute())) : std::nullopt;
}

Result<SaidWhen> whenFrom(const std::string& day, const std::string& time) {
    return dayFrom(day).and_then([&](CivilDate on) -> Result<SaidWhen> {
        if (time.empty())
            return SaidWhen{on, {}};
        return TimeOfDay::parse(time).map([on](TimeOfDay at) { return SaidWhen{on, at}; });
    });
}

int refuse(const Problem& problem) {
    std::cerr << "crownringctl: [" << codeName(problem.code()) << "] " << words::line(problem).toStdString() << "\n";
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

std::string plainly(QString words) { return words.replace(QChar::Nbsp, u' ').toStdString(); }

std::string counted(std::int64_t number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

words::Titles titlesIn(Record& record) {
    const auto obligations = obligationsOn(record, today());
    return obligations ? words::titlesOf(obligations->adoptions()) : words::Titles();
}

std::string printed(const nlohmann::ordered_json& document) { return escapedJson(document.dump(2)); }

void print(const nlohmann::ordered_json& document) { std::cout << printed(document) << "\n"; }

}
