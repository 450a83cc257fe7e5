// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/fitted.h"

#include <algorithm>
#include <array>
#include <utility>

namespace crownring {

namespace {

FittedThing thingFrom(const ListedPart& part) {
    FittedThing thing{part.part, part.type, part.serial, {}, part.whole, false};
    for (const auto& each : part.parts)
        thing.parts.push_back(thingFrom(each));
    return thing;
}

/// "Pilot valve" is what a list calls "pilot-valve".
std::string slugOf(std::string_view words) {
    std::string slug;
    for (const char c : words)
        slug += c == ' ' || c == '_' ? '-' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return slug;
}

template <class Is>
void gather(std::vector<FittedThing>& parts, const Is& is, std::vector<FittedThing*>& into) {
    for (auto& part : parts) {
        if (is(part))
            into.push_back(&part);
        gather(part.parts, is, into);
    }
}

std::vector<SerialRange> rangesFrom(const std::vector<SerialSpan>& spans) {
    std::vector<SerialRange> ranges;
    for (const auto& span : spans)
        ranges.push_back({span.from, span.to});
    return ranges;
}

/// The worse of two answers, with its reason; of equal ones the first.
Applicability worseOf(Applicability a, Applicability b) { return b.applies < a.applies ? b : a; }

bool isOn(const std::vector<const ItemFacts*>& beside, ItemKind kind) {
    return std::ranges::any_of(beside, [&](const ItemFacts* each) { return each->kind == kind; });
}

/// An envelope, a basket, a burner and cylinders: what flies is all there.
bool isWholeBalloon(const std::vector<const ItemFacts*>& beside) {
    constexpr std::array asked{ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder};
    return std::ranges::all_of(asked, [&](ItemKind kind) { return isOn(beside, kind); });
}

/// What may be the part that is asked for, or hold it, and whether that is all.
struct Among {
    std::vector<FittedThing> things;
    std::vector<const ItemFacts*> items; ///< that they are
    bool isWhole = false;
};

/// An item that is a part of another says what it is by its kind and type: "Relief valve" is the relief-valve that is
/// asked for, and one of a type that is asked for is that part. Of one whose type is known nobody expects parts that no
/// list names.
FittedThing partFrom(const PartAsked& asked, const ItemFacts& item, const PartsKnown& parts) {
    auto thing = parts.thingOf(item);
    if (!item.type)
        return thing;
    thing.isWhole = thing.isWhole || thing.parts.empty();
    const FittedThing called{slugOf(*item.type), {}, {}, {}, false, false};
    if (mayBe(asked.part, called)) {
        thing.name = called.name;
        thing.isItem = false;
        thing.type.reset();
    } else if (isAsked({{}, asked.types, {}}, thing).applies != Truth::No && !asked.types.empty())
        thing.name = asked.part;
    return thing;
}

/// With what the list of its parts says, and the items that are parts of it.
FittedThing wholeOf(const PartAsked& asked, const ItemFacts& item, const std::vector<const ItemFacts*>& beside,
                    const PartsKnown& parts) {
    auto thing = parts.thingOf(item);
    for (const auto* each : beside)
        if (each->carrier == item.id && each->id != item.id) {
            auto part = partFrom(asked, *each, parts);
            part.parts = wholeOf(asked, *each, beside, parts).parts;
            thing.parts.push_back(std::move(part));
        }
    return thing;
}

Among amongThese(const PartAsked& asked, const ItemFacts& item, const std::vector<const ItemFacts*>& beside,
                 const PartsKnown& parts) {
    if (asked.in == item.kind)
        return {{wholeOf(asked, item, beside, parts)}, {&item}, true};
    Among among;
    const auto kind = itemKindFrom(asked.part); // a kind of items: what is in them is not asked
    const auto only = kind ? kind : asked.in;
    for (const auto* each : beside)
        if (!only || each->kind == *only) {
            among.things.push_back(wholeOf(asked, *each, beside, parts));
            among.items.push_back(each);
            if (kind) {
                among.things.back().parts.clear();
                among.things.back().isWhole = true;
            }
        }
    among.isWhole = only ? !among.things.empty() : isWholeBalloon(beside);
    return among;
}

}

Result<PartsKnown> PartsKnown::read(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Item, {}, {kindName<PartsListed>(), kindName<PartReplaced>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    auto known = withoutLists(books);
    if (!known)
        return known;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* listed = std::get_if<PartsListed>(&now.body))
            known->hear({stampOf(now), *listed});
        else if (const auto* replaced = std::get_if<PartReplaced>(&now.body))
            known->hear({stampOf(now), *replaced});
    }
    return known;
}

Result<PartsKnown> PartsKnown::withoutLists(Books& books) {
    const auto again = books.enteredAgain();
    if (!again)
        return tl::unexpected(again.error());
    PartsKnown known;
    for (const auto& entry : *again)
        if (const auto* entered = std::get_if<ItemEntered>(&entry.body))
            known.m_again.push_back(*entered);
    return known;
}

void PartsKnown::hear(Word word) {
    if (const auto* listed = std::get_if<PartsListed>(&word.body))
        list(word.stamp, *listed);
    else
        replace(word.stamp, std::get<PartReplaced>(word.body));
    m_words.push_back(std::move(word));
}

