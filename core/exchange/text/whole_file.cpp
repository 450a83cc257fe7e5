// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/whole_file.h"

#include "problem/faults/table_fault.h"
#include "problem/faults/use_fault.h"

#include <array>
#include <filesystem>
#include <fstream>

namespace crownring {

namespace {

tl::unexpected<Problem> tooLarge(const std::string& file, std::size_t most) {
    constexpr std::size_t mebibyte = std::size_t{1024} * 1024;
    return problem(TableFault::TooLarge, {static_cast<std::int64_t>(most / mebibyte)}, {file, 0, {}});
}

}

Result<std::string> wholeStream(std::istream& stream, const std::string& file, std::size_t most) {
    std::string content;
    std::array<char, std::size_t{64} * 1024> piece{};
    while (stream.read(piece.data(), piece.size()), stream.gcount() > 0) {
        content.append(piece.data(), static_cast<std::size_t>(stream.gcount()));
        if (content.size() > most)
            return tooLarge(file, most);
    }
    return content;
}

Result<std::string> wholeFile(const std::string& file, std::size_t most) {
    std::error_code unknown;
    const auto type = std::filesystem::status(file, unknown).type();
    if (type == std::filesystem::file_type::not_found)
        return problem(UseFault::FileUnreadable, {}, {file, 0, {}});
    if (type != std::filesystem::file_type::regular && type != std::filesystem::file_type::fifo)
        return problem(UseFault::NotAFile, {}, {file, 0, {}});
    if (const auto size = std::filesystem::file_size(file, unknown); !unknown && size > most)
        return tooLarge(file, most);
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return problem(UseFault::FileUnreadable, {}, {file, 0, {}});
    return wholeStream(stream, file, most);
}

}
