// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/saturation_source.h"

namespace crownring::words {

std::string_view saturationSource(double butane) {
    if (butane <= 0)
        return "propane: Lemmon, McLinden and Wagner 2009, J. Chem. Eng. Data 54:3141, vapour-pressure equation";
    if (butane >= 1)
        return "n-butane: Bücker and Wagner 2006, J. Phys. Chem. Ref. Data 35:929, vapour-pressure equation";
    return "propane: Lemmon, McLinden and Wagner 2009, J. Chem. Eng. Data 54:3141; n-butane: Bücker and Wagner 2006, "
           "J. Phys. Chem. Ref. Data 35:929, vapour-pressure equations; mixed by Raoult's law, which is an "
           "idealisation: measured mixtures lie slightly below it (J. Chem. Eng. Data 53:2783, 2008)";
}

}
