// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What moves when entries are written: clocks, what is due, open questions. Tried out on the record; nothing is
/// written.

#include "answers/check_rig_up.h"
#include "store/record_file.h"
#include "words/sentences.h"

#include <QCoreApplication>
#include <QStringList>

namespace crownring::screen {

class Consequences {
    Q_DECLARE_TR_FUNCTIONS(Consequences)

public:
    /// Runs on the storage thread.
    /// @return a line for each thing that moves: what worsens first, questions last; what the record would refuse
    [[nodiscard]] static Results<QStringList> of(Record& record, std::vector<NumberedEntry> entries, CivilDate today);

    /// What stood against a kit that flew: a line for each row that barred it from flying.
    [[nodiscard]] static QStringList against(const RigUp& verdict);
};

}
