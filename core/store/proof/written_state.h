// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How a record stands, told by what is cheap to ask for: another text as soon as anybody has written to its file, with
/// this program or round it. Of a server: as soon as an entry or a photograph was changed or deleted, or nobody can
/// say, since it was started anew; what is only added there leaves it as it is.

#include "store/connection/connection.h"

namespace crownring {

/// @throws StoreError where a server does not answer
[[nodiscard]] std::string writtenState(const Connection& connection);
/// The same of a file that nobody need have open. Empty where there is none.
[[nodiscard]] std::string writtenStateOfFile(const std::string& file);

}
