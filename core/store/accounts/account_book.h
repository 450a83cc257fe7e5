// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is kept of parts of the record, to hold against it what an answer found there.

#include "store/accounts/account.h"

namespace crownring {

class AccountBook {
public:
    explicit AccountBook(const Connection& connection);

    [[nodiscard]] Tally kept(Part part, std::int64_t subject);
    void keep(Part part, std::int64_t subject, const Tally& tally);
    /// Of what the journal gave since, whatever stands in the table: what was altered there shows all the same.
    void move(Part part, std::int64_t subject, const Tally& by);
    void clear();
    /// Each part and subject of which something is kept.
    [[nodiscard]] std::vector<std::pair<Part, std::int64_t>> everything();

private:
    Statement m_kept, m_drop, m_put, m_clear, m_rows;
};

}
