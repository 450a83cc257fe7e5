// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record in a folder that goes away with it, and short ways to write entries.

#include "acts/post.h"
#include "store/record_file.h"

#include <QtCore/QFile>
#include <QtCore/QString>
#include <QtCore/QTemporaryDir>

#include <algorithm>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace crownring::testing {

class Scratch {
public:
    Scratch() : record(openedAt(file())) {}
    /// A copy of a record that nobody has open.
    explicit Scratch(const std::string& of) {
        if (!QFile::copy(QString::fromStdString(of), QString::fromStdString(file())))
            throw std::runtime_error(of + " cannot be copied");
        record = openedAt(file());
    }
    [[nodiscard]] std::string file() const { return m_folder.filePath(QStringLiteral("test.crownring")).toStdString(); }
    [[nodiscard]] std::string beside(const char* name) const {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    void reopen() {
        record.reset();
        record = openedAt(file());
    }
    static std::unique_ptr<Record> openedAt(const std::string& location) {
        auto opened = openRecord(location, OpenMode::OrCreate, WriterId("tester"));
        if (!opened)
            throw std::runtime_error(text(opened.error()));
        return std::move(*opened);
    }

private:
    QTemporaryDir m_folder;

public:
    std::unique_ptr<Record> record;
};

/// Posts lines of JSON; throws what was refused.
inline Receipt posted(Record& record, const std::string& lines) {
    auto receipt = postText(record, record, lines, "test.jsonl");
    if (!receipt)
        throw std::runtime_error(text(receipt.error().front()));
    return std::move(*receipt);
}

/// As an earlier program let it in, not through the gate.
inline Receipt letIn(Record& record, const std::string& lines) {
    const auto entries = entriesFrom(lines, "earlier.jsonl");
    if (!entries)
        throw std::runtime_error(text(entries.error().front()));
    auto receipt = record.append(*entries, "earlier.jsonl");
    if (!receipt)
        throw std::runtime_error(text(receipt.error().front()));
    return std::move(*receipt);
}

/// The problems with posting lines of JSON; empty when there were none.
inline std::vector<Problem> problemsOf(Record& record, const std::string& lines) {
    const auto receipt = postText(record, record, lines, "test.jsonl");
    return receipt ? std::vector<Problem>{} : receipt.error();
}

/// What is held about the fabric of all items.
inline std::vector<FabricHistory> fabricOf(Books& books, CivilDate on) {
    std::vector<FabricHistory> histories;
    if (const auto told = books.fabric({}, on, [&](const FabricHistory& each) { histories.push_back(each); }); !told)
        throw std::runtime_error(text(told.error()));
    std::ranges::sort(histories, {}, &FabricHistory::item);
    return histories;
}

/// The clocks of all items on a day and a year before.
inline std::vector<std::optional<Figures>> clocksOf(Books& books, CivilDate on) {
    std::vector<ItemDay> asked;
    const auto items = books.facts({}, on).value();
    for (const auto& facts : items)
        for (const auto day : {on, addDays(on, -365)})
            asked.push_back({facts.id, day});
    std::ranges::sort(asked, {}, [](const ItemDay& each) { return std::pair(each.item, each.day); });
    return books.clocks(asked).value();
}

inline CivilDate day(const char* iso) { return CivilDate::parse(iso).value(); }

}
