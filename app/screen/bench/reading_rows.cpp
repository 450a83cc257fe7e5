// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/reading_rows.h"

#include "rules/due/defects.h"
#include "screen/bench/reading_desk.h"
#include "words/bench_sentences.h"
#include "words/bench_words.h"
#include "words/border.h"
#include "words/sentence.h"

#include <QLocale>

#include <algorithm>

namespace crownring::screen {

using namespace words;

QString progressText(const ReadingCount& count) {
    return count.wanted > 0  ? ReadingRows::tr("%1 of %2").arg(count.taken).arg(count.wanted)
           : count.taken > 0 ? ReadingRows::tr("%n taken", nullptr, count.taken)
                             : ReadingRows::tr("not asked for");
}

QString limitsText(std::span<const StatedLimit> limits) {
    QStringList texts;
    for (const auto& each : limits) {
        QStringList bounds;
        if (each.least)
            bounds += ReadingRows::tr("at least %1").arg(inward(amountText(*each.least)));
        if (each.most)
            bounds += ReadingRows::tr("at most %1").arg(inward(amountText(*each.most)));
        if (each.zone)
            bounds += words::said(Term{Term::Of::Zone, std::string(zoneName(*each.zone))});
        if (each.conditions.direction)
            bounds += inward(*each.conditions.direction);
        if (each.places)
            bounds += ReadingRows::tr("%n readings", nullptr, *each.places);
        texts +=
            joined({bounds.join(QStringLiteral(", ")), inward(each.passes), inward(each.source)}, QStringLiteral("; "));
    }
    return texts.join(u'\n');
}

std::vector<Choice> seriesRows(std::span<const AskedSeries> asked, const AskedFor& current) {
    std::vector<Choice> series;
    for (const auto& [of, count] : asked)
        series.push_back({inward(of.quantity),
                          joined({BenchWords::quantity(of.quantity), inward(of.item.text())}, QStringLiteral(" · ")),
                          progressText(count), std::max(0, count.wanted - count.taken), -1, of == current,
                          QVariant::fromValue(of)});
    return series;
}

std::vector<PanelMark> panelMarks(const BenchFile& file, const ItemId& item, const std::string& quantity) {
    std::vector<PanelMark> marks;
    const auto at = [&](const PanelPlace& place) -> PanelMark* {
        if (!place.gore || !place.row || place.zone != Zone::Envelope)
            return nullptr;
        auto found = std::ranges::find_if(
            marks, [&](const PanelMark& mark) { return mark.gore == *place.gore && mark.row == *place.row; });
        if (found != marks.end())
            return &*found;
        marks.push_back({});
        marks.back().gore = *place.gore;
        marks.back().row = *place.row;
        return &marks.back();
    };
    for (const auto& reading : file.inspection.readings) {
        const auto& body = reading.body;
        if (body.item != item || body.quantity != quantity)
            continue;
        auto* mark = at(body.place);
        if (!mark)
            continue;
        const auto state = stateOf(file, body);
        mark->reading = state.judgement == Judgement::Fails ? panel::Reading::Fails
                        : body.held                         ? panel::Reading::Held
                                                            : panel::Reading::Value;
        mark->share = state.share.value_or(1);
        mark->text = QLocale().toString(body.value, 'g', 3);
        mark->says = BenchWords::value(body);
        ++mark->count;
    }
    for (const auto& repair : file.inspection.repairs)
        if (repair.body.item == item)
            if (auto* mark = at(repair.body.place))
                mark->repaired = true;
    for (const auto& of : file.items)
        for (const auto& open : openDefects(of))
            for (const auto& found : file.inspection.found)
                if (of.id == item && found.body.defect == open.found->defect)
                    if (auto* mark = at(found.body.place))
                        mark->defect = true;
    return marks;
}

std::vector<Choice> takenRows(const BenchFile& file, const ItemId& item, const std::string& quantity) {
    std::vector<Choice> rows;
    for (auto at = file.inspection.readings.rbegin(); at != file.inspection.readings.rend(); ++at) {
        const auto& body = at->body;
        if (body.item != item || body.quantity != quantity)
            continue;
        const auto state = stateOf(file, body);
        const auto direction = body.conditions.direction ? inward(*body.conditions.direction) : QString();
        rows.push_back(
            {inward(at->id.text()),
             joined({BenchWords::value(body), BenchSentences::place(body.place), direction}, QStringLiteral(", ")),
             joined({joined({BenchWords::judgement(state.judgement),
                             state.reason ? words::said(*state.reason) : QString()},
                            QStringLiteral(": ")),
                     at->by.empty() ? QString() : ReadingDesk::tr("by %1").arg(inward(at->by))},
                    QStringLiteral(" · ")),
             -1,
             static_cast<int>(state.judgement == Judgement::Fails    ? Standing::Lapsed
                              : state.judgement == Judgement::Passes ? Standing::Clear
                                                                     : Standing::Unproven),
             state.judgement == Judgement::Fails});
    }
    return rows;
}

}
