// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rows of a file of flights: good ones with what becomes of them, bad ones with what is wrong.

#include "screen/lists/list_base.h"

namespace crownring::screen {

struct IntakeLine {
    int line = 0;
    int part = 0; ///< several problems of one line
    QString on;
    QString text;
    QString fate; ///< "new", "in the record already", "cannot be read" …
    bool taken = false;
    bool bad = false;
    [[nodiscard]] bool sameAs(const IntakeLine& other) const { return line == other.line && part == other.part; }
    bool operator==(const IntakeLine&) const = default;
};

class IntakeModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the intake of flights")

public:
    enum Role { LineRole = Qt::UserRole + 1, DayRole, SaysRole, FateRole, TakenRole, BadRole };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<IntakeLine> lines) { replaceRows(m_lines, std::move(lines)); }

private:
    std::vector<IntakeLine> m_lines;
};

}
