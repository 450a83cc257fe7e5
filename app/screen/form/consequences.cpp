// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/consequences.h"

#include "acts/try_out.h"
#include "answers/due.h"
#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/question_text.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

/// What of the record people act on.
struct FleetState {
    std::map<ItemId, Figures> clocks;
    struct Due {
        QString state;
        QString title;
        Standing standing;
    };
    std::map<ItemId, ItemKind> kinds;
    std::map<std::pair<ItemId, RequirementId>, Due> dues;
    std::vector<Question> questions;
};

QString stateOf(const DueRow& row) {
    return joined({Words::standing(row.state), DueTexts::left(row)}, QStringLiteral(", "));
}

Result<FleetState> standingOf(Books& books, CivilDate today) {
    FleetState now;
    auto list = due(books, {}, today);
    if (!list)
        return tl::unexpected(list.error());
    for (const auto& item : list->items) {
        now.clocks.emplace(item.id, item.clock);
        now.kinds.emplace(item.id, item.kind);
    }
    for (const auto& row : list->rows) {
        const std::pair key{row.item->id, row.requirement->id};
        now.dues.emplace(key, FleetState::Due{stateOf(row), words::said(row.requirement->title), row.state.standing});
    }
    auto questions = books.questions();
    if (!questions)
        return tl::unexpected(questions.error());
    now.questions = std::move(*questions);
    return now;
}

struct Moved {
    bool worsens = false;
    ItemKind kind = ItemKind::Other;
    QString line;
};

template <class Quantity>
QString figure(const std::optional<Quantity>& quantity, QString (*said)(std::int64_t)) {
    return quantity ? said(quantity->value()) : Consequences::tr("unknown");
}

constexpr qsizetype mostLines = 12;

QStringList asMuchAsFits(QStringList lines) {
    if (lines.size() <= mostLines)
        return lines;
    const auto left = static_cast<int>(lines.size() - mostLines);
    lines = lines.mid(0, mostLines);
    lines += Consequences::tr("and %n more", nullptr, left);
    return lines;
}

/// "102:05 h, was 101:05 h": only the figures that differ.
QStringList movedFigures(const Figures& was, const Figures& is) {
    QStringList moved;
    const auto hold = [&](const auto& before, const auto& after, QString (*said)(std::int64_t)) {
        if (before != after)
            moved += Consequences::tr("%1, was %2").arg(figure(after, said), figure(before, said));
    };
    hold(was.minutes, is.minutes, &Words::hours);
    hold(was.landings, is.landings, &Words::landings);
    hold(was.inflations, is.inflations, &Words::inflations);
    return moved;
}

}

Results<QStringList> Consequences::of(Record& record, std::vector<NumberedEntry> entries, CivilDate today) {
    const auto before = standingOf(record, today);
    if (!before)
        return tl::unexpected(std::vector{before.error()});
    auto after = Result<FleetState>(FleetState{});
    const auto tried = tryOut(record, record, std::move(entries), [&] { after = standingOf(record, today); });
    if (!tried)
        return tl::unexpected(tried.error());
    if (!after)
        return tl::unexpected(std::vector{after.error()});
    std::vector<Moved> moved;
    const auto named = [&](const ItemId& item) {
        return tr("%1 %2").arg(Words::kind(after->kinds.at(item)), inward(item.text()));
    };
    for (const auto& [item, clock] : after->clocks) {
        const auto was = before->clocks.find(item);
        const auto text = was == before->clocks.end() ? tr("%1, new").arg(Words::figures(clock))
                                                      : movedFigures(was->second, clock).join(QStringLiteral(" · "));
        if (!text.isEmpty())
            moved.push_back({false, after->kinds.at(item), tr("%1: %2").arg(named(item), text)});
    }
    for (const auto& [key, now] : after->dues)
        if (const auto was = before->dues.find(key); was != before->dues.end() && was->second.state != now.state)
            moved.push_back({now.standing < was->second.standing, after->kinds.at(key.first),
                             tr("%1, %2: %3, was %4").arg(named(key.first), now.title, now.state, was->second.state)});
    // The worst first; then as a balloon is told of: envelope, basket, burner, cylinders.
    std::ranges::stable_sort(moved, {}, [](const Moved& each) { return std::pair(!each.worsens, each.kind); });
    QStringList lines;
    for (const auto& each : moved)
        lines += each.line;
    const auto obligations = obligationsOn(record, today);
    const auto titles = obligations ? titlesOf(obligations->adoptions()) : Titles();
    QStringList questions;
    for (const auto& question : after->questions)
        if (std::ranges::find(before->questions, question) == before->questions.end())
            questions += tr("Asked then: %1").arg(questionText(question, titles));
    for (const auto& question : before->questions)
        if (std::ranges::find(after->questions, question) == after->questions.end())
            questions += tr("No longer asked: %1").arg(questionText(question, titles));
    return lines + questions;
}

QStringList Consequences::against(const RigUp& verdict) {
    QStringList lines;
    for (const auto& reason : verdict.reasons) {
        const bool bars = reason.kind == RigUpReason::Kind::Standing || reason.kind == RigUpReason::Kind::Positioning;
        if (!bars || !reason.row)
            continue;
        const auto& row = *reason.row;
        auto state = stateOf(row);
        if (reason.kind == RigUpReason::Kind::Positioning)
            state = tr("%1, which only serves to reach the place of the inspection").arg(state);
        lines += tr("%1 %2, %3: %4")
                     .arg(Words::kind(row.item->kind), inward(row.item->id.text()), words::said(row.requirement->title),
                          state);
    }
    return asMuchAsFits(std::move(lines));
}

}
