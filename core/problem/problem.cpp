// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/problem.h"

#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, codeCount> names = {
    "bad-date",        "bad-quantity",   "bad-json",          "unknown-kind",   "unknown-key",   "missing-key",
    "bad-value",       "duplicate-id",   "unknown-reference", "cannot-amend",   "bad-programme", "unknown-programme",
    "file-unreadable", "file-exists",    "file-unwritable",   "csv-no-header",  "csv-bad-row",   "igc-bad-track",
    "igc-no-flight",   "already-logged", "not-releasable",    "store-unopened", "store-foreign", "store-newer",
    "store-busy",      "store-failed",   "bad-use",
};

}

std::string_view codeName(Code code) { return names[static_cast<std::size_t>(code)]; }

std::string text(const Problem& problem) {
    std::string line;
    if (!problem.where.file.empty())
        line += problem.where.file + ":";
    if (problem.where.line > 0)
        line += (problem.where.file.empty() ? "line " : "") + std::to_string(problem.where.line) + ":";
    if (!line.empty())
        line += " ";
    if (!problem.where.key.empty())
        line += "key '" + problem.where.key + "': ";
    line += problem.message;
    if (!problem.mend.empty())
        line += ". Mend: " + problem.mend;
    return line;
}

}
