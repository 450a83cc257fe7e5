// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A made-up fleet of any size: for each balloon five items, for each item five requirements done once, and flights
/// spread over six years.

#include "store/record_file.h"

#include <memory>
#include <string>

namespace crownring::bench {

struct FleetSize {
    int balloons = 10;
    int flights = 0; ///< in all, in the order of their days, balloon by balloon
};

/// The folder for large records, from CROWNRING_BENCH_FOLDER, else the system's for temporary files.
[[nodiscard]] std::string folder();

/// Opens the record of that size, made on first use and kept for the next run.
[[nodiscard]] std::unique_ptr<Record> largeFleet(const std::string& file, const FleetSize& size);

[[nodiscard]] Registration balloonName(int number);
/// The flight of a balloon: number `nth` of its flights.
[[nodiscard]] Entry flightOf(int balloon, int nth, const std::string& id);
[[nodiscard]] CivilDate askedDay();

}
