// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The command line of crownringctl: what can be said, its help, and who does it.

namespace crownring::ctl {

/// @return the exit code
int runCommandLine(int argc, const char* const* argv);

}
