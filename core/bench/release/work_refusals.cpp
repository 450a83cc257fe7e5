// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/work_refusals.h"

#include "bench/release/barred_phrase.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* describedRule = "14 CFR 43.9(a)(1); ML.A.801(e) (from memory)";
constexpr const char* gradeRule = "14 CFR 43.9(d), Part 43 Appendix A; ML.A.304 (from memory)";
constexpr const char* componentRule = "ML.A.502; ML.A.802 (from memory); 14 CFR 43.9";
/// Read in Reg. (EU) 2019/1383 and a UK-retained copy; AMC M.A.502 (read) has removal from and installation on an
/// aircraft as aircraft maintenance. That work on what is on no balloon is maintenance of a component is our reading.
constexpr const char* componentTaskRule = "Part-ML Appendix II(b)(8); ML.A.502(a), (b)";
constexpr const char* materialRule = "14 CFR 43.13(b); ML.A.501 (from memory)";
constexpr const char* secondRule = "ML.A.402(b) (from memory)";
constexpr const char* ownerRule = "Part-ML Appendix II(b); 14 CFR 43.3(g), Part 43 Appendix A(c)";

class WorkAsked {
public:
    WorkAsked(const BenchFile& file, const Signing& signing) : m_file(file), m_signing(signing) {}

    std::vector<Refusal> ask() && {
        if (isOfComponents(m_file.visit()))
            askOffTheAircraft();
        if (m_signing.outcome == Outcome::Discrepancies)
            return std::move(m_refusals);
        if (isMaintenance(m_file.visit()))
            askDescribed();
        askLines();
        askGrades();
        if (isOfOwnersTasks(m_file.visit()))
            askOwnersTasks();
        return std::move(m_refusals);
    }

private:
    void refuse(Refusal::Kind kind, ReleaseFault fault, Arguments arguments, const char* rule,
                std::optional<ItemId> item = {}, std::optional<EntryId> entry = {}) {
        m_refusals.push_back({kind, fault, std::move(arguments), rule, {}, std::move(item), std::move(entry)});
    }

    void askOffTheAircraft() {
        if (m_file.inspection.opened.body.balloon)
            refuse(Refusal::Kind::Scope, ReleaseFault::ComponentOfBalloon, {*m_file.inspection.opened.body.balloon},
                   componentRule);
        for (const auto& item : m_file.items)
            if (item.balloon)
                refuse(Refusal::Kind::Scope, ReleaseFault::ComponentFitted, {item.id, *item.balloon}, componentRule,
                       item.id);
    }

    /// What was repaired or replaced is described, and of a component that goes back to the pool what was done to it.
    void askDescribed() {
        const auto& inspection = m_file.inspection;
        const auto isDescribed = [&](const ItemId& item) {
            return std::ranges::any_of(inspection.performed, [&](const auto& each) { return each.body.item == item; });
        };
        const auto isTouched = [&](const ItemId& item) {
            const auto isOf = [&](const auto& each) { return each.body.item == item; };
            return isOfComponents(m_file.visit()) || std::ranges::any_of(inspection.repairs, isOf) ||
                   std::ranges::any_of(inspection.parts, isOf);
        };
        if (inspection.performed.empty())
            refuse(Refusal::Kind::Content, ReleaseFault::WorkNotDescribed, {}, describedRule);
        else
            for (const auto& item : m_file.items)
                if (isTouched(item.id) && !isDescribed(item.id))
                    refuse(Refusal::Kind::Content, ReleaseFault::WorkNotDescribedOn, {item.id}, describedRule, item.id);
    }

    void askLines() {
        for (const auto& work : workLines(m_file.inspection, m_file.items)) {
            if (!work.line)
                continue;
            if (isSecondLook(work.line->id) && work.item && work.state() == LineState::Done)
                askSecondLook(work);
            if (isOfMaterial(work.line->id) && work.state() == LineState::NotApplicable)
                askMaterial(work);
        }
    }

    /// Who looks at what he did himself looks once.
    void askSecondLook(const WorkLine& work) {
        const auto& looked = work.settled->by;
        if (const auto did = workersOn(work.item->id); std::ranges::find(did, looked) != did.end())
            m_refusals.push_back({Refusal::Kind::Signatory,
                                  ReleaseFault::NotIndependent,
                                  {work.line->title, looked},
                                  secondRule,
                                  work.line->id,
                                  work.item->id});
    }

