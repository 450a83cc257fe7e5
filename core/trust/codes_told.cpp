// SPDX-License-Identifier: GPL-3.0-or-later
#include "trust/codes_told.h"

namespace crownring {

Result<std::vector<CodeSet>> codesTold(Books& books) {
    const auto told = books.told({Subject::Person, {}, {kindName<SignatoryCode>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return codesFrom(*told);
}

Result<CodeState> codeStateOf(Books& books, const std::string& person) {
    const auto codes = codesTold(books);
    if (!codes)
        return tl::unexpected(codes.error());
    const auto known = books.told({Subject::Person, person, {}, CivilDate::last()});
    if (!known)
        return tl::unexpected(known.error());
    const auto* kept = inForce(*codes, person);
    return CodeState{!known->empty(), kept ? std::optional(*kept) : std::nullopt};
}

}
