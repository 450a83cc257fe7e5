// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sql_record.h"
#include "store/verdict.h"

namespace crownring {

Result<std::vector<Acknowledged>> SqlRecord::missing(const std::vector<Acknowledged>& expected) {
    return guarded([&] {
        std::vector<Acknowledged> missing;
        for (const auto& end : expected)
            if (!m_journal.holds(end))
                missing.push_back(end);
        return missing;
    });
}

Result<Verdict> SqlRecord::verify(const std::function<bool(double)>& progress) {
    const auto state = snapshot(); // else what is posted meanwhile would be missing in what is compared
    if (!state)
        return tl::unexpected(state.error());
    if (m_otherVersion) // what it should hold is not known here
        return tl::unexpected(m_readOnlyReason.value());
    return guarded([&] { return verdictOf(*m_connection, m_journal, tallies(), progress); });
}

}
