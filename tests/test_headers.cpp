// SPDX-License-Identifier: GPL-3.0-or-later

/// Nothing of its own: its target compiles the headers that most tests begin with, once for all of them.

namespace crownring {

extern const int testHeaders;
const int testHeaders = 0;

}
