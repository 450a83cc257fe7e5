// SPDX-License-Identifier: GPL-3.0-or-later
#include "writing/draft.h"

#include "problem/faults/writing_fault.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <random>
#include <system_error>
#include <utility>

namespace crownring {

namespace {

namespace fs = std::filesystem;

tl::unexpected<Problem> cannotWrite(const std::string& file, int reason) {
    return problem(WritingFault::NotWritten, {std::generic_category().message(reason)}, {file, 0, {}});
}

/// @return 0, or why not
int toDisk(const fs::path& path, int flags) {
    const int opened = ::open(path.c_str(), flags | O_CLOEXEC);
    if (opened < 0)
        return errno;
    const int reason = ::fsync(opened) == 0 ? 0 : errno;
    ::close(opened);
    return reason;
}

/// Gives `from` the name `to`. @return 0, or why not: EEXIST where something has that name and may not be replaced
int rename(const fs::path& from, const fs::path& to, bool replace) {
    if (!replace) {
        if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
            return 0;
        if (errno != EINVAL && errno != ENOSYS)
            return errno;
        // A file system that cannot promise it: `keep` has just looked.
    }
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

}

Draft::Draft(std::string file, fs::path real, fs::path path, Replace replace)
    : m_file(std::move(file)), m_real(std::move(real)), m_path(std::move(path)), m_replace(replace) {}

Draft::Draft(Draft&& other) noexcept
    : m_file(std::move(other.m_file)), m_real(std::move(other.m_real)), m_path(std::exchange(other.m_path, {})),
      m_replace(other.m_replace) {}

Draft::~Draft() {
    if (!m_path.empty())
        ::unlink(m_path.c_str());
}

Result<Draft> Draft::of(const std::string& file, Replace replace) {
    if (auto why = whyNotWritten(file, replace))
        return tl::unexpected(std::move(*why));
    std::error_code error;
    const fs::path real = fs::is_symlink(file, error) ? fs::weakly_canonical(file, error) : fs::path(file);
    std::random_device random;
    for (int tries = 0; tries < 100; ++tries) {
        const auto path = real.parent_path() / (".crownring-" + std::to_string(random()) + ".part");
        const int opened = ::open(path.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
        if (opened >= 0) {
            ::close(opened);
            return Draft(file, real, path, replace);
        }
        if (errno != EEXIST)
            return cannotWrite(file, errno);
    }
    return cannotWrite(file, EEXIST);
}

tl::unexpected<Problem> Draft::failed(int reason) const { return cannotWrite(m_file, reason); }

Result<void> Draft::keep() {
    if (const int reason = toDisk(m_path, O_RDWR))
        return failed(reason);
    // What was not there, or was something else, when it was begun.
    if (auto why = whyNotWritten(m_file, m_replace))
        return tl::unexpected(std::move(*why));
    struct stat before {};
    const bool replaces = ::stat(m_real.c_str(), &before) == 0;
    if (replaces && ::chmod(m_path.c_str(), before.st_mode & 07777) != 0)
        return failed(errno);
    if (const int reason = rename(m_path, m_real, replaces)) {
        const auto why = reason == EEXIST ? whyNotWritten(m_file, Replace::Never) : std::nullopt;
        return why ? tl::unexpected(*why) : failed(reason);
    }
    m_path.clear();
    const auto folder = m_real.parent_path();
    static_cast<void>(toDisk(folder.empty() ? fs::path(".") : folder, O_RDONLY | O_DIRECTORY));
    return {};
}

}
