// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/items.h"

#include "problem/faults/entry_fault.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

namespace {

using nlohmann::json;

/// A figure that is left out is zero, one that is null is unknown.
Figures readBroughtForward(ObjectReader& reader) {
    Figures figures = newFigures;
    readFigures(reader, "brought_forward", figures,
                []<class C>(ObjectReader& inner, std::string_view name, std::optional<C>& figure) {
                    if (inner.takeNull(name))
                        figure.reset();
                    else if (const auto value = inner.optionalCount(name, 0, largestCount))
                        figure = C(*value);
                });
    return figures;
}

/// @param carrier the key of the item that it is a part of, instead of a balloon
template <class Fitting>
Fitting readFitting(ObjectReader& reader, std::string_view carrier, std::optional<ItemId> Fitting::*part) {
    Fitting body;
    const auto balloon = reader.optionalName<Registration>("balloon");
    body.*part = reader.optionalName<ItemId>(carrier);
    if (balloon.has_value() == (body.*part).has_value())
        reader.refuse(carrier, EntryFault::OnBalloonOrItem);
    body.balloon = balloon.value_or(Registration());
    body.item = reader.name<ItemId>("item");
    body.place = reader.optionalText("place");
    return body;
}

template <class Fitting>
void writeFitting(json& into, const Fitting& body) {
    if (const auto* balloon = balloonUnder(body))
        into["balloon"] = balloon->text();
    into["item"] = body.item.text();
    writeText(into, "place", body.place);
}

}

ItemEntered Kind<ItemEntered>::read(ObjectReader& reader) {
    ItemEntered body;
    body.item = reader.name<ItemId>("item");
    const auto kind = reader.text("kind");
    if (const auto known = itemKindFrom(kind))
        body.kind = *known;
    else
        reader.refuse("kind", EntryFault::NoKindOfItem,
                      {kind, "envelope, basket, burner, cylinder, hose, instrument, other"});
    body.serial = reader.nullableText("serial");
    body.type = reader.nullableText("type");
    if (const auto made = reader.nullableText("made")) {
        if (const auto date = DayOrMonth::parse(*made))
            body.made = *date;
        else
            reader.refuse("made", date.error());
    }
    body.broughtForward = readBroughtForward(reader);
    body.lot = reader.optionalText("lot");
    body.release = readRelease(reader);
    body.vessel = readVessel(reader);
    return body;
}

void Kind<ItemEntered>::write(json& into, const ItemEntered& body) {
    into["item"] = body.item.text();
    into["kind"] = itemKindName(body.kind);
    writeValue(into, "serial", body.serial);
    writeValue(into, "type", body.type);
    if (body.made)
        into["made"] = body.made->iso();
    writeFigures(into, "brought_forward", body.broughtForward, newFigures);
    writeText(into, "lot", body.lot);
    writeRelease(into, body.release);
    writeVessel(into, body.vessel);
}

template <>
const ItemId* pieceOf(const ItemEntered& said) {
    return said.lot.empty() && !said.release && !said.vessel ? nullptr : &said.item;
}
template <>
const ItemId* pieceOf(const ItemFitted& said) {
    return said.lot.empty() && !said.release ? nullptr : &said.item;
}

BalloonEntered Kind<BalloonEntered>::read(ObjectReader& reader) {
    return {reader.name<Registration>("balloon"), reader.optionalText("title"), reader.optionalSlugs("operations")};
}

void Kind<BalloonEntered>::write(json& into, const BalloonEntered& body) {
    into["balloon"] = body.balloon.text();
    writeText(into, "title", body.title);
    if (!body.operations.empty())
        into["operations"] = body.operations;
}

BalloonOwned Kind<BalloonOwned>::read(ObjectReader& reader) {
    return {reader.name<Registration>("balloon"), reader.saying("owner"), reader.optionalText("operator")};
}

void Kind<BalloonOwned>::write(json& into, const BalloonOwned& body) {
    into["balloon"] = body.balloon.text();
    into["owner"] = body.owner;
    writeText(into, "operator", body.operatedBy);
}

ItemFitted Kind<ItemFitted>::read(ObjectReader& reader) {
    auto body = readFitting(reader, "to", &ItemFitted::to);
    body.release = readRelease(reader);
    body.lot = reader.optionalText("lot");
    return body;
}

void Kind<ItemFitted>::write(json& into, const ItemFitted& body) {
    writeFitting(into, body);
    writeName(into, "to", body.to);
    writeRelease(into, body.release);
    writeText(into, "lot", body.lot);
}

ItemRemoved Kind<ItemRemoved>::read(ObjectReader& reader) { return readFitting(reader, "from", &ItemRemoved::from); }

void Kind<ItemRemoved>::write(json& into, const ItemRemoved& body) {
    writeFitting(into, body);
    writeName(into, "from", body.from);
}

}
