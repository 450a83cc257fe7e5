// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What can be wrong with input, as a plain value: a stable code, where it is, what is wrong and how to mend it.
/// Nothing here is thrown; functions that may fail because of input return `Result<T>`.

#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace crownring {

/// Every kind of problem that a user can meet. The names (`codeName`) are stable; scripts may rely on them.
enum class Code {
    BadDate,          ///< not a civil date, month or time of day in the stated form
    BadQuantity,      ///< not a number, or outside the range of what it measures
    BadJson,          ///< text that is not JSON, or not one object
    UnknownKind,      ///< an entry kind that does not exist
    UnknownKey,       ///< a key that the entry kind does not have
    MissingKey,       ///< a key that the entry kind must have
    BadValue,         ///< a key with a value that it cannot have
    DuplicateId,      ///< an entry id that the record already holds
    UnknownReference, ///< an item, balloon or entry that the record does not hold
    CannotAmend,      ///< a correction or void that may not point at this entry, or whose result would make no sense
    BadProgramme,     ///< a programme document that breaks its schema or contradicts itself
    UnknownProgramme, ///< a programme that neither the record nor the shelf holds
    FileUnreadable,   ///< a file that cannot be opened or read
    FileExists,       ///< a file that may be replaced once somebody says so
    FileUnwritable,   ///< a file that is never written over: a record, a database, what is no plain file
    CsvNoHeader,      ///< a flight log without a usable header row
    CsvBadRow,        ///< a row of a flight log that cannot become a flight
    IgcBadTrack,      ///< a track file without date or fixes
    IgcNoFlight,      ///< a track in which no flight can be found
    AlreadyLogged,    ///< a flight that the record holds already
    NotReleasable,    ///< an inspection that may not be closed so, a defect that may not be deferred so, a locked
                      ///< inspection
    StoreUnopened,    ///< a record that cannot be opened
    StoreForeign,     ///< a file that is no Crownring record
    StoreNewer,       ///< a record written by a later version
    StoreBusy,        ///< another program is writing
    StoreFailed,      ///< the database refused; nothing was written
    BadUse,           ///< a command line or a request that makes no sense
};

/// Number of codes; they run from 0 to codeCount - 1 without gaps.
inline constexpr int codeCount = static_cast<int>(Code::BadUse) + 1;

/// The stable name, e.g. "unknown-key".
[[nodiscard]] std::string_view codeName(Code code);

/// Where a problem is; empty or 0 where it does not apply. Lines count from 1.
struct Where {
    std::string file;
    int line = 0;
    std::string key; ///< a key of an entry, a path inside a document ("/requirements/0/limits/1/every"), a column

    bool operator==(const Where&) const = default;
};

struct Problem {
    Code code = Code::BadValue;
    std::string message; ///< what is wrong, one sentence without a full stop
    std::string mend;    ///< what to do about it
    Where where;

    bool operator==(const Problem&) const = default;
};

/// One line: "fleet.jsonl:12: key 'minuts': not a key of flight.logged. Mend: …"
[[nodiscard]] std::string text(const Problem& problem);

template <class T>
using Result = tl::expected<T, Problem>;

/// For input of many lines: all that is wrong with it, not only the first.
template <class T>
using Results = tl::expected<T, std::vector<Problem>>;

[[nodiscard]] inline tl::unexpected<Problem> problem(Code code, std::string message, std::string mend,
                                                     Where where = {}) {
    return tl::unexpected(Problem{code, std::move(message), std::move(mend), std::move(where)});
}

}
