// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One entry or more of every kind: tests/store/frozen/entries-N.jsonl holds what version N of the schema brought.

#include "record/chain/chain.h"
#include "store/record_file.h"

#include <QtCore/QDir>
#include <QtCore/QFile>

#include <stdexcept>
#include <string>
#include <vector>

namespace crownring::testing {

inline const QDir frozen(QStringLiteral(CROWNRING_SOURCE_DIR "/tests/store/frozen"));

/// The entries of a version of the schema and of those before it.
inline std::vector<NumberedEntry> entriesUpTo(int version) {
    std::string lines;
    for (int each = 1; each <= version; ++each) {
        QFile file(frozen.filePath(QStringLiteral("entries-%1.jsonl").arg(each)));
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error("no entries");
        lines += file.readAll().toStdString();
    }
    auto entries = entriesFrom(lines, "frozen").value();
    for (auto& [entry, line] : entries)
        if (auto* adopted = std::get_if<ProgrammeAdopted>(&entry.body))
            adopted->digest = hex(sha256(adopted->document));
    return entries;
}

/// As they are, not through the gate for acts: what one program let in, a stricter one must be able to read.
inline void appendFrozen(Journal& journal, int version) {
    if (const auto receipt = journal.append(entriesUpTo(version), "frozen"); !receipt)
        throw std::runtime_error(text(receipt.error().front()));
}

}
