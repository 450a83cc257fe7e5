// SPDX-License-Identifier: GPL-3.0-or-later

/// From the fields of a form to what is written, and what is said about it.

#include "acts/components.h"
#include "acts/number_defects.h"
#include "acts/own_code.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/trust_fault.h"
#include "problem/faults/written_fault.h"
#include "record/entry_json.h"
#include "record/new_id.h"
#include "registry/spelling.h"
#include "screen/desk/house.h"
#include "screen/desk/written_now.h"
#include "screen/form/asked_back.h"
#include "screen/form/consequences.h"
#include "screen/form/entry_form.h"
#include "screen/form/fitting_plan.h"
#include "screen/form/plans/event_form.h"
#include "screen/form/service_form.h"
#include "screen/form/whole_balloon.h"
#include "words/border.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QDateTime>

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

using Json = nlohmann::json;

/// A fitting or a removal at the minute of another entry, which is made after it: ids keep the order.
Entry movedWith(const FlightKit::Move& move, const Entry& with) {
    Entry entry;
    entry.id = newEntryId();
    entry.on = with.on;
    const auto minute = static_cast<int>(momentOf(with).minutes() - Moment::startOf(with.on).minutes());
    entry.time = TimeOfDay(minute / 60, minute % 60);
    entry.by = with.by;
    if (move.fitted)
        entry.body = ItemFitted{move.balloon, move.item, move.place};
    else
        entry.body = ItemRemoved{move.balloon, move.item, {}};
    return entry;
}

/// The same of another item: what is the one's alone is not said of it.
Json ofAnother(Json object, const std::string& item) {
    for (const char* own : {"clock", "place", "note"})
        object.erase(own);
    object["item"] = item;
    return object;
}

}

std::optional<std::vector<NumberedEntry>> EntryForm::entries() {
    auto object = m_writing.gathered(m_fields);
    if (const auto undecided = m_kit.undecided(); m_writing.kind == kindName<FlightLogged>() && !undecided.isEmpty()) {
        m_fields.setProblem("kit", undecided);
        return std::nullopt;
    }
    if (!object)
        return std::nullopt;
    if (m_writing.kind == WholeBalloon::name)
        return wholeBalloon(*object);
    if (m_writing.kind == kindName<ProgrammeAdopted>() && !object->contains("balloons") && !object->contains("items") &&
        !object->contains("everything")) {
        m_problem = tr("Choose balloons, or items, or everything.");
        return std::nullopt;
    }
    if (const auto time = FittingPlan::timeOf(m_fields.value("-when"), m_fields.value("time"));
        time && m_fields.field("-when"))
        (*object)["time"] = time->iso();
    if (m_writing.kind == kindName<FlightLogged>() && m_kit.isSaid()) {
        auto& kit = (*object)["kit"] = Json::array();
        for (const auto& item : m_kit.kit())
            kit.push_back(item.text());
    }
    if (m_amends.empty() && m_writing.kind == kindName<EventReported>())
        EventForm::nameItem(*object, m_fields);
    if (!m_amends.empty())
        object = amended(std::move(*object));
    if (!object)
        return std::nullopt;
    auto entry = entryFrom(*object);
    if (!entry) {
        tell({entry.error()});
        return std::nullopt;
    }
    if (isYetToCome(*entry)) {
        tell({Problem{WrittenFault::LaterThanNow, {entry->time->iso().substr(0, 5)}, atKey("time")}});
        return std::nullopt;
    }
    std::vector<NumberedEntry> written;
    if (m_amends.empty())
        for (const auto& item : m_fields.value("-also").split(u'\n', Qt::SkipEmptyParts))
            if (auto other = ofAnother(*object, outward(item)); statesHours(other))
                if (auto also = entryFrom(other))
                    add(written, std::move(*also));
    if (m_fields.firstMarked() >= 0)
        return std::nullopt;
    add(written, std::move(*entry));
    return written;
}

std::optional<std::vector<NumberedEntry>> EntryForm::wholeBalloon(const Json& gathered) {
    const bool fresh = !m_fields.value("-fresh").isEmpty();
    if (const auto wrong = WholeBalloon::wrongLines(m_fields.value("cylinders"), fresh); !wrong.isEmpty()) {
        m_fields.setProblem("cylinders", wrong);
        return std::nullopt;
    }
    for (const auto& key : WholeBalloon::nameless(gathered))
        m_fields.setProblem(key, tr("It needs a name."));
    if (m_fields.firstMarked() >= 0)
        return std::nullopt;
    std::vector<NumberedEntry> written;
    for (const auto& object : WholeBalloon::entries(gathered, fresh)) {
        auto entry = entryFrom(object);
        if (!entry) {
            tell({entry.error()});
            return std::nullopt;
        }
        entry->id = newEntryId();
        written.push_back({std::move(*entry), 0});
    }
    return written;
}

