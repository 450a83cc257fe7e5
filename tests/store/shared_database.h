// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An empty database of the shared kind to test against, where `CROWNRING_TEST_POSTGRES` offers one. It is wiped; tests
/// that use it take turns (RESOURCE_LOCK shared_database).

#include "store/connection/connection.h"
#include "store/record_file.h"

#include <QtTest>

#include <memory>
#include <stdexcept>
#include <string>

namespace crownring::testing {

/// Empty when none is offered.
inline std::string sharedLocation() { return qEnvironmentVariable("CROWNRING_TEST_POSTGRES").toStdString(); }

inline void emptyShared() {
    const Connection connection(sharedLocation(), Access::ReadWrite);
    connection.run(QStringLiteral("DROP SCHEMA public CASCADE"));
    connection.run(QStringLiteral("CREATE SCHEMA public"));
}

inline std::unique_ptr<Record> openedShared(const char* writer = "tester") {
    auto record = openRecord(sharedLocation(), OpenMode::OrCreate, WriterId(writer));
    if (!record)
        throw std::runtime_error(text(record.error()));
    return std::move(*record);
}

}

/// The first line of a test that needs the shared database: skips it where none is offered, and empties it.
#define NEEDS_SHARED                                                                                                   \
    if (crownring::testing::sharedLocation().empty())                                                                  \
        QSKIP("no shared database is offered");                                                                        \
    crownring::testing::emptyShared()
