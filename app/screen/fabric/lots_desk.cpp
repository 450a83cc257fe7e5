// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/lots_desk.h"

#include "screen/desk/house.h"
#include "screen/fabric/fabric_fits.h"
#include "screen/fabric/fabric_words.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/words.h"

#include <QLocale>
#include <QtConcurrent>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using State = FabricFits::State;
using Compared = std::vector<FabricLots>;
using Scored = Result<std::optional<Score>>;

struct Asked {
    std::vector<FabricChannel> channels;
    std::shared_ptr<const FabricRecord> fleet; ///< null where nothing is followed
};

Result<Asked> askedOf(Books& books, std::size_t channel, CivilDate on) {
    const auto book = typeBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    Asked asked{channelsOf(*book), nullptr};
    if (asked.channels.empty())
        return asked;
    auto record = fabricRecord(books, asked.channels[std::min(channel, asked.channels.size() - 1)], on);
    if (!record)
        return tl::unexpected(record.error());
    asked.fleet = std::make_shared<const FabricRecord>(std::move(*record));
    return asked;
}

QString times(double ratio) { return QLocale().toString(ratio, 'f', 2); }

QString wordOf(LotStanding standing) {
    switch (standing) {
    case LotStanding::TooLittle:
        return LotsDesk::tr("too little to say");
    case LotStanding::AsOthers:
        return LotsDesk::tr("as the others");
    case LotStanding::Watch:
        return LotsDesk::tr("watch");
    case LotStanding::Alarm:
        return LotsDesk::tr("alarm");
    }
    return {};
}

Standing gaugeOf(LotStanding standing) {
    switch (standing) {
    case LotStanding::Alarm:
        return Standing::Lapsed;
    case LotStanding::Watch:
        return Standing::Nearing;
    case LotStanding::AsOthers:
        return Standing::Clear;
    case LotStanding::TooLittle:
        break;
    }
    return Standing::Unproven;
}

Choice rowOf(const FabricRecord& record, const FabricLots& fabric, const LotRow& row) {
    const auto& name = record.lots[row.lot];
    const auto lot = name.empty() ? LotsDesk::tr("lot not known") : LotsDesk::tr("lot %1").arg(inward(name));
    const auto pace =
        row.pace ? LotsDesk::tr("ages %1 to %2 times as fast as the others, most likely %3")
                       .arg(times(row.pace->ratio.low), times(row.pace->ratio.high), times(row.pace->ratio.middle))
                 : LotsDesk::tr("the only lot of its fabric");
    const auto count = LotsDesk::tr("envelopes %1, tests %2").arg(row.envelopes).arg(row.readings);
    const auto cloth = inward(record.fabrics[fabric.fabric]);
    return {inward(name),
            LotsDesk::tr("%1 · %2: %3").arg(lot, cloth, wordOf(row.standing)),
            LotsDesk::tr("%1; %2").arg(pace, count),
            -1,
            static_cast<int>(gaugeOf(row.standing)),
            row.standing == LotStanding::Watch || row.standing == LotStanding::Alarm,
            cloth};
}

QString detectableOf(const FabricRecord& record, const FabricLots& fabric) {
    const auto cloth = inward(record.fabrics[fabric.fabric]);
    if (!fabric.smallestDetectableRatio)
        return LotsDesk::tr("%1: fewer than %2 lots are known well enough to be held against the others.")
            .arg(cloth)
            .arg(leastLots);
    return LotsDesk::tr("%1: the smallest effect that this fleet could detect is a lot that ages %2 times as fast; one "
                        "that ages less fast than that may pass unseen.")
        .arg(cloth, times(*fabric.smallestDetectableRatio));
}

}

FabricFits& LotsDesk::fits() const { return house().one<FabricFits>(); }

void LotsDesk::movedIn() {
    connect(&house().day, &Day::changed, this, &LotsDesk::look);
    connect(&house().desk, &RecordDesk::changed, this, &LotsDesk::look);
    connect(&fits(), &FabricFits::changed, this, [this] {
        compare();
        emit workChanged();
        emit changed();
    });
    connect(&fits(), &FabricFits::progressed, this, &LotsDesk::workChanged);
}

LotsDesk::~LotsDesk() {
    m_stop.request_stop();
    m_running.waitForFinished(); // it tells its progress to this
}

void LotsDesk::setActive(bool active) {
    if (active == m_active)
        return;
    m_active = active;
    if (active && m_fleet)
        begin();
    else if (active)
        look();
    emit changed();
}

void LotsDesk::setChannel(int channel) {
    if (channel == m_channel)
        return;
    m_channel = channel;
    look();
}

