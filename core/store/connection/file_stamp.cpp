// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection/file_stamp.h"

#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

namespace crownring {

std::optional<FileStamp> stampOfFile(const std::string& file) {
    struct stat found {};
    if (::stat(file.c_str(), &found) != 0)
        return std::nullopt;
    constexpr std::int64_t second = 1'000'000'000;
    return FileStamp{found.st_dev, found.st_ino, found.st_size, found.st_ctim.tv_sec * second + found.st_ctim.tv_nsec};
}

std::optional<FileStamp> stampBeside(const std::string& file, const char* ending) {
    std::error_code none;
    return stampOfFile(std::filesystem::weakly_canonical(file, none).string() + ending);
}

bool isFolderWritable(const std::string& file) {
    std::error_code none;
    const auto folder = std::filesystem::weakly_canonical(file, none).parent_path();
    return ::access(folder.empty() ? "." : folder.c_str(), W_OK | X_OK) == 0;
}

}
