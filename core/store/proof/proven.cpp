// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/proof/proven.h"

#include "record/chain/chain.h"
#include "store/connection/connection.h"

#include <QtCore/QStandardPaths>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>
#include <vector>

namespace crownring {

namespace {

namespace fs = std::filesystem;

/// Records come and go; the latest of them are worth a line.
constexpr std::size_t mostKept = 500;

fs::path folder() {
    return fs::path(QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation).toStdString()) /
           "crownring" / "proven";
}

std::string fileFor(const std::string& location) {
    std::error_code none;
    const auto place = isPostgres(location) ? location : fs::weakly_canonical(location, none).string();
    return (folder() / hex(sha256(place)).substr(0, 32)).string();
}

void forgetOldest() {
    std::error_code none;
    std::vector<std::pair<fs::file_time_type, fs::path>> all;
    for (const auto& each : fs::directory_iterator(folder(), none))
        all.emplace_back(each.last_write_time(none), each.path());
    if (all.size() < mostKept)
        return;
    std::ranges::sort(all);
    all.resize(all.size() - mostKept / 2);
    for (const auto& [when, path] : all)
        fs::remove(path, none);
}

}

Proven::Proven(const std::string& location) : m_file(fileFor(location)) {}

bool Proven::stoodAs(const std::string& state) const {
    if (state.empty() || state == m_state)
        return !state.empty();
    std::ifstream file(m_file, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(file), {}) == state;
}

void Proven::keep(const std::string& state) {
    if (state == std::exchange(m_state, state))
        return;
    std::error_code none;
    if (!fs::exists(m_file, none)) {
        fs::create_directories(folder(), none);
        forgetOldest();
    }
    std::ofstream(m_file, std::ios::binary | std::ios::trunc) << state;
}

}
