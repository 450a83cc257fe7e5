// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A made-up fleet of any size, with what real records have: for each balloon five items, for each item five
/// requirements done once, flights spread over six years; limits stated for every type, twenty readings of each
/// envelope, defects open, deferred and cleared, and what happened to balloons and envelopes (`worked_fleet.h`).

#include "store/record_file.h"
#include "worked_fleet.h"

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

/// The flight of a balloon: number `nth` of its flights.
[[nodiscard]] Entry flightOf(int balloon, int nth, const std::string& id);
[[nodiscard]] CivilDate askedDay();

}
