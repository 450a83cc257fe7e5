// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/fabric_answer.h"

namespace crownring::ctl {

nlohmann::ordered_json jsonOf(const Band& band) {
    return {{"p05", band.low}, {"p50", band.middle}, {"p95", band.high}};
}

nlohmann::ordered_json jsonOf(const std::optional<Band>& band) {
    return band ? jsonOf(*band) : nlohmann::ordered_json();
}

std::string_view wordOf(Ground ground) {
    switch (ground) {
    case Ground::Enough:
        return "enough";
    case Ground::HeldOnly:
        return "held-only";
    case Ground::Prior:
        return "assumed";
    }
    return "";
}

std::string sentenceOf(const ForecastGrounds& grounds) {
    if (grounds.ground == Ground::HeldOnly)
        return "only held tests bound this";
    if (grounds.ground == Ground::Prior)
        return "rests on what is assumed, not on readings";
    if (grounds.isOpenEnded)
        return "no end within sight";
    return grounds.isBeyondFlown ? "beyond what any envelope of this fabric has flown" : "";
}

}
