// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric_marks.h"

#include "answers/fabric_channel.h"
#include "answers/visit/retest.h"
#include "bench/release/bench_file.h"
#include "registry/reading_phrase.h"
#include "registry/reading_said.h"
#include "rules/due/defects.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

namespace crownring {

namespace {

using State = FabricMark::State;
using Reading = Stamped<ReadingTaken>;

/// What the manual of a type bounds, and the limits that do.
struct Bounded {
    std::string quantity;
    Argument title;
    std::vector<LimitSpan> limits;
    bool ofFabric = true;
};

/// Of an item that has a manual: its kind and type.
using Kindred = std::pair<ItemKind, std::string>;

bool isOf(const LimitSpan& span, const Kindred& kindred) { return span.isOf(kindred.first, kindred.second); }

std::vector<Bounded> boundedBy(const TypeBook& book, const Kindred& kindred) {
    std::vector<Bounded> bounds;
    std::vector<FabricChannel> channels;
    if (kindred.first == ItemKind::Envelope)
        channels = boundedOf(book, kindred.second);
    for (const auto& channel : channels) {
        Bounded bounded{channel.quantity, testedAs(channel.series), {}};
        for (const auto& span : book.spans)
            if (isOf(span, kindred) && span.limit.quantity == channel.quantity &&
                seriesOf(span.limit.quantity, span.limit.conditions) == channel.series)
                bounded.limits.push_back(span);
        bounds.push_back(std::move(bounded));
    }
    const auto isFollowed = [&](const StatedLimit& limit) {
        return std::ranges::any_of(channels, [&](const FabricChannel& channel) {
            return channel.quantity == limit.quantity && channel.series == seriesOf(limit.quantity, limit.conditions);
        });
    };
    std::map<std::string, Bounded> others;
    for (const auto& span : book.spans)
        if (isOf(span, kindred) && !isFollowed(span.limit))
            others
                .try_emplace(span.limit.quantity,
                             Bounded{span.limit.quantity, quantityTerm(span.limit.quantity), {}, false})
                .first->second.limits.push_back(span);
    for (auto& [quantity, bounded] : others)
        bounds.push_back(std::move(bounded));
    return bounds;
}

struct Compared {
    const Reading* reading = nullptr;
    Decision decision;
    double share = 0; ///< 0 where none is known
};

std::vector<Compared> compared(const std::vector<Reading>& readings, const Bounded& bounded) {
    std::vector<Compared> compared;
    compared.reserve(readings.size());
    for (const auto& reading : readings) {
        if (reading.body.quantity != bounded.quantity)
            continue;
        const auto measured = measuredFrom(reading.body);
        if (!measured)
            continue;
        const auto decision = decideAsTaken(*measured, reading.stamp.at, bounded.limits);
        if (decision.judgement != Judgement::NoLimit && decision.judgement != Judgement::Incomparable)
            compared.push_back({&reading, decision, decision.limit->shareOf(*measured).value_or(0)});
    }
    return compared;
}

/// @param retests what shows that a failing reading is put right; null while none is looked at
bool isReplaced(const Compared& compared, const ItemFacts& item, const std::vector<Stamped<RepairMade>>& repairs,
                const Retests* retests) {
    const auto& reading = *compared.reading;
    const bool fails = compared.decision.judgement == Judgement::Fails;
    return std::ranges::any_of(repairs, [&](const auto& repair) {
        return (!fails || (retests && retests->isNewPanel(repair.body))) && repair.body.place.isOnePanel() &&
               repair.body.place == reading.body.place &&
               (reading.stamp < repair.stamp || answers(repair, reading, item.defects));
    });
}

/// Defects of which a repair or a new part tells; a repair tells of its own panel alone.
struct PutRight {
    std::set<DefectId> replaced;
    std::vector<std::pair<DefectId, PanelPlace>> repaired;

