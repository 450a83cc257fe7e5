// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A digest of the values of a row, quick enough for every row of every answer. It finds what was changed by accident
/// or by hand; against somebody who makes it anew there are the chain and copies elsewhere.

#include <bit>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace crownring {

class RowDigest {
public:
    void add(std::int64_t value) { mix(static_cast<std::uint64_t>(value), 0x9e3779b97f4a7c15U); }
    void add(double value) { mix(std::bit_cast<std::uint64_t>(value), 0xbf58476d1ce4e5b9U); }
    void addNull() { mix(0, 0x94d049bb133111ebU); }
    void add(std::string_view text) {
        mix(text.size(), 0xd6e8feb86659fd93U);
        for (; text.size() >= sizeof(std::uint64_t); text.remove_prefix(sizeof(std::uint64_t)))
            mix(word(text, sizeof(std::uint64_t)), 0xa0761d6478bd642fU);
        if (!text.empty())
            mix(word(text, text.size()), 0xa0761d6478bd642fU);
    }
    [[nodiscard]] std::uint64_t value() const { return m_state; }

private:
    static std::uint64_t word(std::string_view text, std::size_t size) {
        std::uint64_t word = 0;
        std::memcpy(&word, text.data(), size);
        return word;
    }
    /// Multiplies and folds the halves of the product: the step of W. Yi's wyhash. @param sort an odd number for each
    /// sort of value
    void mix(std::uint64_t value, std::uint64_t sort) {
        __extension__ using Product = unsigned __int128;
        const auto product = static_cast<Product>(m_state ^ value) * sort;
        m_state = static_cast<std::uint64_t>(product) ^ static_cast<std::uint64_t>(product >> 64U);
    }

    std::uint64_t m_state = 0x8ebc6af09c88c6e3U;
};

/// What a set of rows comes to, whatever their order.
struct Tally {
    std::int64_t rows = 0;
    std::uint64_t sum = 0; ///< of their digests

    void add(std::uint64_t digest) {
        ++rows;
        sum += digest;
    }
    Tally& operator+=(const Tally& other) {
        rows += other.rows;
        sum += other.sum;
        return *this;
    }
    Tally& operator-=(const Tally& other) {
        rows -= other.rows;
        sum -= other.sum;
        return *this;
    }
    bool operator==(const Tally&) const = default;
};

}
