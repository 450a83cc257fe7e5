// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the user wishes of a plan: visits that are held, forbidden or moved, and planned ones that need not be in it.
/// Plain values: a wish is tried as another set of wishes, and taken or left.

#include "answers/plan/plan_weeks.h"
#include "answers/plan/stations.h"
#include "measure/name.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace crownring::screen {

/// A visit by where it stands in a plan.
struct VisitPlace {
    Registration balloon;
    CivilDate week; ///< its Monday
    std::string station;
    bool operator==(const VisitPlace&) const = default;
};

class PlanWishes {
    Q_DECLARE_TR_FUNCTIONS(PlanWishes)

public:
    std::vector<VisitPin> pins;
    std::vector<EntryId> letGo; ///< entries that plan visits

    /// It is held where it stands.
    void hold(const VisitPlace& visit);
    /// It does not go there in that week. @param anywhere nor to any other station
    void forbid(const VisitPlace& visit, bool anywhere);
    /// It goes there instead: it is held there, and where the week is another one nothing is in its former week.
    void move(const VisitPlace& visit, const VisitPlace& to);
    [[nodiscard]] bool isHeld(const VisitPlace& visit) const;

    [[nodiscard]] std::size_t count() const { return pins.size() + letGo.size(); }
    /// First the pins, then what is let go. @pre nth < count()
    void drop(std::size_t nth);
    /// "QE-OVA is held at Lakeside, week from 2027-01-11". @pre nth < pins.size()
    [[nodiscard]] QString said(std::size_t nth) const;

private:
    void forget(const Registration& balloon, CivilDate week);
};

}
