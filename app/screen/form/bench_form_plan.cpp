// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/bench_form_plan.h"

#include "bench/reading/quantity.h"
#include "bench/release/entitlement.h"
#include "screen/form/own_line_form.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <map>

namespace crownring::screen {

using namespace words;

namespace {

using Kind = FormField::Kind;
using Fields = std::vector<FormField>;

FormField chosen(std::string key, const QString& label, std::vector<Choice> choices, const std::string& value) {
    auto made = plannedField(std::move(key), label, Kind::Choice, true);
    made.choices = std::move(choices);
    made.value = inward(value);
    return made;
}

/// Chosen with one tap, which few choices allow.
FormField tapped(FormField choice) {
    if (choice.choices.size() <= mostAtOneLook)
        choice.kind = Kind::OneOf;
    return choice;
}

FormField itemField(const FormSubject& subject, const FleetSheet& sheet) {
    return chosen("item", BenchFormPlan::tr("Item"), FormPlan::items(sheet, subject.balloon), subject.item);
}

/// The parts of an envelope, as `zoneName` has them, from `first` on.
std::vector<Choice> zones(const QString& none, Zone first) {
    std::vector<Choice> choices{plainChoice({}, none)};
    for (int at = static_cast<int>(first); at < zoneCount; ++at) {
        const auto name = std::string(zoneName(static_cast<Zone>(at)));
        choices.push_back(plainChoice(inward(name), words::said(Term{Term::Of::Zone, name})));
    }
    return choices;
}

FormField notRequired(FormField field) {
    field.required = false;
    return field;
}

Fields placeFields() {
    return {plannedField("gore", BenchFormPlan::tr("Gore"), Kind::Count),
            plannedField("row", BenchFormPlan::tr("Panel row"), Kind::Count, false,
                         BenchFormPlan::tr("counted from the mouth")),
            notRequired(chosen("zone", BenchFormPlan::tr("Part of the envelope"),
                               zones(BenchFormPlan::tr("its body"), Zone::Parachute), {}))};
}

Fields with(Fields fields, Fields more) {
    fields.insert(fields.end(), more.begin(), more.end());
    return fields;
}

Fields found(const FormSubject& subject, const FleetSheet& sheet) {
    return with({plannedField("what", BenchFormPlan::tr("What was found"), Kind::Lines, true),
                 plannedField("photographs", BenchFormPlan::tr("Photographs"), Kind::Photographs),
                 tapped(itemField(subject, sheet)),
                 tapped(chosen("severity", BenchFormPlan::tr("Severity"),
                               {plainChoice(QStringLiteral("deferrable"),
                                            BenchFormPlan::tr("grounds the balloon, may be deferred")),
                                plainChoice(QStringLiteral("grounding"), BenchFormPlan::tr("a danger to flight")),
                                plainChoice(QStringLiteral("minor"), BenchFormPlan::tr("does not ground the balloon"))},
                               "deferrable"))},
                placeFields());
}

Fields deferred(const FormSubject&, const FleetSheet&) {
    return {plannedField("reason", BenchFormPlan::tr("Why it may wait"), Kind::Text, true),
            plannedField("until", BenchFormPlan::tr("Until"), Kind::Date, false,
                         BenchFormPlan::tr("YYYY-MM-DD, the last good day; or hours below, or both")),
            plannedField("until_minutes", BenchFormPlan::tr("Until the item's clock shows"), Kind::Duration, false,
                         BenchFormPlan::tr("h:mm or hours")),
            plannedField("agreed_by", BenchFormPlan::tr("Agreed by"), Kind::Text, true,
                         BenchFormPlan::tr("who is authorised to defer it, as named in the record")),
            plannedField("not_required", BenchFormPlan::tr("Equipment that is not required"), Kind::Check, false,
                         BenchFormPlan::tr("by its certification or the rules of the operation")),
            plannedField("placard", BenchFormPlan::tr("Removed or deactivated, and placarded"), Kind::Text, false,
                         BenchFormPlan::tr("how, where; asked in the United States"))};
}

Fields revoked(const FormSubject&, const FleetSheet&) {
    return {plannedField("reason", BenchFormPlan::tr("Why the release is withdrawn"), Kind::Text, true)};
}

Fields cleared(const FormSubject&, const FleetSheet&) {
    return {plannedField("what", BenchFormPlan::tr("What was done"), Kind::Text, true),
            plannedField("ref", BenchFormPlan::tr("Reference on the paper"), Kind::Text)};
}

Fields repaired(const FormSubject& subject, const FleetSheet& sheet) {
    return with(with({itemField(subject, sheet)}, placeFields()),
                {plannedField("method", BenchFormPlan::tr("Method"), Kind::Text, true,
                              BenchFormPlan::tr("as the manual names it")),
                 plannedField("width_mm", BenchFormPlan::tr("Width, mm"), Kind::Decimal),
                 plannedField("height_mm", BenchFormPlan::tr("Height, mm"), Kind::Decimal),
                 plannedField("lot", BenchFormPlan::tr("Lot of the material"), Kind::Text)});
}

Fields replaced(const FormSubject& subject, const FleetSheet& sheet) {
    return {itemField(subject, sheet), plannedField("part", BenchFormPlan::tr("Part"), Kind::Text, true),
            plannedField("removed_serial", BenchFormPlan::tr("Serial number off"), Kind::Text),
            plannedField("fitted_serial", BenchFormPlan::tr("Serial number on"), Kind::Text),
            plannedField("release_document", BenchFormPlan::tr("Its release document"), Kind::Text, true,
                         BenchFormPlan::tr("EASA Form 1 …, FAA Form 8130-3 …"))};
}

Fields performed(const FormSubject& subject, const FleetSheet& sheet) {
    auto grade = tapped(chosen("grade", BenchFormPlan::tr("Repair or alteration"),
                               {plainChoice(QString(), BenchFormPlan::tr("not said")),
                                plainChoice(QStringLiteral("servicing"), BenchFormPlan::tr("neither: servicing")),
                                plainChoice(QStringLiteral("minor"), BenchFormPlan::tr("minor")),
                                plainChoice(QStringLiteral("standard"), BenchFormPlan::tr("standard (CS-STAN)")),
                                plainChoice(QStringLiteral("major"), BenchFormPlan::tr("major"))},
                               {}));
    grade.required = false;
    return {tapped(itemField(subject, sheet)),
            plannedField("what", BenchFormPlan::tr("What was done"), Kind::Lines, true),
            plannedField("data", BenchFormPlan::tr("To which data"), Kind::Text, true,
                         BenchFormPlan::tr("manual, revision, page; drawing or approval")),
            std::move(grade),
            plannedField("approval", BenchFormPlan::tr("Its form or approval"), Kind::Text, false,
                         BenchFormPlan::tr("FAA Form 337 …, the approval of the design; asked of a major one")),
            plannedField("performed_by", BenchFormPlan::tr("Performed by"), Kind::Text, false,
                         BenchFormPlan::tr("where that is another than who signs"))};
}

Fields entitled(const FormSubject&, const FleetSheet&) {
    std::vector<Choice> capacities;
    for (const auto capacity : allCapacities)
        capacities.push_back(plainChoice(inward(capacityName(capacity)), words::said(termOf(capacity))));
    return {plannedField("person", BenchFormPlan::tr("Person"), Kind::Text, true),
            chosen("capacity", BenchFormPlan::tr("May sign as"), std::move(capacities), {}),
            plannedField("licence", BenchFormPlan::tr("Licence or certificate"), Kind::Text, true),
            plannedField("organisation", BenchFormPlan::tr("For the organisation"), Kind::Text, false,
                         BenchFormPlan::tr("empty: in the person's own name")),
            plannedField("approval", BenchFormPlan::tr("Its approval"), Kind::Text, false,
                         BenchFormPlan::tr("the number, e.g. QE.CAO.0031: it says under which annex it works")),
            plannedField("last_review", BenchFormPlan::tr("Last airworthiness review before this record"), Kind::Date,
                         false, BenchFormPlan::tr("YYYY-MM-DD; of who is authorised to review")),
            plannedField("until", BenchFormPlan::tr("Valid until"), Kind::Date, false,
                         BenchFormPlan::tr("YYYY-MM-DD; empty where it has no end"))};
}

/// Of what an instrument reads; without it nobody can tell whether it fits a test.
FormField measuresField() {
    auto measures = plannedField("measures", BenchFormPlan::tr("Measures"), Kind::Several, false,
                                 BenchFormPlan::tr("left empty: it is offered for every test, and papers say that the "
                                                   "record does not say what it measures"));
    for (const auto& quantity : allQuantities())
        measures.choices.push_back(plainChoice(inward(quantity.slug), words::said(termOf(quantity))));
    return measures;
}

/// The envelope carries the registration: it is told first.
Fields reviewed(const FormSubject& subject, const FleetSheet& sheet) {
    const auto items = FormPlan::items(sheet, subject.balloon);
    auto envelope = itemField(subject, sheet);
    envelope.label = BenchFormPlan::tr("Envelope");
    if (subject.item.empty() && !subject.balloon.empty() && !items.empty())
        envelope.value = items.front().value;
    std::vector<Choice> capacities;
    for (const auto capacity : allCapacities)
        if (isOfReviewers(capacity))
            capacities.push_back(plainChoice(inward(capacityName(capacity)), words::said(termOf(capacity))));
    return {chosen("balloon", BenchFormPlan::tr("Balloon"), FormPlan::balloons(sheet), subject.balloon),
            envelope,
            tapped(chosen("act", BenchFormPlan::tr("What is signed"),
                          {plainChoice(QStringLiteral("review"), BenchFormPlan::tr("a review")),
                           plainChoice(QStringLiteral("extension"), BenchFormPlan::tr("an extension")),
                           plainChoice(QStringLiteral("recommendation"), BenchFormPlan::tr("a recommendation"))},
                          "review")),
            plannedField("form", BenchFormPlan::tr("Form"), Kind::Text, true, BenchFormPlan::tr("EASA Form 15c …")),
            plannedField("certificate", BenchFormPlan::tr("Its number"), Kind::Text, true),
            plannedField("on", BenchFormPlan::tr("Issued on"), Kind::Date, true),
            plannedField("expires", BenchFormPlan::tr("Expires on, as printed"), Kind::Date, false,
                         BenchFormPlan::tr("YYYY-MM-DD, the last good day; left empty: what the rule gives")),
            plannedField("reviewer", BenchFormPlan::tr("Reviewed by"), Kind::Text, true,
                         BenchFormPlan::tr("as named in the record")),
            chosen("capacity", BenchFormPlan::tr("Signing as"), std::move(capacities), {}),
            plannedField("inspection", BenchFormPlan::tr("Made during inspection"), Kind::Text, false,
                         BenchFormPlan::tr("its number; asked of who reviews while it is performed")),
            plannedField("findings", BenchFormPlan::tr("Findings"), Kind::Lines),
            plannedField("photographs", BenchFormPlan::tr("Photographs of the certificate"), Kind::Photographs)};
}

Fields calibrated(const FormSubject&, const FleetSheet&) {
    return {plannedField("tester", BenchFormPlan::tr("Test equipment"), Kind::Text, true),
            plannedField("until", BenchFormPlan::tr("In calibration until"), Kind::Date, true),
            plannedField("what", BenchFormPlan::tr("What it is"), Kind::Text, false,
                         BenchFormPlan::tr("spring balance with jaws of 25 mm …")),
            measuresField(),
            plannedField("unit", BenchFormPlan::tr("Unit of its scale"), Kind::Text, false,
                         BenchFormPlan::tr("N, lbf, mm/s, s, kPa …")),
            plannedField("from", BenchFormPlan::tr("Calibrated from"), Kind::Decimal),
            plannedField("to", BenchFormPlan::tr("Calibrated up to"), Kind::Decimal),
            plannedField("station", BenchFormPlan::tr("Whose it is"), Kind::Text, false,
                         BenchFormPlan::tr("the station or organisation")),
            plannedField("certificate", BenchFormPlan::tr("Certificate"), Kind::Text)};
}

std::vector<Choice> kinds() {
    std::vector<Choice> choices;
    for (int at = 0; at < itemKindCount; ++at)
        choices.push_back(
            plainChoice(inward(itemKindName(static_cast<ItemKind>(at))), Words::kind(static_cast<ItemKind>(at))));
    return choices;
}

/// Asked by the record, where a type is nearly another (`EntryFault::NearlyATypeKnown`).
FormField confirmedField() {
    auto confirmed =
        plannedField("confirmed", BenchFormPlan::tr("It is another type, though nearly of the same name"), Kind::Check);
    confirmed.shown = false;
    return confirmed;
}

Fields described(const FormSubject&, const FleetSheet&) {
    return {plannedField("type", BenchFormPlan::tr("Type"), Kind::Text, true),
            chosen("kind", BenchFormPlan::tr("Kind"), kinds(), {}),
            plannedField("manual", BenchFormPlan::tr("Manual"), Kind::Text, true),
            plannedField("revision", BenchFormPlan::tr("Revision"), Kind::Text, true),
            plannedField("gores", BenchFormPlan::tr("Gores"), Kind::Count),
            plannedField("rows", BenchFormPlan::tr("Panel rows"), Kind::Count),
            confirmedField()};
}

Fields stated(const FormSubject&, const FleetSheet&) {
    std::vector<Choice> quantities;
    for (const auto& quantity : allQuantities())
        quantities.push_back(plainChoice(inward(quantity.slug), words::said(termOf(quantity))));
    return {plannedField("type", BenchFormPlan::tr("Type"), Kind::Text, true),
            chosen("kind", BenchFormPlan::tr("Kind"), kinds(), {}),
            chosen("quantity", BenchFormPlan::tr("Quantity"), std::move(quantities), {}),
            plannedField("unit", BenchFormPlan::tr("Unit"), Kind::Text, true),
            plannedField("least", BenchFormPlan::tr("At least"), Kind::Decimal),
            plannedField("most", BenchFormPlan::tr("At most"), Kind::Decimal),
            plannedField("proof", BenchFormPlan::tr("Proof load"), Kind::Decimal),
            plannedField("places", BenchFormPlan::tr("Readings asked for"), Kind::Count),
            notRequired(chosen("zone", BenchFormPlan::tr("Part of the envelope"),
                               zones(BenchFormPlan::tr("all of it that has no limit of its own"), Zone::Envelope), {})),
            notRequired(chosen("direction", BenchFormPlan::tr("Direction"),
                               {plainChoice({}, BenchFormPlan::tr("either")),
                                plainChoice(QStringLiteral("warp"), BenchFormPlan::tr("warp")),
                                plainChoice(QStringLiteral("weft"), BenchFormPlan::tr("weft"))},
                               {})),
            plannedField("jaw_mm", BenchFormPlan::tr("Width of the jaws, mm"), Kind::Decimal),
            plannedField("pressure_pa", BenchFormPlan::tr("Test pressure, Pa"), Kind::Decimal),
            plannedField("area_cm2", BenchFormPlan::tr("Test area, cm²"), Kind::Decimal),
            chosen("retires", BenchFormPlan::tr("A reading beyond it retires"),
                   {plainChoice(QStringLiteral("panel"), BenchFormPlan::tr("the panel, which is replaced")),
                    plainChoice(QStringLiteral("item"), BenchFormPlan::tr("the whole item"))},
                   "panel"),
            plannedField("passes", BenchFormPlan::tr("What passing means"), Kind::Text),
            plannedField("source", BenchFormPlan::tr("Source"), Kind::Text, true,
                         BenchFormPlan::tr("manual, revision and page")),
            confirmedField()};
}

Fields ofLot(const FormSubject& subject, const FleetSheet& sheet) {
    return {itemField(subject, sheet),
            plannedField("lot", BenchFormPlan::tr("Lot"), Kind::Text, true),
            plannedField("fabric", BenchFormPlan::tr("Fabric"), Kind::Text, false,
                         BenchFormPlan::tr("as its maker names the cloth")),
            plannedField("first_gore", BenchFormPlan::tr("First gore"), Kind::Count, false,
                         BenchFormPlan::tr("empty: from the first")),
            plannedField("last_gore", BenchFormPlan::tr("Last gore"), Kind::Count),
            plannedField("first_row", BenchFormPlan::tr("Lowest panel row"), Kind::Count, false,
                         BenchFormPlan::tr("empty: from the mouth")),
            plannedField("last_row", BenchFormPlan::tr("Highest panel row"), Kind::Count)};
}

Fields ownLine(const FormSubject&, const FleetSheet&) { return OwnLineForm::fields(); }

struct Plan {
    Fields (*fields)(const FormSubject&, const FleetSheet&);
    const char* title;
};

const std::map<std::string_view, Plan>& plans() {
    static const std::map<std::string_view, Plan> plans = {
        {kindName<DefectFound>(), {found, QT_TRANSLATE_NOOP("BenchFormPlan", "Write down a defect")}},
        {kindName<DefectDeferred>(), {deferred, QT_TRANSLATE_NOOP("BenchFormPlan", "Defer a defect")}},
        {kindName<DefectCleared>(), {cleared, QT_TRANSLATE_NOOP("BenchFormPlan", "Rectify a defect")}},
        {kindName<ReleaseRevoked>(), {revoked, QT_TRANSLATE_NOOP("BenchFormPlan", "Withdraw a release")}},
        {kindName<RepairMade>(), {repaired, QT_TRANSLATE_NOOP("BenchFormPlan", "Write down a repair")}},
        {kindName<WorkPerformed>(), {performed, QT_TRANSLATE_NOOP("BenchFormPlan", "Describe the work")}},
        {kindName<PartReplaced>(), {replaced, QT_TRANSLATE_NOOP("BenchFormPlan", "Write down a replaced part")}},
        {kindName<PersonEntitled>(),
         {entitled, QT_TRANSLATE_NOOP("BenchFormPlan", "Enter what a person is authorised to sign")}},
        {kindName<ReviewSigned>(), {reviewed, QT_TRANSLATE_NOOP("BenchFormPlan", "Sign an airworthiness review")}},
        {kindName<TesterCalibrated>(),
         {calibrated, QT_TRANSLATE_NOOP("BenchFormPlan", "Enter the calibration of test equipment")}},
        {kindName<TypeDescribed>(), {described, QT_TRANSLATE_NOOP("BenchFormPlan", "Enter a type and its manual")}},
        {kindName<ChecklistAdopted>(), {ownLine, QT_TRANSLATE_NOOP("BenchFormPlan", "Add a line to the checklists")}},
        {kindName<FabricStated>(),
         {ofLot, QT_TRANSLATE_NOOP("BenchFormPlan", "Enter the lot of an envelope's panels")}},
        {kindName<LimitStated>(), {stated, QT_TRANSLATE_NOOP("BenchFormPlan", "Enter a limit of a type")}},
    };
    return plans;
}

}

std::vector<FormField> BenchFormPlan::fields(std::string_view kind, const FormSubject& subject,
                                             const FleetSheet& sheet) {
    const auto plan = plans().find(kind);
    return plan == plans().end() ? Fields{} : plan->second.fields(subject, sheet);
}

bool BenchFormPlan::known(std::string_view kind) { return plans().contains(kind); }

QString BenchFormPlan::title(std::string_view kind) {
    const auto plan = plans().find(kind);
    return plan == plans().end() ? QString() : tr(plan->second.title);
}

}
