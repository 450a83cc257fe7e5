// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Short numbers for the names that the projections repeat. A name is made when what it names is entered or
/// first spoken of, and stays for good. Each proves itself by a mark over its row.

#include "store/projection/kept.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace crownring {

inline constexpr int subjects = Kept<Subject>::last + 1; ///< they count from 1

class Names {
public:
    explicit Names(const Connection& connection);

    [[nodiscard]] std::optional<std::int64_t> find(Subject subject, const std::string& text);
    std::int64_t findOrMake(Subject subject, const std::string& text);
    /// The same as `find` for an answer: that there is no such name is said only while none was altered, nor taken
    /// away.
    [[nodiscard]] std::optional<std::int64_t> look(Subject subject, const std::string& text);
    template <class Tag>
    [[nodiscard]] std::optional<std::int64_t> look(const Name<Tag>& name) {
        return look(subjectOf(name), name.text());
    }
    template <class Tag>
    [[nodiscard]] std::optional<std::int64_t> find(const Name<Tag>& name) {
        return find(subjectOf(name), name.text());
    }
    template <class Tag>
    std::int64_t findOrMake(const Name<Tag>& name) {
        return findOrMake(subjectOf(name), name.text());
    }
    /// @throws StoreError where no name has this number
    [[nodiscard]] const std::string& text(std::int64_t number);
    /// The name whose number is the next column of `row`.
    [[nodiscard]] const std::string& read(Statement& row);
    /// Reads all names at once, for answers about everything.
    void readAll();
    /// That each is what was written, whatever was read before. @throws StoreError
    void proveAll();
    /// How many are known here: all, after `readAll`.
    [[nodiscard]] std::size_t count() const { return m_texts.size(); }
    /// Takes all away. @pre no projection names anything
    void clear();
    /// After a transaction that was rolled back.
    void forget();

private:
    [[nodiscard]] const std::string* known(std::int64_t number);
    /// @throws StoreError where the row's number, sort and text are not what was written
    static void prove(std::int64_t number, Subject subject, const std::string& text, std::uint64_t mark);
    /// They are numbered from 1 without a gap, and what is entered has one. @throws StoreError where one is missing
    void proveNoneMissing();
    void keep(Subject subject, std::int64_t number, const std::string& text);

    Statement m_find;
    Statement m_text;
    Statement m_make;
    Statement m_last;
    Statement m_all;
    Statement m_missing;
    Statement m_clear;
    std::unordered_map<std::string, std::int64_t> m_known[subjects];
    std::unordered_map<std::int64_t, std::string> m_texts;
};

}
