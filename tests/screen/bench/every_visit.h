// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A record with a balloon for each kind of visit and with who may sign them; what such a visit asks and what its paper
/// says; and the hand that carries one out at the desks. All names are invented.

#include "screen/bench/bench_hands.h"

#include <QProcess>

#include <algorithm>
#include <string>

namespace every_visit {

using namespace crownring;
using namespace crownring::screen;

inline std::string nameOf(Visit visit) {
    return (regimeOf(visit) == Regime::PartMl ? "QE-" : "QN-") + std::to_string(static_cast<int>(visit) + 1);
}

/// A balloon for each kind of visit, and for a component's what is loose.
inline std::string balloonOf(Visit visit) {
    const auto name = nameOf(visit);
    std::string lines;
    const auto item = [&](const char* letter, const char* kind, const char* more) {
        lines += R"({"entry":"item.entered","on":"2024-01-01","serial":"S-)" + name + R"(","item":")" + letter + name +
                 R"(","kind":")" + kind + '"' + more + "}\n";
        if (!isOfComponents(visit))
            lines += R"({"entry":"item.fitted","on":"2024-01-01","balloon":")" + name + R"(","item":")" + letter +
                     name + "\"}\n";
    };
    if (isOfComponents(visit)) {
        item("K", "basket", R"(,"type":"Creel 4")");
        return lines;
    }
    lines +=
        R"({"entry":"balloon.entered","on":"2024-01-01","balloon":")" + name + R"(","operations":["private"]})" + "\n";
    item("E", "envelope", R"(,"type":"Heron 60")");
    item("K", "basket", "");
    item("R", "burner", "");
    item("C", "cylinder", "");
    if (visit == Visit::UsHundredHour) // its annual is another's, and stands
        for (const char* letter : {"E", "K", "R", "C"})
            lines += R"({"entry":"requirement.done","on":"2026-10-10","requirement":"us.annual","item":")" +
                     (letter + name) + "\"}\n";
    if (isSpecial(visit))
        lines += R"({"entry":"event.reported","on":"2026-11-20","event":"hard-landing","balloon":")" + name + "\"}\n";
    return lines;
}

/// On the day asked.
inline std::string flightOf(Visit visit) {
    return R"({"entry":"flight.logged","on":"2026-11-25","minutes":30,"balloon":")" + nameOf(visit) + R"("})";
}

inline std::string theRecord() {
    std::string lines =
        R"({"entry":"type.described","on":"2024-01-01","type":"Heron 60","kind":"envelope","manual":"Heron manual","revision":"3","gores":12,"rows":10}
{"entry":"limit.stated","on":"2024-01-01","type":"Heron 60","kind":"envelope","quantity":"tell-tale","unit":"degC","most":127,"source":"Heron manual, 3"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ines Holt","capacity":"inspection-authorization","licence":"A&P 6, IA"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4","balloons":["BALLOON"]}
{"entry":"person.entitled","on":"2024-01-01","person":"Pia Lund","capacity":"private-pilot","licence":"PP 7"}
)";
    const std::string balloon = "BALLOON";
    lines.replace(lines.find(balloon), balloon.size(), nameOf(Visit::PartMlOwnerTasks));
    for (const auto regime : allRegimes) {
        std::string bound;
        for (const auto visit : allVisits)
            if (regimeOf(visit) == regime) {
                lines += balloonOf(visit);
                if (!isOfComponents(visit))
                    bound += (bound.empty() ? "\"" : ",\"") + nameOf(visit) + '"';
            }
        lines += R"({"entry":"programme.adopted","on":"2024-01-01","programme":")" +
                 std::string(regime == Regime::PartMl ? "part-ml-hot-air" : "us-14cfr") + R"(","balloons":[)" + bound +
                 "]}\n";
    }
    return lines + testing::adoptedAsShipped("2024-01-01") +
           testing::confirmedBy("Ada Rhos", Capacity::IndependentCertifyingStaff, "2024-01-02", "QE.66.1") +
           testing::confirmedBy("Ines Holt", Capacity::InspectionAuthorization, "2024-01-02", "A&P 6, IA");
}

/// Which lines a kind of visit has, as one reads them in the rule: these, and none that begin with those.
struct Asked {
    QStringList has;
    QStringList hasNot;
};

