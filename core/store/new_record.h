// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record that is not there yet: made beside where it is to stand, and named when its first entries are in it. What
/// is refused leaves no record.

#include "store/record_file.h"
#include "writing/draft.h"

namespace crownring {

class NewRecord {
public:
    /// Whether opening it to write would make a file.
    [[nodiscard]] static bool isMadeAt(const std::string& location);
    /// @return as `openRecord`; FileUnwritable where no file can be made
    [[nodiscard]] static Result<NewRecord> at(const std::string& location, const WriterId& writer = {});

    [[nodiscard]] Record& record() { return *m_record; }
    /// Closes it and gives it its name. FileExists when somebody else has made one meanwhile.
    [[nodiscard]] Result<void> keep();

private:
    NewRecord(std::string location, Draft draft, std::unique_ptr<Record> record)
        : m_location(std::move(location)), m_draft(std::move(draft)), m_record(std::move(record)) {}

    std::string m_location;
    Draft m_draft;
    std::unique_ptr<Record> m_record; ///< closed before the draft goes
};

}
