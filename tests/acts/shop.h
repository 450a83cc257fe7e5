// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A repair station's record in a folder of its own: one balloon, what its manual states, who may sign, the testers.
/// All of it is invented. The inspections are opened, carried out and signed through the acts.

#include "acts/confirmed_wording.h"
#include "acts/open_inspection.h"
#include "acts/sign.h"
#include "answers/closing.h"
#include "answers/due.h"
#include "store/scratch.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace crownring::testing {

class Shop {
public:
    /// @param operations of the balloon, as a JSON list
    enum class Wordings { Confirmed, OfNobody };
    explicit Shop(const std::string& operations = "[]", Wordings wording = Wordings::Confirmed)
        : scratch(begun(operations, wording)) {}

    Scratch scratch;
    InspectionId inspection;                    ///< the one in hand
    std::vector<ItemId> items = {ItemId("E1")}; ///< what is inspected

    [[nodiscard]] Record& record() const { return *scratch.record; }
    Receipt say(const std::string& lines) { return posted(record(), lines); }
    [[nodiscard]] std::int64_t entries() const { return record().verify().value().entries; }

    /// A basket, a burner and a cylinder of no type come to the envelope: from now on all of it is inspected.
    Shop& wholeAircraft() {
        for (const char* item : {R"("B1","kind":"basket")", R"("R1","kind":"burner")", R"("C1","kind":"cylinder")"})
            say(R"({"entry":"item.entered","on":"2016-05-01","serial":"1","item":)" + std::string(item) + "}");
        for (const char* item : {"B1", "R1", "C1"})
            say(R"({"entry":"item.fitted","on":"2016-05-01","balloon":"QE-ONE","item":")" + std::string(item) + "\"}");
        items = {ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")};
        return *this;
    }

