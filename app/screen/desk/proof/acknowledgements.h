// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What records have acknowledged last, kept outside them: so that a record whose end was cut off, or in whose place an
/// older copy stands, is noticed when it is opened again. Safe from any thread.

#include "record/chain/acknowledged.h"

#include <QString>

#include <vector>

namespace crownring::screen {

/// Of each writer that wrote here, the last. @param location of the record
[[nodiscard]] std::vector<Acknowledged> acknowledgedAt(const QString& location);
void keepAcknowledged(const QString& location, const Acknowledged& end);
/// After somebody said that it is meant to be so.
void forgetAcknowledged(const QString& location);

}
