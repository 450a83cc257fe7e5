// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/proof/written_state.h"
#include "store/sql_record.h"
#include "store/verdict.h"

namespace crownring {

Result<std::vector<Acknowledged>> SqlRecord::ends() {
    return guarded([&] { return m_journal.ends(); });
}

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
    const auto before = guarded([&] { return writtenState(*m_connection); });
    const auto state = snapshot(); // else what is posted meanwhile would be missing in what is compared
    if (!state)
        return tl::unexpected(state.error());
    if (m_otherVersion) // what it should hold is not known here
        return tl::unexpected(m_readOnlyReason.value());
    bool stopped = false;
    auto verdict = guarded([&] {
        return verdictOf(*m_connection, m_journal, tallies(), [&](double share) {
            stopped = stopped || (progress && !progress(share));
            return !stopped;
        });
    });
    if (!verdict)
        return verdict;
    if (verdict->intact && !stopped && before)
        m_proven.keep(*before);
    heed(*verdict);
    return verdict;
}

Result<bool> SqlRecord::isProven() {
    if (m_otherVersion)
        return true;
    return guarded([&] { return m_proven.stoodAs(writtenState(*m_connection)); });
}

bool SqlRecord::isProvenNow() const {
    return guarded([&] { return m_proven.stoodAs(writtenState(*m_connection)); }).value_or(false);
}

void SqlRecord::keepProven() {
    if (const auto state = guarded([&] { return writtenState(*m_connection); }))
        m_proven.keep(*state);
}

void SqlRecord::heed(const Verdict& verdict) {
    if (verdict.intact)
        return;
    if (verdict.rebuildMends)
        m_flaw = Problem{StoreFault::NotIntact};
    else if (verdict.firstBad)
        m_flaw = Problem{StoreFault::EntryAltered, {*verdict.firstBad}};
    else
        m_flaw = Problem{StoreFault::RecordAltered, {verdict.reason.value_or(Phrase())}};
}

SqlRecord::~SqlRecord() {
    if (!isFile() || !isProvenNow())
        return;
    m_closing.file = m_connection->location();
    m_closing.proven = m_proven;
}

SqlRecord::Closing::~Closing() {
    if (proven)
        proven->keep(writtenStateOfFile(file));
}

}
