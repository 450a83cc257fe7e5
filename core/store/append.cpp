// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/amendment.h"
#include "record/new_id.h"
#include "store/sql_record.h"
#include "store/verify/replay.h"

#include <QtCore/QDateTime>

#include <algorithm>
#include <unordered_set>

namespace crownring {

namespace {

/// What an entry speaks of and must therefore be in the record: with the key that speaks of it.
template <class Speak>
struct References {
    Speak speak; ///< (sort, name, key)

    void operator()(const ItemEntered&) const {}
    void operator()(const BalloonEntered&) const {}
    void operator()(const ItemFitted& body) const { both(body.balloon, body.item); }
    void operator()(const ItemRemoved& body) const { both(body.balloon, body.item); }
    void both(const Registration& balloon, const ItemId& item) const {
        speak(NameSort::Balloon, balloon.text(), "balloon");
        speak(NameSort::Item, item.text(), "item");
    }
    void operator()(const FlightLogged& body) const {
        speak(NameSort::Balloon, body.balloon.text(), "balloon");
        if (body.kit)
            for (const auto& item : *body.kit)
                speak(NameSort::Item, item.text(), "kit");
    }
    void operator()(const RequirementDone& body) const { speak(NameSort::Item, body.item.text(), "item"); }
    void operator()(const ProgrammeAdopted& body) const {
        if (const auto* balloons = std::get_if<BoundBalloons>(&body.bound))
            for (const auto& balloon : balloons->balloons)
                speak(NameSort::Balloon, balloon.text(), "balloons");
        if (const auto* items = std::get_if<BoundItems>(&body.bound))
            for (const auto& item : items->items)
                speak(NameSort::Item, item.text(), "items");
    }
    void operator()(const ReadingTaken& body) const { ofBench(body); }
    void operator()(const EventReported& body) const {
        if (const auto* item = std::get_if<ItemId>(&body.subject))
            speak(NameSort::Item, item->text(), "item");
        else
            speak(NameSort::Balloon, std::get<Registration>(body.subject).text(), "balloon");
    }
    void operator()(const InspectionOpened& body) const {
        for (const auto& item : body.items)
            speak(NameSort::Item, item.text(), "items");
        for (const auto& work : body.work)
            speak(NameSort::Item, work.item.text(), "work");
        maybe(NameSort::Balloon, body.balloon, "balloon");
    }
    void operator()(const LineSettled& body) const {
        speak(NameSort::Inspection, body.inspection.text(), "inspection");
        maybe(NameSort::Item, body.item, "item");
    }
    void operator()(const DefectFound& body) const { ofBench(body); }
    void operator()(const DefectDeferred& body) const {
        ofDefect(body);
        speak(NameSort::Person, body.agreedBy.text(), "agreed_by");
    }
    void operator()(const DefectCleared& body) const { ofDefect(body); }
    void operator()(const FabricStated& body) const { speak(NameSort::Item, body.item.text(), "item"); }
    void operator()(const RepairMade& body) const { ofWork(body); }
    void operator()(const PartReplaced& body) const { ofWork(body); }
    void operator()(const InspectionClosed& body) const {
        speak(NameSort::Inspection, body.inspection.text(), "inspection");
        maybe(NameSort::Person, body.signatory, "signatory");
    }
    void operator()(const PersonEntitled& body) const {
        for (const auto& balloon : body.balloons)
            speak(NameSort::Balloon, balloon.text(), "balloons");
    }
    /// Amendments, and what stands for itself.
    template <class Other>
    void operator()(const Other&) const {}

private:
    template <class What>
    void maybe(NameSort sort, const std::optional<Name<What>>& name, const char* key) const {
        if (name)
            speak(sort, name->text(), key);
    }
    template <class OfBench>
    void ofBench(const OfBench& body) const {
        speak(NameSort::Item, body.item.text(), "item");
        maybe(NameSort::Inspection, body.inspection, "inspection");
    }
    template <class OfDefect>
    void ofDefect(const OfDefect& body) const {
        speak(NameSort::Defect, body.defect.text(), "defect");
        ofBench(body);
    }
    template <class OfWork>
    void ofWork(const OfWork& body) const {
        maybe(NameSort::Defect, body.defect, "defect");
        ofBench(body);
    }
};

struct SortWords {
    const char* thing;
    const char* mend;
};

SortWords wordsFor(NameSort sort) {
    switch (sort) {
    case NameSort::Item:
        return {"item", "enter it first with item.entered, or mend its id"};
    case NameSort::Balloon:
        return {"balloon", "enter it first with balloon.entered, or mend the registration"};
    case NameSort::Inspection:
        return {"inspection", "open it first with inspection.opened, or mend its name"};
    case NameSort::Defect:
        return {"defect", "say first what was found with defect.found, or mend its name"};
    case NameSort::Person:
        return {"person", "say first what the person is entitled to with person.entitled, or mend the name"};
    default:
        return {"thing", "mend its name"};
    }
}

/// The first thing that `body` speaks of and `known` denies.
template <class Known>
std::optional<Problem> unknownReference(const Body& body, const Known& known) {
    std::optional<Problem> found;
    const auto speak = [&](NameSort sort, const std::string& name, const char* key) {
        if (found || known(sort, name))
            return;
        const auto [thing, mend] = wordsFor(sort);
        found = Problem{Code::UnknownReference,
                        std::string("no ") + thing + " '" + name + "' has been entered",
                        mend,
                        {{}, 0, key}};
    };
    std::visit(References<decltype(speak)>{speak}, body);
    return found;
}

Problem placed(Problem problem, const std::string& file, int line) {
    problem.where.file = file;
    problem.where.line = line;
    return problem;
}

/// A problem of one entry while writing: leaves the transaction, which then rolls back.
struct Refused {
    Problem problem;
};

std::string utcNow() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString(); }

}