void EntryForm::add(std::vector<NumberedEntry>& written, Entry entry) const {
    if (const auto sheet = house().fleet.sheet(); sheet && m_amends.empty()) {
        if (auto first = ServiceForm::entersFirst(entry, *sheet)) {
            first->id = newEntryId();
            written.push_back({std::move(*first), 0});
        }
        const auto moves =
            m_writing.kind == kindName<FlightLogged>() ? m_kit.moves() : FittingPlan::movesOf(*sheet, entry);
        for (const auto& move : moves)
            written.push_back({movedWith(move, entry), 0});
        const auto now = QDateTime::currentDateTimeUtc().time();
        entry.time = timeWritten(entry, *sheet, house().day.todayDate(), TimeOfDay(now.hour(), now.minute()));
    }
    entry.id = newEntryId();
    written.push_back({std::move(entry), 0});
}

std::optional<Json> EntryForm::amended(Json gathered) {
    if (m_writing.kind == kindName<EntryVoided>()) {
        gathered["voids"] = m_amends;
        return gathered;
    }
    if (const auto whole = entryFrom(gathered); !whole) {
        tell({whole.error()});
        return std::nullopt;
    }
    auto with = m_writing.changes(m_fields, gathered);
    if (with.empty()) {
        m_problem = tr("Nothing was changed.");
        return std::nullopt;
    }
    Json correction{{"entry", kindName<EntryCorrected>()},
                    {"replaces", m_amends},
                    {"with", std::move(with)},
                    {"on", outward(house().day.today())},
                    {"by", outward(m_fields.value("by"))}};
    if (const auto why = m_fields.value("-why").trimmed(); !why.isEmpty())
        correction["note"] = outward(why);
    return correction;
}

void EntryForm::tryOut(const std::vector<NumberedEntry>& entries) {
    m_saving = true;
    emit changed();
    hear(house().desk.ask([entries, today = house().day.todayDate()](Record& record) {
        return Consequences::of(record, entries, today);
    }),
         this, [this, with = toJson(entries.back().entry).at("with")](const Results<QStringList>& moved) {
             m_saving = false;
             if (!moved)
                 return tell(moved.error());
             m_tried = with;
             m_follows = moved->isEmpty() ? tr("No clock, nothing due and no question moves.")
                                          : tr("This moves:\n%1").arg(moved->join(u'\n'));
             emit changed();
         });
}

/// Of the balloon that was entered, or whose papers are being asked for.
std::optional<Registration> EntryForm::newPapers() const {
    const bool used = m_writing.kind == WholeBalloon::name && m_fields.value("-fresh").isEmpty();
    if (used)
        return balloonOf("balloon");
    const auto sheet = house().fleet.sheet();
    const auto* item = m_papers && sheet ? sheet->item(ItemId(outward(m_fields.value("item")))) : nullptr;
    return item ? item->balloon : std::nullopt;
}

QString EntryForm::saidOf(const std::vector<NumberedEntry>& written) const {
    QStringList said;
    for (const auto& each : written) {
        const auto text = Sentences::of(each.entry, *house().fleet.titles());
        const bool later =
            std::holds_alternative<ProgrammeAdopted>(each.entry.body) && each.entry.on > house().day.todayDate();
        said += later ? tr("%1, binds from %2").arg(text, inward(each.entry.on.iso())) : text;
    }
    return said.join(QStringLiteral(" · "));
}

