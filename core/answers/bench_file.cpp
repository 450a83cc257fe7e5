// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"

#include "answers/defects/told.h"
#include "answers/defects/who_clears.h"
#include "answers/discrepancies.h"
#include "answers/type_book.h"
#include "answers/visit/asked_besides.h"
#include "answers/visit/check_flights.h"
#include "answers/visit/visit_events.h"
#include "bench/release/accomplished.h"
#include "bench/release/release.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

Result<void> readTypes(Books& books, BenchFile& file) {
    auto book = typeBook(books, file.on);
    if (!book)
        return tl::unexpected(book.error());
    file.types = std::move(book->types);
    file.limits = std::move(book->limits);
    return {};
}

Result<void> hearTold(Books& books, Told asked, WordingBook& book) {
    const auto told = books.told(asked);
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* adopted = std::get_if<TextAdopted>(&now.body))
            book.adopted[adopted->text] = {wordingOf(*adopted), adopted->organisation, now.on, now.id};
        else if (const auto* confirmed = std::get_if<TextConfirmed>(&now.body))
            book.confirmations.push_back({*confirmed, now.on, now.id});
    }
    return {};
}

Result<void> readCalibrations(Books& books, BenchFile& file) {
    return calibrationsOn(books, file.on).map([&](std::vector<Calibration> all) {
        file.calibrations = std::move(all);
    });
}

/// What was put right in the visit itself counts for its own signature.
void countOwnClearings(std::vector<ItemFacts>& items, const InspectionId& visit) {
    for (auto& item : items)
        for (auto& mark : item.defects)
            if (mark.unsignedIn == visit)
                mark.unsignedIn.reset();
}

Result<void> readItems(Books& books, BenchFile& file) {
    const auto& opened = file.inspection.opened.body;
    auto facts = books.facts({std::nullopt, opened.items}, file.on);
    if (!facts)
        return tl::unexpected(facts.error());
    file.items = std::move(*facts);
    countOwnClearings(file.items, file.inspection.id);
    if (const auto barred = barDeferrals(books, file.items, file.on); !barred)
        return barred;
    if (const auto barred = barClearings(books, file.items); !barred)
        return barred;
    if (file.inspection.closed)
        for (const auto& each : file.inspection.closed->body.clocks)
            if (const auto item = std::ranges::find(file.items, each.item, &ItemFacts::id); item != file.items.end())
                item->clock = each.clock;
    if (!opened.balloon)
        return {};
    const auto cards = books.balloons(file.on);
    if (!cards)
        return tl::unexpected(cards.error());
    if (const auto card = std::ranges::find(*cards, *opened.balloon, &BalloonCard::balloon); card != cards->end()) {
        file.balloonTitle = card->title;
        file.operations = card->operations;
    }
    return {};
}

/// Who owns the balloon on that day.
Result<void> readOwner(Books& books, BenchFile& file) {
    const auto& balloon = file.inspection.opened.body.balloon;
    if (!balloon)
        return {};
    const auto told = books.told({Subject::Balloon, balloon->text(), {kindName<BalloonOwned>()}, file.on});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* owned = std::get_if<BalloonOwned>(&nowOf(line).body)) {
            file.owner = owned->owner;
            file.operatedBy = owned->operatedBy;
        }
    return {};
}

Result<void> readPhotographs(Books& books, BenchFile& file) {
    for (const auto& found : file.inspection.found)
        if (!found.body.photographs.empty())
            file.photographs[found.body.defect] = found.body.photographs;
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item)) {
            auto pictured = photographsOf(books, *open.found);
            if (!pictured)
                return tl::unexpected(pictured.error());
            if (!pictured->empty())
                file.photographs[open.found->defect] = std::move(*pictured);
        }
    return {};
}

Result<void> readDeferrals(Books& books, BenchFile& file) {
    auto deferrals = deferralsOf(books, file.items);
    if (!deferrals)
        return tl::unexpected(deferrals.error());
    file.deferrals = std::move(*deferrals);
    return {};
}

Result<void> readGradings(Books& books, BenchFile& file) {
    std::map<DefectId, EntryId> found;
    for (const auto& each : file.inspection.found)
        found[each.body.defect] = each.id;
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item))
            found[open.found->defect] = open.found->stamp.id;
    for (const auto& [defect, entry] : found) {
        const auto graded = gradingOf(books, entry);
        if (!graded)
            return tl::unexpected(graded.error());
        if (*graded)
            file.graded.emplace(defect, **graded);
    }
    return {};
}

/// What was found by a reading is read again, in whatever visit.
Result<void> readFoundBy(Books& books, BenchFile& file) {
    std::map<EntryId, DefectId> failed;
    std::vector<ItemId> items;
    for (const auto& item : file.items)
        for (const auto& open : openDefects(item))
            if (open.found->failed) {
                failed.emplace(*open.found->failed, open.found->defect);
                items.push_back(item.id);
            }
    if (items.empty())
        return {};
    return books.fabric(items, file.on, [&](const FabricHistory& history) {
        for (const auto& reading : history.readings)
            if (const auto defect = failed.find(reading.stamp.id); defect != failed.end())
                file.foundBy.emplace(defect->second, reading.body);
    });
}

