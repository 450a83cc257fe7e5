// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Lines of the journal: of a search, or the history of a balloon or item. Latest first.

#include "record/journal.h"
#include "screen/lists/list_base.h"
#include "words/sentences.h"

#include <memory>

namespace crownring::screen {

class JournalModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the places")

public:
    enum Role {
        EntryRole = Qt::UserRole + 1, ///< the entry's id
        NumberRole,                   ///< order of arrival
        DayRole,                      ///< "2026-11-20", with the time where one was stated
        KindRole,
        SentenceRole,
        ByRole,
        NoteRole,
        RecordedRole, ///< when it was written down
        ChangeRole,   ///< "voided", "corrected", or empty
        VoidedRole,
        AmendableRole, ///< a correction of it makes sense: not voided, not a void
        FactsRole,     ///< day, kind, who, what became of it, note
        SpokenRole,
        PhotographsRole, ///< digests of those that it names
        FlightRole,      ///< it is a flight, and counts
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    /// @param titles what requirements are called in the sentences
    void show(const std::vector<JournalLine>& lines, std::shared_ptr<const words::Titles> titles);
    void append(const std::vector<JournalLine>& lines);
    /// The smallest number shown; nothing when empty.
    [[nodiscard]] std::optional<std::int64_t> oldest() const;
    /// Digests of the photographs that an entry names.
    [[nodiscard]] static QStringList photographsOf(const Entry& entry);
    [[nodiscard]] static bool isLiveFlight(const JournalLine& line);

private:
    struct Line {
        JournalLine line;
        [[nodiscard]] bool sameAs(const Line& other) const { return line.entry.id == other.line.entry.id; }
        bool operator==(const Line& other) const {
            return line.voided == other.line.voided && line.current == other.line.current;
        }
        [[nodiscard]] const Entry& now() const { return nowOf(line); }
    };
    std::vector<Line> m_lines;
    std::shared_ptr<const words::Titles> m_titles; ///< there when lines are
};

}
