// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/review_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(ReviewFault fault) {
    switch (fault) {
    case ReviewFault::NotItsEnvelope:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not the envelope of %2 on that day"),
                QT_TRANSLATE_NOOP("Problem", "name the envelope that is fitted to it: it carries the registration")};
    case ReviewFault::NoProgramme:
        return {
            QT_TRANSLATE_NOOP("Problem", "no programme in force asks for a review of %1 on that day, so its expiry "
                                         "cannot be held against a rule"),
            QT_TRANSLATE_NOOP("Problem",
                              "adopt the programme of its state of registry for it, from that day or before; the rules "
                              "of the United States know no such certificate")};
    case ReviewFault::MayNotReview:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP(
                    "Problem", "have it signed by somebody who may, or enter the certificate from its paper as done")};
    case ReviewFault::PrintedDiffers:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is printed, %2 is what the rule gives"),
                QT_TRANSLATE_NOOP("Problem",
                                  "have what is printed corrected, or enter the certificate before this one first")};
    case ReviewFault::NothingToExtend:
        return {QT_TRANSLATE_NOOP("Problem", "the record has no certificate of %1 that could be extended"),
                QT_TRANSLATE_NOOP("Problem", "enter the last review from its paper first")};
    case ReviewFault::ExpiredBefore:
        return {QT_TRANSLATE_NOOP("Problem", "the certificate expired on %1: an expired one is not extended"),
                QT_TRANSLATE_NOOP("Problem", "carry out a review")};
    case ReviewFault::ExtendedTooOften:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "the certificate of %1 was extended %2 times in a row: that is as often as it may be"),
                QT_TRANSLATE_NOOP("Problem", "carry out a review")};
    case ReviewFault::LineNotDone:
        return {QT_TRANSLATE_NOOP("Problem", "the line '%1' of inspection %2 is not done, and the review rests on it"),
                QT_TRANSLATE_NOOP("Problem", "carry it out and say so before the review is signed")};
    case ReviewFault::NoLineForReview:
        return {
            QT_TRANSLATE_NOOP("Problem", "no line of inspection %1 is for the review"),
            QT_TRANSLATE_NOOP(
                "Problem",
                "open the visit with the review in its work, or sign without naming the visit, where that is allowed")};
    case ReviewFault::StandsAgainst:
        return {QT_TRANSLATE_NOOP("Problem", "%1 stands against it on %2"),
                QT_TRANSLATE_NOOP("Problem", "put it right, or enter what was done, before the review is signed")};
    case ReviewFault::AuthorisationDiffers:
        return {QT_TRANSLATE_NOOP("Problem", "what the review is signed under is '%1'"),
                QT_TRANSLATE_NOOP("Problem", "write that, or leave it to the program")};
    case ReviewFault::StatedByNobody:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "that %1 was done on %2 is only said, and reviews are signed in this record since %3"),
                QT_TRANSLATE_NOOP("Problem", "sign it, or enter its paper with number, signatory and authorisation")};
    case ReviewFault::ExpiresOfNoCertificate:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "an expiry is printed on an airworthiness review certificate, and '%1' has none"),
                QT_TRANSLATE_NOOP("Problem", "leave 'expires' out")};
    case ReviewFault::ExpiresTooLate:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is printed, and a certificate of that day ends on %2 at the latest"),
                QT_TRANSLATE_NOOP("Problem", "look at the paper again")};
    case ReviewFault::CertificateIsFixed:
        return {QT_TRANSLATE_NOOP("Problem", "what a certificate says is not corrected into something else"),
                QT_TRANSLATE_NOOP(
                    "Problem", "void the entry, saying who and why, and sign the one that was printed in its place")};
    case ReviewFault::VoidUnsaid:
        return {QT_TRANSLATE_NOOP("Problem", "a signed review is voided by nobody, or without a reason"),
                QT_TRANSLATE_NOOP("Problem", "say by whom and why")};
    case ReviewFault::NoReview:
        return {QT_TRANSLATE_NOOP("Problem", "no airworthiness review '%1' is in the record up to %2"),
                QT_TRANSLATE_NOOP("Problem", "see crownringctl review list for what is")};
    }
    return {};
}

}
