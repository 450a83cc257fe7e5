// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/bench_sentences.h"

#include "bench/reading/quantity.h"
#include "bench/release/entitlement.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>

namespace crownring::words {

namespace {

QString figure(double value) { return QLocale().toString(value, 'g', 6); }

template <class What>
QString named(const Name<What>& name) {
    return inward(name.text());
}

/// Whether that is a modification or an alteration is the visit's regime to say.
QString gradeWord(Grade grade) {
    switch (grade) {
    case Grade::Servicing:
        return BenchSentences::tr("servicing");
    case Grade::Minor:
        return BenchSentences::tr("minor");
    case Grade::Major:
        return BenchSentences::tr("major");
    case Grade::Standard:
        return BenchSentences::tr("standard (CS-STAN)");
    }
    return {};
}

}

QString BenchSentences::place(const PanelPlace& place) {
    if (place.basket)
        return said(Term{Term::Of::Zone, std::string(basketPlaceName(*place.basket))});
    return joined(
        {place.zone == Zone::Envelope ? QString() : said(Term{Term::Of::Zone, std::string(zoneName(place.zone))}),
         place.gore ? tr("gore %1").arg(*place.gore) : QString(), place.row ? tr("row %1").arg(*place.row) : QString()},
        QStringLiteral(", "));
}

QString BenchSentences::of(const ReadingTaken& e) {
    const auto text = tr("%1: %2 %3").arg(named(e.item), words::said(quantityTerm(e.quantity)), BenchWords::value(e));
    const auto direction = e.conditions.direction ? inward(*e.conditions.direction) : QString();
    return joined({text, place(e.place), direction}, QStringLiteral(", "));
}

QString BenchSentences::of(const InspectionOpened& e) {
    return tr("Inspection %1 opened: %2, %n items", nullptr, static_cast<int>(e.items.size()))
        .arg(named(e.inspection), BenchWords::visit(e.visit));
}

QString BenchSentences::why(WhyNot why, const std::string& page) {
    switch (why) {
    case WhyNot::NotFitted:
        return tr("not fitted");
    case WhyNot::NotAsked:
        return tr("not asked for by the manual (%1)").arg(inward(page));
    case WhyNot::Other:
        break;
    }
    return {};
}

QString BenchSentences::of(const LineSettled& e) {
    const auto state = e.state == LineState::Done            ? tr("done")
                       : e.state == LineState::NotApplicable ? tr("not applicable")
                                                             : tr("open");
    auto text = tr("%1, line %2").arg(named(e.inspection), inward(e.line));
    if (e.item)
        text = tr("%1 of %2").arg(text, named(*e.item));
    return joined({tr("%1: %2").arg(text, state), e.why ? why(*e.why, e.page) : QString(), inward(e.finding)},
                  QStringLiteral(". "));
}

QString BenchSentences::of(const DefectFound& e) {
    const auto form = e.severity == Severity::Minor       ? tr("Defect on %1: %2")
                      : e.severity == Severity::Grounding ? tr("Defect on %1, a danger to flight: %2")
                                                          : tr("Defect on %1, grounds the balloon: %2");
    const auto what = form.arg(named(e.item), e.what.empty() ? tr("a reading failed") : inward(e.what));
    return joined(
        {tr("%1 (%2)").arg(joined({what, place(e.place)}, QStringLiteral(", ")), named(e.defect)),
         e.photographs.empty() ? QString() : tr("%n photographs", nullptr, static_cast<int>(e.photographs.size())),
         e.gradedBy ? tr("graded by %1").arg(named(*e.gradedBy)) : QString()},
        QStringLiteral(", "));
}

QString BenchSentences::of(const DefectDeferred& e) {
    const auto until = joined({e.until ? inward(e.until->iso()) : QString(),
                               e.untilMinutes ? Words::hours(e.untilMinutes->value()) : QString()},
                              tr(" or "));
    return tr("Defect on %1 deferred until %2, agreed by %3: %4 (%5)")
        .arg(named(e.item), until, named(e.agreedBy), inward(e.reason), named(e.defect));
}

QString BenchSentences::of(const DefectCleared& e) {
    return tr("Defect on %1 rectified: %2 (%3)")
        .arg(named(e.item), inward(e.what), joined({inward(e.ref), named(e.defect)}, QStringLiteral(", ")));
}

QString BenchSentences::of(const RepairMade& e) {
    const auto size =
        e.width && e.height ? tr("%1 × %2 mm").arg(figure(e.width->value()), figure(e.height->value())) : QString();
    const auto lot = e.lot.empty() ? QString() : tr("lot %1").arg(inward(e.lot));
    return joined({tr("%1 repaired: %2").arg(named(e.item), inward(e.method)), place(e.place), size, lot},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const PartReplaced& e) {
    const auto off = e.removedSerial.empty() ? QString() : tr("off %1").arg(inward(e.removedSerial));
    const auto fitted = e.fittedSerial.empty() ? QString() : tr("on %1").arg(inward(e.fittedSerial));
    return joined({tr("%1: %2 replaced").arg(named(e.item), inward(e.part)), off, fitted, inward(e.releaseDocument)},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const WorkPerformed& e) {
    const auto grade = e.grade ? gradeWord(*e.grade) : QString();
    const auto by = e.performed ? tr("performed by %1").arg(named(*e.performed)) : QString();
    return joined({tr("Work on %1: %2").arg(named(e.item), inward(e.what)), tr("to %1").arg(inward(e.data)), grade,
                   inward(e.approval), by},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const DirectiveIssued& e) {
    const auto force = e.recommended ? tr("recommended") : tr("mandatory");
    return joined({tr("%1, revision %2, of %3: %4")
                       .arg(named(e.directive), inward(e.revision), inward(e.issuer), inward(e.title)),
                   force, tr("effective %1").arg(inward(e.effective.iso()))},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const DirectiveAnswered& e) {
    const auto what = tr("%1, revision %2").arg(named(e.directive), inward(e.revision));
    const auto whom = e.item ? named(*e.item) : named(e.balloon.value_or(Registration()));
    if (e.answer == DirectiveAnswer::NotApplicable)
        return tr("%1 is not applicable to %2: %3").arg(what, whom, inward(e.why));
    return joined({tr("%1 complied with on %2: %3").arg(what, whom, inward(e.method)),
                   e.amoc.empty() ? QString() : tr("by other means, %1").arg(inward(e.amoc)),
                   e.terminating ? tr("its terminating action") : QString(), inward(e.ref)},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const PartsListed& e) {
    QStringList parts;
    for (const auto& part : e.parts)
        parts += inward(part.part);
    const auto text = tr("Parts of %1: %2").arg(named(e.item), parts.join(QStringLiteral(", ")));
    return e.whole ? tr("%1, and no others").arg(text) : text;
}

QString BenchSentences::of(const ReleaseIncomplete& e) {
    return tr("Inspection %1 released after incomplete maintenance by %2: %n lines are outstanding; %3", nullptr,
              static_cast<int>(e.outstanding.size()))
        .arg(named(e.inspection), named(e.signatory), inward(e.limitations));
}

QString BenchSentences::of(const InspectionClosed& e) {
    const auto who = e.signatory ? named(*e.signatory) : QString();
    switch (e.outcome) {
    case Outcome::Released:
        return tr("Inspection %1 released by %2").arg(named(e.inspection), who);
    case Outcome::Discrepancies:
        return tr("Inspection %1 closed with a list of discrepancies by %2").arg(named(e.inspection), who);
    case Outcome::Abandoned:
    case Outcome::Incomplete:
        return tr("Inspection %1 abandoned").arg(named(e.inspection));
    }
    return {};
}

QString BenchSentences::of(const ReleaseRevoked& e) {
    return tr("Release of inspection %1 withdrawn: %2").arg(named(e.inspection), inward(e.reason));
}

QString BenchSentences::of(const ReturnApproved& e) {
    return tr("Return to service after inspection %1 approved by %2").arg(named(e.inspection), named(e.signatory));
}

QString BenchSentences::of(const ReviewSigned& e) {
    const auto by = inward(e.reviewer.text());
    switch (e.act) {
    case ReviewAct::Review:
        return tr("Airworthiness review of %1 signed by %2: %3, certificate %4, printed to expire on %5")
            .arg(named(e.balloon), by, inward(e.form), inward(e.certificate),
                 inward(e.expires ? e.expires->iso() : std::string()));
    case ReviewAct::Extension:
        return tr("Airworthiness review certificate %1 of %2 extended by %3, printed to expire on %4")
            .arg(inward(e.certificate), named(e.balloon), by, inward(e.expires ? e.expires->iso() : std::string()));
    case ReviewAct::Recommendation:
        return tr("Airworthiness review of %1 recommended by %2: %3, %4")
            .arg(named(e.balloon), by, inward(e.form), inward(e.certificate));
    }
    return {};
}

QString BenchSentences::of(const SignatoryCode& e) {
    if (!e.proof)
        return tr("%1 has a code of his own to sign with").arg(named(e.signatory));
    return e.reason.empty() ? tr("The code of %1 is another").arg(named(e.signatory))
                            : tr("The code of %1 is another: %2").arg(named(e.signatory), inward(e.reason));
}

QString BenchSentences::of(const PersonEntitled& e) {
    const auto capacity = capacityFrom(e.capacity);
    auto text =
        tr("%1 may sign as %2, %3")
            .arg(named(e.person), capacity ? words::said(termOf(*capacity)) : inward(e.capacity), inward(e.licence));
    if (!e.organisation.empty())
        text = tr("%1, for %2").arg(text, inward(e.organisation));
    if (!e.approval.empty())
        text = tr("%1, approval %2").arg(text, inward(e.approval));
    return e.until ? tr("%1, until %2").arg(text, inward(e.until->iso())) : text;
}

QString BenchSentences::of(const TesterCalibrated& e) {
    return tr("Test equipment %1 calibrated, until %2").arg(named(e.tester), inward(e.until.iso()));
}

QString BenchSentences::of(const TypeDescribed& e) {
    return tr("Type %1: %2, revision %3").arg(named(e.type), inward(e.manual), inward(e.revision));
}

QString BenchSentences::of(const LimitStated& e) {
    const auto* quantity = quantityNamed(e.quantity);
    const auto* known = quantity ? unitNamed(e.unit, quantity->dimension) : nullptr;
    const auto unit = inward(known ? known->shown : std::string_view(e.unit));
    const auto bounds = joined({e.least ? tr("at least %1 %2").arg(figure(*e.least), unit) : QString(),
                                e.most ? tr("at most %1 %2").arg(figure(*e.most), unit) : QString()},
                               QStringLiteral(", "));
    return tr("Limit of %1: %2 %3 (%4)")
        .arg(named(e.type), words::said(quantityTerm(e.quantity)), bounds, inward(e.source));
}

QString BenchSentences::of(const FabricStated& e) {
    const auto span = [](const std::optional<int>& first, const std::optional<int>& last, const QString& both,
                         const QString& from, const QString& to) {
        return first && last ? both.arg(*first).arg(*last)
               : first       ? from.arg(*first)
               : last        ? to.arg(*last)
                             : QString();
    };
    return joined({tr("%1: panels of lot %2").arg(named(e.item), inward(e.lot)), inward(e.fabric),
                   span(e.firstGore, e.lastGore, tr("gores %1 to %2"), tr("from gore %1"), tr("to gore %1")),
                   span(e.firstRow, e.lastRow, tr("rows %1 to %2"), tr("from row %1"), tr("to row %1"))},
                  QStringLiteral(", "));
}

QString BenchSentences::of(const TextAdopted& e) {
    return tr("Wording %1, revision %2, adopted by %3")
        .arg(inward(e.text.text()), inward(e.revision), inward(e.organisation));
}

QString BenchSentences::of(const TextConfirmed& e) {
    return tr("%1, revision %2, confirmed by %3 (%4) against %5")
        .arg(inward(e.text ? e.text->text() : e.checklist->text()), inward(e.revision), inward(e.confirmedBy.text()),
             inward(e.licence), inward(e.against));
}

QString BenchSentences::of(const ChecklistAdopted& e) { return tr("Checklist %1 adopted").arg(named(e.checklist)); }

}
