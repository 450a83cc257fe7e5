// SPDX-License-Identifier: GPL-3.0-or-later

/// Nothing of its own: the targets of headers.cmake compile it for the headers that their rooms begin with.

namespace crownring {

extern const int headers;
const int headers = 0;

}
