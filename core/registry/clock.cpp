// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/clock.h"

#include "measure/duration_text.h"

#include <algorithm>

namespace crownring {

namespace {

template <class C>
std::optional<C> knownBefore(const Stamp& at, std::optional<C> atEntry, C usedNow, std::optional<C> Figures::*figure,
                             C Usage::*use, const ClockOrigin& origin, std::span<const Accomplishment> done,
                             const UsedBefore& used) {
    if (atEntry)
        return *atEntry + usedNow;
    const auto since = Stamp::before(Moment::startOf(origin.entered));
    for (const auto& each : done) {
        if (!(each.stamp < at))
            break;
        if (each.stamp < since || !(each.stated.*figure))
            continue;
        return *(each.stated.*figure) + (usedNow - used(each.stamp).*use);
    }
    return std::nullopt;
}

std::string written(Minutes figure) { return hoursAndMinutes(figure) + " h"; }
std::string written(Landings figure) { return std::to_string(figure.value()) + " landings"; }
std::string written(Inflations figure) { return std::to_string(figure.value()) + " inflations"; }

/// Looks at one figure of each accomplishment in turn.
template <class C>
class FigureWatch {
public:
    explicit FigureWatch(std::optional<C> Figures::*figure) : m_figure(figure) {}

    std::optional<Question> look(const ItemId& item, const Accomplishment& done, const Figures& computed) {
        const auto stated = done.stated.*m_figure;
        if (!stated)
            return std::nullopt;
        const auto earlier = m_highest;
        m_highest = earlier ? std::max(*earlier, *stated) : *stated;
        if (earlier && *stated < *earlier)
            return Question{Question::Kind::ClockBackward, item.text(), done.stamp,
                            written(*stated) + " after " + written(*earlier)};
        const auto known = computed.*m_figure;
        if (known && *known != *stated)
            return Question{Question::Kind::ClockDiffers, item.text(), done.stamp,
                            "stated " + written(*stated) + ", by the record " + written(*known)};
        return std::nullopt;
    }

private:
    std::optional<C> Figures::*m_figure;
    std::optional<C> m_highest;
};

}

Figures clockBefore(const Stamp& at, const ClockOrigin& origin, std::span<const Accomplishment> done,
                    const UsedBefore& used) {
    const Usage now = used(at);
    const auto& entry = origin.broughtForward;
    return {knownBefore(at, entry.minutes, now.minutes, &Figures::minutes, &Usage::minutes, origin, done, used),
            knownBefore(at, entry.landings, now.landings, &Figures::landings, &Usage::landings, origin, done, used),
            knownBefore(at, entry.inflations, now.inflations, &Figures::inflations, &Usage::inflations, origin, done,
                        used)};
}

std::vector<Question> settleClocks(const ItemId& item, std::span<Accomplishment> done, const ClockOrigin& origin,
                                   const UsedBefore& used) {
    std::vector<Question> questions;
    FigureWatch<Minutes> minutes(&Figures::minutes);
    FigureWatch<Landings> landings(&Figures::landings);
    FigureWatch<Inflations> inflations(&Figures::inflations);
    const auto since = Stamp::before(Moment::startOf(origin.entered));
    for (auto& each : done) {
        const auto computed = each.stamp < since ? Figures{} : clockBefore(each.stamp, origin, done, used);
        auto question = minutes.look(item, each, computed);
        auto second = landings.look(item, each, computed);
        auto third = inflations.look(item, each, computed);
        if (!question)
            question = second ? std::move(second) : std::move(third);
        if (question)
            questions.push_back(std::move(*question));
        each.clock = {each.stated.minutes ? each.stated.minutes : computed.minutes,
                      each.stated.landings ? each.stated.landings : computed.landings,
                      each.stated.inflations ? each.stated.inflations : computed.inflations};
    }
    return questions;
}

}
