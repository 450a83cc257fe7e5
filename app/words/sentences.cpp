// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/sentences.h"

#include "registry/flight_said.h"
#include "rules/programme/programme.h"
#include "words/ahead/plan_sentences.h"
#include "words/bench_sentences.h"
#include "words/border.h"
#include "words/key_words.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <type_traits>

namespace crownring::words {

namespace {

QString stated(const Figures& figures) {
    QStringList parts;
    if (figures.minutes)
        parts += Words::hours(figures.minutes->value());
    if (figures.landings)
        parts += Words::landings(figures.landings->value());
    if (figures.inflations)
        parts += Words::inflations(figures.inflations->value());
    return parts.join(QStringLiteral(", "));
}

/// As its text calls it; before it is posted the text may be the shelf's alone. Its id where nobody has it at hand.
QString programmeOf(const ProgrammeAdopted& e) {
    const auto programme = programmeFrom(e.document.empty() ? shelfText(e.programme) : e.document);
    return programme ? said(programme->title) : inward(e.programme.text());
}

struct Teller {
    const Titles& titles;

    QString operator()(const ItemEntered& e) const {
        QStringList more{Words::kind(e.kind)};
        if (e.type)
            more += inward(*e.type);
        if (e.serial)
            more += Sentences::tr("serial %1").arg(inward(*e.serial));
        if (e.made)
            more += Sentences::tr("made %1").arg(inward(e.made->iso()));
        if (!e.lot.empty())
            more += Sentences::tr("lot %1").arg(inward(e.lot));
        if (e.release)
            more += releaseOf(*e.release);
        if (e.vessel)
            more += vesselOf(*e.vessel);
        if (!(e.broughtForward == newFigures))
            more += Sentences::tr("brought forward %1").arg(Words::figures(e.broughtForward));
        return Sentences::tr("%1 entered: %2").arg(inward(e.item.text()), more.join(QStringLiteral(", ")));
    }
    static QStringList vesselOf(const VesselStamped& vessel) {
        QStringList parts;
        if (vessel.material)
            parts += Words::vesselMaterial(*vessel.material);
        if (!vessel.specification.empty())
            parts += inward(vessel.specification);
        if (vessel.litres)
            parts += Sentences::tr("%1 l of water").arg(QLocale().toString(*vessel.litres, 'g', 4));
        if (vessel.kilograms)
            parts += Sentences::tr("tare %1 kg").arg(QLocale().toString(*vessel.kilograms, 'g', 4));
        return parts;
    }
    QString operator()(const BalloonEntered& e) const {
        return e.title.empty() ? Sentences::tr("Balloon %1 entered").arg(inward(e.balloon.text()))
                               : Sentences::tr("Balloon %1 entered: %2").arg(inward(e.balloon.text()), inward(e.title));
    }
    QString operator()(const BalloonOwned& e) const {
        const auto text = Sentences::tr("%1 is owned by %2").arg(inward(e.balloon.text()), inward(e.owner));
        return e.operatedBy.empty() ? text : Sentences::tr("%1, operated by %2").arg(text, inward(e.operatedBy));
    }
    QString operator()(const ItemFitted& e) const {
        QStringList more;
        if (!e.place.empty())
            more += inward(e.place);
        if (e.release)
            more += releaseOf(*e.release);
        if (!e.lot.empty())
            more += Sentences::tr("lot %1").arg(inward(e.lot));
        const auto text =
            Sentences::tr("%1 fitted to %2").arg(inward(e.item.text()), inward(e.to ? e.to->text() : e.balloon.text()));
        return more.isEmpty() ? text : Sentences::tr("%1, %2").arg(text, more.join(QStringLiteral(", ")));
    }
    QString operator()(const ItemRemoved& e) const {
        return Sentences::tr("%1 removed from %2")
            .arg(inward(e.item.text()), inward(e.from ? e.from->text() : e.balloon.text()));
    }
    static QString releaseOf(const PartRelease& release) {
        return Sentences::tr("released by %1 %2").arg(Words::releaseForm(release.form), inward(release.number));
    }
    QString operator()(const CylinderFilled& e) const {
        return Sentences::tr("%1 filled to %2 % of its water capacity")
            .arg(inward(e.item.text()), QLocale().toString(e.percent, 'g', 4));
    }
    QString operator()(const ItemState& e) const {
        if (e.state == ServiceState::Away && !e.to.empty())
            return Sentences::tr("%1 is away for a test or work, at %2").arg(inward(e.item.text()), inward(e.to));
        const auto text = stateOf(e.item.text(), e.state, e.to);
        return e.release ? Sentences::tr("%1, %2").arg(text, releaseOf(*e.release)) : text;
    }
    QString operator()(const BalloonState& e) const { return stateOf(e.balloon.text(), e.state, e.to); }
    static QString stateOf(const std::string& name, ServiceState state, const std::string& to) {
        if (state == ServiceState::InService)
            return Sentences::tr("%1 is back in service").arg(inward(name));
        return to.empty() ? Sentences::tr("%1 is out of service: %2").arg(inward(name), Words::service(state))
                          : Sentences::tr("%1 is out of service: sold to %2").arg(inward(name), inward(to));
    }
    QString operator()(const BalloonRenamed& e) const {
        return Sentences::tr("%1 flies as %2 from now on").arg(inward(e.balloon.text()), inward(e.to.text()));
    }
    QString operator()(const FlightLogged& e) const {
        QString text = Sentences::tr("%1 flew %2: %3, %4")
                           .arg(inward(e.balloon.text()), Words::hours(e.use.minutes.value()),
                                Words::landings(e.use.landings.value()), Words::inflations(e.use.inflations.value()));
        if (e.hottest)
            text = Sentences::tr("%1, at most %2 °C").arg(text, QLocale().toString(e.hottest->value(), 'f', 0));
        if (e.tethered)
            text = Sentences::tr("%1, tethered").arg(text);
        const auto figure = [](double value) { return QLocale().toString(value, 'g', 4); };
        if (e.fuelWeighed)
            text = Sentences::tr("%1, %2 kg of fuel").arg(text, figure(e.fuelWeighed->value()));
        if (e.fuelRead)
            text = Sentences::tr("%1, %2 l of fuel").arg(text, figure(e.fuelRead->value()));
        if (e.outside)
            text = Sentences::tr("%1, %2 °C outside").arg(text, figure(e.outside->value()));
        if (e.load)
            text = Sentences::tr("%1, %2 kg aboard").arg(text, figure(e.load->value()));
        if (const auto source = said(sourceOf(e)); !source.isEmpty())
            text = Sentences::tr("%1, %2").arg(text, source);
        if (e.kit) {
            QStringList names;
            for (const auto& item : *e.kit)
                names += inward(item.text());
            text = Sentences::tr("%1, with %2").arg(text, names.join(QStringLiteral(", ")));
        }
        return text;
    }
    QString operator()(const RequirementDone& e) const {
        QString text = Sentences::tr("%1 done on %2").arg(titleOf(e.requirement, titles), inward(e.item.text()));
        if (!e.method.empty())
            text = Sentences::tr("%1, %2").arg(text, inward(e.method));
        if (const auto clock = stated(e.clock); !clock.isEmpty())
            text = Sentences::tr("%1, at %2").arg(text, clock);
        if (!e.mark.empty())
            text = Sentences::tr("%1, tester's mark %2").arg(text, inward(e.mark));
        if (!e.ref.empty())
            text = Sentences::tr("%1 (%2)").arg(text, inward(e.ref));
        return e.expires ? Sentences::tr("%1, printed to expire on %2").arg(text, inward(e.expires->iso())) : text;
    }
    QString operator()(const ProgrammeAdopted& e) const {
        struct Whom {
            QString operator()(const BoundBalloons& b) const {
                return b.balloons.size() == 1 ? inward(b.balloons.front().text())
                                              : Sentences::tr("%1 balloons").arg(b.balloons.size());
            }
            QString operator()(const BoundItems& b) const {
                return b.items.size() == 1 ? inward(b.items.front().text())
                                           : Sentences::tr("%1 items").arg(b.items.size());
            }
            QString operator()(const BoundEverything&) const { return Sentences::tr("everything"); }
        };
        return Sentences::tr("Programme %1 adopted for %2").arg(programmeOf(e), std::visit(Whom{}, e.bound));
    }
    template <class OfTheBench>
    QString operator()(const OfTheBench& e) const {
        return BenchSentences::of(e);
    }
    QString operator()(const EventReported& e) const {
        const auto subject = std::visit([](const auto& name) { return inward(name.text()); }, e.subject);
        const auto told = Sentences::tr("%1 reported of %2").arg(Words::event(e.event), subject);
        return joined(
            {told, e.hottest ? Sentences::tr("%1 °C").arg(QLocale().toString(e.hottest->value(), 'f', 0)) : QString(),
             e.lasted ? Sentences::tr("for %1").arg(Words::hours(e.lasted->value())) : QString(),
             e.altitude ? Sentences::tr("at an altitude of %1 m").arg(QLocale().toString(e.altitude->value(), 'f', 0))
                        : QString()},
            QStringLiteral(", "));
    }
    QString operator()(const EventNotified& e) const {
        const auto subject = std::visit([](const auto& name) { return inward(name.text()); }, e.subject);
        const auto told =
            e.to == Informed::Authority
                ? Sentences::tr("An event of %1 was reported to the authority").arg(subject)
                : Sentences::tr("An event of %1 was reported to the holder of the type certificate").arg(subject);
        return e.ref.empty() ? told : Sentences::tr("%1 (%2)").arg(told, inward(e.ref));
    }
    QString operator()(const EntryCorrected& e) const {
        return Sentences::tr("Correction of entry %1: %2").arg(shortId(e.replaces.text()), changesSaid(e.with));
    }
    static QString reasonOf(const EntryVoided& e) {
        const auto known = voidReasonFrom(e.reason);
        if (!known)
            return inward(e.reason);
        switch (*known) {
        case VoidReason::Undone:
            return Sentences::tr("undone at once");
        case VoidReason::TakenBack:
            return Sentences::tr("taken back at the bench");
        case VoidReason::ReadingTakenBack:
            return Sentences::tr("its reading was taken back at the bench");
        }
        return {};
    }
    QString operator()(const EntryVoided& e) const {
        return e.reason.empty() ? Sentences::tr("Entry %1 voided").arg(shortId(e.voids.text()))
                                : Sentences::tr("Entry %1 voided: %2").arg(shortId(e.voids.text()), reasonOf(e));
    }
    QString operator()(const UsePlanned& e) const { return PlanSentences::of(e); }
    QString operator()(const FlightPlanned& e) const { return PlanSentences::of(e); }
    QString operator()(const VisitPlanned& e) const {
        QStringList works;
        for (const auto& work : e.covers)
            works += Sentences::tr("%1 of %2").arg(titleOf(work.requirement, titles), inward(work.item.text()));
        return PlanSentences::of(e, works);
    }
};

template <class Said>
using Of = std::type_identity<Said>;

/// What an entry of a kind is called in lists.
struct Word {
    const char* operator()(Of<ItemEntered>) const { return QT_TRANSLATE_NOOP("Sentences", "item"); }
    const char* operator()(Of<BalloonEntered>) const { return QT_TRANSLATE_NOOP("Sentences", "balloon"); }
    const char* operator()(Of<CylinderFilled>) const { return QT_TRANSLATE_NOOP("Sentences", "filling of a cylinder"); }
    const char* operator()(Of<ItemFitted>) const { return QT_TRANSLATE_NOOP("Sentences", "fitting"); }
    const char* operator()(Of<ItemRemoved>) const { return QT_TRANSLATE_NOOP("Sentences", "removal"); }
    const char* operator()(Of<FlightLogged>) const { return QT_TRANSLATE_NOOP("Sentences", "flight"); }
    const char* operator()(Of<RequirementDone>) const { return QT_TRANSLATE_NOOP("Sentences", "requirement done"); }
    const char* operator()(Of<ProgrammeAdopted>) const { return QT_TRANSLATE_NOOP("Sentences", "programme"); }
    const char* operator()(Of<ReadingTaken>) const { return QT_TRANSLATE_NOOP("Sentences", "reading"); }
    const char* operator()(Of<EventReported>) const { return QT_TRANSLATE_NOOP("Sentences", "event"); }
    const char* operator()(Of<EventNotified>) const { return QT_TRANSLATE_NOOP("Sentences", "report of an event"); }
    const char* operator()(Of<EntryCorrected>) const { return QT_TRANSLATE_NOOP("Sentences", "correction"); }
    const char* operator()(Of<EntryVoided>) const { return QT_TRANSLATE_NOOP("Sentences", "void"); }
    const char* operator()(Of<InspectionOpened>) const { return QT_TRANSLATE_NOOP("Sentences", "inspection opened"); }
    const char* operator()(Of<LineSettled>) const { return QT_TRANSLATE_NOOP("Sentences", "checklist line"); }
    const char* operator()(Of<DefectFound>) const { return QT_TRANSLATE_NOOP("Sentences", "defect"); }
    const char* operator()(Of<DefectDeferred>) const { return QT_TRANSLATE_NOOP("Sentences", "defect deferred"); }
    const char* operator()(Of<DefectCleared>) const { return QT_TRANSLATE_NOOP("Sentences", "defect rectified"); }
    const char* operator()(Of<RepairMade>) const { return QT_TRANSLATE_NOOP("Sentences", "repair"); }
    const char* operator()(Of<PartReplaced>) const { return QT_TRANSLATE_NOOP("Sentences", "part replaced"); }
    const char* operator()(Of<WorkPerformed>) const { return QT_TRANSLATE_NOOP("Sentences", "work performed"); }
    const char* operator()(Of<ReleaseIncomplete>) const {
        return QT_TRANSLATE_NOOP("Sentences", "release after incomplete maintenance");
    }
    const char* operator()(Of<BalloonOwned>) const { return QT_TRANSLATE_NOOP("Sentences", "owner"); }
    const char* operator()(Of<ReviewSigned>) const { return QT_TRANSLATE_NOOP("Sentences", "airworthiness review"); }
    const char* operator()(Of<InspectionClosed>) const { return QT_TRANSLATE_NOOP("Sentences", "inspection closed"); }
    const char* operator()(Of<PersonEntitled>) const { return QT_TRANSLATE_NOOP("Sentences", "authorisation"); }
    const char* operator()(Of<TesterCalibrated>) const { return QT_TRANSLATE_NOOP("Sentences", "calibration"); }
    const char* operator()(Of<TypeDescribed>) const { return QT_TRANSLATE_NOOP("Sentences", "type"); }
    const char* operator()(Of<LimitStated>) const { return QT_TRANSLATE_NOOP("Sentences", "limit of a type"); }
    const char* operator()(Of<ChecklistAdopted>) const { return QT_TRANSLATE_NOOP("Sentences", "checklist"); }
    const char* operator()(Of<TextAdopted>) const { return QT_TRANSLATE_NOOP("Sentences", "wording adopted"); }
    const char* operator()(Of<TextConfirmed>) const { return QT_TRANSLATE_NOOP("Sentences", "wording confirmed"); }
    const char* operator()(Of<ReleaseRevoked>) const { return QT_TRANSLATE_NOOP("Sentences", "release withdrawn"); }
    const char* operator()(Of<ReturnApproved>) const { return QT_TRANSLATE_NOOP("Sentences", "return approved"); }
    const char* operator()(Of<FabricStated>) const { return QT_TRANSLATE_NOOP("Sentences", "lot of panels"); }
    const char* operator()(Of<ItemState>) const { return QT_TRANSLATE_NOOP("Sentences", "state of an item"); }
    const char* operator()(Of<BalloonState>) const { return QT_TRANSLATE_NOOP("Sentences", "state of a balloon"); }
    const char* operator()(Of<BalloonRenamed>) const { return QT_TRANSLATE_NOOP("Sentences", "new registration"); }
    const char* operator()(Of<DirectiveIssued>) const { return QT_TRANSLATE_NOOP("Sentences", "directive"); }
    const char* operator()(Of<DirectiveAnswered>) const { return QT_TRANSLATE_NOOP("Sentences", "directive answered"); }
    const char* operator()(Of<PartsListed>) const { return QT_TRANSLATE_NOOP("Sentences", "list of parts"); }
    const char* operator()(Of<UsePlanned>) const { return QT_TRANSLATE_NOOP("Sentences", "use planned"); }
    const char* operator()(Of<FlightPlanned>) const { return QT_TRANSLATE_NOOP("Sentences", "flight planned"); }
    const char* operator()(Of<VisitPlanned>) const { return QT_TRANSLATE_NOOP("Sentences", "visit planned"); }
    const char* operator()(Of<SignatoryCode>) const { return QT_TRANSLATE_NOOP("Sentences", "code of a signatory"); }
};

}

Titles titlesOf(const std::vector<Adoption>& adoptions) {
    Titles titles;
    for (const auto& adoption : adoptions)
        for (const auto& requirement : adoption.programme->requirements)
            titles[requirement.id] = said(requirement.title).toStdString();
    return titles;
}

QString titleOf(const RequirementId& requirement, const Titles& titles) {
    const auto at = titles.find(requirement);
    return inward(at == titles.end() ? requirement.text() : at->second);
}

QString Sentences::of(const Entry& entry, const Titles& titles) { return std::visit(Teller{titles}, entry.body); }

QString Sentences::of(const JournalLine& line, const Titles& titles) {
    return line.unread ? tr("An entry that cannot be read: %1").arg(message(line.unread->why))
                       : of(nowOf(line), titles);
}

QString Sentences::kindOf(const JournalLine& line) {
    return kind(line.unread ? std::string_view(line.unread->kind) : kindName(nowOf(line).body));
}

QString Sentences::kind(std::string_view name) {
    static const auto words = ofEachKind([]<class Said>() { return Word{}(Of<Said>()); });
    const auto& names = kindNames();
    const auto found = std::ranges::find(names, name);
    return found == names.end() ? inward(name) : tr(words[static_cast<std::size_t>(found - names.begin())]);
}

QString Sentences::question(Question::Kind kind) {
    switch (kind) {
    case Question::Kind::FittedElsewhere:
        return tr("fitted while on another balloon");
    case Question::Kind::FittedAgain:
        return tr("fitted where it was already");
    case Question::Kind::RemovedNotFitted:
        return tr("removed from where it was not");
    case Question::Kind::ClockBackward:
        return tr("clock runs backward");
    case Question::Kind::ClockDiffers:
        return tr("stated clock differs");
    case Question::Kind::EnteredTwice:
        return tr("entered twice");
    case Question::Kind::NotEntered:
        return tr("never entered");
    case Question::Kind::CorrectionIdle:
        return tr("correction without effect");
    case Question::Kind::Unreadable:
        return tr("cannot be read");
    case Question::Kind::OnlyStated:
        return tr("only stated");
    case Question::Kind::FlownOutOfService:
        return tr("flown while out of service");
    case Question::Kind::HappenedOutOfService:
        return tr("an event while out of service");
    case Question::Kind::TwoStates:
        return tr("in two states at once");
    case Question::Kind::CodeByAnother:
        return tr("a code set by another");
    case Question::Kind::FilledOutOfService:
        return tr("filled while out of service");
    }
    return {};
}

}
