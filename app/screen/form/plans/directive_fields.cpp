// SPDX-License-Identifier: GPL-3.0-or-later

/// What is asked of a directive, and of an answer to one.

#include "screen/form/plans/directive_form.h"
#include "words/border.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

using Typed = FormField::Kind;

std::vector<Choice> kindsOfItems() {
    std::vector<Choice> choices;
    for (int at = 0; at < itemKindCount; ++at)
        choices.push_back(
            plainChoice(inward(itemKindName(static_cast<ItemKind>(at))), Words::kinds(static_cast<ItemKind>(at))));
    return choices;
}

FormField chosenFrom(std::string key, const QString& label, Typed kind, bool required, std::vector<Choice> choices,
                     const QString& value = {}) {
    auto made = plannedField(std::move(key), label, kind, required);
    made.choices = std::move(choices);
    made.value = value;
    return made;
}

std::vector<FormField> withinFields(const std::string& under, const QString& hours, const QString& hint) {
    return {plannedField(under + ".minutes", hours, Typed::Duration, false, hint),
            plannedField(under + ".months", DirectiveForm::tr("… or months"), Typed::Count),
            plannedField(under + ".days", DirectiveForm::tr("… or days"), Typed::Count),
            plannedField(under + ".landings", DirectiveForm::tr("… or landings"), Typed::Count),
            plannedField(under + ".inflations", DirectiveForm::tr("… or inflations"), Typed::Count)};
}

}

std::vector<FormField> DirectiveForm::issueFields() {
    const auto ranges = tr("a range a line: S0100 to S0239; S0240 to; a single one alone");
    const auto types = tr("one a line; empty: all types");
    auto in = kindsOfItems();
    in.insert(in.begin(), plainChoice({}, tr("anywhere on the balloon")));
    std::vector<FormField> fields{
        plannedField("directive", tr("Number"), Typed::Text, true, tr("as it is printed")),
        plannedField("revision", tr("Revision"), Typed::Text, true, tr("0 where none is printed")),
        plannedField("title", tr("Title"), Typed::Text, true),
        plannedField("issuer", tr("Issuer"), Typed::Text, true),
        chosenFrom("issued_by", tr("Which is"), Typed::OneOf, true,
                   {plainChoice(QStringLiteral("authority"), tr("an authority")),
                    plainChoice(QStringLiteral("manufacturer"), tr("a manufacturer"))},
                   QStringLiteral("authority")),
        plannedField("state", tr("State of issue"), Typed::Text, true),
        plannedField("effective", tr("Effective from"), Typed::Date, true, tr("a day to come is allowed")),
        plannedField("source", tr("Where that is read"), Typed::Text, true),
        chosenFrom("applies.kinds", tr("It is for"), Typed::Several, true, kindsOfItems()),
        plannedField("-types", tr("Of these types"), Typed::Lines, false, types),
        plannedField("-serials", tr("With these serial numbers"), Typed::Lines, false, ranges),
        plannedField("-part", tr("And only where this part is fitted"), Typed::Text, false,
                     tr("as lists of parts call it: pilot-valve; or a kind of items: burner")),
        chosenFrom("-in", tr("The part is in"), Typed::OneOf, false, std::move(in)),
        plannedField("-part-types", tr("Types of the part"), Typed::Lines, false, types),
        plannedField("-part-serials", tr("Serial numbers of the part"), Typed::Lines, false, ranges),
        chosenFrom("force", tr("Force"), Typed::OneOf, true,
                   {plainChoice(QStringLiteral("mandatory"), tr("mandatory")),
                    plainChoice(QStringLiteral("recommended"), tr("recommended, never grounds"))},
                   QStringLiteral("mandatory")),
        plannedField("first.before_flight", tr("To be done before the next flight"), Typed::Check),
        plannedField("first.by", tr("For the first time by"), Typed::Date, false,
                     tr("the last good day; whichever comes first"))};
    for (auto& each : withinFields("first", tr("… within hours from the effective day"), {}))
        fields.push_back(std::move(each));
    for (auto& each : withinFields("repeat", tr("Again after hours"), tr("all empty: it is done once")))
        fields.push_back(std::move(each));
    fields.push_back(plannedField("terminating", tr("What ends it"), Typed::Text, false,
                                  tr("the action after which it is not done again")));
    fields.push_back(chosenFrom("supersedes", tr("It supersedes"), Typed::Several, false, {}));
    fields.push_back(
        plannedField("credits", tr("Earlier revisions whose answers count"), Typed::Lines, false, tr("one a line")));
    return fields;
}

std::vector<FormField> DirectiveForm::answerFields(const FormSubject& subject, const FleetSheet& sheet) {
    std::vector<FormField> fields;
    if (subject.items.empty()) {
        fields.push_back(plannedField("directive", tr("Number"), Typed::Text, true));
        fields.push_back(plannedField("revision", tr("Revision"), Typed::Text, true));
        fields.push_back(
            chosenFrom("item", tr("Item"), Typed::Choice, true, FormPlan::items(sheet, {}), inward(subject.item)));
    }
    fields.push_back(chosenFrom("answer", tr("Answer"), Typed::OneOf, true,
                                {plainChoice(QStringLiteral("done"), tr("done")),
                                 plainChoice(QStringLiteral("not-applicable"), tr("not applicable"))},
                                QStringLiteral("done")));
    fields.push_back(plannedField("method", tr("How"), Typed::Text, true, tr("which paragraph, what was done")));
    fields.push_back(plannedField("why", tr("Because"), Typed::Text, true,
                                  tr("only of whom the record does not know it: what was seen")));
    fields.push_back(chosenFrom("capacity", tr("Answered as"), Typed::OneOf, false,
                                {plainChoice({}, tr("nobody here: a paper shows it"))}));
    fields.back().hint = tr("it stands as stated by who writes it: nothing is signed here");
    fields.push_back(plannedField("licence", tr("Licence of who signed the paper"), Typed::Text, false));
    fields.push_back(plannedField("ref", tr("Document that shows it"), Typed::Text, false));
    fields.push_back(plannedField("amoc", tr("By other means: their document"), Typed::Text, false,
                                  tr("an alternative means of compliance, where one was used")));
    fields.push_back(plannedField("terminating", tr("This ends it"), Typed::Check));
    for (const char* key : {"why", "terminating"})
        std::ranges::find(fields, std::string_view(key), &FormField::key)->shown = false;
    return fields;
}

}
