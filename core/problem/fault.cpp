// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/fault.h"

#include "problem/faults/bench_fault.h"
#include "problem/faults/checklist_fault.h"
#include "problem/faults/components/part_fault.h"
#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/fabric_fault.h"
#include "problem/faults/programme_fault.h"
#include "problem/faults/reading_fault.h"
#include "problem/faults/release_fault.h"
#include "problem/faults/review_fault.h"
#include "problem/faults/store_fault.h"
#include "problem/faults/table_fault.h"
#include "problem/faults/track_fault.h"
#include "problem/faults/trust_fault.h"
#include "problem/faults/use_fault.h"
#include "problem/faults/wording_fault.h"
#include "problem/faults/writing_fault.h"
#include "problem/faults/written_fault.h"

#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, codeCount> codeNames = {
    "bad-date",        "bad-quantity",   "bad-json",          "unknown-kind",   "unknown-key",   "missing-key",
    "bad-value",       "duplicate-id",   "unknown-reference", "cannot-amend",   "bad-programme", "unknown-programme",
    "file-unreadable", "file-exists",    "file-unwritable",   "csv-no-header",  "csv-bad-row",   "igc-bad-track",
    "igc-no-flight",   "already-logged", "not-releasable",    "store-unopened", "store-foreign", "store-newer",
    "store-busy",      "store-failed",   "bad-use",
};

}

std::string_view codeName(Code code) { return codeNames[static_cast<std::size_t>(code)]; }

FaultRow rowOf(const Fault& fault) {
    return std::visit([](auto each) { return rowOf(each); }, fault);
}

}
