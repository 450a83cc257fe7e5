// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/question_text.h"

#include "words/sentence.h"

#include <QCoreApplication>

namespace crownring::words {

namespace {

const char* questionOf(Question::Kind kind) {
    switch (kind) {
    case Question::Kind::FittedElsewhere:
        return QT_TRANSLATE_NOOP("Question", "%1 was fitted to a second balloon without having been removed from the "
                                             "first; add the removal, or void the fitting that never was");
    case Question::Kind::FittedAgain:
        return QT_TRANSLATE_NOOP(
            "Question", "%1 was fitted to a balloon that it was on already; void the fitting that says it twice");
    case Question::Kind::RemovedNotFitted:
        return QT_TRANSLATE_NOOP(
            "Question", "%1 was removed from a balloon that it was not on; add the fitting, or correct the removal");
    case Question::Kind::ClockBackward:
        return QT_TRANSLATE_NOOP(
            "Question", "%1 has a stated clock that is less than one stated before; correct the one that was misread");
    case Question::Kind::ClockDiffers:
        return QT_TRANSLATE_NOOP("Question", "%1 has a stated clock that is not what its flights make it; look for "
                                             "flights that are missing or logged twice, or correct the figure");
    case Question::Kind::EnteredTwice:
        return QT_TRANSLATE_NOOP("Question",
                                 "%1 was entered twice; the earlier entry stands, void the one that is wrong");
    case Question::Kind::NotEntered:
        return QT_TRANSLATE_NOOP("Question",
                                 "%1 is spoken of but was never entered, or its entry was voided; enter it");
    case Question::Kind::CorrectionIdle:
        return QT_TRANSLATE_NOOP(
            "Question",
            "%1 has a correction whose result would make no sense; it was left out, void it and write another");
    case Question::Kind::OnlyStated:
        return QT_TRANSLATE_NOOP("Question", "%1 counts from what is only stated; correct it to name the paper, who "
                                             "signed that and the licence");
    case Question::Kind::FlownOutOfService:
        return QT_TRANSLATE_NOOP("Question", "%1 flew while it was out of service; correct the flight, or the day on "
                                             "which it went out of service or came back");
    case Question::Kind::HappenedOutOfService:
        return QT_TRANSLATE_NOOP(
            "Question", "%1 was out of service, or had another registration already, when an event is reported of "
                        "it, which may thus count nowhere; report it of what the balloon is called now, or "
                        "correct the day");
    case Question::Kind::TwoStates:
        return QT_TRANSLATE_NOOP("Question", "%1 is said to be in two states from one moment on; what puts it out of "
                                             "service holds, correct or void the one that is wrong");
    case Question::Kind::CodeByAnother:
        return QT_TRANSLATE_NOOP("Question", "%1 signs with a code that somebody else set in that name and may know; "
                                             "it is answered once %1 has set one of his own");
    case Question::Kind::FilledOutOfService:
        return QT_TRANSLATE_NOOP("Question",
                                 "%1 was filled while it was out of service; correct the filling, or the day "
                                 "on which it went out of service or came back");
    case Question::Kind::Unreadable:
        return QT_TRANSLATE_NOOP("Question", "%1 is an entry that cannot be read, so nothing follows from it; void it "
                                             "with a reason, and write it again as it should be");
    }
    return "";
}

}

QString questionText(const Question& question, const Titles& titles) {
    const auto text = sentence("Question", questionOf(question.kind), {question.subject});
    if (question.detail == Argument())
        return text;
    const auto detail = question.kind == Question::Kind::OnlyStated
                            ? titleOf(RequirementId(question.detail.written()), titles).toStdString()
                            : question.detail;
    return sentence("Question", QT_TRANSLATE_NOOP("Question", "%1 (%2)"), {text.toStdString(), detail});
}

}