void LotsDesk::look() {
    const auto turn = ++m_turn;
    m_comparing = m_ready = false;
    m_fleet.reset();
    m_lots.show({});
    m_detectable.clear();
    forgetScore();
    if (!m_active)
        return;
    m_reading = true;
    emit workChanged();
    const auto channel = static_cast<std::size_t>(std::max(m_channel, 0));
    hear(house().desk.ask([channel, on = house().day.date()](Record& record) { return askedOf(record, channel, on); }),
         this, [this, turn](const Result<Asked>& asked) {
             if (turn != m_turn)
                 return;
             m_reading = false;
             m_problem = asked ? QString() : Words::problem(asked.error());
             m_channels = asked ? asked->channels : std::vector<FabricChannel>{};
             m_fleet = asked ? asked->fleet : nullptr;
             emit changed();
             begin();
             emit workChanged();
         });
}

void LotsDesk::begin() {
    if (m_fleet && m_active)
        fits().ask(m_fleet);
    compare();
}

void LotsDesk::stop() {
    fits().stop();
    m_stop.request_stop();
}

void LotsDesk::compare() {
    if (!m_active || !m_fleet || m_ready || m_comparing)
        return;
    const auto fit = fits().fit(m_fleet->channel);
    if (!fit)
        return;
    m_comparing = true;
    hear(QtConcurrent::run([fit] { return lotsOf(*fit); }), this, [this, fit, turn = m_turn](const Compared& compared) {
        if (turn != m_turn)
            return;
        m_comparing = false;
        m_ready = true;
        std::vector<Choice> rows;
        QStringList detectable;
        for (const auto& fabric : compared) {
            for (const auto& row : fabric.lots)
                rows.push_back(rowOf(*fit->record, fabric, row));
            detectable += detectableOf(*fit->record, fabric);
        }
        m_lots.show(std::move(rows));
        m_detectable = detectable.join(u'\n');
        emit changed();
        emit workChanged();
    });
}

void LotsDesk::beginScore() {
    const auto fit = m_fleet ? fits().fit(m_fleet->channel) : nullptr;
    if (!fit || m_scoring)
        return;
    m_stop = {};
    m_scoring = true;
    m_scored = 0;
    emit scoreChanged();
    const auto told = [this, turn = m_turn](double share) {
        QMetaObject::invokeMethod(
            this,
            [this, turn, share] {
                if (turn == m_turn && share > m_scored) {
                    m_scored = share;
                    emit scoreChanged();
                }
            },
            Qt::QueuedConnection);
    };
    auto running =
        QtConcurrent::run([fit, stop = m_stop.get_token(), told] { return pastScore(*fit->record, 1, stop, told); });
    m_running = QFuture<void>(running);
    hear(std::move(running), this, [this, turn = m_turn](const Scored& scored) {
        if (turn != m_turn)
            return;
        m_scoring = false;
        m_problem = scored ? QString() : Words::problem(scored.error());
        if (scored && *scored)
            showScore(**scored);
        emit scoreChanged();
        emit changed();
    });
}

void LotsDesk::showScore(const Score& score) {
    const auto share = [](double part) { return QLocale().toString(part, 'f', 3); };
    if (score.count == 0) {
        m_score = tr("No test of the last %1 years could be forecast: none was made before.").arg(halfYearsScored / 2);
        m_bins.show({});
        return;
    }
    const auto verdict = score.brier < score.baseRate ? tr("The forecasts knew more than that.")
                                                      : tr("The forecasts knew no more than that.");
    m_score =
        tr("%1 tests of the last %2 years, each forecast from what was known before its half-year; %3 failed. Mean "
           "square of the misses: %4, and %5 had the share that failed been forecast each time. %6")
            .arg(score.count)
            .arg(halfYearsScored / 2)
            .arg(score.came)
            .arg(share(score.brier), share(score.baseRate), verdict);
    std::vector<Choice> rows;
    const double width = 100.0 / static_cast<double>(score.bins.size());
    for (std::size_t at = 0; at < score.bins.size(); ++at) {
        const auto& bin = score.bins[at];
        const auto label =
            tr("Forecast %1 to %2 %").arg(width * static_cast<double>(at)).arg(width * static_cast<double>(at + 1));
        const auto detail = bin.count == 0 ? tr("no test")
                                           : tr("%1 tests: %2 % forecast on average, %3 % failed")
                                                 .arg(bin.count)
                                                 .arg(QLocale().toString(100 * bin.foretold, 'f', 1),
                                                      QLocale().toString(100 * bin.came, 'f', 1));
        rows.push_back({label, label, detail, -1, -1, false});
    }
    m_bins.show(std::move(rows));
}

void LotsDesk::forgetScore() {
    m_stop.request_stop();
    m_scoring = false;
    m_score.clear();
    m_bins.show({});
    emit scoreChanged();
}

QStringList LotsDesk::channels() const {
    QStringList names;
    for (const auto& channel : m_channels)
        names += BenchWords::quantity(channel.quantity);
    return names;
}

QString LotsDesk::problem() const {
    const auto& fits = this->fits();
    return m_problem.isEmpty() && !m_ready && fits.state() == State::Failed ? fits.problem() : m_problem;
}

bool LotsDesk::isWorking() const {
    const auto state = fits().state();
    return m_active && !m_ready && (m_reading || m_comparing || state == State::Fitting);
}

double LotsDesk::progress() const { return m_comparing ? 1 : fits().progress(); }

}
