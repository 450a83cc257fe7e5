// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the folds of `registry` make of one item: its stays, the clock at each accomplishment, its open questions. Made
/// anew for an item whenever something about it changed; the cost is that of its own history.

#include "record/entry.h"
#include "registry/carriage.h"
#include "registry/clock.h"
#include "store/projection/counted_use.h"
#include "store/projection/names.h"

#include <vector>

namespace crownring {

class ItemProjection {
public:
    ItemProjection(const Connection& connection, Names& names, FlightTotals& totals);

    /// @pre the flight totals are settled
    void refreshItem(std::int64_t item);
    void refreshBalloon(std::int64_t balloon);
    /// After one came or went, here or elsewhere.
    void forgetRenamings() { m_renamings.reset(); }

private:
    struct Standing {
        Stamp stamp;
        ClockOrigin origin;
    };
    std::optional<Standing> settleEntered(std::int64_t item, std::vector<Question>& questions);
    void settleStays(std::int64_t item, const std::optional<Standing>& entered, std::vector<Question>& questions);
    void settleDone(std::int64_t item, const std::optional<Standing>& entered, std::vector<Question>& questions);
    std::vector<FittingMark> marksOf(std::int64_t item);
    /// What it shared with its carriers: their places, their kits, and what happened to them.
    std::vector<Stay> settleCarriage(std::int64_t item, std::vector<Stay> own);
    void share(std::int64_t item, const Carried& carried);
    const std::vector<Renaming>& renamings();
    bool isSpokenOf(std::int64_t item);
    void write(int sort, std::int64_t subject, const std::vector<Question>& questions);

    Names& m_names;
    FlightTotals& m_totals;
    CountedUse m_use;
    Statement m_entered;
    Statement m_stands;
    Statement m_balloonEntered;
    Statement m_balloonStands;
    Statement m_marks;
    Statement m_dropStays;
    Statement m_putStay;
    Statement m_spokenOf;
    Statement m_done;
    Statement m_settleDone;
    Statement m_dropQuestions;
    Statement m_putQuestion;
    Statement m_renamed;
    Statement m_dropParts, m_putPart, m_dropKits, m_dropEvents, m_shareKits, m_shareEvents;
    std::optional<std::vector<Renaming>> m_renamings;
};

}
