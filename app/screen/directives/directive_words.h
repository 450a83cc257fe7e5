// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A directive and how an item stands to it, in words.

#include "answers/directives/book.h"

#include <QCoreApplication>
#include <QString>

namespace crownring::screen {

class DirectiveWords {
    Q_DECLARE_TR_FUNCTIONS(DirectiveWords)

public:
    /// "OAO-AD 2026-014 rev. 0"
    [[nodiscard]] static QString name(const DirectiveIssued& issued);
    /// Issuer, from when it is effective, its force, what it is now.
    [[nodiscard]] static QString about(const DirectiveLine& line);
    [[nodiscard]] static QString counts(const DirectiveLine& line);
    /// Whom it is for.
    [[nodiscard]] static QString applies(const AppliesTo& applies);
    /// By when, how often, and what ends it.
    [[nodiscard]] static QString rule(const DirectiveIssued& issued);
    /// "overdue", "2027-03-31 · 96 days".
    [[nodiscard]] static QString word(const DirectiveRow& row);
    /// When and how it was done last, by whom, on what that rests.
    [[nodiscard]] static QString done(const DirectiveRow& row);
    /// Of the gauge; -1: none.
    [[nodiscard]] static int standing(const DirectiveRow& row);
    [[nodiscard]] static int standing(const DirectiveLine& line);
};

}
