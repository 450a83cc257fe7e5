// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/subject_page.h"

#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "answers/review/supported_reviews.h"
#include "answers/supported.h"
#include "bench/checklist/visit.h"
#include "screen/balloons/balloon_model.h"
#include "screen/desk/house.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {
constexpr std::size_t historyShown = 200;

/// What nobody knows of the clocks under a balloon: "ENV-1: landings unknown".
QStringList unknownOf(const FleetSheet& sheet, const Registration& balloon) {
    QStringList unknown;
    for (const auto* item : sheet.itemsOf(balloon)) {
        QStringList clocks;
        if (!item->clock.minutes)
            clocks += Words::clock(ClockName::Minutes);
        if (!item->clock.landings)
            clocks += Words::clock(ClockName::Landings);
        if (!item->clock.inflations)
            clocks += Words::clock(ClockName::Inflations);
        if (!clocks.isEmpty())
            unknown +=
                SubjectPage::tr("%1: %2 unknown").arg(inward(item->id.text()), clocks.join(QStringLiteral(", ")));
    }
    return unknown;
}

/// The limitation of each release after incomplete maintenance that lies on the items, once a release.
Result<QStringList> limitsOf(Books& books, const std::vector<ItemFacts>& items, CivilDate on) {
    std::map<InspectionId, Stamp> releases;
    for (const auto& item : items)
        for (const auto& work : item.incomplete)
            releases.insert_or_assign(work.inspection, work.released);
    QStringList limits;
    for (const auto& [visit, released] : releases) {
        const auto told = books.told({Subject::Inspection, visit.text(), {kindName<ReleaseIncomplete>()}, on});
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& line : *told)
            if (const auto* release = std::get_if<ReleaseIncomplete>(&nowOf(line).body);
                release && stampOf(nowOf(line)) == released)
                limits += SubjectPage::tr("Until the closing release of %1 it flies within this limitation alone: %2")
                              .arg(inward(visit.text()), inward(release->limitations));
    }
    return limits;
}

/// What a page says beside the standings: work that nobody has released, the limitation of what was released
/// incomplete, releases and reviews that the record no longer supports.
Result<QStringList> saidBeside(Books& books, const Registration& balloon, CivilDate on) {
    const auto releases = unsupportedReleases(books, balloon, on, latestReleases);
    auto list = due(books, {balloon, {}}, on);
    if (!releases || !list)
        return tl::unexpected(releases ? list.error() : releases.error());
    const auto reviews = markUnsupportedReviews(books, list->rows, on);
    if (!reviews)
        return tl::unexpected(reviews.error());
    QStringList names;
    for (const auto& each : *releases)
        names += inward(each.text());
    for (const auto& each : *reviews)
        names += SubjectPage::tr("airworthiness review of %1").arg(inward(each.on.iso()));
    auto said = limitsOf(books, list->items, on);
    const auto unreleased = unreleasedWork(books, list->items, on);
    if (!said || !unreleased)
        return tl::unexpected(said ? unreleased.error() : said.error());
    for (const auto& work : *unreleased)
        *said += SubjectPage::tr("%1: %2").arg(inward(work.item->id.text()), words::said(work.why));
    if (!names.isEmpty())
        *said +=
            SubjectPage::tr("%1: signed, and no longer supported by the record").arg(names.join(QStringLiteral(", ")));
    return said;
}

/// Of the programmes that bind it.
std::vector<EntryId> adoptionsOf(const FleetSheet& sheet, const std::optional<Registration>& balloon,
                                 const std::optional<ItemId>& item) {
    struct Binds {
        const std::optional<Registration>& balloon;
        const std::optional<ItemId>& item;
        bool operator()(const BoundBalloons& bound) const {
            return balloon && std::ranges::find(bound.balloons, *balloon) != bound.balloons.end();
        }
        bool operator()(const BoundItems& bound) const {
            return item && std::ranges::find(bound.items, *item) != bound.items.end();
        }
        bool operator()(const BoundEverything&) const { return true; }
    };
    const auto* facts = item ? sheet.item(*item) : nullptr;
    const auto of = facts ? facts->balloon : balloon;
    std::vector<EntryId> adopted;
    for (const auto& each : sheet.adoptions())
        if (std::visit(Binds{of, item}, each.bound))
            adopted.push_back(each.stamp.id);
    return adopted;
}

