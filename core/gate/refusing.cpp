// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/refusing.h"

#include "problem/faults/bench_fault.h"

namespace crownring {

Problem atLine(Problem problem, int line) {
    problem.where.line = line;
    return problem;
}

Result<JournalLine> rootOf(Journal& journal, const EntryId& id) {
    auto line = journal.root(id);
    if (!line)
        return tl::unexpected(line.error());
    if (!*line)
        return problem(BenchFault::NoEntry, {id});
    return std::move(**line);
}

}
