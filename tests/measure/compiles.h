// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What compiles between two types, for tests of what must not.

namespace crownring::test {

template <class A, class B>
concept Adds = requires(A a, B b) {
    a + b;
};

template <class A, class B>
concept Orders = requires(A a, B b) {
    a < b;
};

template <class A, class B>
concept Compares = requires(A a, B b) {
    a == b;
};

}
