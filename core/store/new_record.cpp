// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/new_record.h"

#include "store/connection/connection.h"
#include "store/proof/proven.h"
#include "store/proof/written_state.h"

namespace crownring {

namespace {

/// An empty file, as `mktemp` leaves one, is taken for none.
bool isEmptyFile(const std::string& file) {
    std::error_code none;
    return std::filesystem::is_regular_file(file, none) && std::filesystem::file_size(file, none) == 0;
}

}

bool NewRecord::isMadeAt(const std::string& location) {
    return !location.empty() && !isPostgres(location) && (foundAt(location) == Found::Nothing || isEmptyFile(location));
}

Result<NewRecord> NewRecord::at(const std::string& location, const WriterId& writer) {
    if (auto why = whyNoRecordAt(location))
        return tl::unexpected(std::move(*why));
    auto draft = Draft::of(location, isEmptyFile(location) ? Replace::Asked : Replace::Never);
    if (!draft)
        return tl::unexpected(draft.error());
    auto record = openRecord(draft->path(), OpenMode::OrCreate, writer);
    if (!record)
        return tl::unexpected(record.error());
    return NewRecord(location, std::move(*draft), std::move(*record));
}

Result<void> NewRecord::keep() {
    m_record.reset();
    auto draft = std::move(m_draft); // gone at the end where it may not be kept
    const bool proven = Proven(draft.path()).stoodAs(writtenStateOfFile(draft.path()));
    auto kept = draft.keep();
    if (kept && proven) // by another name
        Proven(m_location).keep(writtenStateOfFile(m_location));
    return kept;
}

}
