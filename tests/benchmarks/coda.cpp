// SPDX-License-Identifier: GPL-3.0-or-later
#include "coda.h"

#include <cmath>
#include <fstream>
#include <stdexcept>

namespace crownring::bench {

namespace {

class Dump {
public:
    explicit Dump(const std::string& file) : m_out(file) { m_out.precision(17); }

    void number(const std::string& name, double value) { m_out << name << " <- " << value << '\n'; }

    /// A column of `size` values; what is not a number is missing.
    template <class Value>
    void column(const std::string& name, std::size_t size, Value value) {
        m_out << name << " <- c(";
        for (std::size_t k = 0; k < size; ++k) {
            const double at = value(k);
            m_out << (k > 0 ? "," : "");
            if (std::isnan(at))
                m_out << "NA";
            else
                m_out << at;
        }
        m_out << ")\n";
    }

private:
    std::ofstream m_out;
};

bool isHeld(const SetReading& reading) { return reading.observed.seen == Seen::AtLeast; }

}

void writeForJags(const FabricFleet& fleet, const std::string& folder) {
    const auto& readings = fleet.readings;
    const auto count = readings.size();
    const auto counted = [](std::size_t number) { return static_cast<double>(number + 1); };
    Dump data(folder + "/ageing.data");
    data.number("lots", static_cast<double>(fleet.fabricOfLot.size()));
    data.number("sets", static_cast<double>(fleet.lotOfSet.size()));
    data.number("readings", static_cast<double>(count));
    data.number("coupons", static_cast<double>(fleet.coupons.size()));
    data.column("lotOfSet", fleet.lotOfSet.size(), [&](std::size_t k) { return counted(fleet.lotOfSet[k]); });
    data.column("setOf", count, [&](std::size_t k) { return counted(readings[k].set); });
    data.column("lnAge", count, [&](std::size_t k) {
        return std::log((readings[k].hours + doseWeight * readings[k].dose) / hoursOfAgeUnit / agePivot);
    });
    data.column("depth", count, [&](std::size_t k) { return 1 - readings[k].row; });
    data.column("strength", count,
                [&](std::size_t k) { return isHeld(readings[k]) ? std::nan("") : readings[k].observed.low; });
    data.column("held", count, [](std::size_t) { return 1.0; });
    data.column("bound", count, [&](std::size_t k) { return isHeld(readings[k]) ? readings[k].observed.low : -99; });
    data.column("coupon", fleet.coupons.size(), [&](std::size_t k) { return fleet.coupons[k].observed.low; });
    data.column("lotOfCoupon", fleet.coupons.size(), [&](std::size_t k) { return counted(fleet.coupons[k].lot); });

    Dump start(folder + "/ageing.inits");
    start.column("strength", count,
                 [&](std::size_t k) { return isHeld(readings[k]) ? readings[k].observed.low + 0.05 : std::nan(""); });
    start.column("intercept", fleet.lotOfSet.size(), [](std::size_t) { return 4.6; });
    start.column("slope", fleet.lotOfSet.size(), [](std::size_t) { return 0.2; });
    start.number("gamma", 0.7);
    start.number("lnPhi", 0);
    start.number("scatter", 0.1);
}

std::map<std::string, std::vector<double>> codaOf(const std::string& folder, int chains) {
    std::map<std::string, std::vector<double>> draws;
    for (int chain = 1; chain <= chains; ++chain) {
        std::ifstream index(folder + "/CODAindex.txt");
        std::ifstream values(folder + "/CODAchain" + std::to_string(chain) + ".txt");
        std::string name;
        std::size_t from = 0, to = 0;
        while (index >> name >> from >> to)
            for (auto line = from; line <= to; ++line) {
                long sweep = 0;
                double value = 0;
                if (!(values >> sweep >> value))
                    throw std::runtime_error("JAGS's draws end early");
                draws[name].push_back(value);
            }
    }
    return draws;
}

}
