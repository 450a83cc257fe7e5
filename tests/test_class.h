// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One program holds the tests of a room; each class of tests is registered with it under its file's name and runs in a
/// process of its own:
///
///     rules_tests                      names them all
///     rules_tests closing              runs closing_test.cpp
///     rules_tests closing -v2 name     with what Qt Test takes: options, names of test functions

#include <QTest>

namespace crownring::test {

/// Takes what a program takes, and gives what it ends with.
using Run = int (*)(int count, char** arguments);

/// `file` names the test: …/closing_test.cpp is `closing`.
struct Registered {
    Registered(const char* file, Run run);
};

template <class Class>
int run(int count, char** arguments) {
    Class test;
    return QTest::qExec(&test, count, arguments);
}

/// The application is there before the tests are, as in a program.
template <class Class, class Application>
int run(int count, char** arguments) {
    const Application application(count, arguments);
    Application::setAttribute(Qt::AA_Use96Dpi, true);
    return run<Class>(count, arguments);
}

}

/// CROWNRING_TEST(ClosingTest) or, where the tests need it, CROWNRING_TEST(PostingTest, QCoreApplication).
#define CROWNRING_TEST(...) CROWNRING_TEST_RUN((&crownring::test::run<__VA_ARGS__>))

/// For tests that are more than a class: any function that takes what `main` takes.
#define CROWNRING_TEST_RUN(function) CROWNRING_REGISTERED(function, __COUNTER__)

// Several files of tests may be compiled as one, so that each registration has a name of its own.
#define CROWNRING_REGISTERED(function, number) CROWNRING_REGISTERED_AS(function, number)
#define CROWNRING_REGISTERED_AS(function, number)                                                                      \
    static const crownring::test::Registered registeredTest##number(__FILE__, function);
