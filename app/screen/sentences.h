// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries as sentences of the trade, for histories and the journal.

#include "record/entry.h"
#include "registry/question.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::screen {

class Sentences {
    Q_DECLARE_TR_FUNCTIONS(Sentences)

public:
    /// "QE-OVA flew 1:05 h: 1 landing, 1 inflation"
    [[nodiscard]] static QString of(const Entry& entry);
    /// "flight", "requirement done" …
    [[nodiscard]] static QString kind(std::string_view kindName);
    [[nodiscard]] static QString question(Question::Kind kind);
};

}
