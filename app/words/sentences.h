// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries as sentences of the trade, for histories and the journal.

#include "record/journal.h"
#include "registry/question.h"
#include "rules/due/obligations.h"

#include <QCoreApplication>
#include <QString>

#include <string>
#include <unordered_map>

namespace crownring::words {

/// What requirements are called, by the programmes that somebody holds.
using Titles = std::unordered_map<RequirementId, std::string>;
[[nodiscard]] Titles titlesOf(const std::vector<Adoption>& adoptions);
/// Its id where it is not among them.
[[nodiscard]] QString titleOf(const RequirementId& requirement, const Titles& titles);

class Sentences {
    Q_DECLARE_TR_FUNCTIONS(Sentences)

public:
    /// "QE-OVA flew 1:05 h: 1 landing, 1 inflation"
    /// @param titles a requirement that is not among them is called by its id
    [[nodiscard]] static QString of(const Entry& entry, const Titles& titles);
    /// What it says now; of one that cannot be read, that it cannot.
    [[nodiscard]] static QString of(const JournalLine& line, const Titles& titles);
    [[nodiscard]] static QString kindOf(const JournalLine& line);
    /// "flight", "requirement done" …
    [[nodiscard]] static QString kind(std::string_view name);
    [[nodiscard]] static QString question(Question::Kind kind);
};

}