SqlRecord::Writing::Writing(SqlRecord& record) : m_record(record), m_transaction(*record.m_connection) {
    record.forgetWhatOthersWrote();
}

SqlRecord::Writing::~Writing() {
    m_record.m_journal.forget();
    if (!m_committed)
        m_record.forget();
}

void SqlRecord::Writing::commit() {
    m_transaction.commit();
    m_committed = true;
}

void SqlRecord::forgetWhatOthersWrote() {
    if (m_connection->dialect() == Dialect::Postgres) {
        m_connection->run(QStringLiteral("LOCK TABLE writer IN SHARE ROW EXCLUSIVE MODE"));
        m_projector.forget();
    } else if (const auto version = m_connection->writtenByOthers(); version != m_writtenByOthers) {
        forget();
        m_writtenByOthers = version;
    }
}

void SqlRecord::forget() {
    m_names.forget();
    m_projector.forget();
    m_documents.clear();
}

void SqlRecord::writeAmendment(const Entry& amendment, const EntryId& target) {
    const auto around = m_journal.around(target);
    if (!around)
        throw Refused{{Code::UnknownReference,
                       "the record holds no entry '" + target.text() + "'",
                       "point at the id of an entry that was posted before this one",
                       {{}, 0, std::holds_alternative<EntryVoided>(amendment.body) ? "voids" : "replaces"}}};
    if (const auto* correction = std::get_if<EntryCorrected>(&amendment.body)) {
        auto result = patched(around->said(target), correction->with);
        if (!result)
            if (const auto& now = around->now(target))
                if (auto onTop = patched(*now, correction->with))
                    result = std::move(onTop);
        auto wrong = result ? unknownReference(result->body,
                                               [&](NameSort sort, const std::string& name) {
                                                   return m_names.find(sort, name).has_value();
                                               })
                            : std::optional(result.error());
        if (wrong) {
            wrong->where.key = "with/" + wrong->where.key;
            throw Refused{std::move(*wrong)};
        }
    }
    const auto before = around->amended();
    m_journal.amend(amendment, around);
    const auto after = around->amended();
    if (before.entry != after.entry) {
        if (before.entry)
            m_projector.withdraw(*before.entry);
        if (after.entry)
            m_projector.project(*after.entry);
    }
    if (before.notApplicable != after.notApplicable)
        m_projector.noteIdle(*around);
}