/// 14 CFR 43.9 and ML.A.801 (from memory) want the work described; 43.11 and AMC1 ML.A.302(d) an inspection of it all.
inline Asked askedBy(Visit visit) {
    const QStringList ofEvents{"hard-landing.", "dragged.", "wire-contact.",
                               "immersion.",    "fire.",    "over-temperature."};
    const QStringList ofInspections{"envelope.parachute", "basket.floor", "burner.main-valves",
                                    "cylinder.liquid-valve"};
    if (isPeriodic(visit))
        return {{"papers.directives", "papers.records", "envelope.parachute", "envelope.tell-tale", "basket.floor"},
                ofEvents + QStringList{"work.", "component.", "event."}};
    if (isSpecial(visit)) // what happened was a hard landing
        return {{"event.report", "hard-landing.basket", "hard-landing.suspension", "hard-landing.burner",
                 "hard-landing.cylinders"},
                ofEvents.mid(1) + ofInspections + QStringList{"work.", "component."}};
    if (isOfOwnersTasks(visit))
        return {{}, ofEvents + ofInspections + QStringList{"work.", "component.", "papers.", "event."}};
    if (isOfComponents(visit))
        return {{"work.data", "work.item", "component.identification", "component.label"},
                ofEvents + ofInspections + QStringList{"papers.", "event.", "work.check-flight"}};
    return {{"work.data", "work.parts", "work.item", "work.check-flight", "work.tools"},
            ofEvents + ofInspections + QStringList{"papers.", "event.", "component."}};
}

/// What the paper is called and certifies.
inline QStringList saidBy(Visit visit) {
    const bool partMl = regimeOf(visit) == Regime::PartMl;
    if (isOfComponents(visit))
        return {partMl ? "Certificate of release of components"
                       : "Maintenance record entry for components: approval for return to service",
                "no EASA Form 1 and no FAA Form 8130-3"};
    if (partMl)
        return {"Certificate of release to service", "considered ready for release to service"};
    return {"Maintenance record entry: approval for return to service",
            isPeriodic(visit) ? "was determined to be in airworthy condition"
                              : "the approval for return to service only for the work performed"};
}

inline Signer signerOf(Visit visit) {
    const bool partMl = regimeOf(visit) == Regime::PartMl;
    if (isOfOwnersTasks(visit))
        return partMl ? Signer{PersonId("Ole Berg"), Capacity::PilotOwner}
                      : Signer{PersonId("Pia Lund"), Capacity::PrivatePilot};
    return partMl ? Signer{PersonId("Ada Rhos"), Capacity::IndependentCertifyingStaff}
                  : Signer{PersonId("Ines Holt"), Capacity::InspectionAuthorization};
}

/// Its work is described; an inspection is its lines.
inline bool isDescribed(Visit visit) { return isMaintenance(visit) || isOfOwnersTasks(visit); }

/// The desks at which one visit is carried out.
struct Bench {
    VisitOpening& opening;
    InspectionDesk& inspection;
    ReadingDesk& reading;
    ReleaseDesk& release;
};

