// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/proof/prover.h"

#include "problem/faults/store_fault.h"

#include <QThread>

#include <utility>

namespace crownring::screen {

namespace {

/// Where others write all the time, proofs take at most this part of it.
constexpr int oneIn = 5;

Result<Verdict> proofOf(const std::string& location, const std::shared_ptr<std::atomic_bool>& stop) {
    // What wrote when it is closed would look like another program that had written.
    const auto record = openRecord(location, OpenMode::ToRead);
    if (!record)
        return tl::unexpected(record.error());
    return (*record)->verify([stop](double) { return !stop->load(); });
}

}

Prover::Prover(std::function<void(const Verdict&)> found, QObject* parent)
    : QObject(parent), m_found(std::move(found)) {}

Prover::~Prover() { stop(); }

void Prover::stop() {
    if (m_stop)
        m_stop->store(true);
    m_stop.reset();
    if (m_thread)
        m_thread->wait();
    m_thread.reset();
    m_notBefore = {};
}

void Prover::look(Record& record, const std::string& location) {
    const auto why = record.readOnlyReason();
    if (m_stop || Clock::now() < m_notBefore || (why && isDamage(why->fault)) || record.isProven().value_or(true))
        return;
    m_began = Clock::now();
    m_stop = std::make_shared<std::atomic_bool>(false);
    m_thread.reset(QThread::create([this, location, stop = m_stop] {
        auto verdict = proofOf(location, stop);
        if (!stop->load())
            QMetaObject::invokeMethod(
                this, [this, stop, verdict = std::move(verdict)] { end(stop, verdict); }, Qt::QueuedConnection);
    }));
    m_thread->setObjectName(QStringLiteral("proof"));
    m_thread->start(QThread::LowPriority);
}

void Prover::end(const std::shared_ptr<std::atomic_bool>& stop, const Result<Verdict>& verdict) {
    if (stop != m_stop) // another record is open
        return;
    m_thread->wait();
    m_thread.reset();
    m_stop.reset();
    const auto now = Clock::now();
    m_notBefore = now + oneIn * (now - m_began);
    if (verdict)
        m_found(*verdict);
}

}
