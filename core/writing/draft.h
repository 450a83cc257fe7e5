// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A file under way: it grows beside where it is to stand, under a name that nobody looks for, and gets its own name
/// once it is whole and on disk. Whoever reads finds all of the old or all of the new; a full disk loses nothing.

#include "writing/target.h"

namespace crownring {

class Draft {
public:
    /// An empty file in the folder of `file` (of what it leads to, where it is a link).
    /// @return as `whyNotWritten`; FileUnwritable also where nothing can be written into that folder
    [[nodiscard]] static Result<Draft> of(const std::string& file, Replace replace);
    /// Takes it away, unless it was kept.
    ~Draft();
    Draft(Draft&& other) noexcept;
    Draft& operator=(Draft&&) = delete;

    /// Where to write.
    [[nodiscard]] std::string path() const { return m_path.string(); }
    /// Brings it to disk and gives it its name; what was there is replaced only now, and only as was said.
    [[nodiscard]] Result<void> keep();

private:
    Draft(std::string file, std::filesystem::path real, std::filesystem::path path, Replace replace);
    [[nodiscard]] tl::unexpected<Problem> failed(int reason) const;

    std::string m_file;
    std::filesystem::path m_real; ///< links followed
    std::filesystem::path m_path;
    Replace m_replace;
};

}
