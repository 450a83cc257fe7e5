// SPDX-License-Identifier: GPL-3.0-or-later

/// What is done once for a transaction, and with all projections at once.

#include "store/projection/projector.h"

#include <array>

namespace crownring {

std::set<Touch> Projector::settle() {
    for (const auto& change : m_totals.settle())
        touchItemsUnder(change);
    touchParts();
    const auto items = m_touched; // the balloons that they may be on come to it
    for (const auto& [of, subject] : items)
        if (of == Touch::Of::Item)
            touchBalloonsOf(subject);
    auto touched = std::exchange(m_touched, {});
    for (const auto& [of, subject] : touched)
        if (of == Touch::Of::Item)
            m_items.refreshItem(subject);
    for (const auto balloon : std::exchange(m_enteredBalloons, {}))
        m_items.refreshBalloon(balloon);
    m_remaking = false;
    return touched;
}

std::span<const std::string_view> Projector::tables() {
    static constexpr std::array<std::string_view, 25> tables{
        "amendment",  "item_entered", "balloon_entered", "fitting",  "stay",        "flight",
        "kit_flight", "done",         "occurrence",      "reading",  "repair",      "fabric_stated",
        "adoption",   "question",     "idle_correction", "told",     "defect_mark", "closing",
        "revocation", "flown",        "service",         "renaming", "opening",     "approval",
        "part"};
    return tables;
}

void Projector::clear() {
    for (const auto table : tables())
        m_connection.run(QStringLiteral("DELETE FROM ") + QString::fromUtf8(table.data(), qsizetype(table.size())));
    m_names.clear();
    forget();
    m_remaking = true;
}

void Projector::forget() {
    m_totals.forget();
    m_items.forgetRenamings();
    m_touched.clear();
    m_toldMoved.clear();
    m_enteredBalloons.clear();
    m_remaking = false;
}

}
