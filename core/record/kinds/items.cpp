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

template <class Fitting>
Fitting readFitting(ObjectReader& reader) {
    return {reader.name<Registration>("balloon"), reader.name<ItemId>("item"), reader.optionalText("place")};
}

template <class Fitting>
void writeFitting(json& into, const Fitting& body) {
    into["balloon"] = body.balloon.text();
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

ItemFitted Kind<ItemFitted>::read(ObjectReader& reader) { return readFitting<ItemFitted>(reader); }
void Kind<ItemFitted>::write(json& into, const ItemFitted& body) { writeFitting(into, body); }

ItemRemoved Kind<ItemRemoved>::read(ObjectReader& reader) { return readFitting<ItemRemoved>(reader); }
void Kind<ItemRemoved>::write(json& into, const ItemRemoved& body) { writeFitting(into, body); }

}
