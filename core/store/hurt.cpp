// SPDX-License-Identifier: GPL-3.0-or-later

/// What is condemned or kept apart without anybody's word: overheated cylinders, and what was taken out of something.

#include "store/queries/facts_reader.h"
#include "store/queries/told_reader.h"
#include "store/sql_record.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

bool mayHurtParts(const ItemFacts& carrier) {
    return overheatedBy(carrier, std::nullopt) || std::ranges::count(carrier.events, "fire", &Occurrence::event) > 0;
}

/// What is out of service by its own word or with what it is in stays so; a balloon that is laid up says less.
bool saysMore(const std::optional<OutOfService>& out) { return out && !out->with; }

}

std::optional<VesselMaterial> SqlRecord::materialOf(const ItemId& item) {
    const auto number = m_names.look(item);
    ToldReader reader(*m_connection);
    check({reader.account(Subject::Item, number)});
    std::vector<ItemEntered> said;
    const Told asked{Subject::Item, item.text(), {kindName<ItemEntered>()}, CivilDate::last()};
    for (const auto& line : readableLines(reader.told(asked, number)))
        if (const auto* entered = std::get_if<ItemEntered>(&nowOf(line).body))
            said.push_back(*entered);
    return materialSaid(said);
}

std::map<ItemId, HurtCarrier> SqlRecord::hurtCarriers(const std::vector<ItemFacts>& known, FactsReader& reader,
                                                      const std::vector<Carried>& carried, CivilDate on) {
    std::map<ItemId, HurtCarrier> hurt;
    const auto take = [&](const ItemFacts& carrier) {
        if (!mayHurtParts(carrier))
            return;
        const auto material = overheatedBy(carrier, std::nullopt) ? materialOf(carrier.id) : std::nullopt;
        hurt.emplace(carrier.id, hurtCarrier(carrier, material, reader.wordsOf(carrier.id, Moment::endOf(on))));
    };
    std::set<ItemId> carriers;
    for (const auto& each : carried)
        carriers.insert(each.carrier);
    for (const auto& item : known)
        if (carriers.erase(item.id) > 0)
            take(item);
    if (reader.readsAll()) // what is not among them was not entered by then
        carriers.clear();
    for (const auto& carrier : carriers) {
        for (const auto& facts : reader.read(on, numberOf(carrier)))
            take(facts);
        check(reader.accounts());
    }
    return hurt;
}

/// Few cylinders were ever so hot that it matters what they are made of, so each is looked up by itself.
std::vector<ItemFacts> SqlRecord::withHurt(std::vector<ItemFacts> facts, FactsReader& reader,
                                           const std::map<ItemId, std::vector<Carried>>& carried, CivilDate on) {
    std::vector<Carried> all;
    for (const auto& [item, in] : carried)
        all.insert(all.end(), in.begin(), in.end());
    const auto hurt = hurtCarriers(facts, reader, all, on);
    const auto end = Moment::endOf(on);
    for (auto& item : facts)
        if (const auto in = carried.find(item.id); !hurt.empty() && in != carried.end() && !saysMore(item.out))
            if (auto apart = apartSinceHurt(Stamp::before(end), in->second, reader.wordsOf(item.id, end), hurt))
                item.out = std::move(apart);
    for (auto& item : facts)
        if (overheatedBy(item, std::nullopt))
            condemnOverheated(item, materialOf(item.id));
    return facts;
}

Result<std::optional<OutOfService>> SqlRecord::apartSinceTakenOut(const ItemId& item, const Stamp& before) {
    return answered([&] {
        std::vector<Carried> carried;
        Statement rows(*m_connection, "SELECT p.from_at, p.from_id, p.until_at, p.until_id, n.text FROM part p"
                                      " JOIN name n ON n.name_no = p.carrier_no WHERE p.item_no = ? AND p.direct = 0"
                                      " ORDER BY p.from_at, p.from_id, n.text");
        rows.run(numberOf(item));
        while (rows.next()) {
            auto& each = carried.emplace_back();
            each.from.at = rows.read<Moment>();
            each.from.id = rows.read<EntryId>();
            const auto until = rows.read<std::optional<Moment>>();
            const auto untilId = rows.read<std::optional<EntryId>>();
            if (until)
                each.until = Stamp{*until, untilId.value_or(EntryId())};
            each.carrier = rows.read<ItemId>();
        }
        const auto end = Moment::endOf(before.at.on());
        FactsReader reader(*m_connection, m_names, m_projector.totals(), true);
        reader.startOver();
        const auto own = reader.wordsOf(item, end);
        auto apart =
            takenOutBefore(before, carried, own, [&](const ItemId& carrier) { return reader.wordsOf(carrier, end); });
        if (apart)
            return apart;
        return apartSinceHurt(before, carried, own, hurtCarriers({}, reader, carried, before.at.on()));
    });
}

}
