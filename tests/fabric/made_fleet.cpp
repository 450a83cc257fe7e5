// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/made_fleet.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/likelihood/heat.h"
#include "fabric/numeric/draws.h"

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

constexpr int pullsAtOnce = crownPulls + 4;
constexpr double overheatingsPerHour = 0.003;
/// Equivalent hours that an hour flown brings by overheating: the mean of the events below, by simulation.
constexpr double usualDosePerHour = 0.0045;

class Making {
public:
    explicit Making(const FleetMaking& making) : m_making(making), m_draws(making.seed, 7) {}

    MadeFleet fleet() {
        MadeFleet made;
        made.fleet.fabrics = 1;
        for (std::size_t set = 0; set < m_making.sets; ++set) {
            if (set % m_making.setsOfLot == 0)
                beginLot(made.fleet);
            made.fleet.lotOfSet.push_back(made.fleet.fabricOfLot.size() - 1);
            made.truth.push_back(flownSet(set, made.fleet.readings));
        }
        return made;
    }

private:
    double slopeAbout(double mean) {
        const double variation = m_making.slopeVariation;
        if (m_making.lognormalSlopes)
            return mean * std::exp(variation * m_draws.normal());
        return std::max(mean + variation * m_making.meanSlope * m_draws.normal(), 0.05 * m_making.meanSlope);
    }

    double interceptAbout(double mean) { return mean + m_making.interceptSpread * m_draws.normal(); }

    void beginLot(FabricFleet& fleet) {
        m_lot = {interceptAbout(std::log(madeNew)), slopeAbout(m_making.meanSlope)};
        fleet.fabricOfLot.push_back(0);
        for (std::size_t coupon = 0; coupon < m_making.couponsOfLot; ++coupon) {
            const double strength = interceptAbout(m_lot.intercept) + m_making.scatter * m_draws.normal();
            fleet.coupons.push_back({fleet.fabricOfLot.size() - 1, {Seen::Exactly, strength, 0}});
        }
    }

    std::vector<Overheating> overheatings(double hours) {
        std::vector<Overheating> events;
        for (double at = m_draws.exponential() / overheatingsPerHour; at < hours;
             at += m_draws.exponential() / overheatingsPerHour) {
            const Celsius hottest(110 + 25 * m_draws.uniform());
            events.push_back({Hours(at), hottest, Hours((5 + 15 * m_draws.uniform()) / 60)});
        }
        return events;
    }

    double pull(const Line& line, double hours, double row, double dose) {
        const AgeingShape shape{m_making.gamma, m_making.phi};
        const double mean = line.intercept - line.slope * effectiveAge(shape, hours, row, dose);
        return mean + m_making.scatter * m_draws.normal();
    }

    /// What is written down of a pull.
    Observation written(double strength) {
        const double proof = std::log(m_making.proof * madeLimit);
        if (strength < proof || m_draws.uniform() < m_making.breakShare)
            return {Seen::Exactly, strength, 0};
        return {Seen::AtLeast, proof, 0};
    }

    MadeSet flownSet(std::size_t set, std::vector<SetReading>& readings) {
        MadeSet made;
        made.line = {interceptAbout(m_lot.intercept), slopeAbout(m_lot.slope)};
        const double hoursNow = 80 + 620 * m_draws.uniform();
        const auto events = overheatings(hoursNow);
        const double usual = inspectionEvery * (0.9 + 0.2 * m_draws.uniform());
        const auto wished = static_cast<double>(m_making.readingsOfSet);
        const double every = wished > 0 ? hoursNow * pullsAtOnce / wished : usual;
        made.use = {hoursNow, heatDose(events, Hours(hoursNow)).value(), usualDosePerHour};
        for (double hours = every; hours <= hoursNow && !made.retired; hours += every)
            made.retired = inspect(set, made, hours, heatDose(events, Hours(hours)).value(), readings);
        const auto& use = made.use;
        const double reached = std::max((made.line.intercept - std::log(madeLimit)) / made.line.slope, 0.0);
        made.life =
            (effectiveHours({m_making.gamma, m_making.phi}, reached, 1) - use.dose + use.dosePerHour * use.hours) /
            (1 + use.dosePerHour);
        for (int k = 0; k < crownPulls; ++k)
            made.nextFails |= pull(made.line, use.hours + inspectionEvery, 1,
                                   use.dose + use.dosePerHour * inspectionEvery) < std::log(madeLimit);
        return made;
    }

    /// Whether a pull broke below the limit, upon which the set flies no more.
    bool inspect(std::size_t set, MadeSet& made, double hours, double dose, std::vector<SetReading>& readings) {
        for (int k = 0; k < pullsAtOnce; ++k) {
            const double row = k < crownPulls ? 1 : std::floor(5 * m_draws.uniform()) / 4;
            const double strength = pull(made.line, hours, row, dose);
            readings.push_back({set, hours, row, dose, written(strength)});
            if (strength < std::log(madeLimit)) {
                made.use = {hours, dose, usualDosePerHour};
                return true;
            }
        }
        return false;
    }

    FleetMaking m_making;
    Draws m_draws;
    Line m_lot;
};

}

MadeFleet madeFleet(const FleetMaking& making) { return Making(making).fleet(); }

}
