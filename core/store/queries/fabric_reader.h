// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads what is held about the fabric of items from its projections: one pass over each, however many items.

#include "registry/fabric_history.h"
#include "store/projection/names.h"

#include <functional>
#include <vector>

namespace crownring {

class FabricReader {
public:
    FabricReader(const Connection& connection, Names& names) : m_connection(connection), m_names(names) {}

    using Take = std::function<void(const FabricHistory&)>;
    void readAll(CivilDate on, const Take& take);
    void readOne(std::int64_t item, CivilDate on, const Take& take);

private:
    class Pass;

    const Connection& m_connection;
    Names& m_names;
};

}
