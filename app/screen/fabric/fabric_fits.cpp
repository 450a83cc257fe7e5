// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/fabric_fits.h"

#include "screen/desk/house.h"
#include "words/words.h"

#include <QtConcurrent>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Fitted = Result<std::optional<FabricFit>>;

SharedFit of(const std::vector<SharedFit>& fits, const FabricChannel& channel) {
    const auto found =
        std::ranges::find_if(fits, [&](const SharedFit& fit) { return fit->record->channel == channel; });
    return found == fits.end() ? nullptr : *found;
}

}

FabricFits::FabricFits(House& house) {
    connect(&house.day, &Day::changed, this, &FabricFits::forget);
    connect(&house.desk, &RecordDesk::changed, this, &FabricFits::forget);
}

FabricFits::~FabricFits() {
    m_stop.request_stop();
    m_running.waitForFinished(); // it tells its progress to this
}

SharedFit FabricFits::fit(const FabricChannel& channel) const { return of(m_fits, channel); }

SharedFit FabricFits::earlierFit(const FabricChannel& channel) const { return of(m_earlier, channel); }

void FabricFits::ask(std::shared_ptr<const FabricRecord> record) {
    if (fit(record->channel) || (m_state == State::Fitting && m_asked == record->channel))
        return;
    m_stop.request_stop();
    m_stop = {};
    m_asked = record->channel;
    const auto turn = ++m_turn;
    m_progress = 0;
    setState(State::Fitting);
    // Told on the fit's threads; taken over here.
    const auto told = [this, turn](double share) {
        QMetaObject::invokeMethod(
            this,
            [this, turn, share] {
                if (turn != m_turn || share < m_progress)
                    return;
                m_progress = share;
                emit progressed();
            },
            Qt::QueuedConnection);
    };
    auto running = QtConcurrent::run([record, before = earlierFit(record->channel), stop = m_stop.get_token(), told] {
        if (before)
            if (auto carried = refitted(*before, record))
                return Fitted(std::move(carried));
        return fitOf(record, 1, stop, told);
    });
    m_running = QFuture<void>(running);
    hear(std::move(running), this, [this, turn](const Fitted& fitted) {
        if (turn != m_turn)
            return;
        if (!fitted)
            setState(State::Failed, Words::problem(fitted.error()));
        else if (*fitted)
            take(std::make_shared<const FabricFit>(**fitted));
        else
            setState(State::Stopped);
    });
}

void FabricFits::take(SharedFit fit) {
    std::erase_if(m_earlier, [&](const SharedFit& each) { return each->record->channel == fit->record->channel; });
    m_fits.push_back(std::move(fit));
    m_progress = 1;
    setState(State::Ready);
}

void FabricFits::stop() {
    if (m_state != State::Fitting)
        return;
    ++m_turn;
    m_stop.request_stop();
    setState(State::Stopped);
}

void FabricFits::forget() {
    for (auto& fit : m_fits) {
        std::erase_if(m_earlier, [&](const SharedFit& each) { return each->record->channel == fit->record->channel; });
        m_earlier.push_back(std::move(fit));
    }
    m_fits.clear();
    m_stop.request_stop();
    ++m_turn;
    setState(State::Idle);
}

void FabricFits::setState(State state, const QString& problem) {
    m_state = state;
    m_problem = problem;
    emit changed();
}

}
