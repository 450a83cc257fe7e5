// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/projection/names.h"

#include "store/connection/row_digest.h"

namespace crownring {

namespace {

std::uint64_t markOf(std::int64_t number, Subject subject, const std::string& text) {
    RowDigest digest;
    digest.add(number);
    digest.add(std::int64_t{static_cast<int>(subject)});
    digest.add(std::string_view(text));
    return digest.value();
}

}

Names::Names(const Connection& connection)
    : m_find(connection, "SELECT name_no, mark FROM name WHERE sort = ? AND text = ?"),
      m_text(connection, "SELECT sort, text, mark FROM name WHERE name_no = ?"),
      m_make(connection, "INSERT INTO name (name_no, sort, text, mark) VALUES (?, ?, ?, ?)"),
      m_last(connection, "SELECT COALESCE(MAX(name_no), 0) FROM name"),
      m_all(connection, "SELECT name_no, sort, text, mark FROM name WHERE name_no > ?"),
      m_missing(connection,
                "SELECT CASE WHEN COUNT(*) <> COALESCE(MAX(name_no), 0)"
                " OR COALESCE(MAX(name_no), 0) < COALESCE((SELECT MAX(item_no) FROM item_entered), 0)"
                " OR COALESCE(MAX(name_no), 0) < COALESCE((SELECT MAX(balloon_no) FROM balloon_entered), 0)"
                " OR COALESCE(MAX(name_no), 0) < COALESCE((SELECT MAX((SELECT MAX(t.subject_no) FROM told t"
                " WHERE t.sort = s.column1)) FROM (VALUES (1), (2), (3), (4), (5), (6), (7), (8), (9), (10),"
                " (11)) s), 0) THEN 1 ELSE 0 END FROM name"),
      m_clear(connection, "DELETE FROM name") {}

void Names::prove(std::int64_t number, Subject subject, const std::string& text, std::uint64_t mark) {
    if (mark != markOf(number, subject, text))
        throw StoreError(StoreFault::NameAltered, {text, number});
}

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
    prove(number, subject, text, m_find.read<std::uint64_t>());
    m_find.finish();
    keep(subject, number, text);
    return number;
}

std::optional<std::int64_t> Names::look(Subject subject, const std::string& text) {
    auto number = find(subject, text);
    if (!number) {
        readAll();
        proveNoneMissing();
    }
    return number;
}

std::int64_t Names::findOrMake(Subject subject, const std::string& text) {
    if (const auto number = find(subject, text))
        return *number;
    m_last.run();
    m_last.next();
    const auto number = m_last.read<std::int64_t>() + 1;
    m_last.finish();
    m_make.run(number, static_cast<int>(subject), text, markOf(number, subject, text));
    keep(subject, number, text);
    return number;
}

const std::string* Names::known(std::int64_t number) {
    if (const auto found = m_texts.find(number); found != m_texts.end())
        return &found->second;
    m_text.run(number);
    if (!m_text.next())
        return nullptr;
    const auto subject = m_text.read<Subject>();
    auto text = m_text.read<std::string>();
    prove(number, subject, text, m_text.read<std::uint64_t>());
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
        const auto text = m_all.read<std::string>();
        prove(number, subject, text, m_all.read<std::uint64_t>());
        keep(subject, number, text);
    }
}

void Names::proveAll() {
    m_all.run(std::int64_t{0});
    while (m_all.next()) {
        const auto number = m_all.read<std::int64_t>();
        const auto subject = m_all.read<Subject>();
        const auto text = m_all.read<std::string>();
        prove(number, subject, text, m_all.read<std::uint64_t>());
    }
}

void Names::proveNoneMissing() {
    m_missing.run();
    const bool isMissing = m_missing.next() && m_missing.read<bool>();
    m_missing.finish(); // a row that waits holds the state of then
    if (isMissing)
        throw StoreError(StoreFault::NameMissing);
}

void Names::clear() {
    m_clear.run();
    forget();
}

void Names::forget() {
    for (auto& numbers : m_known)
        numbers.clear();
    m_texts.clear();
}

}
