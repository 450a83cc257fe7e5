// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/balloon_model.h"

#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

namespace {

/// Two clocks, each with its name: the envelope's own, and what was logged under the registration, whatever flew.
QStringList clocksOf(const FleetSheet& sheet, const BalloonCard& card) {
    QStringList clocks;
    for (const auto* item : sheet.itemsOf(card.balloon))
        if (item->kind == ItemKind::Envelope)
            clocks += item->clock.minutes
                          ? BalloonModel::tr("total time in service %1").arg(Words::hours(item->clock.minutes->value()))
                          : BalloonModel::tr("total time in service unknown");
    clocks += BalloonModel::tr("registration %1").arg(Words::hours(card.flown.minutes.value()));
    return clocks;
}

/// What is fitted to a balloon that is in service, and is not itself: "burner BRN-310: scrapped …".
QStringList outOf(const FleetSheet& sheet, const BalloonCard& card) {
    QStringList out;
    if (card.inService())
        for (const auto* item : sheet.itemsOf(card.balloon))
            if (item->out && !item->out->with)
                out += BalloonModel::tr("%1 %2: %3")
                           .arg(Words::kind(item->kind), inward(item->id.text()), words::said(reasonOf(*item->out)));
    return out;
}

/// Nothing can be said of what is fitted and not in the record.
QString notEntered(const FleetSheet& sheet, const BalloonCard& card) {
    const auto known = static_cast<std::int64_t>(sheet.itemsOf(card.balloon).size());
    return card.inService() && known < card.items ? BalloonModel::tr("%n fitted items are not in the record", nullptr,
                                                                     static_cast<int>(card.items - known))
                                                  : QString();
}

QString lostText(const std::vector<InspectionId>& lost) {
    QStringList names;
    for (const auto& each : lost)
        names += inward(each.text());
    return BalloonModel::tr("%1: signed, and no longer supported by the record").arg(names.join(QStringLiteral(", ")));
}

/// Not clear, whatever the rest says.
int standingWithUnknown(const Headline& headline) {
    return static_cast<int>(headline.row ? std::min(headline.row->state.standing, Standing::Unproven)
                                         : Standing::Unproven);
}

QString useOf(const BalloonCard& card) {
    const auto flights =
        BalloonModel::tr("%n flights logged for the registration", nullptr, static_cast<int>(card.flights));
    return card.lastFlight ? BalloonModel::tr("%1, the last on %2").arg(flights, inward(card.lastFlight->iso()))
                           : flights;
}

}

void BalloonModel::tell(const LostReleases& lost) {
    if (lost == m_lost)
        return;
    m_lost = lost;
    m_told = -1;
    if (!m_rows.empty())
        emit dataChanged(index(0), index(static_cast<int>(m_rows.size()) - 1));
}

BalloonLine balloonLine(const FleetSheet& sheet, const BalloonCard& card) {
    BalloonLine line;
    line.balloon = inward(card.balloon.text());
    line.title = inward(card.title);
    line.flown = clocksOf(sheet, card).join(QStringLiteral(" · "));
    line.use = useOf(card);
    line.items = BalloonModel::tr("%n items", nullptr, static_cast<int>(card.items));
    const auto& headline = sheet.headlineOf(card.balloon);
    if (const auto out = outOf(sheet, card); !out.isEmpty()) {
        line.word = BalloonModel::tr("part out of service");
        line.worst = out.join(QStringLiteral("; "));
        line.standing = standingWithUnknown(headline);
    } else if (const auto missing = notEntered(sheet, card); !missing.isEmpty()) {
        line.word = BalloonModel::tr("cannot be said");
        line.worst = missing;
        line.standing = standingWithUnknown(headline);
    } else if (const auto* row = headline.row) {
        line.worst =
            BalloonModel::tr("%1, %2 %3")
                .arg(words::said(row->requirement->title), Words::kind(row->item->kind), inward(row->item->id.text()));
        line.word = Words::standing(row->state);
        line.left = headline.limit ? Words::left(*headline.limit) : QString();
        line.standing = static_cast<int>(reckonedAs(row->state));
        line.used = DueTexts::used(*row);
    } else if (card.out || card.renamed) {
        line.word = card.out ? Words::service(card.out->state) : BalloonModel::tr("renamed");
        line.worst = words::said(card.out ? reasonOf(*card.out) : reasonOf(*card.renamed));
    } else {
        line.word = card.items == 0 ? BalloonModel::tr("nothing fitted")
                                    : BalloonModel::tr("no mandatory requirement adopted for it");
        line.standing = static_cast<int>(Standing::Unproven); // what is not known is never clear
    }
    return line;
}

QVariant BalloonModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_rows.size()))
        return {};
    const auto& line = this->line(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case BalloonRole:
        return line.balloon;
    case TitleRole:
        return line.title;
    case FlownRole:
        return line.flown;
    case ItemsRole:
        return line.items;
    case WorstRole:
        return line.worst;
    case LostRole:
        return line.lost;
    case WordRole:
        return line.word;
    case RemainsRole:
        return line.left;
    case StandingRole:
        return line.standing;
    case UsedRole:
        return line.used;
    case SpokenRole:
        return joined(
            {line.balloon, line.title, line.word, line.left, line.lost, line.worst, line.flown, line.use, line.items},
            QStringLiteral(", "));
    default:
        return {};
    }
}

const BalloonLine& BalloonModel::line(int row) const {
    if (row != m_told) {
        const auto& card = *m_rows[static_cast<std::size_t>(row)].card;
        m_line = balloonLine(*m_sheet, card);
        if (const auto lost = m_lost.find(card.balloon); lost != m_lost.end())
            m_line.lost = lostText(lost->second);
    }
    m_told = row;
    return m_line;
}

void BalloonModel::show(const Sheet& sheet, const std::vector<const BalloonCard*>& cards) {
    std::vector<Row> rows;
    rows.reserve(cards.size());
    for (const auto* card : cards)
        rows.push_back({card});
    const auto kept = std::exchange(m_sheet, sheet); // the old rows are looked at until they are replaced
    m_told = -1;
    replaceRows(m_rows, std::move(rows));
}

void BalloonModel::mend(const Sheet& sheet) {
    const auto kept = std::exchange(m_sheet, sheet);
    m_told = -1;
    for (const auto& balloon : sheet->mend().balloons) {
        const auto at = std::ranges::find_if(m_rows, [&](const Row& row) { return row.card->balloon == balloon; });
        if (at == m_rows.end())
            continue;
        at->card = sheet->card(balloon);
        const auto changed = index(static_cast<int>(at - m_rows.begin()));
        emit dataChanged(changed, changed);
    }
}

int BalloonModel::find(const QString& name) const {
    const auto at = std::ranges::find_if(
        m_rows, [sought = outward(name)](const Row& row) { return row.card->balloon.text() == sought; });
    return at == m_rows.end() ? -1 : static_cast<int>(at - m_rows.begin());
}

}
