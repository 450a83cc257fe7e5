// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An open question of the record: entries that contradict each other and that the order of arrival forbids to refuse.
/// It is asked until a correction, a void or missing paper answers it.

#include "civil/moment.h"
#include "measure/name.h"
#include "problem/argument.h"

#include <string>
#include <string_view>

namespace crownring {

struct Question {
    enum class Kind {
        FittedElsewhere,  ///< fitted to a balloon while on another: it was moved
        FittedAgain,      ///< fitted to the balloon that it was on already
        RemovedNotFitted, ///< removed from a balloon that it was not on
        ClockBackward,    ///< a stated clock is less than one stated before
        ClockDiffers,     ///< a stated clock is not what the record makes it
        EnteredTwice,     ///< a second entry of the same item or balloon: the earlier stands
        NotEntered,       ///< spoken of, but never entered, or its entry was voided
        CorrectionIdle,   ///< a correction whose result would make no sense: it was left out
        Unreadable,       ///< an entry that an earlier program let in and nobody can read: nothing follows from it
        OnlyStated, ///< what a due date counts from is said, and neither signed in the record nor on a named paper
        FlownOutOfService,    ///< it flew while it was laid up, sold, scrapped, lost, or had another registration
        HappenedOutOfService, ///< an event is told of a balloon that was so
        TwoStates,            ///< said to be in two states of life from one moment on: the one that restricts holds
        CodeByAnother,      ///< a signatory's code was set by another in his name, and he has set none of his own since
        FilledOutOfService, ///< a cylinder was filled while it was out of service
    };
    Kind kind = Kind::NotEntered;
    std::string subject; ///< an item id or a registration; the entry's id where that is all that can be read
    Stamp stamp;         ///< the entry that raises it
    Argument detail; ///< figures or names that make it concrete, e.g. "QE-ABC" or "412:30, 410:00"; why it is not read
    bool operator==(const Question&) const = default;
};
inline constexpr int questionKindCount = 15;

/// A stable name, e.g. "fitted-elsewhere".
[[nodiscard]] std::string_view questionName(Question::Kind kind);

}
