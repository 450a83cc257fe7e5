// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where something may be written: the one rule for papers, tables, pictures and backups. Nothing is ever written over
/// a record, what a record keeps beside its file, a database of another program, or what is no plain file.

#include "problem/problem.h"

#include <filesystem>
#include <optional>
#include <string>

namespace crownring {

/// What may happen to a file that has the name already.
enum class Replace {
    Never, ///< it stays
    Asked, ///< somebody was asked, and said that it may be replaced
    Copy,  ///< the same, and it may be a record: the caller has made sure that all that it holds is elsewhere
};

/// What is found under a name, links followed.
enum class Found {
    Nothing,
    PlainFile,
    Record,      ///< of Crownring
    Database,    ///< SQLite's, of another program
    BesideOne,   ///< what a database keeps beside its file: its last changes, whether they are there now or not
    LostLink,    ///< a link to where nothing is
    NoPlainFile, ///< a folder, a device, a pipe, a socket
    Unknown,     ///< it cannot be looked at
};

[[nodiscard]] Found foundAt(const std::filesystem::path& file);

/// Why nothing is written there, with what to do instead: FileExists where it may be replaced if somebody says so, else
/// FileUnwritable. Empty when it may be written.
[[nodiscard]] std::optional<Problem> whyNotWritten(const std::string& file, Replace replace);

}
