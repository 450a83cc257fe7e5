// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/older_copy.h"

#include "problem/faults/writing_fault.h"
#include "store/connection/statement.h"
#include "store/schema/migration.h"

#include <filesystem>

namespace crownring {

namespace {

namespace fs = std::filesystem;

constexpr int firstWithPictures = 2;

fs::path beside(const std::string& file, const char* ending) { return file + ending; }

/// Something is written that is not in the file itself, or may be at any moment.
bool isOpen(const std::string& file) {
    std::error_code none;
    return fs::exists(beside(file, "-shm"), none) || fs::exists(beside(file, "-wal"), none) ||
           fs::exists(beside(file, "-journal"), none);
}

bool holdsAllEntries(const Connection& connection, const Connection& copy) {
    Statement heads(copy, "SELECT writer_id, last_sequence, last_hash FROM writer WHERE last_sequence > 0");
    Statement here(connection, "SELECT 1 FROM entry e JOIN writer w ON w.writer_no = e.writer_no"
                               " WHERE w.writer_id = ? AND e.sequence = ? AND e.hash = ?");
    heads.run();
    while (heads.next()) {
        const auto writer = heads.read<WriterId>();
        const auto sequence = heads.read<std::int64_t>();
        here.run(writer, sequence, heads.read<QByteArray>());
        const bool found = here.next();
        here.finish();
        if (!found)
            return false;
    }
    return true;
}

bool holdsAllPictures(const Connection& connection, const Connection& copy) {
    if (schemaVersion(copy) < firstWithPictures)
        return true;
    Statement pictures(copy, "SELECT digest FROM picture");
    Statement here(connection, "SELECT 1 FROM picture WHERE digest = ?");
    pictures.run();
    while (pictures.next()) {
        here.run(pictures.read<std::string>());
        const bool found = here.next();
        here.finish();
        if (!found)
            return false;
    }
    return true;
}

/// Reading a file that another program left in write-ahead mode makes empty files beside it.
class LeftAsItWas {
public:
    explicit LeftAsItWas(std::string file) : m_file(std::move(file)) {}
    ~LeftAsItWas() {
        std::error_code none;
        const auto log = beside(m_file, "-wal");
        if (fs::exists(log, none) && fs::file_size(log, none) > 0)
            return; // somebody has begun to write
        fs::remove(log, none);
        fs::remove(beside(m_file, "-shm"), none);
    }
    LeftAsItWas(const LeftAsItWas&) = delete;
    LeftAsItWas& operator=(const LeftAsItWas&) = delete;

private:
    std::string m_file;
};

}

std::optional<Problem> whyNoOlderCopy(const Connection& connection, const std::string& file) {
    const auto no = [&](WritingFault why) { return Problem{why, {}, {file, 0, {}}}; };
    std::error_code none;
    if (fs::equivalent(connection.location(), file, none))
        return no(WritingFault::TheRecordItself);
    const auto real = fs::weakly_canonical(file, none).string();
    if (isOpen(real))
        return no(WritingFault::OpenElsewhere);
    const LeftAsItWas left(real);
    const Connection copy(real, Access::ReadOnly);
    if (schemaVersion(copy) == 0 || schemaVersion(copy) > schemaVersion(connection))
        return no(WritingFault::LaterVersion);
    if (!holdsAllEntries(connection, copy))
        return no(WritingFault::HoldsOtherEntries);
    if (!holdsAllPictures(connection, copy))
        return no(WritingFault::HoldsOtherPictures);
    return std::nullopt;
}

}
