// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/sentence.h"

#include "civil/civil_date.h"
#include "measure/unit.h"
#include "words/border.h"
#include "words/fault_sources.h"
#include "words/phrase_sources.h"
#include "words/terms.h"

#include <QCoreApplication>
#include <QStringList>
#include <QTranslator>

namespace crownring::words {

namespace {

/// Runs when the application is made: whoever links these words has their plurals.
void speakEnglish() {
    auto* english = new QTranslator(QCoreApplication::instance());
    if (english->load(QStringLiteral(":/words/crownring_en.qm")))
        QCoreApplication::installTranslator(english);
}

struct Spoken {
    const char* context;
    const char* source;
};

struct SourceOf {
    Spoken operator()(const Fault& fault) const {
        return {"Problem", std::visit([](auto each) { return sourcesOf(each).message; }, fault)};
    }
    template <class Family>
    Spoken operator()(Family phrase) const {
        return {"Phrase", sourceOf(phrase)};
    }
};

struct Said {
    QString operator()(const std::string& text) const { return inward(text); }
    QString operator()(std::int64_t number) const { return QString::number(number); }
    QString operator()(double figure) const { return inward(figureText(figure)); }
    QString operator()(const InUnit& figure) const {
        const auto* unit = unitNamed(figure.unit);
        return unit ? inward(amountText(figure.value, *unit)) : inward(figureText(figure.value) + " " + figure.unit);
    }
    QString operator()(OnDay day) const { return inward(CivilDate::fromDayNumber(day.number).iso()); }
    QString operator()(const Term& term) const { return words::term(term); }
    QString operator()(const Phrase& phrase) const {
        const auto [context, source] = std::visit(SourceOf{}, phrase.code);
        return sentence(context, source, phrase.arguments);
    }
    QString operator()(const Listed& listed) const {
        QStringList words;
        for (const auto& each : listed.list)
            words += said(each);
        if (listed.joined == Listed::Joined::Comma || words.size() < 2)
            return words.join(QStringLiteral(", "));
        const auto last = words.takeLast();
        const auto first = words.join(QStringLiteral(", "));
        return listed.joined == Listed::Joined::Or
                   ? QCoreApplication::translate("Argument", "%1 or %2").arg(first, last)
                   : QCoreApplication::translate("Argument", "%1 and %2").arg(first, last);
    }
};

/// %1 to %9, all at once: a text with a %2 of its own is left alone.
QString filled(const QString& sentence, const Arguments& arguments) {
    QString result;
    for (qsizetype at = 0; at < sentence.size(); ++at) {
        const auto number = sentence[at] == u'%' && at + 1 < sentence.size() ? sentence[at + 1].digitValue() : -1;
        if (number < 1 || static_cast<std::size_t>(number) > arguments.size()) {
            result += sentence[at];
            continue;
        }
        result += said(arguments[static_cast<std::size_t>(number) - 1]);
        ++at;
    }
    return result;
}

int countOf(const Arguments& arguments) {
    for (const auto& argument : arguments)
        if (const auto* number = std::get_if<std::int64_t>(&argument.value()))
            return static_cast<int>(*number);
    return -1;
}

}

Q_COREAPP_STARTUP_FUNCTION(speakEnglish)

QString said(const Argument& argument) { return std::visit(Said{}, argument.value()); }

QString sentence(const char* context, const char* source, const Arguments& arguments) {
    return filled(QCoreApplication::translate(context, source, nullptr, countOf(arguments)), arguments);
}

}
