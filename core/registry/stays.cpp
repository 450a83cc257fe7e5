// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/stays.h"

namespace crownring {

namespace {

/// A balloon or an item.
template <class Fitted>
std::string fittedTo(const Fitted& fitted) {
    return fitted.carrier ? fitted.carrier->text() : fitted.balloon.text();
}

bool isOn(const Stay* stay, const FittingMark& mark) {
    return stay && stay->balloon == mark.balloon && stay->carrier == mark.carrier;
}

}

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
            if (auto* here = current(); here && !here->carrier && here->balloon == renaming->from) {
                here->until = renaming->stamp;
                Stay there{renaming->to, here->place, renaming->stamp, std::nullopt};
                result.stays.push_back(std::move(there));
            }
    };
    for (const auto& mark : marks) {
        goOver(&mark.stamp);
        auto* here = current();
        if (!mark.fitted) {
            if (isOn(here, mark))
                here->until = mark.stamp;
            else
                ask(Question::Kind::RemovedNotFitted, mark, fittedTo(mark));
            continue;
        }
        if (isOn(here, mark)) {
            ask(Question::Kind::FittedAgain, mark, fittedTo(mark));
            continue;
        }
        if (here) {
            ask(Question::Kind::FittedElsewhere, mark, fittedTo(*here) + ", " + fittedTo(mark));
            here->until = mark.stamp;
        }
        result.stays.push_back({mark.balloon, mark.place, mark.stamp, std::nullopt, mark.carrier});
    }
    goOver(nullptr);
    return result;
}

}
