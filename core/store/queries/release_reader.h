// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What became of an inspection that was closed, as far as it decides what counts on its items.

#include "record/kinds/inspections.h"
#include "store/connection/row_digest.h"
#include "store/connection/statement.h"

#include <algorithm>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

struct Release {
    std::optional<Outcome> outcome; ///< of the first closing; nothing while there is none
    Stamp closed;
    std::optional<Stamp> revoked;  ///< the last time
    std::optional<Stamp> approved; ///< the first approval of its list that no withdrawal came after
    std::vector<Stamp> partly{};   ///< releases after incomplete maintenance

    /// To be taken by stamp, after all closings and withdrawals.
    void approve(Stamp approval) {
        if (outcome == Outcome::Discrepancies && !approved && closed < approval && (!revoked || *revoked < approval))
            approved = std::move(approval);
    }
    /// It counts what the inspection accomplished: at once as a release, of a list from its approval on. A withdrawal
    /// holds whatever the day.
    [[nodiscard]] bool isSigned(Moment end) const {
        return !revoked && (outcome == Outcome::Released || (approved && approved->at < end));
    }
    /// What stands under it does not count.
    [[nodiscard]] bool isWithheld(Moment end) const {
        return revoked || (outcome == Outcome::Discrepancies && !isSigned(end));
    }
    [[nodiscard]] bool isPending(Moment end) const {
        return outcome == Outcome::Discrepancies && closed.at < end && !(approved && approved->at < end);
    }
    [[nodiscard]] bool isClosed(Moment end) const { return outcome && closed.at < end; }
    /// Somebody signed, by then, for what was put right in it: of a visit that goes on, up to that signature.
    [[nodiscard]] bool answersFor(const Stamp& putRight, Moment end) const {
        if (revoked || isClosed(end))
            return isSigned(end);
        return std::ranges::any_of(partly,
                                   [&](const Stamp& signedAt) { return putRight < signedAt && signedAt.at < end; });
    }
    void addTo(RowDigest& digest) const {
        digest.add(std::int64_t{outcome ? static_cast<int>(*outcome) : -1});
        digest.add(std::int64_t{revoked ? 1 : 0});
        digest.add(approved ? approved->at.minutes() : std::int64_t{0});
        digest.add(outcome ? closed.at.minutes() : std::int64_t{0});
        for (const auto& each : partly)
            digest.add(each.at.minutes());
    }
};

class ReleaseReader {
public:
    /// @param one inspection after the other, as they are asked for; else all at once
    ReleaseReader(const Connection& connection, bool one);

    /// Forgets what is known, and reads all where all are read at once.
    void begin();
    /// Of an inspection that was not closed nothing is in it.
    [[nodiscard]] const Release& of(const std::string& inspection);

private:
    template <class... Of>
    void read(const Of&... inspection);

    bool m_one;
    Statement m_closings, m_revocations, m_approvals;
    std::unordered_map<std::string, Release> m_known;
};

/// Reads the columns at and entry_id.
[[nodiscard]] Stamp stampFrom(Statement& row);

}
