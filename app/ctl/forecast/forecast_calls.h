// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What lies ahead: use foretold, dues for other programs' calendars.

#include "ctl/options.h"

namespace crownring::ctl {

void addForecast(CLI::App& app, Chosen& chosen);

}
