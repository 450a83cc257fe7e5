// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What core needs of a language where it makes whole texts: papers. The app has one.

#include "problem/argument.h"

#include <string>
#include <utility>

namespace crownring {

class Speech {
public:
    Speech() = default;
    Speech(const Speech&) = delete;
    Speech& operator=(const Speech&) = delete;
    virtual ~Speech() = default;

    [[nodiscard]] virtual std::string say(const Argument& what) const = 0;
    [[nodiscard]] std::string say(PhraseCode code, Arguments arguments = {}) const {
        return say(Argument(Phrase{code, std::move(arguments)}));
    }
};

}
