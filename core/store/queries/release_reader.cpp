// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/release_reader.h"

#include "store/projection/kept.h"
#include "store/queries/scoped.h"

namespace crownring {

Stamp stampFrom(Statement& row) {
    Stamp stamp;
    stamp.at = row.read<Moment>();
    stamp.id = row.read<EntryId>();
    return stamp;
}

ReleaseReader::ReleaseReader(const Connection& connection, bool one)
    : m_one(one),
      // The first closing of an inspection is the one that holds: it is read last.
      m_closings(connection, scoped(one, "SELECT inspection, at, entry_id, outcome FROM closing WHERE 1 = 1",
                                    "inspection", " ORDER BY inspection, at DESC, entry_id DESC")
                                 .c_str()),
      m_revocations(connection, scoped(one, "SELECT inspection, at, entry_id FROM revocation WHERE 1 = 1", "inspection",
                                       " ORDER BY inspection, at, entry_id")
                                    .c_str()),
      m_approvals(connection, scoped(one, "SELECT inspection, at, entry_id FROM approval WHERE 1 = 1", "inspection",
                                     " ORDER BY inspection, at, entry_id")
                                  .c_str()) {}

void ReleaseReader::begin() {
    m_known.clear();
    if (!m_one)
        read();
}

const Release& ReleaseReader::of(const std::string& inspection) {
    if (m_one && !m_known.contains(inspection))
        read(inspection);
    return m_known[inspection];
}

template <class... Of>
void ReleaseReader::read(const Of&... inspection) {
    m_closings.run(inspection...);
    while (m_closings.next()) {
        auto& release = m_known[m_closings.read<std::string>()];
        auto stamp = stampFrom(m_closings);
        const auto outcome = m_closings.read<Outcome>();
        if (outcome == Outcome::Incomplete) { // the visit goes on
            release.partly.push_back(std::move(stamp));
            continue;
        }
        release.closed = std::move(stamp);
        release.outcome = outcome;
    }
    m_revocations.run(inspection...);
    while (m_revocations.next()) {
        auto& release = m_known[m_revocations.read<std::string>()];
        release.revoked = stampFrom(m_revocations);
    }
    m_approvals.run(inspection...);
    while (m_approvals.next()) {
        auto& release = m_known[m_approvals.read<std::string>()];
        release.approve(stampFrom(m_approvals));
    }
}

}