    [[nodiscard]] bool isOf(const DefectId& defect, const PanelPlace& place) const {
        return replaced.contains(defect) || std::ranges::any_of(repaired, [&](const auto& each) {
                   return each.first == defect && (!place.isOnePanel() || each.second == place);
               });
    }
};

enum class Settled { No, Open, InWords, PutRight };

/// Whether the defect that was found with a reading is cleared, and whether something tells how.
Settled settledOf(const Reading& reading, const ItemFacts& item, const PutRight& putRight) {
    const auto open = openDefects(item);
    auto settled = Settled::No;
    for (const auto& mark : item.defects) {
        if (mark.failed != reading.stamp.id)
            continue;
        if (std::ranges::any_of(open, [&](const OpenDefect& each) { return each.found->defect == mark.defect; }))
            return Settled::Open;
        if (settled != Settled::PutRight)
            settled = putRight.isOf(mark.defect, reading.body.place) ? Settled::PutRight : Settled::InWords;
    }
    return settled;
}

/// Those that speak of the fabric as it is, in the order of stamps.
std::vector<Compared> speaking(const std::vector<Compared>& all, const ItemFacts& item,
                               const std::vector<Stamped<RepairMade>>& repairs, const Retests* retests) {
    const auto isAnswered = [&](const Compared& earlier, const Compared& later) {
        return earlier.decision.judgement != Judgement::Fails || later.decision.judgement == Judgement::Fails ||
               (retests && retests->shows(*later.reading, earlier.reading->body,
                                          settledOf(*earlier.reading, item, {}) > Settled::Open));
    };
    std::vector<Compared> latest;
    latest.reserve(all.size());
    for (const auto& each : all) {
        std::erase_if(latest, [&](const Compared& earlier) {
            return takesThePlaceOf(each.reading->body, earlier.reading->body) && isAnswered(earlier, each);
        });
        latest.push_back(each);
    }
    std::erase_if(latest, [&](const Compared& each) { return isReplaced(each, item, repairs, retests); });
    return latest;
}

State stateOf(const Compared& compared, const ItemFacts& item, const PutRight& putRight) {
    switch (compared.decision.judgement) {
    case Judgement::Fails: {
        if (compared.decision.limit->retires == Retired::Item)
            return State::Item;
        const auto settled = settledOf(*compared.reading, item, putRight);
        return settled <= Settled::Open ? State::Panel : settled == Settled::InWords ? State::Said : State::Undecided;
    }
    case Judgement::Passes:
        return !compared.reading->body.held && compared.share < closeToBound ? State::Near : State::Within;
    default:
        return State::Undecided;
    }
}

/// Of two readings the one that the mark tells of: the worse state, then the smaller share. Undecided is the least,
/// since one reading that decides is enough to know something.
std::pair<int, double> weightOf(State state, const Compared& compared) {
    return {state == State::Undecided ? -1 : static_cast<int>(state), -compared.share};
}

/// "98 N, gore 3, row 12; at least 133.4 N"
Argument said(const Compared& compared) {
    const auto* unit = compared.decision.limit->unit();
    const auto body = unit ? readIn(*unit, compared.reading->body) : compared.reading->body;
    Argument what = InUnit{body.value, body.unit};
    if (body.held)
        what = Phrase{ReadingPhrase::HeldAt, {std::move(what)}};
    what = inPlace(std::move(what), body.place);
    const auto bounds = boundsOf(*compared.decision.limit);
    return bounds ? Phrase{ReadingPhrase::WithLimit, {std::move(what), *bounds}} : what;
}

/// Of what is not fabric only what is beyond its bound is told, and where its defect stands open that tells it.
bool isToldOfAnother(const Compared& compared, State state, const ItemFacts& item, const PutRight& putRight) {
    return state >= State::Said && settledOf(*compared.reading, item, putRight) != Settled::Open;
}

/// It failed in the visit that is being signed, where it or its defect refuses the release by itself.
bool isOpenInHand(const Compared& compared, const ItemFacts& item, const Retests* retests) {
    return retests && retests->inHand && compared.reading->body.inspection == retests->inHand &&
           compared.decision.judgement == Judgement::Fails && settledOf(*compared.reading, item, {}) <= Settled::Open;
}

std::optional<FabricMark> markOf(const ItemFacts& item, const FabricHistory& history, const Bounded& bounded,
                                 const PutRight& putRight, const Retests* retests) {
    const auto all = compared(history.readings, bounded);
    std::optional<Compared> worst;
    State state = State::Undecided;
    const auto weigh = [&](const Compared& each, State of) {
        if (!worst || weightOf(of, each) > weightOf(state, *worst)) {
            worst = each;
            state = of;
        }
    };
    const auto spoken = speaking(all, item, history.repairs, retests);
    for (const auto& each : spoken)
        if (!isOpenInHand(each, item, retests))
            weigh(each, stateOf(each, item, putRight));
    for (const auto& each : all) // what retires the envelope is not outlived by a later reading
        if (const auto of = stateOf(each, item, putRight); of == State::Item) {
            const bool speaks =
                std::ranges::any_of(spoken, [&](const Compared& speaking) { return speaking.reading == each.reading; });
            if (!speaks || !isOpenInHand(each, item, retests))
                weigh(each, of);
        }
    if (!worst || (!bounded.ofFabric && !isToldOfAnother(*worst, state, item, putRight)))
        return std::nullopt;
    FabricMark mark;
    mark.state = state;
    mark.ofFabric = bounded.ofFabric;
    mark.quantity = bounded.quantity;
    mark.title = bounded.title;
    mark.what = said(*worst);
    mark.source = worst->decision.limit->source;
    mark.stamp = worst->reading->stamp;
    mark.share = worst->reading->body.held ? 0 : worst->share;
    return mark;
}

/// An item whose manual bounds something.
struct Followed {
    const ItemFacts* item = nullptr;
    const std::vector<Bounded>* bounds = nullptr;
};

PutRight repaired(const FabricHistory& history) {
    PutRight putRight;
    for (const auto& repair : history.repairs)
        if (repair.body.defect)
            putRight.repaired.emplace_back(*repair.body.defect, repair.body.place);
    return putRight;
}

std::optional<Celsius> temperatureIn(const EntryCorrected& corrected) {
    const auto with = nlohmann::json::parse(corrected.with, nullptr, false);
    const auto at = with.find("temp_c");
    return at != with.end() && at->is_number() ? std::optional(Celsius(at->get<double>())) : std::nullopt;
}

/// How warm the fuel was is in the entry, and in no column that readings are read from.
Result<void> addCircumstances(Books& books, FabricHistory& history) {
    for (auto& reading : history.readings) {
        const auto* quantity = quantityNamed(reading.body.quantity);
        if (!quantity || !quantity->traits.fuelled)
            continue;
        const auto told = books.amendments(reading.stamp.id);
        if (!told)
            return tl::unexpected(told.error());
        if (const auto* taken = told->empty() ? nullptr : std::get_if<ReadingTaken>(&told->front().body))
            reading.body.circumstances = taken->circumstances;
        for (const auto& each : *told)
            if (const auto* corrected = std::get_if<EntryCorrected>(&each.body))
                if (const auto temperature = temperatureIn(*corrected))
                    reading.body.circumstances.temperature = *temperature;
    }
    return {};
}

/// Whether a part was replaced for any of the cleared defects that readings of an item were found with.
Result<void> addReplaced(Books& books, const ItemFacts& item, CivilDate on, PutRight& putRight) {
    const auto open = openDefects(item);
    for (const auto& mark : item.defects) {
        if (!mark.failed ||
            std::ranges::any_of(open, [&](const OpenDefect& each) { return each.found->defect == mark.defect; }))
            continue;
        const auto told = books.told({Subject::Defect, mark.defect.text(), {kindName<PartReplaced>()}, on});
        if (!told)
            return tl::unexpected(told.error());
        if (std::ranges::any_of(*told, [](const JournalLine& line) { return !line.voided; }))
            putRight.replaced.insert(mark.defect);
    }
    return {};
}

}

Result<FabricMarks> fabricMarks(Books& books, const Scope& scope, const std::vector<ItemFacts>& facts, CivilDate on,
                                const std::optional<InspectionId>& inHand) {
    const auto book = typeBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    std::map<Kindred, std::vector<Bounded>> types;
    std::unordered_map<ItemId, Followed> followed;
    std::vector<ItemId> asked;
    for (const auto& item : facts) {
        if (!item.type)
            continue;
        const Kindred kindred{item.kind, *item.type};
        auto type = types.find(kindred);
        if (type == types.end())
            type = types.emplace(kindred, boundedBy(*book, kindred)).first;
        if (type->second.empty())
            continue;
        followed.emplace(item.id, Followed{&item, &type->second});
        asked.push_back(item.id);
    }
    FabricMarks marks;
    if (followed.empty())
        return marks;
    if (!scope.balloon && scope.items.empty())
        asked.clear();                // that is: all
    std::vector<FabricHistory> again; // looked at again with what tells of parts, and of what was released
    const auto mark = [&](const FabricHistory& history, const PutRight& putRight, const Retests* retests) {
        const auto& [item, bounds] = followed.at(history.item);
        std::vector<FabricMark> of;
        for (const auto& bounded : *bounds)
            if (auto each = markOf(*item, history, bounded, putRight, retests))
                of.push_back(std::move(*each));
        return of;
    };
    auto told = books.fabric(asked, on, [&](const FabricHistory& history) {
        if (!followed.contains(history.item))
            return;
        auto of = mark(history, repaired(history), nullptr);
        if (std::ranges::any_of(of, [](const FabricMark& each) { return each.state >= State::Said; }))
            again.push_back(history);
        if (!of.empty())
            marks[history.item] = std::move(of);
    });
    if (!told)
        return tl::unexpected(told.error());
    if (again.empty())
        return marks;
    const auto retests = retestsIn(books, again, on, inHand);
    if (!retests)
        return tl::unexpected(retests.error());
    for (auto& history : again) {
        if (const auto added = addCircumstances(books, history); !added)
            return tl::unexpected(added.error());
        auto putRight = repaired(history);
        if (const auto added = addReplaced(books, *followed.at(history.item).item, on, putRight); !added)
            return tl::unexpected(added.error());
        if (auto of = mark(history, putRight, &*retests); of.empty())
            marks.erase(history.item);
        else
            marks[history.item] = std::move(of);
    }
    return marks;
}

}
