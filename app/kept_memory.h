// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// For programs that live on: the due list of the whole fleet is made anew after every entry and for every day asked,
/// and asking the system for the same memory each time took a third of its time.

#include <cstdlib> // tells whose library it is
#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace crownring {

/// What is freed stays with the program for the next time. Called once, before other threads begin.
inline void keepFreedMemory() {
#ifdef __GLIBC__
    constexpr int megabyte = 1024 * 1024;
    mallopt(M_ARENA_MAX, 1);
    mallopt(M_TRIM_THRESHOLD, 1024 * megabyte);
    mallopt(M_MMAP_THRESHOLD, 32 * megabyte); // the most that it takes
    mallopt(M_TOP_PAD, 16 * megabyte);
#endif
}

}
