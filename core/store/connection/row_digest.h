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
    void add(std::int64_t value) { mix(static_cast<std::uint64_t>(value), 1); }
    void add(double value) { mix(std::bit_cast<std::uint64_t>(value), 2); }
    void addNull() { mix(0, 3); }
    void add(std::string_view text) {
        mix(text.size(), 4);
        for (; text.size() >= sizeof(std::uint64_t); text.remove_prefix(sizeof(std::uint64_t)))
            mix(word(text), 5);
        mix(word(text), 5);
    }
    [[nodiscard]] std::uint64_t value() const { return m_state; }

private:
    static std::uint64_t word(std::string_view text) {
        std::uint64_t word = 0;
        std::memcpy(&word, text.data(), text.size() < sizeof word ? text.size() : sizeof word);
        return word;
    }
    /// The finalizer of SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number generators, 2014), chained.
    void mix(std::uint64_t value, std::uint64_t sort) {
        auto z = (m_state ^ value) + 0x9e3779b97f4a7c15U * sort;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        m_state = z ^ (z >> 31U);
    }

    std::uint64_t m_state = 0;
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
