// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When fabric comes to its limit, for whoever looks at the days ahead. Fits what is not fitted, one after the other,
/// beside the record's thread and that of the interface.

#include "answers/forecast/fabric_ahead.h"
#include "screen/next/ahead/ahead_sheet.h"

#include <span>

namespace crownring::screen {

/// One for the house.
class FabricNow : public QObject {
    Q_OBJECT

public:
    explicit FabricNow(House& house);

    void want(bool wanted);
    /// Nothing until it is there.
    [[nodiscard]] std::span<const FabricAhead> of(const Ahead& sheet) const;

signals:
    void changed();

private:
    void look();

    House& m_house;
    Ahead m_sheet; ///< that it is told of
    std::vector<FabricAhead> m_fabrics;
    bool m_wanted = false;
    bool m_asking = false;
};

}
