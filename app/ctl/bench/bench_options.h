// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calls about visits on the command line.

#include "ctl/options.h"

namespace crownring::ctl {

void addInspection(CLI::App& app, Chosen& chosen);

}
