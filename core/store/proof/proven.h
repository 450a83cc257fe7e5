// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// That a record was found intact as a whole, and how it stood then, kept outside of it: while it stands so, or only
/// this program has written to it since, nobody has to prove it again to answer from it.
///
/// It is kept among what a user's programs can make again ($XDG_CACHE_HOME/crownring). Where that is lost or cannot be
/// written, a record is proven once more by each program that opens it. It saves time; it is no seal.

#include <string>

namespace crownring {

class Proven {
public:
    /// @param location of the record; a link is what it leads to
    explicit Proven(const std::string& location);

    /// @param state as `writtenState` tells it
    [[nodiscard]] bool stoodAs(const std::string& state) const;
    void keep(const std::string& state);

private:
    std::string m_file;
    std::string m_state; ///< what was kept by this program, though it could not be written
};

}
