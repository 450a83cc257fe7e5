// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/fabric.h"

#include "problem/faults/entry_fault.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

FabricStated Kind<FabricStated>::read(ObjectReader& reader) {
    FabricStated body;
    body.item = reader.name<ItemId>("item");
    body.lot = reader.saying("lot");
    body.fabric = reader.optionalText("fabric");
    const auto span = [&](std::string_view first, std::string_view last, std::optional<int>& from,
                          std::optional<int>& to) {
        from = readSmallCount(reader, first);
        to = readSmallCount(reader, last);
        if (from && to && *from > *to)
            reader.refuse(first, EntryFault::FirstAfterLast);
    };
    span("first_gore", "last_gore", body.firstGore, body.lastGore);
    span("first_row", "last_row", body.firstRow, body.lastRow);
    return body;
}

void Kind<FabricStated>::write(nlohmann::json& into, const FabricStated& body) {
    into["item"] = body.item.text();
    into["lot"] = body.lot;
    writeText(into, "fabric", body.fabric);
    writeValue(into, "first_gore", body.firstGore);
    writeValue(into, "last_gore", body.lastGore);
    writeValue(into, "first_row", body.firstRow);
    writeValue(into, "last_row", body.lastRow);
}

}
