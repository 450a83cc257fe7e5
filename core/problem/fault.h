// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What exactly can be wrong: a finer list than `Code`, by families. Each family is a header of `faults/`, which says
/// what arguments go with each; its sentences stand in `app/words/`. A fault without a sentence does not compile there.

#include <cstdint>
#include <string_view>
#include <variant>

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
    FileExists,       ///< a file that would be replaced, and nobody said that it may be
    FileUnwritable,   ///< a file that cannot be written, or that is never written over
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

enum class WrittenFault : std::uint8_t;   ///< faults/written_fault.h
enum class EntryFault : std::uint8_t;     ///< faults/entry_fault.h
enum class ProgrammeFault : std::uint8_t; ///< faults/programme_fault.h
enum class ChecklistFault : std::uint8_t; ///< faults/checklist_fault.h
enum class ReadingFault : std::uint8_t;   ///< faults/reading_fault.h
enum class BenchFault : std::uint8_t;     ///< faults/bench_fault.h
enum class ReleaseFault : std::uint8_t;   ///< faults/release_fault.h
enum class ReviewFault : std::uint8_t;    ///< faults/review_fault.h
enum class PartFault : std::uint8_t;      ///< faults/components/part_fault.h
enum class TrustFault : std::uint8_t;     ///< faults/trust_fault.h
enum class DirectiveFault : std::uint8_t; ///< faults/directives/directive_fault.h
enum class FabricFault : std::uint8_t;    ///< faults/fabric_fault.h
enum class TableFault : std::uint8_t;     ///< faults/table_fault.h
enum class TrackFault : std::uint8_t;     ///< faults/track_fault.h
enum class StoreFault : std::uint8_t;     ///< faults/store_fault.h
enum class UseFault : std::uint8_t;       ///< faults/use_fault.h
enum class WritingFault : std::uint8_t;   ///< faults/writing_fault.h
enum class WordingFault : std::uint8_t;   ///< faults/wording_fault.h

using Fault = std::variant<WrittenFault, EntryFault, ProgrammeFault, ChecklistFault, ReadingFault, BenchFault,
                           ReleaseFault, ReviewFault, PartFault, TrustFault, FabricFault, TableFault, TrackFault,
                           StoreFault, UseFault, WritingFault, WordingFault, DirectiveFault>;

/// Of each fault its stable name, unique in its family ("not-a-date"), and the code that scripts know it by.
struct FaultRow {
    std::string_view name;
    Code code;
};
[[nodiscard]] FaultRow rowOf(const Fault& fault);

}
