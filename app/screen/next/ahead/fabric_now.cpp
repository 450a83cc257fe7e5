// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/fabric_now.h"

#include "answers/type_book.h"
#include "screen/fabric/fabric_fits.h"

#include <algorithm>

namespace crownring::screen {

namespace {

struct FabricTold {
    std::shared_ptr<const FabricRecord> toFit; ///< before more can be told
    std::vector<FabricAhead> fabrics;
};

Result<FabricTold> toldOf(Record& record, const AheadSheet& sheet, CivilDate today, std::span<const SharedFit> fits) {
    const auto book = typeBook(record, sheet.on);
    if (!book)
        return tl::unexpected(book.error());
    for (const auto& channel : channelsOf(*book)) {
        if (std::ranges::any_of(fits, [&](const SharedFit& fit) { return fit->record->channel == channel; }))
            continue;
        auto followed = fabricRecord(record, channel, sheet.on);
        if (!followed)
            return tl::unexpected(followed.error());
        if (!followed->readings.empty())
            return FabricTold{std::make_shared<const FabricRecord>(std::move(*followed)), {}};
    }
    auto fabrics = fabricAhead(record, sheet.due, fits, std::min(sheet.on, today));
    if (!fabrics)
        return tl::unexpected(fabrics.error());
    return FabricTold{nullptr, std::move(*fabrics)};
}

}

FabricNow::FabricNow(House& house) : m_house(house) {
    connect(&house.one<AheadNow>(), &AheadNow::changed, this, &FabricNow::look);
    connect(&house.one<FabricFits>(), &FabricFits::changed, this, [this] {
        if (m_house.one<FabricFits>().state() == FabricFits::State::Ready)
            look();
    });
}

void FabricNow::want(bool wanted) {
    m_wanted = wanted;
    look();
}

std::span<const FabricAhead> FabricNow::of(const Ahead& sheet) const {
    return sheet == m_sheet ? std::span<const FabricAhead>(m_fabrics) : std::span<const FabricAhead>();
}

void FabricNow::look() {
    const auto sheet = m_house.one<AheadNow>().sheet();
    if (!m_wanted || m_asking || !sheet || sheet == m_sheet)
        return;
    m_asking = true;
    hear(m_house.desk.ask([sheet, today = m_house.day.todayDate(), fits = m_house.one<FabricFits>().fits()](
                              Record& record) { return toldOf(record, *sheet, today, fits); }),
         this, [this, sheet](const Result<FabricTold>& told) {
             m_asking = false;
             // What cannot be told of fabric is told where fabric is looked at.
             if (!told)
                 return;
             if (sheet != m_house.one<AheadNow>().sheet())
                 return look();
             if (told->toFit)
                 return m_house.one<FabricFits>().ask(told->toFit);
             m_sheet = sheet;
             m_fabrics = told->fabrics;
             emit changed();
         });
}

}