/// Both latest first.
Result<std::vector<JournalLine>> withAdoptions(Record& record, std::vector<JournalLine> lines,
                                               const std::vector<EntryId>& adopted) {
    for (const auto& id : adopted) {
        auto line = record.line(id);
        if (!line)
            return tl::unexpected(line.error());
        const bool known =
            std::ranges::find(lines, id, [](const JournalLine& each) { return each.entry.id; }) != lines.end();
        if (*line && !known)
            lines.push_back(std::move(**line));
    }
    std::ranges::stable_sort(
        lines, [](const JournalLine& a, const JournalLine& b) { return stampOf(nowOf(b)) < stampOf(nowOf(a)); });
    if (lines.size() > historyShown)
        lines.resize(historyShown);
    return lines;
}

/// "QE-OLD until 2026-03-01: 404:57 h, 310 flights logged for it".
QString formerly(const FleetSheet& sheet, const Renaming& before) {
    const auto name =
        SubjectPage::tr("%1 until %2").arg(inward(before.from.text()), inward(before.stamp.at.on().iso()));
    const auto* card = sheet.card(before.from);
    return card ? SubjectPage::tr("%1: %2, %n flights logged for it", nullptr, static_cast<int>(card->flights))
                      .arg(name, Words::hours(card->flown.minutes.value()))
                : name;
}
}

void SubjectPage::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &SubjectPage::look);
    connect(&house().desk, &RecordDesk::opening, this, &SubjectPage::clear);
}

void SubjectPage::showBalloon(const QString& registration) {
    m_balloon = registration;
    m_item.clear();
    showUnsupported({});
    look();
}

void SubjectPage::showItem(const QString& item) {
    m_item = item;
    m_balloon.clear();
    look();
}

void SubjectPage::clear() {
    m_item.clear();
    m_balloon.clear();
    showUnsupported({});
    look();
}

void SubjectPage::look() {
    m_found = false;
    m_title.clear();
    m_about.clear();
    m_clock.clear();
    m_fittedTo.clear();
    m_fabricOf.clear();
    m_outOfService.clear();
    m_laidUp = false;
    m_reviewed = true;
    m_worst = {};
    if (const auto sheet = house().fleet.sheet(); sheet && shown()) {
        if (!m_balloon.isEmpty())
            lookAtBalloon(sheet);
        else
            lookAtItem(sheet);
        ++m_turn;
        askHistory();
        askSupport();
        if (m_laidUp)
            askMeanwhile();
    }
    emit changed();
}

void SubjectPage::lookAtBalloon(const Sheet& sheet) {
    const Registration balloon(outward(m_balloon));
    std::vector<const ItemFacts*> items;
    DueRows rows;
    if (const auto* card = sheet->card(balloon)) {
        m_found = true;
        const auto line = balloonLine(*sheet, *card);
        m_title = line.title;
        m_clock = line.flown;
        QStringList about{line.use, line.items, tr("in the record since %1").arg(inward(card->entered.iso()))};
        for (const auto& operation : card->operations)
            about += Words::operation(operation);
        about += unknownOf(*sheet, balloon);
        m_worst = {.item = {},
                   .kind = {},
                   .about = {},
                   .where = {},
                   .clock = {},
                   .title = line.worst,
                   .word = line.word,
                   .left = line.left,
                   .standing = line.standing,
                   .used = line.used};
        for (const auto* item : sheet->itemsOf(balloon)) {
            items.push_back(item);
            if (item->kind == ItemKind::Envelope)
                m_fabricOf = inward(item->id.text());
        }
        rows = sheet->rowsOf(balloon);
        m_reviewed = std::ranges::none_of(rows, [](const DueRow* row) {
            return row->programme && row->programme->regime == regimeName(Regime::Us14Cfr);
        });
        if (card->before)
            about += formerly(*sheet, *card->before);
        m_about = about.join(QStringLiteral(" · "));
        if (card->out)
            sayOut(*card->out);
        else if (card->renamed)
            m_outOfService = tr("It %1. What was fitted went over; its flights stay here.")
                                 .arg(words::said(reasonOf(*card->renamed)));
    }
    m_items.show(sheet, items, true);
    m_dues.show(sheet, rows);
}

