// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/names.h"

#include <vector>

namespace crownring {

Names::Names(const Connection& connection)
    : m_find(connection, "SELECT name_no FROM name WHERE sort = ? AND text = ?"),
      m_text(connection, "SELECT text FROM name WHERE name_no = ?"),
      m_make(connection, "INSERT INTO name (name_no, sort, text) VALUES (?, ?, ?)"),
      m_last(connection, "SELECT COALESCE(MAX(name_no), 0) FROM name"),
      m_all(connection, "SELECT name_no, sort, text FROM name WHERE name_no > ?"),
      m_numbers(connection, "SELECT name_no FROM name"), m_drop(connection, "DELETE FROM name WHERE name_no = ?") {}

void Names::keep(Subject subject, std::int64_t number, const std::string& text) {
    m_known[static_cast<int>(subject)].emplace(text, number);
    m_texts.emplace(number, text);
}

std::optional<std::int64_t> Names::find(Subject subject, const std::string& text) {
    const auto& known = m_known[static_cast<int>(subject)];
    if (const auto found = known.find(text); found != known.end())
        return found->second;
    m_find.run(static_cast<int>(subject), text);
    if (!m_find.next())
        return std::nullopt;
    const auto number = m_find.read<std::int64_t>();
    m_find.finish();
    keep(subject, number, text);
    return number;
}

std::int64_t Names::findOrMake(Subject subject, const std::string& text) {
    if (const auto number = find(subject, text))
        return *number;
    m_last.run();
    m_last.next();
    const auto number = m_last.read<std::int64_t>() + 1;
    m_last.finish();
    m_make.run(number, static_cast<int>(subject), text);
    keep(subject, number, text);
    return number;
}

const std::string* Names::known(std::int64_t number) {
    if (const auto found = m_texts.find(number); found != m_texts.end())
        return &found->second;
    m_text.run(number);
    if (!m_text.next())
        return nullptr;
    auto text = m_text.read<std::string>();
    m_text.finish();
    return &m_texts.emplace(number, std::move(text)).first->second;
}

const std::string& Names::text(std::int64_t number) {
    if (const auto* name = known(number))
        return *name;
    throw StoreError(StoreFault::ValueUnread, {"name", "name_no=" + std::to_string(number), "text"});
}

const std::string& Names::read(Statement& row) {
    if (const auto* name = known(row.read<std::int64_t>()))
        return *name;
    throw row.unread();
}

void Names::readAll() {
    std::int64_t known = 0;
    for (const auto& [number, text] : m_texts)
        known = std::max(known, number);
    if (static_cast<std::int64_t>(m_texts.size()) < known)
        known = 0;
    m_all.run(known);
    while (m_all.next()) {
        const auto number = m_all.read<std::int64_t>();
        const auto subject = m_all.read<Subject>();
        keep(subject, number, m_all.read<std::string>());
    }
}

void Names::dropUnknown() {
    std::vector<std::int64_t> unknown;
    m_numbers.run();
    while (m_numbers.next())
        if (const auto number = m_numbers.read<std::int64_t>(); !m_texts.contains(number))
            unknown.push_back(number);
    for (const auto number : unknown)
        m_drop.run(number);
}

void Names::forget() {
    for (auto& numbers : m_known)
        numbers.clear();
    m_texts.clear();
}

}
