// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/plans/directive_form.h"

#include "problem/faults/directives/directive_fault.h"
#include "screen/directives/directive_words.h"
#include "screen/form/form_fields.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;
using Typed = FormField::Kind;

bool isIssue(std::string_view kind) { return kind == kindName<DirectiveIssued>(); }

std::vector<std::string> linesOf(const QString& text) {
    std::vector<std::string> lines;
    for (const auto& line : text.split(u'\n'))
        if (!line.trimmed().isEmpty())
            lines.push_back(outward(line));
    return lines;
}

/// "S0100 to S0239", "S0240 to", "to S0099", "S0017".
std::vector<SerialSpan> spansOf(const QString& text) {
    static const QRegularExpression range(QStringLiteral("^(?:(.*?)\\s+)?(?:to|–|…|\\.\\.)(?:\\s+(.*))?$"));
    std::vector<SerialSpan> spans;
    for (const auto& line : text.split(u'\n')) {
        const auto one = line.trimmed();
        if (one.isEmpty())
            continue;
        SerialSpan span;
        if (const auto ends = range.match(one); ends.hasMatch()) {
            if (!ends.captured(1).isEmpty())
                span.from = outward(ends.captured(1));
            if (!ends.captured(2).isEmpty())
                span.to = outward(ends.captured(2));
        } else {
            span.from = span.to = outward(one);
        }
        if (span.from || span.to)
            spans.push_back(std::move(span));
    }
    return spans;
}

QString linesFrom(const Json& texts) {
    QStringList lines;
    for (const auto& each : texts)
        lines += inward(each.get<std::string>());
    return lines.join(u'\n');
}

QString rangeLines(const Json& spans) {
    QStringList lines;
    for (const auto& each : spans) {
        const auto from = inward(each.value("from", std::string()));
        const auto to = inward(each.value("to", std::string()));
        lines += from == to ? from : QStringLiteral("%1 to %2").arg(from, to).trimmed();
    }
    return lines.join(u'\n');
}

void writeThing(Json& into, const std::vector<std::string>& types, const std::vector<SerialSpan>& spans) {
    if (!types.empty())
        into["types"] = types;
    for (const auto& span : spans) {
        Json one = Json::object();
        if (span.from)
            one["from"] = *span.from;
        if (span.to)
            one["to"] = *span.to;
        into["serials"].push_back(std::move(one));
    }
}

/// As lists of parts write it: "Pilot valve" is "pilot-valve".
std::string partName(const QString& text) { return outward(text.trimmed().toLower().replace(u' ', u'-')); }

std::optional<PartAsked> partOf(const FormFields& fields) {
    PartAsked part;
    part.part = partName(fields.value("-part"));
    if (part.part.empty())
        return std::nullopt;
    part.in = itemKindFrom(outward(fields.value("-in")));
    part.types = linesOf(fields.value("-part-types"));
    part.serials = spansOf(fields.value("-part-serials"));
    return part;
}

/// What of it can be read.
DoneWithin withinOf(const FormFields& fields, const std::string& under) {
    const auto count = [&](const char* clock) {
        const auto* field = fields.field(under + clock);
        const auto said = field ? field->json() : Result<std::optional<Json>>(std::nullopt);
        return said && *said && (*said)->is_number_integer() ? std::optional((*said)->get<std::int64_t>())
                                                             : std::nullopt;
    };
    return {count(".minutes"), count(".landings"), count(".inflations"), count(".days"), count(".months")};
}

/// The names with their reasons, those of one reason together.
QString byReason(const std::vector<const BoundItem*>& items, const QString& heading) {
    constexpr qsizetype shown = 12;
    if (items.empty())
        return {};
    std::map<QString, QStringList> names;
    std::vector<QString> order;
    for (const auto* each : items) {
        const auto why = words::said(whyOf(each->applicability));
        if (!names.contains(why))
            order.push_back(why);
        names[why] += inward(each->item.id.text());
    }
    QStringList lines{heading};
    for (const auto& why : order) {
        const auto& all = names[why];
        const auto list = all.mid(0, shown).join(QStringLiteral(", "));
        lines += all.size() > shown ? DirectiveForm::tr("%1: %2 … and %3 more").arg(why, list).arg(all.size() - shown)
                                    : DirectiveForm::tr("%1: %2").arg(why, list);
    }
    return lines.join(u'\n');
}

}

bool DirectiveForm::known(std::string_view kind) { return isIssue(kind) || kind == kindName<DirectiveAnswered>(); }

std::vector<FormField> DirectiveForm::fields(std::string_view kind, const FormSubject& subject,
                                             const FleetSheet& sheet) {
    return isIssue(kind) ? issueFields() : answerFields(subject, sheet);
}

QString DirectiveForm::title(std::string_view kind) {
    return isIssue(kind) ? tr("A directive or bulletin") : tr("Answer a directive");
}

