// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Proves the record that is open as a whole, on a thread and a connection of its own, so that nothing waits for it:
/// after opening, and whenever something else has written to it. Lives on the thread of the record.

#include "store/record_file.h"

#include <QObject>

#include <atomic>
#include <chrono>
#include <functional>
#include <memory>

class QThread;

namespace crownring::screen {

class Prover : public QObject {
    Q_OBJECT

public:
    /// @param found is told what each proof that came to its end has found
    Prover(std::function<void(const Verdict&)> found, QObject* parent);
    /// Waits until the proof under way has stopped.
    ~Prover() override;

    /// Begins one where the record is not proven as it stands; not when the last one has only just ended.
    void look(Record& record, const std::string& location);
    /// Nothing that was begun is told any more. Waits until it has stopped.
    void stop();

private:
    using Clock = std::chrono::steady_clock;
    void end(const std::shared_ptr<std::atomic_bool>& stop, const Result<Verdict>& verdict);

    std::function<void(const Verdict&)> m_found;
    std::unique_ptr<QThread> m_thread;
    std::shared_ptr<std::atomic_bool> m_stop; ///< of the proof under way
    Clock::time_point m_began, m_notBefore;
};

}
