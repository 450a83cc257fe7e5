// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/weekend.h"

namespace crownring {

std::vector<CivilDate> weekendFrom(CivilDate day) {
    constexpr int aWeek = 7;
    constexpr int saturday = 2; // 1970-01-01, day 0, was a Thursday
    constexpr int sunday = 3;
    const int ofWeek = ((day.dayNumber() % aWeek) + aWeek) % aWeek;
    if (ofWeek == sunday)
        return {day};
    const auto first = addDays(day, (saturday - ofWeek + aWeek) % aWeek);
    return {first, addDays(first, 1)};
}

Result<std::vector<BalloonThen>> balloonsThen(Books& books, const std::vector<Registration>& balloons,
                                              const std::vector<CivilDate>& days) {
    std::vector<BalloonThen> answer;
    for (const auto& balloon : balloons) {
        BalloonThen then{balloon, {}, {}};
        for (const auto day : days) {
            const auto fitted = books.facts({balloon, {}}, day);
            if (!fitted)
                return tl::unexpected(fitted.error());
            std::vector<ItemId> kit;
            for (const auto& item : *fitted)
                if (!item.carrier)
                    kit.push_back(item.id);
            if (kit.empty())
                continue;
            auto check = checkRigUp(books, kit, day, {});
            if (!check)
                return tl::unexpected(check.error());
            then.check = std::make_shared<RigUpAnswer>(std::move(*check));
            if (then.check->verdict.mayFly)
                then.flies.push_back(day);
        }
        answer.push_back(std::move(then));
    }
    return answer;
}

}
