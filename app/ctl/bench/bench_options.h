// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calls about visits, reviews and who signs them, on the command line.

#include "ctl/options.h"

namespace crownring::ctl {

void addInspection(CLI::App& app, Chosen& chosen);
void addReview(CLI::App& app, Chosen& chosen);
void addSignatory(CLI::App& app, Chosen& chosen);
void addText(CLI::App& app, Chosen& chosen);

}