std::optional<QString> DirectiveForm::problem(const Problem& problem) {
    if (problem.fault == Fault(DirectiveFault::NoDeadline))
        return tr(
            "A mandatory directive says by when it is complied with. Tick this, or fill in \"For the first time by\" "
            "or \"… within hours from the effective day\" or one of the fields under it, as the directive does.");
    if (problem.fault == Fault(DirectiveFault::RangeReversed))
        return tr("A range of serial numbers ends before it begins. Write the lower number first.");
    if (problem.fault == Fault(DirectiveFault::NothingShows))
        return tr(
            "Nothing shows that the directive was complied with. Choose \"Signed for as\", or fill in \"Licence of "
            "who signed the paper\" and \"Document that shows it\".");
    return std::nullopt;
}

void DirectiveForm::unmark(FormFields& fields) {
    const auto* first = fields.field("first.before_flight");
    if (!first || first->problem.isEmpty())
        return;
    const bool stated = std::ranges::any_of(fields.fields(), [](const FormField& field) {
        return field.key.starts_with("first.") && !field.value.trimmed().isEmpty();
    });
    if (stated || fields.value("force") == QStringLiteral("recommended"))
        fields.setProblem("first.before_flight", {});
}

std::optional<AppliesTo> DirectiveForm::applies(const FormFields& fields) {
    AppliesTo applies;
    for (const auto& kind : linesOf(fields.value("applies.kinds")))
        if (const auto known = itemKindFrom(kind))
            applies.kinds.push_back(*known);
    if (applies.kinds.empty())
        return std::nullopt;
    applies.types = linesOf(fields.value("-types"));
    applies.serials = spansOf(fields.value("-serials"));
    if (auto part = partOf(fields))
        applies.fitted.push_back(std::move(*part));
    return applies;
}

Json DirectiveForm::entry(Json gathered, const FormFields& fields, const Json& before) {
    if (gathered.contains("credits"))
        gathered["credits"] = linesOf(inward(gathered.at("credits").get<std::string>()));
    const auto said = applies(fields);
    if (!said)
        return gathered;
    auto& into = gathered["applies"];
    writeThing(into, said->types, said->serials);
    auto fitted = Json::array();
    for (const auto& part : said->fitted) {
        Json one{{"part", part.part}};
        if (part.in)
            one["in"] = itemKindName(*part.in);
        writeThing(one, part.types, part.serials);
        fitted.push_back(std::move(one));
    }
    // The form has room for one part; of an entry with more the others stay.
    if (before.is_object() && before.contains("applies") && before.at("applies").contains("fitted"))
        for (std::size_t at = 1; at < before.at("applies").at("fitted").size(); ++at)
            fitted.push_back(before.at("applies").at("fitted").at(at));
    if (!fitted.empty())
        into["fitted"] = std::move(fitted);
    return gathered;
}

void DirectiveForm::take(std::vector<FormField>& fields, const Json& entry) {
    const auto put = [&](std::string_view key, const QString& value) {
        if (const auto at = std::ranges::find(fields, key, &FormField::key); at != fields.end())
            at->value = value;
    };
    if (!entry.contains("applies"))
        return;
    const auto& applies = entry.at("applies");
    put("-types", linesFrom(applies.value("types", Json::array())));
    put("-serials", rangeLines(applies.value("serials", Json::array())));
    const auto supersedes = entry.value("supersedes", Json::array());
    for (auto& field : fields)
        if (field.key == "supersedes")
            for (const auto& each : supersedes)
                field.choices.push_back(plainChoice(inward(each.get<std::string>()), inward(each.get<std::string>())));
    if (!entry.contains("force"))
        put("force", QStringLiteral("mandatory"));
    if (!applies.contains("fitted"))
        return;
    const auto& part = applies.at("fitted").at(0);
    put("-part", inward(part.value("part", std::string())));
    put("-in", inward(part.value("in", std::string())));
    put("-part-types", linesFrom(part.value("types", Json::array())));
    put("-part-serials", rangeLines(part.value("serials", Json::array())));
}

void DirectiveForm::showAsked(std::string_view kind, FormFields& fields) {
    if (isIssue(kind)) {
        for (const char* key : {"-in", "-part-types", "-part-serials"})
            fields.setShown(key, !fields.value("-part").trimmed().isEmpty());
        return;
    }
    const bool isDone = fields.value("answer") != QStringLiteral("not-applicable");
    for (const char* key : {"method", "amoc"})
        fields.setShown(key, isDone);
    fields.setShown("why", !isDone);
    const auto* capacity = fields.field("capacity");
    fields.setShown("capacity", capacity && capacity->choices.size() > 1); // else nothing is to be chosen
    fields.setShown("licence", fields.value("capacity").isEmpty());
}

