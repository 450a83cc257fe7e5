// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/refusing.h"

namespace crownring {

Problem notReleasable(std::string text, std::string mend, const std::string& rule, int line) {
    return {Code::NotReleasable,
            std::move(text),
            rule.empty() ? std::move(mend) : mend + " (" + rule + ")",
            {{}, line, {}}};
}

Problem atLine(Problem problem, int line) {
    problem.where.line = line;
    return problem;
}

Result<JournalLine> rootOf(Journal& journal, const EntryId& id) {
    auto line = journal.root(id);
    if (!line)
        return tl::unexpected(line.error());
    if (!*line)
        return problem(Code::UnknownReference, "the record holds no entry '" + id.text() + "'",
                       "point at the id of an entry that was posted before this one");
    return std::move(**line);
}

}
