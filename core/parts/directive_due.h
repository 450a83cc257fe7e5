// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A directive in time: which revision is in force on a day, and by when it is to be complied with, first and again. No
/// tolerance of inspections ever applies: 14 CFR 39 and ML.A.301(c) grant none (from memory).
///
///     before the next flight                            lapsed from its effective day on, until it is done
///     within 10 h, then each 100 h                      by the clock on its effective day, then by that of each
///     compliance ended by a terminating action                     closed for good, whatever it repeated

#include "parts/directives.h"
#include "record/kinds/directives/directives.h"
#include "rules/standing/standing.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// Until when it is to be done for the first time; of several whichever comes first.
struct FirstCompliance {
    bool beforeFlight = false;
    std::optional<CivilDate> by; ///< the last good day
    std::vector<Limit> within;   ///< from the effective day
};

struct Directive {
    std::string number;   ///< "2026-11-03"; of one issuer and state no two have the same
    std::string revision; ///< as it is printed
    std::string issuer;
    IssuedBy issuedBy = IssuedBy::Authority;
    std::string state; ///< that issued it
    CivilDate effective;
    Force force = Force::Mandatory;
    BoundBy bound;
    FirstCompliance first;
    std::vector<Limit> repeat;           ///< from each compliance; empty: it is done once
    std::vector<std::string> supersedes; ///< numbers of the same issuer and state

    [[nodiscard]] bool isOneIssuers(const Directive& other) const {
        return issuer == other.issuer && issuedBy == other.issuedBy && state == other.state;
    }
    [[nodiscard]] bool isSame(const Directive& other) const { return number == other.number && isOneIssuers(other); }
};

/// Of each directive the revision that is in force on a day, in the order given: the latest by effective day, of equal
/// ones the later in natural order, whenever the record learnt of it; where that cannot be told the harder one. None
/// that another one supersedes by then: only the same issuer's does, nothing recommended takes a mandatory one away,
/// and those that supersede each other in a ring bind all. Those that are left out are history.
[[nodiscard]] std::vector<const Directive*> inForceOn(std::span<const Directive> directives, CivilDate day);

/// It was complied with.
struct Compliance {
    CivilDate on;
    Figures clock; ///< absent where it is not known
    std::string method;
    bool isTerminating = false;
};

struct DirectiveState {
    Standing standing = Standing::Unproven;
    std::optional<LimitState> next; ///< that governs; nothing where it is closed, or due before the next flight
};

/// @pre it is in force on the day asked, and binds the item
/// @param done in the order of days; what was done before its effective day counts (it was complied with in advance)
/// @param atEffective the item's clock at the end of its effective day
[[nodiscard]] DirectiveState standingOf(const Directive& directive, std::span<const Compliance> done,
                                        const Figures& atEffective, const Figures& now, CivilDate today);

}
