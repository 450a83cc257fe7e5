// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Photographs by the digest of their bytes: put in once, never changed.

#include "record/journal.h"
#include "store/connection/statement.h"

#include <optional>
#include <string>

namespace crownring {

class PictureTable {
public:
    explicit PictureTable(const Connection& connection);

    /// To be called inside a write transaction. @return its digest in hex
    std::string keep(const Picture& picture);
    [[nodiscard]] std::optional<Picture> find(const std::string& digest);

private:
    Statement m_put, m_find;
};

}
