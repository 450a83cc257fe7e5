// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The sentences of each family of faults as the source has them, one function and one file of `faults/` a family. Each
/// is a switch without a default: a fault without its sentences does not compile.

#include "problem/fault.h"

namespace crownring::words {

/// English, and what translations are looked up by. %1 … are the arguments in their order, %n the first whole number.
struct Sources {
    const char* message = ""; ///< what is wrong, one sentence without a full stop
    const char* mend = "";    ///< what to do about it
};

[[nodiscard]] Sources sourcesOf(WrittenFault fault);
[[nodiscard]] Sources sourcesOf(EntryFault fault);
[[nodiscard]] Sources sourcesOf(ProgrammeFault fault);
[[nodiscard]] Sources sourcesOf(ChecklistFault fault);
[[nodiscard]] Sources sourcesOf(ReadingFault fault);
[[nodiscard]] Sources sourcesOf(BenchFault fault);
[[nodiscard]] Sources sourcesOf(ReleaseFault fault);
[[nodiscard]] Sources sourcesOf(ReviewFault fault);
[[nodiscard]] Sources sourcesOf(PartFault fault);
[[nodiscard]] Sources sourcesOf(TrustFault fault);
[[nodiscard]] Sources sourcesOf(DirectiveFault fault);
[[nodiscard]] Sources sourcesOf(FabricFault fault);
[[nodiscard]] Sources sourcesOf(TableFault fault);
[[nodiscard]] Sources sourcesOf(TrackFault fault);
[[nodiscard]] Sources sourcesOf(StoreFault fault);
[[nodiscard]] Sources sourcesOf(UseFault fault);
[[nodiscard]] Sources sourcesOf(WritingFault fault);
[[nodiscard]] Sources sourcesOf(WordingFault fault);

}
