// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Short numbers for the names that the projections repeat. A name is made when what it names is entered or
/// first spoken of, and stays for good.

#include "store/connection/statement.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace crownring {

enum class NameSort {
    Item = 1,
    Balloon = 2,
    Requirement = 3,
    Inspection = 4,
    Defect = 5,
    Person = 6,
    Tester = 7,
    Type = 8,
    Checklist = 9,
};
inline constexpr int nameSorts = 10;

class Names {
public:
    explicit Names(const Connection& connection);

    [[nodiscard]] std::optional<std::int64_t> find(NameSort sort, const std::string& text);
    std::int64_t findOrMake(NameSort sort, const std::string& text);
    [[nodiscard]] const std::string& text(std::int64_t number);
    /// Reads all names at once, for answers about everything.
    void readAll();
    /// How many are known here: all, after `readAll`.
    [[nodiscard]] std::size_t count() const { return m_texts.size(); }
    /// After a transaction that was rolled back.
    void forget();

private:
    void keep(NameSort sort, std::int64_t number, const std::string& text);

    Statement m_find;
    Statement m_text;
    Statement m_make;
    Statement m_last;
    Statement m_all;
    std::unordered_map<std::string, std::int64_t> m_numbers[nameSorts];
    std::unordered_map<std::int64_t, std::string> m_texts;
};

}
