// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/figures.h"

namespace crownring {

void writeFigures(nlohmann::json& into, const char* key, const Figures& figures, const Figures& implied) {
    auto object = nlohmann::json::object();
    const auto write = [&](const char* name, const auto& figure, const auto& unsaid) {
        if (figure == unsaid)
            return;
        if (figure)
            object[name] = figure->value();
        else
            object[name] = nullptr;
    };
    write("minutes", figures.minutes, implied.minutes);
    write("landings", figures.landings, implied.landings);
    write("inflations", figures.inflations, implied.inflations);
    if (!object.empty())
        into[key] = std::move(object);
}

}
