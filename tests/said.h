// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a user reads, for tests of every room.

#include "problem/problem.h"
#include "words/problem_words.h"
#include "words/spoken.h"

#include <QRegularExpression>

namespace crownring::testing {

/// One sentence without a full stop, every argument in its place.
inline bool isSentence(const QString& text) {
    static const QRegularExpression unfilled(QStringLiteral("%[0-9n]"));
    return !text.isEmpty() && !text.endsWith(u'.') && !text.contains(unfilled);
}

/// What is wrong, and a way out.
inline bool isSaid(const Problem& problem) {
    return isSentence(words::message(problem)) && isSentence(words::mend(problem));
}

inline std::string spokenMessage(const Problem& problem) { return words::message(problem).toStdString(); }
inline std::string spokenMend(const Problem& problem) { return words::mend(problem).toStdString(); }
inline std::string spoken(const Argument& what) { return words::said(what).toStdString(); }

/// The language in which tests read papers.
inline const words::Spoken english;

}
