// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads what is held about the fabric of items from its projections: one pass over each, however many items.

#include "registry/fabric_history.h"
#include "store/accounts/account.h"
#include "store/projection/names.h"

#include <functional>
#include <memory>
#include <vector>

namespace crownring {

class FabricReader {
public:
    FabricReader(const Connection& connection, Names& names);
    ~FabricReader();
    FabricReader(const FabricReader&) = delete;
    FabricReader& operator=(const FabricReader&) = delete;

    using Take = std::function<void(const FabricHistory&)>;
    /// @return what it rests on
    Account readAll(CivilDate on, const Take& take);
    Account readOne(std::int64_t item, CivilDate on, const Take& take);

private:
    template <class Body>
    class Rows;
    class Pass;

    const Connection& m_connection;
    Names& m_names;
    std::unique_ptr<Pass> m_one; ///< for single items, once one was asked for
};

}
