// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt.h"

#include "acts/post.h"
#include "rules/programme/programme.h"

namespace crownring {

Results<Receipt> adopt(Journal& journal, Books& books, std::string_view document, const std::string& file, Bound bound,
                       CivilDate on, const std::string& by) {
    const auto programme = programmeFrom(document);
    auto canonical = canonicalProgramme(document);
    if (!programme || !canonical) {
        auto problem = programme ? canonical.error() : programme.error();
        problem.where.file = file;
        return tl::unexpected(std::vector<Problem>{std::move(problem)});
    }
    Entry entry;
    entry.on = on;
    entry.by = by;
    entry.body = ProgrammeAdopted{programme->id, std::move(bound), std::move(*canonical), {}};
    return postOne(journal, books, std::move(entry));
}

}