    /// On 2026-06-01, of the envelope or the whole aircraft. One balloon flies under one set of rules: those of its
    /// first visit are adopted.
    Shop& open(Visit visit, std::vector<Work> work = {}) {
        if (!m_adopted)
            adopt(regimeOf(visit) == Regime::PartMl ? "part-ml-hot-air" : "us-14cfr");
        m_adopted = true;
        if (isSpecial(visit) && isUneventful())
            say(R"({"entry":"event.reported","on":"2026-05-31","balloon":"QE-ONE","event":"hard-landing"})");
        Opening opening;
        opening.visit = visit;
        opening.work = std::move(work);
        opening.balloon = Registration("QE-ONE");
        opening.items = items;
        opening.on = day("2026-06-01");
        opening.by = "Ada Rhos";
        inspection = openInspection(record(), record(), opening).value();
        return *this;
    }
    void adopt(const std::string& programme) {
        say(R"({"entry":"programme.adopted","on":"2016-05-01","everything":true,"programme":")" + programme + "\"}");
    }
    /// Every line is done, but these; a test that the manual states no limit for is not asked for, nor a check flight;
    /// while a directive stands against flight, that all are carried out is not said.
    Shop& carriedOut(const std::set<std::string>& but = {}) {
        const auto file = asIfAllWereWorkedOn();
        std::string text;
        for (const auto& work : workLines(file.inspection, file.items)) {
            const auto isLimited = [&](const AskedReading& asked) {
                return work.item && limitCounts(file, *work.item, asked).front().limit;
            };
            const bool asked =
                !isFlown(work.line->id) &&
                (!work.line->isTest() || std::ranges::any_of(work.line->readings, isLimited)) &&
                !(asksForDirectives(*work.line) && std::ranges::any_of(file.directives, &OpenDirective::against));
            if (!but.contains(work.line->id))
                text += line(work.line->id, asked ? "done" : "not-applicable",
                             work.item ? std::optional(work.item->id) : std::nullopt) +
                        "\n";
        }
        say(text);
        return *this;
    }
    /// Every line, or every one of an item, is settled as not applicable, each with its reason.
    Shop& notApplied(const std::optional<ItemId>& only = {}) {
        const auto file = asIfAllWereWorkedOn();
        std::string text;
        for (const auto& work : workLines(file.inspection, file.items)) {
            const auto item = work.item ? std::optional(work.item->id) : std::nullopt;
            if (!only || item == only)
                text += line(work.line->id, "not-applicable", item) + "\n";
        }
        say(text);
        return *this;
    }
    /// What the manual asks for: two pulls and the tell-tale.
    Shop& measured() { return pull(3), pull(9), tellTale(110, 116), *this; }
    /// Nothing stands in the way of a release.
    Shop& ready(Visit visit) { return open(visit).carriedOut().measured(); }

    Receipt settle(const std::string& id, const char* state = "done") { return say(line(id, state, ItemId("E1"))); }
    /// A grab test on row 16. @param more further keys, e.g. `,"confirmed":true`
    Receipt pull(int gore, const std::string& load = R"("value":300)", const std::string& more = R"(,"tester":"F-1")") {
        return say(R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","unit":"N",)" +
                   load + R"(,"direction":"warp","row":16,"gore":)" + std::to_string(gore) + about() + more + "}");
    }
    Receipt tellTale(int atLeast, int below) {
        return say(
            R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"tell-tale","unit":"degC","value":)" +
            std::to_string(atLeast) + R"(,"below":)" + std::to_string(below) + about() + "}");
    }
    /// @param reading that failed, where it is one
    Receipt find(const char* defect, const char* severity, const EntryId& reading = {}) {
        const auto because = reading.empty() ? "" : R"(,"reading":")" + reading.text() + '"';
        return say(R"({"entry":"defect.found","on":"2026-06-01","item":"E1","what":"a torn panel","defect":")" +
                   std::string(defect) + R"(","severity":")" + severity + '"' + because + about() + "}");
    }
    [[nodiscard]] std::string clearing(const char* defect) const {
        return R"({"entry":"defect.cleared","on":"2026-06-01","by":"Ada Rhos","item":"E1","what":"panel replaced","defect":")" +
               std::string(defect) + '"' + about() + "}";
    }
    /// @param where `,"gore":5,"row":16`
    [[nodiscard]] std::string repair(const char* defect, const std::string& where = {}) const {
        return R"({"entry":"repair.made","on":"2026-06-01","item":"E1","method":"panel replaced","defect":")" +
               std::string(defect) + '"' + where + about() + "}";
    }
    [[nodiscard]] std::string deferral(const char* defect, const char* agreedBy) const {
        return R"({"entry":"defect.deferred","on":"2026-06-01","item":"E1","reason":"a patch is ordered","until":"2026-07-31","defect":")" +
               std::string(defect) + R"(","agreed_by":")" + agreedBy + '"' + about() + "}";
    }

    /// On 2026-06-02, by who may sign everything of Part-ML.
    [[nodiscard]] static Signing signing(const char* person = "Ada Rhos",
                                         Capacity capacity = Capacity::IndependentCertifyingStaff) {
        Signing signing;
        signing.person = PersonId(person);
        signing.capacity = capacity;
        signing.manuals = {"Manual 77, revision 4"};
        signing.on = day("2026-06-02");
        return signing;
    }
    [[nodiscard]] ReleaseDraft draft(const Signing& by) const { return draftRelease(record(), inspection, by).value(); }
    /// The refusals by name, each once, in their order.
    [[nodiscard]] QStringList refused(const Signing& by) const {
        QStringList names;
        for (const auto& refusal : draft(by).refusals)
            names << QString::fromStdString(std::string(refusalName(refusal.kind)));
        names.removeDuplicates();
        return names;
    }
    Results<Receipt> sign(const Signing& by) { return crownring::sign(record(), record(), inspection, by, {}); }
    /// What the record composes of a closing that somebody else's system posts, as its entry.
    [[nodiscard]] std::string closing(const char* outcome = "released", const std::string& more = {}) const {
        auto by = signing();
        by.outcome = *outcomeFrom(outcome);
        const auto composed = composedClosing(record(), record(), draft(by).file, by).value();
        Entry entry;
        entry.on = by.on;
        entry.body = InspectionClosed{composed.inspection,
                                      composed.outcome,
                                      composed.statement,
                                      composed.signatory,
                                      composed.capacity,
                                      composed.licence,
                                      composed.manuals,
                                      composed.limitations,
                                      {},
                                      {},
                                      composed.excepted,
                                      {},
                                      composed.confirmed};
        auto text = canonicalText(entry);
        text.insert(text.size() - 1, more);
        return text;
    }
    [[nodiscard]] Inspection now() const { return draft(signing()).file.inspection; }

    /// `,"inspection":"…"`
    [[nodiscard]] std::string about() const { return R"(,"inspection":")" + inspection.text() + '"'; }

