// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "problem/speech.h"
#include "words/sentence.h"

namespace crownring::words {

/// The language of the program, as core asks for it.
class Spoken final : public Speech {
public:
    using Speech::say;
    [[nodiscard]] std::string say(const Argument& what) const override { return said(what).toStdString(); }
};

}