void SubjectPage::lookAtItem(const Sheet& sheet) {
    const ItemId id(outward(m_item));
    DueRows rows;
    if (const auto* item = sheet->item(id)) {
        m_found = true;
        if (item->kind == ItemKind::Envelope)
            m_fabricOf = m_item;
        m_worst = itemLine(*sheet, *item, false);
        m_title = m_worst.kind;
        m_clock = m_worst.clock;
        m_fittedTo = item->balloon ? inward(item->balloon->text()) : QString();
        QStringList about;
        if (!m_worst.about.isEmpty())
            about += m_worst.about;
        if (!item->place.empty())
            about += inward(item->place);
        about += tr("in the record since %1").arg(inward(item->entered.iso()));
        m_about = about.join(QStringLiteral(" · "));
        rows = sheet->rowsOf(id);
        if (item->out)
            sayOut(*item->out);
    }
    m_items.show(sheet, {});
    m_dues.show(sheet, rows);
}

void SubjectPage::sayOut(const OutOfService& out) {
    const auto reason = words::said(reasonOf(out));
    m_laidUp = out.state == ServiceState::LaidUp;
    m_outOfService =
        out.state == ServiceState::LaidUp
            ? tr("Out of service: %1. Nothing is asked of it meanwhile. Under Due stands what has lapsed by now, and "
                 "what must be done before it flies.")
                  .arg(reason)
            : tr("Out of service: %1. Nothing is asked of it; the record keeps all that it was.").arg(reason);
}

/// What would be due on this day if it were in service.
void SubjectPage::askMeanwhile() {
    Scope scope;
    if (!m_balloon.isEmpty())
        scope.balloon = Registration(outward(m_balloon));
    else
        scope.items = {ItemId(outward(m_item))};
    hear(house().desk.ask([scope, on = house().day.date()](Record& record) -> Result<Sheet> {
        auto list = due(record, scope, on, Outside::AsInService);
        if (!list)
            return tl::unexpected(list.error());
        return std::make_shared<const FleetSheet>(std::move(*list));
    }),
         this, [this, turn = m_turn](const Result<Sheet>& meanwhile) {
             if (turn == m_turn && meanwhile)
                 m_dues.show(*meanwhile, (*meanwhile)->rows().pointers());
         });
}

void SubjectPage::askHistory() {
    const auto sheet = house().fleet.sheet();
    const auto turn = m_turn;
    const auto balloon = m_balloon.isEmpty() ? std::nullopt : std::optional(Registration(outward(m_balloon)));
    const auto item = m_item.isEmpty() ? std::nullopt : std::optional(ItemId(outward(m_item)));
    hear(house().desk.ask([balloon, item, on = house().day.date(), adopted = adoptionsOf(*sheet, balloon, item)](
                              Record& record) -> Result<std::vector<JournalLine>> {
        auto lines = record.history(balloon, item, on, static_cast<int>(historyShown));
        return lines ? withAdoptions(record, std::move(*lines), adopted) : lines;
    }),
         this, [this, turn](const Result<std::vector<JournalLine>>& lines) {
             if (turn == m_turn)
                 m_history.show(lines ? *lines : std::vector<JournalLine>{}, house().fleet.titles());
         });
}

/// Asked after the page is shown: the gate is asked again for each.
void SubjectPage::askSupport() {
    if (m_balloon.isEmpty())
        return showUnsupported({});
    using Answer = Result<QStringList>;
    hear(house().desk.ask([balloon = Registration(outward(m_balloon)), on = house().day.date()](
                              Record& record) -> Answer { return saidBeside(record, balloon, on); }),
         this, [this, turn = m_turn](const Answer& answer) {
             if (turn == m_turn && answer)
                 showUnsupported(*answer);
         });
}

void SubjectPage::showUnsupported(const QStringList& said) {
    const auto text = said.join(u'\n');
    if (text == m_unsupported)
        return;
    m_unsupported = text;
    emit supportChanged();
}

}
