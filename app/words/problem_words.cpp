// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/problem_words.h"

#include "words/border.h"
#include "words/fault_sources.h"
#include "words/sentence.h"

#include <QCoreApplication>

namespace crownring::words {

namespace {

Sources sources(const Fault& fault) {
    return std::visit([](auto each) { return sourcesOf(each); }, fault);
}

}

QString message(const Problem& problem) {
    return sentence("Problem", sources(problem.fault).message, problem.arguments);
}

QString mend(const Problem& problem) {
    const auto way = sentence("Problem", sources(problem.fault).mend, problem.arguments);
    return problem.rule.empty() ? way
                                : QCoreApplication::translate("Problem", "%1 (%2)").arg(way, inward(problem.rule));
}

QString message(const Refusal& refusal) { return message({refusal.fault, refusal.arguments}); }

QString mend(const Refusal& refusal) { return mend({refusal.fault, refusal.arguments}); }

QString line(const Problem& problem) {
    const auto& where = problem.where;
    QString text;
    if (!where.file.empty())
        text += inward(where.file) + u':';
    if (where.line > 0)
        text += (where.file.empty() ? QCoreApplication::translate("Problem", "line %1").arg(where.line)
                                    : QString::number(where.line)) +
                u':';
    if (!text.isEmpty())
        text += u' ';
    if (!where.key.empty())
        text += QCoreApplication::translate("Problem", "key '%1': ").arg(inward(where.key));
    text += message(problem);
    if (const auto way = mend(problem); !way.isEmpty())
        text += QCoreApplication::translate("Problem", ". Mend: %1").arg(way);
    return text;
}

}