std::vector<Excepted> asSigned(const InspectionClosed& closed) {
    std::vector<Excepted> excepted;
    for (const auto& each : closed.excepted) {
        const auto standing = each.standing == standingText(Standing::Spent)    ? Standing::Spent
                              : each.standing == standingText(Standing::Lapsed) ? Standing::Lapsed
                                                                                : Standing::Unproven;
        excepted.push_back({each.item, each.requirement, titleOf(each), {}, standing});
    }
    return excepted;
}

/// Takes away what came after the signature on its day.
void dropLater(std::vector<ItemFacts>& items, const Stamp& closing) {
    const auto isLater = [&](const auto& each) { return closing < each.stamp; };
    for (auto& item : items) {
        std::erase_if(item.defects, isLater);
        std::erase_if(item.events, isLater);
        std::erase_if(item.done, isLater);
        std::erase_if(item.lists, [&](const PendingList& each) { return closing < each.closed; });
        std::erase_if(item.incomplete, [&](const IncompleteWork& each) { return closing < each.released; });
    }
}

/// @param until what came after that is not there
Result<BenchFile> fileOf(Books& books, Result<Inspection> inspection, CivilDate on,
                         const std::optional<Stamp>& until = {});

/// Of a return to service that was approved: the same of that signature, by what the record says of its day now.
Result<void> readSupportOfReturn(Books& books, BenchFile& file) {
    const auto& approved = *file.inspection.approved;
    Entry approval;
    approval.id = approved.id;
    approval.on = approved.stamp.at.on();
    approval.body = approved.body;
    const auto returning = returnFile(books, file.inspection.id, approval.on, &approval);
    if (!returning)
        return tl::unexpected(returning.error());
    const auto capacity = capacityFrom(approved.body.capacity).value_or(Capacity::PilotOwner);
    for (const auto& refusal : refusals(*returning, {approved.body.signatory, capacity, approval.on}))
        file.unsupported.push_back(problemOf(refusal));
    return {};
}

/// The gate is asked again: as of the signature, by what the record says now.
Result<void> readSupport(Books& books, BenchFile& file) {
    const auto& closed = *file.inspection.closed;
    const auto then = benchFileAtSignature(books, file.inspection);
    if (!then)
        return tl::unexpected(then.error());
    for (const auto& refusal : refusals(*then, signingOf(closed)))
        file.unsupported.push_back(problemOf(refusal));
    if (file.inspection.approved)
        if (const auto asked = readSupportOfReturn(books, file); !asked)
            return asked;
    if (closed.body.outcome != Outcome::Released && !file.inspection.approved)
        return {};
    if (closed.body.outcome == Outcome::Released) {
        const auto unflown = refusalsOfCheckFlights(books, *then, closed.stamp.at.on());
        if (!unflown)
            return tl::unexpected(unflown.error());
        for (const auto& refusal : *unflown)
            file.unsupported.push_back(problemOf(refusal));
    }
    const auto credited = books.doneUnder(file.inspection.id.text());
    if (!credited)
        return tl::unexpected(credited.error());
    const auto accomplished = accomplishments(*then);
    for (const auto& each : *credited)
        // A visit accomplished a review before it became an act of its own.
        if (!isOfReviews(each.requirement) &&
            std::ranges::find(accomplished, Work{each.item, each.requirement}) == accomplished.end())
            file.unsupported.push_back(
                Problem{ReleaseFault::NotAccomplished, {each.requirement, each.item, file.inspection.id}, {}, {}});
    return {};
}

Result<void> readAtIncomplete(Books& books, BenchFile& file) {
    const auto& stamp = file.inspection.incomplete->stamp;
    auto then = fileOf(books, openAt(file.inspection, stamp), stamp.at.on(), stamp);
    if (!then)
        return tl::unexpected(then.error());
    file.atIncomplete = std::make_shared<const BenchFile>(std::move(*then));
    return {};
}

Result<void> readAnswered(Books& books, BenchFile& file, CivilDate on) {
    const auto list = discrepancies(books, file.inspection.id, on);
    if (!list)
        return tl::unexpected(list.error());
    for (const auto& each : list->listed)
        if (!each.stands)
            file.answered.push_back({each.item, each.requirement});
    return {};
}

