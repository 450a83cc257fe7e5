// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// "If I fly four hours on Saturday": the due list with flights that are only supposed.

#include "ctl/call.h"
#include "ctl/calls.h"

namespace crownring::ctl {

/// `due` with `--if`. @return the exit code
int suppose(const DueOptions& options, const Common& common);

}
