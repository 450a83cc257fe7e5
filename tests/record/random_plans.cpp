// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_kinds.h"

#include <algorithm>

namespace crownring::random {

namespace {

/// That day or a later one.
CivilDate dayAfter(CivilDate day) { return addDays(day, *rc::gen::inRange(0, 40)); }

}

rc::Gen<Body> any(Of<UsePlanned>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        UsePlanned body;
        if (*rc::gen::arbitrary<bool>())
            body.subject = *names.item;
        else
            body.subject = *names.balloon;
        body.from = *names.on;
        if (*rc::gen::arbitrary<bool>())
            body.to = dayAfter(body.from);
        const auto pace = *rc::gen::element(0.0, 0.5, 2.0, mostOfPace);
        (*rc::gen::arbitrary<bool>() ? body.times : body.flightsAWeek) = pace;
        return body;
    });
}

rc::Gen<Body> any(Of<FlightPlanned>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        return FlightPlanned{
            *names.balloon,
            {*anyCount<Minutes>(1, 10'080), *anyCount<Landings>(0, 200), *anyCount<Inflations>(0, 200)},
            *optionally(someOf(names.item))};
    });
}

rc::Gen<Body> any(Of<VisitPlanned>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        VisitPlanned body{*names.balloon, "S" + *anyText(), *names.on, {}, {}};
        body.to = dayAfter(body.from);
        for (int left = *rc::gen::inRange(0, 4); left > 0; --left)
            if (PlannedWork work{*names.item, *names.requirement};
                std::ranges::find(body.covers, work) == body.covers.end())
                body.covers.push_back(std::move(work));
        return body;
    });
}

}