void EntryForm::post(const std::vector<NumberedEntry>& entries) {
    m_saving = true;
    emit changed();
    const bool final = m_signed; // what was signed is not taken back with a tap
    struct Answer {
        std::optional<TakenName> taken;
        Results<Receipt> receipt;
        std::vector<NumberedEntry> written;
    };
    const bool isNow = m_amends.empty() && m_writing.kind == kindName<ItemState>();
    hear(house().desk.ask([entries, pictures = newPictures(), isNew = m_amends.empty(), isNow,
                           code = m_signed ? m_code.said() : SaidCode()](Record& record) -> Answer {
        for (const auto& each : entries) {
            const auto taken = isNew ? takenName(record, each.entry) : Result<std::optional<TakenName>>(std::nullopt);
            if (!taken)
                return {std::nullopt, tl::unexpected(std::vector{taken.error()}), {}};
            if (*taken)
                return {*taken, Receipt{}, {}};
        }
        for (const auto& picture : pictures)
            if (const auto kept = record.keepPicture(picture); !kept)
                return {std::nullopt, tl::unexpected(std::vector{kept.error()}), {}};
        auto numbered = entries;
        if (const auto named = numberDefects(record, numbered); !named)
            return {std::nullopt, tl::unexpected(std::vector{named.error()}), {}};
        if (const auto put = isNow ? putBehind(record, numbered) : Result<void>(); !put)
            return {std::nullopt, tl::unexpected(std::vector{put.error()}), {}};
        return {std::nullopt, postSigned(record, record, numbered, code), numbered};
    }),
         this, [this, by = m_fields.value("by"), final](const Answer& answer) {
             m_saving = false;
             if (answer.taken)
                 return tellTaken(*answer.taken);
             if (!answer.receipt) {
                 m_code.lookAgain();
                 return tell(answer.receipt.error());
             }
             const auto said = saidOf(answer.written);
             const auto papersOf = newPapers();
             cancel();
             m_papersOf = papersOf;
             emit saved();
             if (final)
                 house().notice.tell(tr("Written: %1").arg(said));
             else
                 house().notice.tellWritten(tr("Written: %1").arg(said), answer.receipt->ids, by);
             house().desk.written();
         });
}

namespace {

/// In the words of the form where it has its own.
QString saidInForm(const Problem& problem) { return DirectiveForm::problem(problem).value_or(Words::problem(problem)); }

}

void EntryForm::tell(const std::vector<Problem>& problems) {
    std::vector<Problem> others;
    QStringList told; // of many items at once: what is wrong with all of them is told once
    for (auto problem : problems) {
        const auto key = problem.fault == Fault(TrustFault::WrongCode) ? std::string("-code") : problem.where.key;
        const auto& fields = m_fields.fields();
        const auto at = std::ranges::find_if(fields, [&](const FormField& field) {
            return field.key == key || (!key.empty() && field.key.ends_with("." + key)) || topKey(field.key) == key;
        });
        if (at == fields.end()) {
            if (const auto text = saidInForm(problem); !told.contains(text)) {
                told += text;
                others.push_back(std::move(problem));
            }
            continue;
        }
        if (problem.fault == Fault(EntryFault::NearlyATypeKnown))
            m_fields.setShown("confirmed", true); // which answers it
        problem.where = {};
        m_fields.setProblem(std::string(at->key), saidInForm(problem));
    }
    if (others.empty())
        tellMarked();
    else
        m_problem = others.size() == 1 ? saidInForm(others.front()) : Words::problems(others);
    emit changed();
}

std::string EntryForm::keyNaming(const QString& name, bool isBalloon) const {
    if (isBalloon)
        return m_writing.kind == kindName<BalloonRenamed>() ? "to" : "balloon";
    for (const auto& field : m_fields.fields())
        if (field.key.ends_with("item") && bareName(outward(field.value)) == bareName(outward(name)))
            return field.key;
    return m_fields.field("item") ? "item" : "cylinders";
}

void EntryForm::tellTaken(const TakenName& taken) {
    const bool isBalloon = taken.what == TakenName::What::Balloon;
    const auto name = inward(taken.name);
    m_fields.setProblem(keyNaming(name, isBalloon),
                        tr("%1 is in the record already, since %2.").arg(name, inward(taken.since.iso())),
                        (isBalloon ? QStringLiteral("balloon %1") : QStringLiteral("item %1")).arg(name));
    tellMarked();
    emit changed();
}

QString EntryForm::sentToMarked(bool one) {
    return one ? tr("Look at the field that is marked.") : tr("Look at the fields that are marked.");
}

void EntryForm::tellMarked() {
    const auto marked = std::ranges::count_if(
        m_fields.fields(), [](const FormField& field) { return !field.problem.isEmpty() || AskedBack::isOpen(field); });
    m_problem = sentToMarked(marked == 1);
    goToMarked();
}

void EntryForm::touch() {
    DirectiveForm::unmark(m_fields);
    const bool mended =
        (m_problem == sentToMarked(true) || m_problem == sentToMarked(false)) && m_fields.firstMarked() < 0;
    if (mended)
        m_problem.clear(); // there is nothing to look at any more
    if (mended || !std::exchange(m_touched, true))
        emit changed();
    m_touched = true;
}

}
