// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/codes_told.h"

namespace crownring {

Result<std::vector<CodeSet>> codesTold(Books& books) {
    const auto told = books.told({Subject::Person, {}, {kindName<SignatoryCode>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return codesFrom(*told);
}

}
