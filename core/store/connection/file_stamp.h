// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which file a name leads to, and when it was last changed.

#include <cstdint>
#include <optional>
#include <string>

namespace crownring {

struct FileStamp {
    std::uint64_t device = 0;
    std::uint64_t number = 0; ///< of the file on its device
    std::int64_t size = 0;
    std::int64_t changed = 0; ///< nanoseconds; who alters a file cannot choose it, as the time of its last writing
    [[nodiscard]] bool isSameFile(const FileStamp& other) const {
        return device == other.device && number == other.number;
    }
    bool operator==(const FileStamp&) const = default;
};

/// Nothing where there is no file of that name.
[[nodiscard]] std::optional<FileStamp> stampOfFile(const std::string& file);

/// What SQLite keeps beside a file, links followed: "-wal", "-journal". Nothing where it is not there.
[[nodiscard]] std::optional<FileStamp> stampBeside(const std::string& file, const char* ending);

/// Whether something can be made in the folder that `file` is in, links followed.
[[nodiscard]] bool isFolderWritable(const std::string& file);

}
