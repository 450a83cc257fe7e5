// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which way of writing a column follows, found from the whole column: 31/12/2025 in one row says how 03/04/2025 in
/// another is meant.

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace crownring {

template <class Form>
struct SettledForm {
    std::optional<Form> form; ///< absent: the column does not say, somebody must
    bool contradicts = false; ///< different cells can only be read in different ways
};

/// @param read gives what a cell means when written in a form, or nothing when it cannot be. Cells that no form can
/// read are no evidence. Forms that read every cell alike need no choice: the first of them is taken.
template <class Form, class Cells, class Read>
[[nodiscard]] SettledForm<Form> settledForm(const Cells& cells, const std::vector<Form>& forms, Read read) {
    using Reading = decltype(read(*cells.begin(), forms.front()));
    const auto readings = [&](const auto& cell, const std::vector<Form>& under) {
        std::vector<Reading> all;
        for (const auto form : under)
            all.push_back(read(cell, form));
        return all;
    };
    auto left = forms;
    for (const auto& cell : cells) {
        const auto all = readings(cell, forms);
        if (std::none_of(all.begin(), all.end(), [](const Reading& reading) { return reading.has_value(); }))
            continue;
        std::erase_if(left, [&](Form form) { return !read(cell, form); });
    }
    if (left.empty())
        return {std::nullopt, true};
    for (const auto& cell : cells) {
        const auto all = readings(cell, left);
        if (std::any_of(all.begin(), all.end(), [&](const Reading& reading) { return reading != all.front(); }))
            return {};
    }
    return {left.front(), false};
}

}
