// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/question.h"

#include <array>

namespace crownring {

namespace {

struct Wording {
    std::string_view name;
    std::string_view sentence;
};

constexpr std::array<Wording, questionKindCount> wordings = {{
    {"fitted-elsewhere",
     "was fitted to a second balloon without having been removed from the first; add the removal, or "
     "void the fitting that never was"},
    {"fitted-again", "was fitted to a balloon that it was on already; void the fitting that says it twice"},
    {"removed-not-fitted", "was removed from a balloon that it was not on; add the fitting, or correct the removal"},
    {"clock-backward", "has a stated clock that is less than one stated before; correct the one that was misread"},
    {"clock-differs", "has a stated clock that is not what its flights make it; look for flights that are missing or "
                      "logged twice, or correct the figure"},
    {"entered-twice", "was entered twice; the earlier entry stands, void the one that is wrong"},
    {"not-entered", "is spoken of but was never entered, or its entry was voided; enter it"},
    {"correction-idle",
     "has a correction whose result would make no sense; it was left out, void it and write another"},
    {"unreadable",
     "is an entry that cannot be read, so nothing follows from it; void it with a reason, and write it again "
     "as it should be"},
}};

}

std::string_view questionName(Question::Kind kind) { return wordings[static_cast<std::size_t>(kind)].name; }

std::string questionText(const Question& question) {
    auto text = question.subject + " " + std::string(wordings[static_cast<std::size_t>(question.kind)].sentence);
    if (!question.detail.empty())
        text += " (" + question.detail + ")";
    return text;
}

}
