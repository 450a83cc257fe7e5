// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/spelling.h"

namespace crownring {

std::string bareName(std::string_view name) {
    std::string bare;
    for (const char letter : name) {
        const bool capital = letter >= 'A' && letter <= 'Z';
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
        if (capital)
            bare.push_back(static_cast<char>(letter - 'A' + 'a'));
        else if (plain || static_cast<unsigned char>(letter) >= 0x80)
            bare.push_back(letter);
    }
    return bare.empty() ? std::string(name) : bare;
}

}
