// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/accounts/account_book.h"

namespace crownring {

AccountBook::AccountBook(const Connection& connection)
    : m_kept(connection, "SELECT row_count, row_sum FROM tally WHERE part = ? AND subject_no = ?"),
      m_drop(connection, "DELETE FROM tally WHERE part = ? AND subject_no = ?"),
      m_put(connection, "INSERT INTO tally (part, subject_no, row_count, row_sum) VALUES (?, ?, ?, ?)"),
      m_clear(connection, "DELETE FROM tally"), m_rows(connection, "SELECT part, subject_no FROM tally") {}

Tally AccountBook::kept(Part part, std::int64_t subject) {
    Tally tally;
    m_kept.run(static_cast<int>(part), subject);
    if (m_kept.next()) {
        tally.rows = m_kept.read<std::int64_t>();
        tally.sum = m_kept.read<std::uint64_t>();
        m_kept.finish();
    }
    return tally;
}

void AccountBook::keep(Part part, std::int64_t subject, const Tally& tally) {
    m_drop.run(static_cast<int>(part), subject);
    if (tally != Tally())
        m_put.run(static_cast<int>(part), subject, tally.rows, tally.sum);
}

void AccountBook::move(Part part, std::int64_t subject, const Tally& by) {
    if (by == Tally())
        return;
    auto tally = kept(part, subject);
    tally += by;
    keep(part, subject, tally);
}

void AccountBook::clear() { m_clear.run(); }

std::vector<std::pair<Part, std::int64_t>> AccountBook::everything() {
    std::vector<std::pair<Part, std::int64_t>> all;
    m_rows.run();
    while (m_rows.next()) {
        const auto part = m_rows.read<Part>();
        all.emplace_back(part, m_rows.read<std::int64_t>());
    }
    return all;
}

}
