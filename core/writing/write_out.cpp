// SPDX-License-Identifier: GPL-3.0-or-later
#include "writing/write_out.h"

#include "problem/faults/writing_fault.h"
#include "writing/draft.h"

#include <cerrno>
#include <cstdio>
#include <memory>
#include <system_error>

namespace crownring {

namespace {

/// @return 0, or why not
int write(const std::string& path, std::string_view bytes) {
    struct Close {
        void operator()(std::FILE* file) const { std::fclose(file); }
    };
    std::unique_ptr<std::FILE, Close> file(std::fopen(path.c_str(), "wb"));
    if (!file)
        return errno;
    if (std::fwrite(bytes.data(), 1, bytes.size(), file.get()) != bytes.size())
        return errno;
    return std::fclose(file.release()) == 0 ? 0 : errno;
}

}

Result<void> writeOut(const std::string& file, std::string_view bytes, Replace replace) {
    auto draft = Draft::of(file, replace);
    if (!draft)
        return tl::unexpected(draft.error());
    if (const int reason = write(draft->path(), bytes))
        return problem(WritingFault::NotWritten, {std::generic_category().message(reason)}, {file, 0, {}});
    return draft->keep();
}

}