void SqlRecord::write(Entry& entry) {
    if (const auto target = amends(entry)) {
        writeAmendment(entry, *target);
    } else {
        m_journal.write(entry);
        m_projector.project(entry);
    }
}

void SqlRecord::makeNames(const Body& body) {
    if (const auto* item = std::get_if<ItemEntered>(&body))
        m_names.findOrMake(NameSort::Item, item->item.text());
    else if (const auto* balloon = std::get_if<BalloonEntered>(&body))
        m_names.findOrMake(NameSort::Balloon, balloon->balloon.text());
    else if (const auto* opened = std::get_if<InspectionOpened>(&body))
        m_names.findOrMake(NameSort::Inspection, opened->inspection.text());
    else if (const auto* found = std::get_if<DefectFound>(&body))
        m_names.findOrMake(NameSort::Defect, found->defect.text());
    else if (const auto* entitled = std::get_if<PersonEntitled>(&body))
        m_names.findOrMake(NameSort::Person, entitled->person.text());
}

Results<Receipt> SqlRecord::append(std::vector<NumberedEntry> entries, const std::string& file, const Judge& judge) {
    using Problems = std::vector<Problem>;
    if (!m_readOnlyReason.empty())
        return tl::unexpected(
            Problems{{Code::StoreNewer, m_readOnlyReason, "use the newer program to write", {file, 0, {}}}});
    Receipt receipt;
    const EntryId* writing = nullptr;
    int line = 0;
    try {
        Writing transaction(*this);
        for (const auto& [entry, at] : entries)
            makeNames(entry.body);
        Problems problems;
        std::unordered_set<std::string_view> ids;
        ids.reserve(entries.size());
        const auto known = [&](NameSort sort, const std::string& name) { return m_names.find(sort, name).has_value(); };
        for (auto& [entry, at] : entries) {
            if (entry.id.empty())
                entry.id = newEntryId();
            if (!ids.insert(entry.id.text()).second)
                problems.push_back({Code::DuplicateId,
                                    "the id '" + entry.id.text() + "' stands twice",
                                    "give each entry an id of its own, or none",
                                    {file, at, "id"}});
            if (auto wrong = unknownReference(entry.body, known))
                problems.push_back(placed(std::move(*wrong), file, at));
            if (const auto* adopted = std::get_if<ProgrammeAdopted>(&entry.body); adopted && adopted->document.empty())
                problems.push_back({Code::UnknownProgramme,
                                    "the text of the programme is not known",
                                    "adopt it with its document",
                                    {file, at, "programme"}});
        }
        if (!problems.empty())
            return tl::unexpected(std::move(problems));
        m_journal.beginWriting(m_writer, utcNow());
        receipt.ids.reserve(entries.size());
        for (auto& [entry, at] : entries) {
            writing = &entry.id;
            line = at;
            write(entry);
            receipt.ids.push_back(entry.id);
        }
        writing = nullptr;
        line = 0;
        m_projector.settle();
        m_journal.finishWriting();
        if (judge)
            if (auto barred = judge(entries); !barred.empty())
                return tl::unexpected(std::move(barred));
        transaction.commit();
        return receipt;
    } catch (const Refused& refused) {
        return tl::unexpected(Problems{placed(refused.problem, file, line)});
    } catch (const StoreError& error) {
        if (writing && error.code() == Code::StoreFailed &&
            guarded([&] { return m_journal.has(*writing); }).value_or(false))
            return tl::unexpected(Problems{{Code::DuplicateId,
                                            "the record already holds an entry '" + writing->text() + "'",
                                            "if it is the same entry, leave it out; else give it another id",
                                            {file, line, "id"}}});
        return tl::unexpected(
            Problems{{error.code(), error.what(), "nothing was written; try again", {file, line, {}}}});
    }
}

Result<void> SqlRecord::rebuild() {
    if (!m_readOnlyReason.empty())
        return problem(Code::StoreNewer, m_readOnlyReason, "use the newer program to write");
    return guarded([&] {
        Writing transaction(*this);
        m_projector.clear();
        for (const auto& [target, number] : replay(m_journal, m_projector))
            m_journal.noteAmendment(target, number);
        transaction.commit();
    });
}

}