private:
    [[nodiscard]] std::string line(const std::string& id, const std::string& state,
                                   const std::optional<ItemId>& item) const {
        const auto why = state == "not-applicable" ? R"(,"why":"not-asked","page":"Manual 77, 6")" : "";
        return R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":")" + state + R"(","line":")" + id +
               '"' + (item ? R"(,"item":")" + item->text() + '"' : "") + why + about() + "}";
    }

    /// What every such shop begins with, which is posted once in a program of tests. @return its file
    static std::string begun(const std::string& operations, Wordings wording) {
        static std::map<std::pair<std::string, Wordings>, Scratch> shops;
        auto& shop = shops[{operations, wording}];
        auto& record = shop.record;
        if (!record)
            return shop.file();
        posted(
            *record,
            R"({"entry":"item.entered","on":"2016-05-01","item":"E1","kind":"envelope","serial":"101","type":"T-77","brought_forward":{"minutes":12000,"landings":190,"inflations":195}}
{"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-ONE","title":"One","operations":)" +
                operations + R"(}
{"entry":"item.fitted","on":"2016-05-01","balloon":"QE-ONE","item":"E1"}
{"entry":"type.described","on":"2016-05-01","type":"T-77","kind":"envelope","manual":"Manual 77","revision":"4","gores":24,"rows":18}
{"entry":"limit.stated","on":"2016-05-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"places":2,"source":"Manual 77, 6.3"}
{"entry":"limit.stated","on":"2016-05-01","type":"T-77","kind":"envelope","quantity":"tell-tale","unit":"degC","most":127,"source":"Manual 77, 6.5"}
{"entry":"tester.calibrated","on":"2026-01-01","tester":"F-1","until":"2026-12-31","what":"force gauge"}
{"entry":"tester.calibrated","on":"2025-01-01","tester":"F-2","until":"2026-05-31","what":"force gauge"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"person.entitled","on":"2020-01-01","person":"Una Past","capacity":"independent-certifying-staff","licence":"QE.66.2","until":"2026-06-01"}
{"entry":"person.entitled","on":"2026-06-03","person":"Tom Soon","capacity":"independent-certifying-staff","licence":"QE.66.3"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4","balloons":["QE-ONE"]}
{"entry":"person.entitled","on":"2020-01-01","person":"Kit Moor","capacity":"mechanic","licence":"A&P 5"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ines Holt","capacity":"inspection-authorization","licence":"A&P 6, IA"}
{"entry":"person.entitled","on":"2020-01-01","person":"Pia Lund","capacity":"private-pilot","licence":"PP 7"})");
        if (wording == Wordings::Confirmed)
            posted(*record, adoptedAsShipped("2020-01-01") +
                                confirmedBy("Ada Rhos", Capacity::IndependentCertifyingStaff, "2020-01-02") +
                                confirmedBy("Ines Holt", Capacity::InspectionAuthorization, "2020-01-02"));
        record.reset();
        return shop.file();
    }
    /// Work that is no inspection asks its lines of what it touches; here they are settled before it is described.
    [[nodiscard]] BenchFile asIfAllWereWorkedOn() const {
        auto file = draft(signing()).file;
        if (!isInspection(file.visit()))
            for (const auto& item : items)
                file.inspection.opened.body.work.push_back({item, RequirementId("whatever")});
        return file;
    }
    [[nodiscard]] bool isUneventful() const {
        const auto facts = record().facts({std::nullopt, items}, day("2026-06-01")).value();
        return std::ranges::all_of(facts, [](const ItemFacts& item) { return item.events.empty(); });
    }

    bool m_adopted = false;
};

}