/// After what came in was chosen: that kind of visit, with what is proposed for it. @return false where it is not to
/// be had, or the kinds of another state's rules are offered
[[nodiscard]] inline bool chooses(Bench& bench, Visit visit) {
    auto& opening = bench.opening;
    if (isOfComponents(visit)) {
        const auto item = QString::fromStdString("K" + nameOf(visit));
        opening.setWords(item);
        opening.toggleItem(item);
    }
    if (!QTest::qWaitFor([&] { return opening.known(); }, 15'000))
        return false;
    for (const auto& offered : opening.visits()->choices())
        if (!isOfComponents(visit) && regimeOf(*visitFrom(offered.value.toStdString())) != regimeOf(visit))
            return false;
    const auto kind = QString::fromStdString(std::string(visitName(visit)));
    opening.setVisit(kind);
    return QTest::qWaitFor([&] { return opening.known() && opening.canOpen() && opening.visit() == kind; }, 15'000);
}

/// What is no inspection is described: on the basket; an owner's task is one of the list.
inline void describe(Visit visit, Bench& bench) {
    const auto& file = *bench.inspection.file();
    WorkPerformed work;
    work.inspection = file.inspection.id;
    work.item = ItemId("K" + nameOf(visit));
    work.what = "one wire exchanged";
    work.data = "Creel manual, revision 2, 4-1";
    if (isGraded(visit))
        work.grade = Grade::Minor;
    if (isOfOwnersTasks(visit))
        for (const auto& line : workLines(file.inspection, file.items))
            if (line.item && line.item->id == work.item && work.line.empty())
                work.line = line.line->id;
    bench.inspection.post({work});
    static_cast<void>(QTest::qWaitFor(
        [&] { return !bench.inspection.saving() && bench.inspection.file()->inspection.performed.size() == 1; },
        15'000));
}

/// What is wrong with its lines; empty where they are the right ones.
[[nodiscard]] inline QString wrongLines(Visit visit, Bench& bench) {
    QStringList lines;
    for (int part = 0; part < bench.inspection.parts()->count(); ++part) {
        bench.inspection.setPartAt(part);
        for (const auto& row : bench.inspection.lines()->rows())
            lines += row.line;
    }
    if (lines.isEmpty())
        return QStringLiteral("no line");
    const auto asked = askedBy(visit);
    for (const auto& each : asked.has)
        if (!lines.contains(each))
            return each + QStringLiteral(" lacks in ") + lines.join(u' ');
    for (const auto& each : asked.hasNot)
        for (const auto& line : lines)
            if (line.startsWith(each))
                return line + QStringLiteral(" is not of this visit");
    if (isOfOwnersTasks(visit))
        for (const auto& line : bench.inspection.file()->inspection.checklist.lines)
            if (line.ownerRule.empty() && !line.kinds.empty())
                return QString::fromStdString(line.id) + QStringLiteral(" is no task of an owner's");
    return {};
}

/// As one settles it: what was not read and what was not flown, since the manual asks for none, is not applicable.
inline LineSettled settledAs(const CheckRow& row, const InspectionId& inspection) {
    const auto count = row.readings.split(u' '); // "1 of 2 readings"
    const bool unread =
        row.apart == QStringLiteral("settled by its readings") && (count.size() < 3 || count[0] != count[2]);
    LineSettled line;
    line.inspection = inspection;
    line.line = row.line.toStdString();
    if (!row.item.isEmpty())
        line.item = ItemId(row.item.toStdString());
    line.state = LineState::Done;
    if (unread || isFlown(line.line)) {
        line.state = LineState::NotApplicable;
        line.why = WhyNot::NotAsked;
        line.page = "Heron manual, page 6";
    }
    return line;
}

/// Of an owner's list the task that was described and what is of the visit, else everything; part by part at once.
inline void settleAll(Visit visit, Bench& bench) {
    bench_walk_test::takeReadings(bench);
    const auto& inspection = bench.inspection.file()->inspection;
    const auto task = isOfOwnersTasks(visit) ? inspection.performed.front().body.line : std::string();
    std::vector<Body> lines;
    for (int part = 0; part < bench.inspection.parts()->count(); ++part) {
        bench.inspection.setPartAt(part);
        for (const auto& row : bench.inspection.lines()->rows())
            if (row.state == 0 && (task.empty() || row.item.isEmpty() ||
                                   (row.line.toStdString() == task && row.item.toStdString() == "K" + nameOf(visit))))
                lines.emplace_back(settledAs(row, inspection.id));
    }
    bench.inspection.post(std::move(lines));
    bench_walk_test::settle(bench);
}

/// @return what stands in the way; empty where it may be signed
[[nodiscard]] inline QString comesToTheSignature(Visit visit, Bench& bench) {
    auto& release = bench.release;
    release.setSigner(signerOf(visit));
    if (release.manuals().isEmpty())
        release.setManuals(QStringLiteral("Creel manual, revision 2"));
    if (QTest::qWaitFor([&] { return release.maySign(); }, 15'000))
        return {};
    const auto& refusals = release.refusals()->choices();
    return refusals.empty() ? QStringLiteral("not to be signed: ") + release.problem()
                            : refusals.front().label + u' ' + refusals.front().detail;
}

/// The certificate as it is printed.
[[nodiscard]] inline QString paper(ReleaseDesk& release, const QString& file) {
    release.print(QUrl::fromLocalFile(file), false);
    QProcess reader;
    const bool written = QTest::qWaitFor([&] { return QFileInfo(file).size() > 0; }, 15'000);
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
    return written && reader.waitForFinished() ? QString::fromUtf8(reader.readAllStandardOutput()).simplified()
                                               : QString();
}

/// What lacks on the paper of a visit that was signed; empty where it says what it should.
[[nodiscard]] inline QString lackingOn(const QString& text, Visit visit) {
    const auto name = QString::fromStdString(nameOf(visit));
    auto says = saidBy(visit) + QStringList{QString::fromStdString(signerOf(visit).person.text()),
                                            "Copy from the record of what was signed on 2026-11-25",
                                            isOfComponents(visit) ? u'K' + name : name};
    if (isDescribed(visit))
        says += "one wire exchanged; to Creel manual, revision 2, 4-1";
    for (const auto& each : says)
        if (!text.contains(each))
            return each + QStringLiteral(" lacks in ") + text;
    for (const char* never : {"DRAFT", "lot not known", "unknown lot"})
        if (text.contains(QLatin1String(never)))
            return QLatin1String(never) + QStringLiteral(" stands in ") + text;
    return {};
}

}
