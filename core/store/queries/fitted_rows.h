// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/accounts/account.h"

namespace crownring {

/// The stays on a balloon, of any time: what an answer about that balloon alone rests on besides the facts of its
/// items.
class FittedRows {
public:
    explicit FittedRows(const Connection& connection)
        : m_stays(connection, "SELECT item_no, from_at, from_id, until_at, until_id FROM stay WHERE balloon_no = ?") {}

    [[nodiscard]] Account account(std::int64_t balloon) {
        Account account{Part::Fitted, balloon, {}};
        m_stays.run(balloon);
        while (m_stays.next())
            account.tally.add(m_stays.digest());
        return account;
    }

private:
    Statement m_stays;
};

}
