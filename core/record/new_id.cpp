// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/new_id.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <mutex>

namespace crownring {

namespace {

/// The milliseconds since 1970 of the latest id: ids made by one program are in the order of making.
class Ticks {
public:
    std::uint64_t next() {
        const auto now =
            std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::system_clock::now().time_since_epoch());
        const std::scoped_lock lock(m_guard);
        m_last = std::max(m_last + 1, static_cast<std::uint64_t>(now.count()));
        return m_last;
    }
    void goOnFrom(std::uint64_t last) {
        const std::scoped_lock lock(m_guard);
        m_last = std::max(m_last, last);
    }

private:
    std::mutex m_guard;
    std::uint64_t m_last = 0;
};

Ticks& ticks() {
    static Ticks all;
    return all;
}

}

EntryId newEntryId() {
    constexpr std::size_t ofTime = 6;
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    const auto tick = ticks().next();
    for (std::size_t i = 0; i < ofTime; ++i)
        bytes[i] = static_cast<unsigned char>(tick >> (8 * (ofTime - 1 - i)));
    bytes[6] = static_cast<unsigned char>((bytes[6] & 0x0f) | 0x70);
    bytes[8] = static_cast<unsigned char>((bytes[8] & 0x3f) | 0x80);
    constexpr std::string_view symbols = "0123456789abcdef";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10)
            text.push_back('-');
        text.push_back(symbols[bytes[i] >> 4]);
        text.push_back(symbols[bytes[i] & 15]);
    }
    return EntryId(std::move(text));
}

void newIdsAfter(std::chrono::milliseconds since1970) {
    ticks().goOnFrom(static_cast<std::uint64_t>(std::max(since1970.count(), std::chrono::milliseconds::rep(0))));
}

}