PartsKnown PartsKnown::before(const Stamp& moment) const {
    PartsKnown then;
    then.m_again = m_again;
    for (const auto& word : m_words) {
        const auto* listed = std::get_if<PartsListed>(&word.body);
        if (word.stamp < moment || (listed && !then.m_trees.contains(listed->item)))
            then.hear(word);
    }
    return then;
}

void PartsKnown::list(const Stamp& at, const PartsListed& said) {
    auto& tree = m_trees[said.item] = {{}, said.whole, at.id};
    for (const auto& part : said.parts)
        tree.parts.push_back(thingFrom(part));
}

/// Of what type the new one is the entry does not say.
void PartsKnown::replace(const Stamp& at, const PartReplaced& said) {
    const auto known = m_trees.find(said.item);
    if (known == m_trees.end())
        return;
    auto& tree = known->second;
    tree.said = at.id;
    std::vector<FittedThing*> named;
    gather(
        tree.parts, [name = slugOf(said.part)](const FittedThing& part) { return part.name == name; }, named);
    if (named.empty()) // the list did not know of it
        tree.isWhole = false;
    std::vector<FittedThing*> removed;
    std::ranges::copy_if(named, std::back_inserter(removed), [&](const FittedThing* each) {
        return each->serial && !said.removedSerial.empty() &&
               plainSerial(*each->serial) == plainSerial(said.removedSerial);
    });
    if (removed.size() == 1)
        named = removed;
    const bool isThatOne = named.size() == 1;
    for (auto* part : named) {
        part->type.reset();
        part->serial = isThatOne && !said.fittedSerial.empty() ? std::optional(said.fittedSerial) : std::nullopt;
        part->parts.clear();
        part->isWhole = false;
    }
}

FittedThing PartsKnown::thingOf(const ItemFacts& item) const {
    FittedThing thing{std::string(itemKindName(item.kind)), item.type, item.serial, {}, false, true};
    if (const auto known = m_trees.find(item.id); known != m_trees.end()) {
        thing.parts = known->second.parts;
        thing.isWhole = known->second.isWhole;
    }
    return thing;
}

std::string PartsKnown::lastWord(const ItemId& item) const {
    const auto known = m_trees.find(item);
    return known == m_trees.end() ? std::string() : known->second.said.text();
}

namespace {

Applicability asEntered(const AppliesTo& asked, const ItemFacts& item, const std::vector<const ItemFacts*>& beside,
                        const PartsKnown& parts) {
    const std::string kind(itemKindName(item.kind));
    if (std::ranges::find(asked.kinds, item.kind) == asked.kinds.end())
        return {Truth::No, WhyBound::OtherKind, kind};
    const auto thing = parts.thingOf(item);
    auto answer = isAsked({kind, asked.types, rangesFrom(asked.serials)}, thing);
    for (const auto& part : asked.fitted) {
        const auto among = amongThese(part, item, beside, parts);
        const BoundBy bound{{kind, {}, {}}, {{part.part, part.types, rangesFrom(part.serials)}}};
        answer = worseOf(answer, applies(bound, thing, among.things, among.isWhole));
    }
    return answer;
}

/// The item as another entry of it has it.
ItemFacts asSaidIn(const ItemEntered& other, ItemFacts item) {
    item.kind = other.kind;
    item.serial = other.serial;
    item.type = other.type;
    return item;
}

}

Applicability appliesTo(const AppliesTo& asked, const ItemFacts& item, const std::vector<const ItemFacts*>& beside,
                        const PartsKnown& parts) {
    auto answer = asEntered(asked, item, beside, parts);
    if (answer.applies != Truth::No || parts.enteredAgain().empty())
        return answer;
    auto all = beside;
    for (auto& each : all)
        for (const auto& other : parts.enteredAgain()) {
            if (other.item != each->id)
                continue;
            const auto otherwise = asSaidIn(other, *each);
            const auto* const asItStands = std::exchange(each, &otherwise);
            const auto& as = item.id == other.item ? otherwise : item;
            const auto found = asEntered(asked, as, all, parts);
            each = asItStands;
            if (found.applies != Truth::No)
                return {Truth::Unknown, WhyBound::EntriesDiffer, std::string(itemKindName(each->kind))};
        }
    return answer;
}

std::set<std::string> partsBehind(const AppliesTo& asked, const ItemFacts& item,
                                  const std::vector<const ItemFacts*>& beside, const PartsKnown& parts) {
    std::set<std::string> behind;
    for (const auto& part : asked.fitted) {
        auto among = amongThese(part, item, beside, parts);
        for (std::size_t i = 0; i < among.things.size(); ++i) {
            auto& thing = among.things[i];
            const auto& holder = among.items[i]->id;
            std::vector<FittedThing*> named;
            gather(
                thing.parts, [&](const FittedThing& each) { return mayBe(part.part, each); }, named);
            for (const auto* each : named)
                behind.insert(each->serial ? part.part + '/' + plainSerial(*each->serial)
                                           : holder.text() + '/' + parts.lastWord(holder));
            if (mayBe(part.part, thing) || !thing.isWhole)
                behind.insert(holder.text());
        }
    }
    return behind;
}

}
