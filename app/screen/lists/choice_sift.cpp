// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/lists/choice_sift.h"

#include <algorithm>

namespace crownring::screen {

namespace {

/// Letters and digits alone, small and without accents.
QString bare(const QString& text) {
    QString kept;
    for (const auto character : text.normalized(QString::NormalizationForm_D))
        if (character.isLetterOrNumber())
            kept += character.toLower();
    return kept;
}

std::vector<QString> bareWords(const QString& text) {
    std::vector<QString> words;
    for (const auto& word : text.split(u' ', Qt::SkipEmptyParts))
        if (auto kept = bare(word); !kept.isEmpty())
            words.push_back(std::move(kept));
    return words;
}

}

void ChoiceSift::offer(std::vector<Choice> choices) {
    m_offered.clear();
    for (auto& choice : choices) {
        auto found = bare(choice.value) + u' ' + bare(choice.label) + u' ' + bare(choice.detail);
        m_offered.push_back({std::move(choice), std::move(found)});
    }
    m_sought.clear();
    sift();
}

void ChoiceSift::setSought(const QString& sought) {
    if (sought == m_sought)
        return;
    m_sought = sought;
    sift();
}

void ChoiceSift::sift() {
    const auto words = bareWords(m_sought);
    const auto whole = bare(m_sought);
    std::vector<Choice> named;
    std::vector<Choice> others;
    for (const auto& each : m_offered) {
        if (!whole.isEmpty() && bare(each.choice.value) == whole)
            named.push_back(each.choice); // all of its name was typed: that is the one
        else if (std::ranges::all_of(words, [&](const QString& word) { return each.bare.contains(word); }))
            others.push_back(each.choice);
    }
    named.insert(named.end(), std::make_move_iterator(others.begin()), std::make_move_iterator(others.end()));
    m_more = static_cast<int>(named.size() - std::min(named.size(), mostShown));
    named.resize(std::min(named.size(), mostShown));
    m_hits.show(std::move(named));
    emit changed();
}

}
