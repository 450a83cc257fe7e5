// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/answer_json.h"

#include "words/question_text.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <array>

namespace crownring::ctl {

namespace {

using nlohmann::ordered_json;

ordered_json orNull(const std::optional<std::int64_t>& value) { return value ? ordered_json(*value) : ordered_json(); }

ordered_json asJson(CivilDate date) { return date.iso(); }

template <class What>
ordered_json asJson(Count<What> count) {
    return count.value();
}

/// What is told of a limit that is proven, else null.
template <class Told>
ordered_json told(const LimitState& limit, Told of) {
    if (const auto* reach = limit.calendar())
        return asJson(of(*reach));
    const auto* reach = limit.usage();
    return reach ? asJson(of(*reach)) : ordered_json();
}

ordered_json lastOf(const LimitState& limit) {
    return told(limit, [](const auto& reach) { return reach.last; });
}
ordered_json dueOf(const LimitState& limit) {
    return told(limit, [](const auto& reach) { return reach.due; });
}
ordered_json toleranceLeftOf(const LimitState& limit) {
    return told(limit, [](const auto& reach) { return reach.toleranceLeft; });
}

ordered_json limitJson(const LimitState& limit) {
    return {{"clock", clockNameText(limit.clock)},
            {"last", lastOf(limit)},
            {"due", dueOf(limit)},
            {"left", leftJson(&limit)},
            {"tolerance_left", toleranceLeftOf(limit)},
            {"standing", standingText(limit.standing)}};
}

}

ordered_json leftJson(const LimitState* limit) {
    return limit ? told(*limit, [](const auto& reach) { return reach.left; }) : ordered_json();
}

void addDueAndLeft(ordered_json& object, const std::optional<LimitState>& limit) {
    object["due"] = limit ? dueOf(*limit) : ordered_json();
    object["left"] = leftJson(limit ? &*limit : nullptr);
}

void addFigures(ordered_json& object, const Figures& figures) {
    object["minutes"] = orNull(count(figures.minutes));
    object["landings"] = orNull(count(figures.landings));
    object["inflations"] = orNull(count(figures.inflations));
}

std::string_view becauseText(Because because) {
    switch (because) {
    case Because::Limits:
        return "limits";
    case Because::NotRequired:
        return "not-required";
    case Because::Exempt:
        return "exempt";
    case Because::Triggered:
        return "triggered";
    case Because::TypeMissing:
        return "type-missing";
    case Because::SerialMissing:
        return "serial-missing";
    case Because::Done:
        return "done";
    case Because::Ended:
        return "ended";
    case Because::RowFull:
        return "row-full";
    case Because::Defect:
        return "defect";
    case Because::Deferred:
        return "deferred";
    case Because::DeferredElsewhere:
        return "deferred-elsewhere";
    case Because::Fabric:
        return "fabric";
    case Because::Listed:
        return "listed";
    case Because::Incomplete:
        return "incomplete";
    case Because::Directive:
        return "directive";
    case Because::DirectiveUnknown:
        return "directive-unknown";
    }
    return {};
}

ordered_json rowJson(const DueRow& row) {
    const auto& requirement = *row.requirement;
    const auto& state = row.state;
    ordered_json object{{"balloon", row.item->balloon ? ordered_json(row.item->balloon->text()) : ordered_json()},
                        {"item", row.item->id.text()},
                        {"kind", itemKindName(row.item->kind)},
                        {"requirement", requirement.id.text()},
                        {"title", words::said(requirement.title).toStdString()},
                        {"source", words::said(requirement.source).toStdString()},
                        {"standing", standingText(state.standing)},
                        {"governs", state.governs ? ordered_json(clockNameText(*state.governs)) : ordered_json()},
                        {"limits", ordered_json::array()},
                        {"programme", row.programme->id.text()},
                        {"required", isRequired(state)},
                        {"force", requirement.force == Force::Mandatory ? "mandatory" : "recommended"},
                        {"blocks", requirement.blocks == Blocks::Flight ? "flight" : "filling"},
                        {"evidence", state.evidence ? ordered_json(evidenceName(*state.evidence)) : ordered_json()},
                        {"because", becauseText(state.because)}};
    if (state.unsupported)
        object["supported"] = false;
    if (requirement.toleranceFor == ToleranceFor::Positioning)
        object["tolerance_for"] = "positioning";
    for (const auto& limit : state.limits)
        object["limits"].push_back(limitJson(limit));
    if (state.trigger)
        object["trigger"] = {{"event", state.trigger->event},
                             {"on", state.trigger->stamp.at.on().iso()},
                             {"entry", state.trigger->stamp.id.text()}};
    return object;
}

ordered_json projectedJson(const std::optional<DateBand>& band) {
    if (!band)
        return {};
    const auto day = [](const std::optional<CivilDate>& date) { return date ? asJson(*date) : ordered_json(); };
    return {{"p10", day(band->p10)}, {"p50", day(band->p50)}, {"p90", day(band->p90)}};
}

ordered_json unsupportedJson(const std::vector<InspectionId>& unsupported) {
    auto names = ordered_json::array();
    for (const auto& each : unsupported)
        names.push_back(each.text());
    return names;
}

std::string unsupportedText(const InspectionId& inspection) {
    return inspection.text() + " is signed, and no longer supported by the record";
}

ordered_json unsupportedJson(const std::vector<Entry>& reviews) {
    auto names = ordered_json::array();
    for (const auto& each : reviews) {
        const auto& certificate = std::get<ReviewSigned>(each.body).certificate;
        names.push_back(certificate.empty() ? each.id.text() : certificate);
    }
    return names;
}

std::string unsupportedText(const Entry& review) {
    return "the airworthiness review of " + review.on.iso() + " is signed, and no longer supported by the record";
}

ordered_json questionJson(const Question& question) {
    return {{"question", questionName(question.kind)},
            {"subject", question.subject},
            {"entry", question.stamp.id.empty() ? ordered_json() : ordered_json(question.stamp.id.text())},
            {"on", question.stamp.id.empty() ? ordered_json() : ordered_json(question.stamp.at.on().iso())},
            {"text", words::questionText(question).toStdString()}};
}

Result<void> addUnread(ordered_json& answer, Books& books) {
    const auto unread = books.unreadable();
    if (!unread)
        return tl::unexpected(unread.error());
    if (unread->empty())
        return {};
    answer["unread"] = ordered_json::array();
    for (const auto& question : *unread)
        answer["unread"].push_back(questionJson(question));
    return {};
}

}
