// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What can be wrong with input, as a plain value: a stable code, the fault itself with what it is about, and where it
/// is. Sentences are made of it in `app/words/`.
/// Nothing here is thrown; functions that may fail because of input return `Result<T>`.

#include "problem/argument.h"
#include "problem/fault.h"

#include <tl/expected.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace crownring {

/// Where a problem is; empty or 0 where it does not apply. Lines count from 1.
struct Where {
    std::string file;
    int line = 0;
    std::string key; ///< a key of an entry, a path inside a document ("/requirements/0/limits/1/every"), a column

    bool operator==(const Where&) const = default;
};

struct Problem {
    Fault fault;
    Arguments arguments{}; ///< what it is about, as the family of the fault says
    Where where{};
    std::string rule{}; ///< document and clause that asks for it; empty where none does

    /// The stable code that scripts know the fault by.
    [[nodiscard]] Code code() const { return rowOf(fault).code; }
    bool operator==(const Problem&) const = default;
};

/// For developers, in codes: "fleet.jsonl:12: minuts: unknown-key (flight.logged)". What users read: `app/words/`.
[[nodiscard]] std::string text(const Problem& problem);

template <class T>
using Result = tl::expected<T, Problem>;

/// For input of many lines: all that is wrong with it, not only the first.
template <class T>
using Results = tl::expected<T, std::vector<Problem>>;

[[nodiscard]] inline tl::unexpected<Problem> problem(Fault fault, Arguments arguments = {}, Where where = {}) {
    return tl::unexpected(Problem{fault, std::move(arguments), std::move(where), {}});
}

/// What is wrong, as a part of another sentence.
[[nodiscard]] inline Phrase messageOf(const Problem& problem) { return {problem.fault, problem.arguments}; }

/// At a key of an entry, a place inside a document, a column.
[[nodiscard]] inline Where atKey(std::string key) { return {{}, 0, std::move(key)}; }

}
