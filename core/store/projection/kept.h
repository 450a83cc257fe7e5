// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// By which numbers the projections keep what has a name in the program.

#include "record/kinds/subject.h"
#include "registry/item_facts.h"
#include "registry/question.h"
#include "store/connection/statement.h"

namespace crownring {

template <>
struct Kept<Subject> {
    static constexpr int first = static_cast<int>(Subject::Item), last = static_cast<int>(Subject::Directive);
};
template <>
struct Kept<ItemKind> {
    static constexpr int first = 0, last = itemKindCount - 1;
};
template <>
struct Kept<DefectMark::Kind> {
    static constexpr int first = 0, last = static_cast<int>(DefectMark::Kind::Cleared);
};
/// Where on a basket, or in which zone of an envelope: one column holds either. Nothing of the body of an envelope.
inline std::optional<std::string> zoneOf(const PanelPlace& place) {
    if (place.basket)
        return std::string(basketPlaceName(*place.basket));
    return place.zone == Zone::Envelope ? std::nullopt : std::optional(std::string(zoneName(place.zone)));
}
/// What an accomplishment rests on by its own entry.
enum class Ground {
    Said,
    Paper,  ///< it says itself who signed what
    Review, ///< it is the signing of an airworthiness review
};
template <>
struct Kept<Ground> {
    static constexpr int first = 0, last = static_cast<int>(Ground::Review);
};
template <>
struct Kept<ServiceState> {
    static constexpr int first = 0, last = serviceStateCount - 1;
};
template <>
struct Kept<Outcome> {
    static constexpr int first = 0, last = outcomeCount - 1;
};
template <>
struct Kept<Severity> {
    static constexpr int first = 0, last = severityCount - 1;
};
template <>
struct Kept<Question::Kind> {
    static constexpr int first = 0, last = questionKindCount - 1;
};

}
