// SPDX-License-Identifier: GPL-3.0-or-later
#include "writing/target.h"

#include "problem/faults/writing_fault.h"

#include <unistd.h>

#include <array>
#include <fstream>
#include <string_view>

namespace crownring {

namespace {

namespace fs = std::filesystem;
using namespace std::string_view_literals;

constexpr std::array besides = {"-wal"sv, "-shm"sv, "-journal"sv};

/// The first bytes of a file; fewer where it is shorter, none where it cannot be read.
std::optional<std::string> beginningOf(const fs::path& file) {
    constexpr std::size_t header = 100; // of an SQLite database
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return std::nullopt;
    std::string bytes(header, '\0');
    stream.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(stream.gcount()));
    return bytes;
}

/// By its first bytes. https://www.sqlite.org/fileformat2.html, sections 1.3, 3 and 4.1
Found contentOf(const fs::path& file) {
    const auto begin = beginningOf(file);
    if (!begin)
        return Found::Unknown;
    if (begin->starts_with("SQLite format 3\0"sv)) {
        constexpr std::size_t placeOfApplicationId = 68;
        return begin->size() > placeOfApplicationId && begin->substr(placeOfApplicationId).starts_with("CRNG")
                   ? Found::Record
                   : Found::Database;
    }
    for (const auto mark : {"\x37\x7f\x06\x82"sv, "\x37\x7f\x06\x83"sv, "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7"sv})
        if (begin->starts_with(mark))
            return Found::BesideOne;
    return Found::PlainFile;
}

bool isDatabase(const fs::path& file) {
    std::error_code none;
    if (!fs::is_regular_file(file, none))
        return false;
    const auto content = contentOf(file);
    return content == Found::Record || content == Found::Database;
}

/// NAME-wal where NAME is a database.
bool isBesideOne(const fs::path& file) {
    const auto name = file.filename().string();
    for (const auto ending : besides)
        if (name.size() > ending.size() && name.ends_with(ending) &&
            isDatabase(file.parent_path() / name.substr(0, name.size() - ending.size())))
            return true;
    return false;
}

/// A database whose content still stands beside it.
bool isBegun(const fs::path& file) {
    for (const auto ending : besides) {
        auto side = file;
        side += ending;
        std::error_code none;
        if (fs::is_regular_file(side, none) && contentOf(side) == Found::BesideOne)
            return true;
    }
    return false;
}

Problem refused(const std::string& file, WritingFault why) { return {why, {}, {file, 0, {}}}; }

}

Found foundAt(const fs::path& file) {
    std::error_code error;
    const auto named = fs::symlink_status(file, error);
    if (named.type() == fs::file_type::none)
        return Found::Unknown;
    const auto real = fs::is_symlink(named) ? fs::weakly_canonical(file, error) : file;
    const auto status = fs::status(real, error);
    if (fs::is_symlink(named) && !fs::exists(status))
        return Found::LostLink;
    if (status.type() == fs::file_type::none || status.type() == fs::file_type::unknown)
        return Found::Unknown;
    if (fs::exists(status) && !fs::is_regular_file(status))
        return Found::NoPlainFile;
    if (isBesideOne(real))
        return Found::BesideOne;
    const auto content = fs::exists(status) ? contentOf(real) : Found::Nothing;
    return (content == Found::Nothing || content == Found::PlainFile) && isBegun(real) ? Found::Database : content;
}

std::optional<Problem> whyNotWritten(const std::string& file, Replace replace) {
    if (fs::path(file).filename().empty())
        return refused(file, WritingFault::NamesNoFile);
    switch (foundAt(file)) {
    case Found::Nothing:
        return std::nullopt;
    case Found::Record:
        if (replace != Replace::Copy)
            return refused(file, WritingFault::IsARecord);
        [[fallthrough]];
    case Found::PlainFile:
        if (replace == Replace::Never)
            return refused(file, WritingFault::Exists);
        if (::access(file.c_str(), W_OK) != 0)
            return refused(file, WritingFault::ReadOnly);
        return std::nullopt;
    case Found::Database:
        return refused(file, WritingFault::IsADatabase);
    case Found::BesideOne:
        return refused(file, WritingFault::BesideADatabase);
    case Found::LostLink:
        return refused(file, WritingFault::LostLink);
    case Found::NoPlainFile:
        return refused(file, WritingFault::NoPlainFile);
    case Found::Unknown:
        break;
    }
    return refused(file, WritingFault::NotLookedAt);
}

}
