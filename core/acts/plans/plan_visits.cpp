// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/plans/plan_visits.h"

#include "acts/post.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

/// Its covers with more, as a correction says them.
std::string widened(const CalendarChange::Wider& wider) {
    auto visit = wider.standing.visit;
    visit.covers.insert(visit.covers.end(), wider.more.begin(), wider.more.end());
    nlohmann::json written;
    Kind<VisitPlanned>::write(written, visit);
    return nlohmann::json{{"covers", written.at("covers")}}.dump();
}

}

Results<Receipt> planVisits(Journal& journal, Books& books, const CalendarChange& change, CivilDate on,
                            const std::string& by, const std::string& reason) {
    std::vector<NumberedEntry> entries;
    const auto say = [&](Body body) {
        Entry entry;
        entry.on = on;
        entry.by = by;
        entry.body = std::move(body);
        entries.push_back({std::move(entry), 0});
    };
    for (const auto& visit : change.added)
        say(visit);
    for (const auto& wider : change.wider)
        say(EntryCorrected{wider.standing.entry, widened(wider)});
    for (const auto& standing : change.takenBack)
        say(EntryVoided{standing.entry, reason});
    return post(journal, books, std::move(entries), {});
}

}