Result<BenchFile> fileOf(Books& books, Result<Inspection> inspection, CivilDate on, const std::optional<Stamp>& until) {
    if (!inspection)
        return tl::unexpected(inspection.error());
    BenchFile file;
    file.inspection = std::move(*inspection);
    // What was signed is read as of the day of the signature, whenever it is asked for.
    const auto& closed = file.inspection.closed;
    file.on = closed ? std::min(on, closed->stamp.at.on()) : on;
    auto entitlements = entitlementsOn(books, file.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    file.entitlements = std::move(*entitlements);
    auto wordings = wordingBook(books, file.on);
    if (!wordings)
        return tl::unexpected(wordings.error());
    file.wordings = std::move(*wordings);
    const auto items = readItems(books, file);
    if (items && until)
        dropLater(file.items, *until);
    const auto read = Result<void>(items)
                          .and_then([&] { return readCalibrations(books, file); })
                          .and_then([&] { return readTypes(books, file); })
                          .and_then([&] { return readOwner(books, file); })
                          .and_then([&] { return readPhotographs(books, file); })
                          .and_then([&] { return readDeferrals(books, file); })
                          .and_then([&] { return readGradings(books, file); })
                          .and_then([&] { return readAskedBesides(books, file); })
                          .and_then([&] { return readVisitEvents(books, file); });
    if (!read)
        return tl::unexpected(read.error());
    if (file.inspection.incomplete && !until)
        if (const auto then = readAtIncomplete(books, file); !then)
            return tl::unexpected(then.error());
    if (file.inspection.closed) {
        file.excepted = asSigned(file.inspection.closed->body);
        if (file.inspection.closed->body.outcome != Outcome::Abandoned)
            if (const auto asked = readSupport(books, file); !asked)
                return tl::unexpected(asked.error());
        if (file.inspection.closed->body.outcome == Outcome::Discrepancies)
            if (const auto asked = readAnswered(books, file, on); !asked)
                return tl::unexpected(asked.error());
    }
    return file;
}

}

Result<BenchFile> benchFileAtSignature(Books& books, Inspection inspection) {
    const auto closed = inspection.closed->stamp;
    inspection.closed.reset();
    inspection.approved.reset();
    return fileOf(books, std::move(inspection), closed.at.on(), closed);
}

Result<std::vector<ItemFacts>> itemsAtSignature(Books& books, const Inspection& inspection) {
    const auto& closed = inspection.closed->stamp;
    auto items = books.facts({std::nullopt, inspection.opened.body.items}, closed.at.on());
    if (!items)
        return items;
    countOwnClearings(*items, inspection.id);
    if (const auto barred = barClearings(books, *items); !barred)
        return tl::unexpected(barred.error());
    dropLater(*items, closed);
    return items;
}

Result<std::vector<Entitlement>> entitlementsOn(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Person, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entitlement> entitlements;
    for (const auto& line : *told)
        if (const auto* said = std::get_if<PersonEntitled>(&nowOf(line).body))
            if (auto entitlement = entitlementFrom(*said, nowOf(line).on))
                entitlements.push_back(std::move(*entitlement));
    return entitlements;
}

Result<std::vector<Calibration>> calibrationsOn(Books& books, CivilDate on) {
    const auto told = books.told({Subject::Tester, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Calibration> calibrations;
    for (const auto& line : *told)
        if (const auto* calibrated = std::get_if<TesterCalibrated>(&nowOf(line).body))
            calibrations.push_back(
                {calibrated->tester, calibrated->what, nowOf(line).on, calibrated->until, instrumentFrom(*calibrated)});
    return calibrations;
}

Result<WordingBook> wordingBook(Books& books, CivilDate on) {
    WordingBook book;
    const auto read = hearTold(books, {Subject::Text, {}, {}, on}, book).and_then([&] {
        return hearTold(books, {Subject::Checklist, {}, {kindName<TextConfirmed>()}, on}, book);
    });
    if (!read)
        return tl::unexpected(read.error());
    return book;
}

Result<BenchFile> benchFile(Books& books, const InspectionId& id, CivilDate on) {
    const auto told = books.told({Subject::Inspection, id.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    auto file = fileOf(books, inspectionFrom(id, *told), on);
    if (!file)
        return file;
    auto takenOut = takenOutOf(books, file->inspection);
    if (!takenOut)
        return tl::unexpected(takenOut.error());
    file->takenOut = std::move(*takenOut);
    if (file->inspection.isOpen())
        if (const auto read = readFoundBy(books, *file); !read)
            return tl::unexpected(read.error());
    return file;
}

bool InspectionCard::releases() const {
    const auto known = visitFrom(visit);
    return balloon || (known && isOfComponents(*known));
}

Result<BenchFile> benchFileBefore(Books& books, const InspectionId& id, const EntryId& closing, CivilDate on) {
    auto told = books.told({Subject::Inspection, id.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    // What is dated after the signature is no part of it.
    const auto signature = std::ranges::find(*told, closing, [](const JournalLine& line) { return line.entry.id; });
    if (signature != told->end())
        std::erase_if(*told,
                      [at = stampOf(nowOf(*signature))](const JournalLine& line) { return at < stampOf(nowOf(line)); });
    std::erase_if(*told, [&](const JournalLine& line) { return line.entry.id == closing; });
    return fileOf(books, inspectionFrom(id, *told), on);
}

}
