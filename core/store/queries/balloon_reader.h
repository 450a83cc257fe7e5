// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads balloons: what is said of each, what is fitted to it, what it flew.

#include "registry/books.h"
#include "store/projection/names.h"
#include "store/queries/fitted_rows.h"
#include "store/queries/service_reader.h"

#include <vector>

namespace crownring {

class BalloonReader {
public:
    BalloonReader(const Connection& connection, Names& names);

    /// Those entered on or before `on`, by registration.
    [[nodiscard]] std::vector<BalloonCard> cards(CivilDate on);
    /// The items on a balloon at the end of a day, by their numbers.
    [[nodiscard]] std::vector<std::int64_t> fittedTo(std::int64_t balloon, CivilDate on);
    /// What `fittedTo` rests on, whatever the day.
    [[nodiscard]] Account fittedAccount(std::int64_t balloon) { return m_fittedRows.account(balloon); }
    /// Flights from `first` to `last`, both inclusive, in order. @param balloon its number
    [[nodiscard]] std::vector<LoggedFlight> flights(const Registration& registration, std::int64_t balloon,
                                                    CivilDate first, CivilDate last);

private:
    Names& m_names;
    Statement m_entered, m_fittings, m_flown, m_fitted, m_flights;
    FittedRows m_fittedRows;
    ServiceReader m_service;
};

}