    /// Who did it by the descriptions; where nothing is described, who wrote it down.
    [[nodiscard]] std::vector<std::string> workersOn(const ItemId& item) const {
        std::vector<std::string> workers;
        for (const auto& each : m_file.inspection.performed)
            if (each.body.item == item)
                workers.push_back(each.body.performed ? each.body.performed->text() : each.by);
        const auto addWriters = [&](const auto& all) {
            for (const auto& each : all)
                if (each.body.item == item)
                    workers.push_back(each.by);
        };
        if (workers.empty()) {
            addWriters(m_file.inspection.repairs);
            addWriters(m_file.inspection.parts);
        }
        return workers;
    }

    void askMaterial(const WorkLine& work) {
        const auto& inspection = m_file.inspection;
        const auto lot =
            std::ranges::find_if(inspection.repairs, [](const auto& each) { return !each.body.lot.empty(); });
        const auto* item = !inspection.parts.empty()         ? &inspection.parts.front().body.item
                           : lot != inspection.repairs.end() ? &lot->body.item
                                                             : nullptr;
        if (item)
            m_refusals.push_back({Refusal::Kind::LineOpen,
                                  ReleaseFault::MaterialNotPutDown,
                                  {work.line->title, *item},
                                  materialRule,
                                  work.line->id,
                                  {}});
    }

    void askGrades() {
        for (const auto& work : m_file.inspection.performed) {
            if (isGraded(m_file.visit()) && !work.body.grade)
                refuse(Refusal::Kind::Content, ReleaseFault::GradeNotSaid, {work.body.what, work.body.item}, gradeRule,
                       work.body.item, work.id);
            if (work.body.grade == Grade::Major)
                if (const auto barred = barOfMajor(m_signing.capacity))
                    refuse(Refusal::Kind::Signatory, ReleaseFault::MayNotSign, {barred->why}, barred->rule.c_str(),
                           work.body.item, work.id);
        }
    }

    /// Each is a task of the list that was done in this visit; where one alone was done on the item, it is that. The
    /// task says what it can be: who cleans a burner replaces none of its valves, whatever the words are.
    void askOwnersTasks() {
        if (regimeOf(m_file.visit()) == Regime::PartMl)
            for (const auto& item : m_file.items)
                if (!item.balloon && m_file.inspection.concerns(item.id))
                    refuse(Refusal::Kind::Signatory, ReleaseFault::OwnersTaskOffTheAircraft, {item.id},
                           componentTaskRule, item.id);
        if (std::ranges::all_of(m_file.items, [&](const ItemFacts& item) { return tasksDoneOn(item.id).empty(); }))
            refuse(Refusal::Kind::Content, ReleaseFault::WorkNotDescribed, {}, describedRule);
        const auto ask = [&](const auto& each, const std::string& what, bool OwnerWork::*kind) {
            const auto tasks = tasksDoneOn(each.body.item);
            const auto named = std::ranges::find(tasks, each.body.line, &ChecklistLine::id);
            const auto* task = named != tasks.end()                          ? *named
                               : each.body.line.empty() && tasks.size() == 1 ? tasks.front()
                                                                             : nullptr;
            if (!task)
                refuse(Refusal::Kind::Signatory, ReleaseFault::NoOwnersTask, {what, each.body.item}, ownerRule,
                       each.body.item, each.id);
            else if (kind && task->ownerWork && !((*task->ownerWork).*kind))
                refuse(Refusal::Kind::Signatory, ReleaseFault::NotOfTheTask, {what, each.body.item, task->title},
                       ownerRule, each.body.item, each.id);
        };
        for (const auto& each : m_file.inspection.performed)
            ask(each, each.body.what, nullptr);
        for (const auto& each : m_file.inspection.repairs)
            ask(each, each.body.method, &OwnerWork::repair);
        for (const auto& each : m_file.inspection.parts)
            ask(each, each.body.part, &OwnerWork::part);
    }

    [[nodiscard]] std::vector<const ChecklistLine*> tasksDoneOn(const ItemId& item) const {
        std::vector<const ChecklistLine*> tasks;
        for (const auto& work : workLines(m_file.inspection, m_file.items))
            if (work.item && work.item->id == item && work.line && !work.line->ownerRule.empty() &&
                work.state() == LineState::Done)
                tasks.push_back(work.line);
        return tasks;
    }

    const BenchFile& m_file;
    const Signing& m_signing;
    std::vector<Refusal> m_refusals;
};

}

std::vector<Refusal> refusalsOfWork(const BenchFile& file, const Signing& signing) {
    return WorkAsked(file, signing).ask();
}

}
