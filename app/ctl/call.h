// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What every call of crownringctl shares. Answers go to standard output, messages to standard error.

#include "exchange/text/whole_file.h"
#include "store/record_file.h"
#include "words/sentences.h"

#include <nlohmann/json_fwd.hpp>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace crownring::ctl {

/// Exit codes, part of the contract.
enum Exit {
    Done = 0,
    AnswerIsNo = 1, ///< a verify that fails, a rig-up that may not fly
    BadInput = 2,   ///< bad input or use; nothing was written
};

/// Options before the call's name.
struct Common {
    std::string record;
    std::string writer;
};

/// Whether a record that was written to round the program since it was proven last is proven before it is asked.
enum class Prove { First, ByTheCall };

/// Opens the record or says why not. Empty after the latter. What is not intact is opened for reading only, and said.
[[nodiscard]] std::unique_ptr<Record> open(const Common& common, OpenMode mode = OpenMode::Existing,
                                           Prove prove = Prove::First);

/// A record that is asked: all answers are of one state of it.
struct Asked {
    std::unique_ptr<Record> record;
    std::unique_ptr<Snapshot> state{};
    CivilDate on{}; ///< the day asked, where a call asks for one

    explicit operator bool() const { return record != nullptr; }
    Record& operator*() const { return *record; }
    Record* operator->() const { return record.get(); }
};
/// Opens it or says why not. Empty after the latter.
[[nodiscard]] Asked openToAsk(const Common& common, Prove prove = Prove::First);
/// @param day as it stands on the command line
[[nodiscard]] Asked openToAsk(const Common& common, const std::string& day);

/// What is fitted to a balloon; everything where none is named.
[[nodiscard]] Scope scopeOf(const std::string& balloon);

/// Writes to the record, which is made if there is none: it is only there when nothing was refused. Prints what `act`
/// answers. @return the exit code
int write(const Common& common, const std::function<Results<std::string>(Record&)>& act);

/// Reads a whole file (`wholeFile`), or standard input for "-".
[[nodiscard]] Result<std::string> contentOf(const std::string& file, std::size_t most = largestImport);

/// A code from a file, or from standard input for "-": its text without the end of its line. Empty where no file is
/// named. NotUtf8 for what is no text, Blank for an empty file: that would be signed without.
[[nodiscard]] Result<std::string> codeIn(const std::string& file);

/// A day from the command line; today when empty.
[[nodiscard]] Result<CivilDate> dayFrom(const std::string& text);
[[nodiscard]] CivilDate today();
/// What is posted as it happens carries the time (UTC); nothing of another day than today.
[[nodiscard]] std::optional<TimeOfDay> timeOn(CivilDate day);
/// When it is said to be: a day, today when empty, and a time where one is given.
struct SaidWhen {
    CivilDate on;
    std::optional<TimeOfDay> time;
};
[[nodiscard]] Result<SaidWhen> whenFrom(const std::string& day, const std::string& time);

/// Says a problem on standard error. @return BadInput
int refuse(const Problem& problem);
int refuse(const std::vector<Problem>& problems);

/// As a terminal takes it: what holds words together on a screen is a plain space, so that it is found.
[[nodiscard]] std::string plainly(QString words);
/// "1 flight", "2 flights".
[[nodiscard]] std::string counted(std::int64_t number, const char* one, const char* many);
/// What requirements are called that the record has adopted by today; none where it does not say.
[[nodiscard]] words::Titles titlesIn(Record& record);

/// One JSON document as it is printed.
[[nodiscard]] std::string printed(const nlohmann::ordered_json& document);
void print(const nlohmann::ordered_json& document);

}
