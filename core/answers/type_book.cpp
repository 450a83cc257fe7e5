// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/type_book.h"

#include <algorithm>

namespace crownring {

namespace {

/// What stands for one sort of limit: a later statement of it takes the place of an earlier one.
bool isSameSort(const StatedLimit& a, const StatedLimit& b) {
    return a.type == b.type && a.kind == b.kind && a.conditions.direction == b.conditions.direction &&
           seriesOf(a.quantity, a.conditions) == seriesOf(b.quantity, b.conditions);
}

}

Result<TypeBook> typeBook(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Type, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    TypeBook book;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* type = std::get_if<TypeDescribed>(&now.body)) {
            std::erase_if(book.types,
                          [&](const auto& each) { return each.type == type->type && each.kind == type->kind; });
            book.types.push_back(*type);
        } else if (const auto* stated = std::get_if<LimitStated>(&now.body)) {
            if (auto limit = limitFrom(*stated)) {
                std::erase_if(book.limits, [&](const auto& each) { return isSameSort(each, *limit); });
                book.limits.push_back(std::move(*limit));
            }
        }
    }
    return book;
}

}
