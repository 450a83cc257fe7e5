// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/rig_up_answer.h"

#include "ctl/due_table.h"
#include "words/question_text.h"
#include "words/sentence.h"
#include "words/words.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

std::string incompleteText(const RigUpReason& reason) {
    const std::string part(itemKindName(reason.part));
    if (reason.count == 0)
        return "no " + part + " is in the kit";
    return std::to_string(reason.count) + " " + part + "s are in the kit: a balloon has one";
}

}

std::string_view reasonName(RigUpReason::Kind kind) {
    switch (kind) {
    case RigUpReason::Kind::Standing:
        return "standing";
    case RigUpReason::Kind::TooLong:
        return "too-long";
    case RigUpReason::Kind::Positioning:
        return "positioning";
    case RigUpReason::Kind::Incomplete:
        return "incomplete";
    case RigUpReason::Kind::OutOfService:
        return "out-of-service";
    case RigUpReason::Kind::BeyondRelease:
        return "beyond-release";
    case RigUpReason::Kind::CannotSay:
    case RigUpReason::Kind::NotEntered:
    case RigUpReason::Kind::Unread:
        return "cannot-say";
    }
    return "";
}

std::string reasonText(const RigUpReason& reason) {
    if (reason.kind == RigUpReason::Kind::Incomplete)
        return incompleteText(reason);
    if (reason.kind == RigUpReason::Kind::CannotSay)
        return reason.item->id.text() + ": no mandatory requirement that was adopted binds it, so nothing can be said";
    if (reason.kind == RigUpReason::Kind::NotEntered)
        return reason.unknown->text() +
               " is a part of the kit and not in the record on that day, so nothing can be said";
    if (reason.kind == RigUpReason::Kind::OutOfService)
        return reason.item->id.text() + " is out of service: " + words::said(reasonOf(*reason.item->out)).toStdString();
    if (reason.kind == RigUpReason::Kind::BeyondRelease)
        return reason.item->id.text() + ": " + words::said(*reason.beyond).toStdString();
    if (reason.kind == RigUpReason::Kind::Unread)
        return words::questionText(*reason.unread).toStdString();
    const auto& row = *reason.row;
    auto text = row.item->id.text() + ": " + words::said(row.requirement->title).toStdString() + " is " +
                std::string(standingText(row.state.standing));
    if (row.state.because == Because::Triggered)
        text += " after " + words::Words::event(row.state.trigger->event).toStdString() + " on " +
                row.state.trigger->stamp.at.on().iso();
    else if (row.state.because == Because::DeferredElsewhere)
        text += ". " + words::said(row.requirement->source).toStdString();
    else if (row.state.because == Because::TypeMissing)
        text += ", because the item's type is not recorded";
    else if (row.state.because == Because::SerialMissing)
        text += ", because the item's serial number is not recorded";
    if (reason.limit && reason.limit->isProven())
        text += ", " + leftText(*reason.limit);
    if (reason.kind == RigUpReason::Kind::TooLong)
        text += ": less than the flight needs";
    if (reason.kind == RigUpReason::Kind::Positioning)
        text += ": this tolerance only serves to reach the place of the inspection";
    return text;
}

std::string toleranceText(const ToleranceUse& use) {
    const auto* forWhat = use.row->requirement->toleranceFor == ToleranceFor::Positioning
                              ? "; it only serves to reach the place of the inspection"
                              : "";
    return use.row->item->id.text() + ": " + words::said(use.row->requirement->title).toStdString() + ", due " +
           words::Words::due(use.limit).toStdString() + ", of the tolerance " +
           words::Words::toleranceLeft(use.limit).toStdString() + " left before the flight" + forWhat;
}

nlohmann::ordered_json reasonJson(const RigUpReason& reason) {
    nlohmann::ordered_json object{{"reason", reasonName(reason.kind)}, {"text", reasonText(reason)}};
    if (reason.kind == RigUpReason::Kind::Incomplete) {
        object["kind"] = itemKindName(reason.part);
        object["count"] = reason.count;
    } else if (reason.kind == RigUpReason::Kind::CannotSay || reason.kind == RigUpReason::Kind::OutOfService ||
               reason.kind == RigUpReason::Kind::BeyondRelease) {
        object["item"] = reason.item->id.text();
    } else if (reason.kind == RigUpReason::Kind::NotEntered) {
        object["item"] = reason.unknown->text();
    } else if (reason.kind == RigUpReason::Kind::Unread) {
        object["entry"] = reason.unread->subject;
    } else {
        object["item"] = reason.row->item->id.text();
        object["requirement"] = reason.row->requirement->id.text();
        object["standing"] = standingText(reason.row->state.standing);
    }
    return object;
}

}
