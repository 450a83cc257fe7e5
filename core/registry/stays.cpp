// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/stays.h"

namespace crownring {

Whereabouts whereabouts(const ItemId& item, std::span<const FittingMark> marks, std::span<const Renaming> renamings) {
    Whereabouts result;
    const auto current = [&]() -> Stay* {
        return result.stays.empty() || result.stays.back().until ? nullptr : &result.stays.back();
    };
    const auto ask = [&](Question::Kind kind, const FittingMark& mark, std::string detail) {
        result.questions.push_back({kind, item.text(), mark.stamp, std::move(detail)});
    };
    auto renaming = renamings.begin();
    const auto goOver = [&](const Stamp* before) {
        for (; renaming != renamings.end() && (!before || renaming->stamp < *before); ++renaming)
            if (auto* here = current(); here && here->balloon == renaming->from) {
                here->until = renaming->stamp;
                Stay there{renaming->to, here->place, renaming->stamp, std::nullopt};
                result.stays.push_back(std::move(there));
            }
    };
    for (const auto& mark : marks) {
        goOver(&mark.stamp);
        auto* here = current();
        if (!mark.fitted) {
            if (here && here->balloon == mark.balloon)
                here->until = mark.stamp;
            else
                ask(Question::Kind::RemovedNotFitted, mark, mark.balloon.text());
            continue;
        }
        if (here && here->balloon == mark.balloon) {
            ask(Question::Kind::FittedAgain, mark, mark.balloon.text());
            continue;
        }
        if (here) {
            ask(Question::Kind::FittedElsewhere, mark, here->balloon.text() + ", " + mark.balloon.text());
            here->until = mark.stamp;
        }
        result.stays.push_back({mark.balloon, mark.place, mark.stamp, std::nullopt});
    }
    goOver(nullptr);
    return result;
}

}
