// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/ageing_sampler.h"

#include "fabric/sampler/ageing_chain.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>

namespace crownring {

namespace {

constexpr std::size_t largeFleet = 40'000; ///< readings

/// Counts sweeps of all chains and tells whoever waits.
class Counted {
public:
    Counted(const SamplerSettings& settings, const Progress& progress)
        : m_progress(progress),
          m_all(settings.chains * (settings.burnIn + settings.drawsOfChain * settings.sweepsOfDraw)),
          m_told(std::max<std::size_t>(m_all / 200, 1)) {}

    void sweep() {
        if (!m_progress || (++m_done % m_told != 0 && m_done != m_all))
            return;
        const std::scoped_lock one(m_telling);
        m_progress(static_cast<double>(m_done) / static_cast<double>(m_all));
    }

private:
    const Progress& m_progress;
    std::size_t m_all;
    std::size_t m_told;
    std::atomic<std::size_t> m_done = 0;
    std::mutex m_telling;
};

void runChain(AgeingChain& chain, std::size_t number, const SamplerSettings& settings, const std::stop_token& stop,
              Counted& counted, Posterior& posterior) {
    for (std::size_t sweep = 0; sweep < settings.burnIn && !stop.stop_requested(); ++sweep) {
        chain.sweep(true);
        counted.sweep();
    }
    for (std::size_t draw = 0; draw < settings.drawsOfChain; ++draw) {
        for (std::size_t sweep = 0; sweep < settings.sweepsOfDraw && !stop.stop_requested(); ++sweep) {
            chain.sweep(false);
            counted.sweep();
        }
        if (stop.stop_requested())
            return;
        keepDraw(chain.state(), number * settings.drawsOfChain + draw, posterior);
    }
}

}

SamplerSettings settingsFor(const FleetColumns& fleet) {
    SamplerSettings settings;
    if (fleet.readings() > largeFleet) {
        settings.burnIn = 300;
        settings.drawsOfChain = 250;
        settings.sweepsOfDraw = 2;
    }
    return settings;
}

std::optional<Posterior> sampledPosterior(const FleetColumns& fleet, const AgeingPrior& prior,
                                          const SamplerSettings& settings, std::stop_token stop,
                                          const Progress& progress) {
    AgeingState like;
    like.fabrics.resize(fleet.fabrics);
    like.lots.resize(fleet.lots());
    like.sets.resize(fleet.sets());
    auto posterior = emptyPosterior(like, settings.chains, settings.drawsOfChain);
    Counted counted(settings, progress);
    std::atomic<std::uint32_t> next = 0;
    const auto work = [&] {
        for (auto number = next++; number < settings.chains; number = next++) {
            AgeingChain chain(fleet, prior, settings.phiFree, settings.seed, number);
            runChain(chain, number, settings, stop, counted, posterior);
        }
    };
    const auto most = settings.threads > 0 ? settings.threads : std::max(std::thread::hardware_concurrency(), 1U);
    {
        std::vector<std::jthread> threads;
        for (std::size_t k = 1; k < std::min<std::size_t>(most, settings.chains); ++k)
            threads.emplace_back(work);
        work();
    }
    if (stop.stop_requested())
        return std::nullopt;
    return posterior;
}

}
