// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The three figures of a clock as keys of an inner object. Inside the record room only.

#include "measure/usage.h"
#include "record/json/object_reader.h"

namespace crownring {

/// Calls `read(inner, key, figure)` for each figure of the object under `key`, where that is there.
template <class Read>
void readFigures(ObjectReader& reader, std::string_view key, Figures& figures, Read read) {
    reader.object(key, [&](ObjectReader& inner) {
        read(inner, "minutes", figures.minutes);
        read(inner, "landings", figures.landings);
        read(inner, "inflations", figures.inflations);
    });
}

/// Leaves out a figure that is as in `implied`; an unknown one that is not is null.
void writeFigures(nlohmann::json& into, const char* key, const Figures& figures, const Figures& implied);

}