void DirectiveForm::offer(FormFields& fields, const DirectivesKnown& known, const std::string& directive,
                          const std::string& revision) {
    auto all = fields.fields();
    const auto choose = [&](std::string_view key, std::vector<Choice> choices) {
        if (const auto at = std::ranges::find(all, key, &FormField::key); at != all.end())
            at->choices = std::move(choices);
    };
    const auto plainly = [](std::vector<Choice>& choices, const std::string& text) {
        if (std::ranges::find(choices, inward(text), &Choice::value) == choices.end())
            choices.push_back(plainChoice(inward(text), inward(text)));
    };
    std::vector<Choice> issuers;
    std::vector<Choice> states;
    std::vector<Choice> inForce;
    for (std::size_t at = 0; at < known.issued.size(); ++at) {
        const auto& issued = known.issued[at].body;
        plainly(issuers, issued.issuer);
        plainly(states, issued.state);
        if (known.lives[at] == DirectiveRow::Life::InForce)
            inForce.push_back(plainChoice(inward(issued.directive.text()),
                                          tr("%1, %2").arg(inward(issued.directive.text()), inward(issued.title))));
        if (issued.directive.text() == directive && issued.revision == revision)
            if (const auto ends = std::ranges::find(all, std::string_view("terminating"), &FormField::key);
                ends != all.end() && ends->kind == Typed::Check && !issued.terminating.empty()) {
                ends->shown = fields.value("answer") != QStringLiteral("not-applicable");
                ends->label = tr("This ends it: %1").arg(inward(issued.terminating));
            }
    }
    choose("issuer", issuers);
    choose("state", states);
    if (const auto chosen = std::ranges::find(all, std::string_view("supersedes"), &FormField::key);
        chosen != all.end())
        for (auto& each : inForce)
            if (std::ranges::find(chosen->choices, each.value, &Choice::value) == chosen->choices.end())
                chosen->choices.push_back(std::move(each));
    const PersonId by(outward(fields.value("by")));
    std::vector<Choice> capacities;
    for (const auto& each : known.entitlements) {
        const auto visit = regimeOf(each.capacity) == Regime::PartMl ? Visit::PartMlCompliance : Visit::UsCompliance;
        if (each.person == by && !isOfReviewers(each.capacity) && !barOf(each.capacity, visit) &&
            std::ranges::find(capacities, inward(capacityName(each.capacity)), &Choice::value) == capacities.end())
            capacities.push_back(plainChoice(inward(capacityName(each.capacity)), words::said(termOf(each.capacity))));
    }
    if (const auto at = std::ranges::find(all, std::string_view("capacity"), &FormField::key); at != all.end()) {
        if (!at->touched)
            at->value = capacities.size() == 1 ? capacities.front().value : QString();
        capacities.push_back(plainChoice({}, tr("nobody here: a paper shows it")));
        if (std::ranges::find(capacities, at->value, &Choice::value) == capacities.end())
            at->value.clear();
        at->choices = std::move(capacities);
    }
    if (all != fields.fields())
        fields.show(std::move(all));
}

QString DirectiveForm::saidBack(const FormFields& fields) {
    const auto dayOf = [&](const char* key) {
        const auto* field = fields.field(key);
        return field ? field->day() : std::nullopt;
    };
    const auto effective = dayOf("effective");
    if (!effective || fields.value("directive").isEmpty())
        return {};
    DirectiveIssued issued;
    issued.directive = DirectiveId(outward(fields.value("directive")));
    issued.revision = outward(fields.value("revision"));
    issued.effective = *effective;
    issued.recommended = fields.value("force") == QStringLiteral("recommended");
    issued.beforeFlight = !fields.value("first.before_flight").isEmpty();
    issued.until = dayOf("first.by");
    issued.first = withinOf(fields, "first");
    issued.repeat = withinOf(fields, "repeat");
    issued.terminating = outward(fields.value("terminating"));
    if (!issued.recommended && !issued.beforeFlight && !issued.until && issued.first.empty())
        return {}; // it is asked for
    return tr("%1, effective %2.").arg(DirectiveWords::name(issued), inward(issued.effective.iso())) + u' ' +
           DirectiveWords::rule(issued).replace(u'\n', u' ');
}

QString DirectiveForm::follows(const std::vector<BoundItem>& bound) {
    std::vector<const BoundItem*> yes;
    std::vector<const BoundItem*> unknown;
    std::vector<const BoundItem*> no;
    for (const auto& each : bound)
        (each.applicability.applies == Truth::Yes       ? yes
         : each.applicability.applies == Truth::Unknown ? unknown
                                                        : no)
            .push_back(&each);
    return joined({yes.empty() ? tr("It binds nothing that the record knows of.")
                               : byReason(yes, tr("It binds %n items.", nullptr, static_cast<int>(yes.size()))),
                   byReason(unknown, tr("Of %n items nobody knows.", nullptr, static_cast<int>(unknown.size()))),
                   byReason(no, tr("It does not bind %n items.", nullptr, static_cast<int>(no.size())))},
                  QStringLiteral("\n"));
}

}
