// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Short signs for what would stand on every line of a long paper: a clause by a number, a person and day by a letter.
/// What they stand for is listed once.

#include "paper/document.h"

#include <string>
#include <vector>

namespace crownring {

class Marks {
public:
    enum class By { Numbers, Letters };
    explicit Marks(By by) : m_by(by) {}

    /// The same for the same words; nothing for nothing.
    [[nodiscard]] std::string of(const std::string& words);
    /// Each sign with its words, in the order in which they came.
    [[nodiscard]] std::vector<paper::Fact> listed() const;

private:
    [[nodiscard]] std::string sign(std::size_t number) const;

    By m_by;
    std::vector<std::string> m_words;
};

}
