// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/defects.h"

#include "problem/faults/entry_fault.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<severityCount> severities = {"barring", "minor", "grounding", "deferrable"};
constexpr Words<gradeCount> grades = {"servicing", "minor", "major", "standard"};

}

std::string_view severityName(Severity severity) { return severities[static_cast<std::size_t>(severity)]; }
std::optional<Severity> severityFrom(std::string_view name) { return among<Severity>(severities, name); }
int rankOf(Severity severity) { return severity == Severity::Minor ? 0 : severity == Severity::Grounding ? 2 : 1; }
std::string_view gradeName(Grade grade) { return grades[static_cast<std::size_t>(grade)]; }
std::optional<Grade> gradeFrom(std::string_view name) { return among<Grade>(grades, name); }

DefectFound Kind<DefectFound>::read(ObjectReader& reader) {
    DefectFound body;
    body.defect = reader.name<DefectId>("defect");
    body.item = reader.name<ItemId>("item");
    if (reader.has("what") || !reader.has("reading"))
        body.what = reader.saying("what");
    body.severity = reader.word("severity", severityFrom, "grounding, deferrable, minor");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    body.reading = reader.optionalName<EntryId>("reading");
    body.place = readPlace(reader);
    body.photographs = readPhotographs(reader);
    body.gradedBy = reader.optionalName<PersonId>("graded_by");
    return body;
}

void Kind<DefectFound>::write(json& into, const DefectFound& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    writeText(into, "what", body.what);
    into["severity"] = severityName(body.severity);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
    writeName(into, "reading", body.reading);
    writePlace(into, body.place);
    writePhotographs(into, body.photographs);
    writeName(into, "graded_by", body.gradedBy);
}

DefectDeferred Kind<DefectDeferred>::read(ObjectReader& reader) {
    DefectDeferred body;
    body.defect = reader.name<DefectId>("defect");
    body.item = reader.name<ItemId>("item");
    body.reason = reader.saying("reason");
    body.until = reader.optionalDate("until");
    if (const auto minutes = reader.optionalCount("until_minutes", 0, largestCount))
        body.untilMinutes = Minutes(*minutes);
    if (!reader.has("until") && !reader.has("until_minutes"))
        reader.refuse("until", EntryFault::DeferredWithoutEnd);
    body.agreedBy = reader.name<PersonId>("agreed_by");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.notRequired = reader.optionalBool("not_required");
    body.placard = reader.optionalText("placard");
    return body;
}

void Kind<DefectDeferred>::write(json& into, const DefectDeferred& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    into["reason"] = body.reason;
    writeDate(into, "until", body.until);
    if (body.untilMinutes)
        into["until_minutes"] = body.untilMinutes->value();
    into["agreed_by"] = body.agreedBy.text();
    writeName(into, "inspection", body.inspection);
    if (body.notRequired)
        into["not_required"] = true;
    writeText(into, "placard", body.placard);
}

DefectCleared Kind<DefectCleared>::read(ObjectReader& reader) {
    return {reader.name<DefectId>("defect"), reader.name<ItemId>("item"), reader.saying("what"),
            reader.optionalText("ref"), reader.optionalName<InspectionId>("inspection")};
}

void Kind<DefectCleared>::write(json& into, const DefectCleared& body) {
    into["defect"] = body.defect.text();
    into["item"] = body.item.text();
    into["what"] = body.what;
    writeText(into, "ref", body.ref);
    writeName(into, "inspection", body.inspection);
}

RepairMade Kind<RepairMade>::read(ObjectReader& reader) {
    RepairMade body;
    body.item = reader.name<ItemId>("item");
    body.method = reader.saying("method");
    body.place = readPlace(reader);
    body.width = readAmount<Millimetres>(reader, "width_mm");
    body.height = readAmount<Millimetres>(reader, "height_mm");
    body.lot = reader.optionalText("lot");
    body.defect = reader.optionalName<DefectId>("defect");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    return body;
}

void Kind<RepairMade>::write(json& into, const RepairMade& body) {
    into["item"] = body.item.text();
    into["method"] = body.method;
    writePlace(into, body.place);
    writeAmount(into, "width_mm", body.width);
    writeAmount(into, "height_mm", body.height);
    writeText(into, "lot", body.lot);
    writeName(into, "defect", body.defect);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
}

PartReplaced Kind<PartReplaced>::read(ObjectReader& reader) {
    PartReplaced body;
    body.item = reader.name<ItemId>("item");
    body.part = reader.saying("part");
    body.removedSerial = reader.optionalText("removed_serial");
    body.fittedSerial = reader.optionalText("fitted_serial");
    body.releaseDocument = reader.saying("release_document");
    body.defect = reader.optionalName<DefectId>("defect");
    body.inspection = reader.optionalName<InspectionId>("inspection");
    body.line = reader.optionalText("line");
    return body;
}

void Kind<PartReplaced>::write(json& into, const PartReplaced& body) {
    into["item"] = body.item.text();
    into["part"] = body.part;
    writeText(into, "removed_serial", body.removedSerial);
    writeText(into, "fitted_serial", body.fittedSerial);
    into["release_document"] = body.releaseDocument;
    writeName(into, "defect", body.defect);
    writeName(into, "inspection", body.inspection);
    writeText(into, "line", body.line);
}

WorkPerformed Kind<WorkPerformed>::read(ObjectReader& reader) {
    WorkPerformed body;
    body.inspection = reader.name<InspectionId>("inspection");
    body.item = reader.name<ItemId>("item");
    body.what = reader.saying("what");
    body.data = reader.saying("data");
    if (reader.has("grade"))
        body.grade = reader.word("grade", gradeFrom, "servicing, minor, major, standard");
    body.approval = reader.optionalText("approval");
    body.performed = reader.optionalName<PersonId>("performed_by");
    body.line = reader.optionalText("line");
    body.defect = reader.optionalName<DefectId>("defect");
    if (body.grade == Grade::Major && isBlank(body.approval))
        reader.refuse("approval", EntryFault::MajorWithoutApproval);
    return body;
}

void Kind<WorkPerformed>::write(json& into, const WorkPerformed& body) {
    into["inspection"] = body.inspection.text();
    into["item"] = body.item.text();
    into["what"] = body.what;
    into["data"] = body.data;
    if (body.grade)
        into["grade"] = gradeName(*body.grade);
    writeText(into, "approval", body.approval);
    writeName(into, "performed_by", body.performed);
    writeText(into, "line", body.line);
    writeName(into, "defect", body.defect);
}

}
