// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sql_record.h"

namespace crownring {

class SqlRecord::Held final : public Snapshot {
public:
    explicit Held(SqlRecord& record) : m_record(record) {
        if (!record.m_reading)
            record.m_reading.emplace(*record.m_connection);
        ++record.m_snapshots;
    }
    ~Held() override {
        if (--m_record.m_snapshots == 0)
            m_record.m_reading.reset();
    }

private:
    SqlRecord& m_record;
};

Result<std::unique_ptr<Snapshot>> SqlRecord::snapshot() {
    return withServer(
        [&] { return guarded([&]() -> std::unique_ptr<Snapshot> { return std::make_unique<Held>(*this); }); });
}

std::unique_ptr<Snapshot> SqlRecord::oneState() { return m_inTransaction ? nullptr : std::make_unique<Held>(*this); }

SqlRecord::Interrupted::Interrupted(SqlRecord& record) : m_record(record) { record.m_reading.reset(); }

SqlRecord::Interrupted::~Interrupted() {
    if (m_record.m_snapshots > 0)
        // Where the database is gone the next question says so.
        static_cast<void>(guarded([&] { m_record.m_reading.emplace(*m_record.m_connection); }));
}

}
