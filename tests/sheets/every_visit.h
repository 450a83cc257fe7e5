// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Each kind of visit of a shop, carried out and signed by who may: what its papers are read from.

#include "acts/shop.h"
#include "answers/bench_file.h"
#include "paper/document_text.h"
#include "said.h"
#include "sheets/sheets.h"

#include <map>
#include <memory>

namespace crownring::testing {

class EveryVisit {
public:
    explicit EveryVisit(Visit visit) : m_visit(visit) {
        if (isOfComponents(visit))
            component();
        else
            onTheBalloon();
    }

    Shop shop;

    [[nodiscard]] Signing signing(Outcome outcome = Outcome::Released) const {
        const bool us = regimeOf(m_visit) == Regime::Us14Cfr;
        auto by = isOfOwnersTasks(m_visit) ? us ? Shop::signing("Pia Lund", Capacity::PrivatePilot)
                                                : Shop::signing("Ole Berg", Capacity::PilotOwner)
                  : us ? Shop::signing("Ines Holt", Capacity::InspectionAuthorization)
                                           : Shop::signing();
        by.outcome = outcome;
        by.limitations = "not above 2,000 m";
        return by;
    }
    /// What was refused, in words; nothing where it was signed.
    [[nodiscard]] QString sign(Outcome outcome = Outcome::Released) {
        const auto written = shop.sign(signing(outcome));
        return written ? QString() : QString::fromStdString(text(written.error().front()));
    }
    [[nodiscard]] BenchFile file(const char* on = "2026-06-02") const {
        return benchFile(shop.record(), shop.inspection, day(on)).value();
    }
    /// In lines so long that none is broken.
    [[nodiscard]] QString paper(SheetKind kind, const char* on = "2026-06-02") const {
        return QString::fromStdString(paper::toText(sheet(kind, file(on), english), english, 4000));
    }
    void perform(const std::string& item, const std::string& more = {}) {
        const auto grade = isGraded(m_visit) ? R"(,"grade":"minor")" : "";
        shop.say(
            R"({"entry":"work.performed","on":"2026-06-01","by":"Ada Rhos","what":"patched a panel","data":"Manual 77, 4-12, revision 4","performed_by":"Bo Lind","item":")" +
            item + '"' + grade + shop.about() + more + "}");
    }

private:
    void onTheBalloon() {
        if (isPeriodic(m_visit))
            shop.wholeAircraft();
        if (m_visit == Visit::UsHundredHour) // the annual is another's and stands
            for (const auto& item : shop.items)
                shop.say(
                    R"({"entry":"requirement.done","on":"2026-01-10","requirement":"us.annual","ref":"logbook 3, page 12","item":")" +
                    item.text() + "\"}");
        shop.open(m_visit);
        if (isOfOwnersTasks(m_visit)) {
            const auto task = ownTask();
            shop.carriedOut(othersThan(task));
            perform("E1", R"(,"line":")" + task + '"');
            return;
        }
        shop.carriedOut();
        if (isMaintenance(m_visit))
            perform("E1");
        else
            shop.measured();
    }
    void component() {
        shop.say(
            R"({"entry":"item.entered","on":"2020-01-01","item":"B9","kind":"basket","type":"B-4","serial":"88"})");
        Opening opening;
        opening.visit = m_visit;
        opening.items = shop.items = {ItemId("B9")};
        opening.on = day("2026-06-01");
        opening.by = "Ada Rhos";
        opening.order = "WO 7";
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.carriedOut();
        perform("B9");
    }
    /// The first task of the owner's list on the envelope.
    [[nodiscard]] std::string ownTask() const {
        const auto file = shop.draft(signing()).file;
        for (const auto& work : workLines(file.inspection, file.items))
            if (work.item && !work.line->ownerRule.empty())
                return work.line->id;
        return {};
    }
    [[nodiscard]] std::set<std::string> othersThan(const std::string& task) const {
        std::set<std::string> others;
        const auto file = shop.draft(signing()).file;
        for (const auto& work : workLines(file.inspection, file.items))
            if (work.item && work.line->id != task)
                others.insert(work.line->id);
        return others;
    }

    Visit m_visit;
};

/// Each kind of visit carried out and signed, once a test.
class SignedVisits {
public:
    const EveryVisit& of(Visit visit) {
        auto& there = m_signed[visit];
        if (!there) {
            there = std::make_unique<EveryVisit>(visit);
            if (const auto refused = there->sign(); !refused.isEmpty())
                qWarning("%s: %s", std::string(visitName(visit)).c_str(), qPrintable(refused));
        }
        return *there;
    }

private:
    std::map<Visit, std::unique_ptr<EveryVisit>> m_signed;
};

/// What a rule wants on a paper.
struct Clause {
    const char* clause; ///< with how it is known
    QStringList says;
};

}
