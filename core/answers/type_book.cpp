// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/type_book.h"

#include "bench/release/latest_word.h"

#include <algorithm>

namespace crownring {

namespace {

/// Puts a statement among those that stand.
template <class Stated>
void hear(std::vector<Stated>& standing, const Stated& said) {
    std::erase_if(standing, [&](const Stated& earlier) { return takesThePlaceOf(said, earlier); });
    standing.push_back(said);
}

}

Result<TypeBook> typeBook(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Type, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    TypeBook book;
    std::vector<LimitStated> limits;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* type = std::get_if<TypeDescribed>(&now.body))
            hear(book.types, *type);
        else if (const auto* stated = std::get_if<LimitStated>(&now.body))
            hear(limits, *stated);
    }
    for (const auto& stated : limits)
        if (auto limit = limitFrom(stated))
            book.limits.push_back(std::move(*limit));
    return book;
}

}
