// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_entries.h"

#include "record/chain.h"
#include "record/entry_json.h"
#include "record/random_bench.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

namespace crownring::random {

rc::Gen<std::string> joined(rc::Gen<std::string> piece) {
    return rc::gen::map(rc::gen::container<std::vector<std::string>>(std::move(piece)),
                        [](std::vector<std::string> pieces) {
                            std::string text;
                            for (std::size_t i = 0; i < pieces.size() && i < 40; ++i)
                                text += pieces[i];
                            return text;
                        });
}

/// Text as people type it and as they do not: other scripts, quotes, line ends, control characters; no U+0000.
rc::Gen<std::string> anyText() {
    return joined(rc::gen::element<std::string>("a", "Z", "7", " ", "-", "\"", "\\", "/", "'", "\n", "\t", "\x01",
                                                "\x7f", "é", "ß", "Ж", "中", "🎈", "\u2028", "null", "{}", "%1", ";--"));
}

rc::Gen<std::string> anySlug() {
    return rc::gen::element<std::string>("hard-landing", "over-temperature", "wire-contact", "proof", "volumetric", "7",
                                         "a-");
}

namespace {

rc::Gen<Figures> anyFigures() {
    return rc::gen::build<Figures>(
        rc::gen::set(&Figures::minutes, optionally(anyCount<Minutes>(0, largestCount))),
        rc::gen::set(&Figures::landings, optionally(anyCount<Landings>(0, largestCount))),
        rc::gen::set(&Figures::inflations, optionally(anyCount<Inflations>(0, largestCount))));
}

rc::Gen<DayOrMonth> anyMade() {
    return rc::gen::map(rc::gen::pair(rc::gen::inRange(0, 20'000), rc::gen::arbitrary<bool>()),
                        [](std::pair<int, bool> made) {
                            const auto iso = CivilDate::fromDayNumber(made.first).iso();
                            return *DayOrMonth::parse(made.second ? iso : iso.substr(0, 7));
                        });
}

rc::Gen<TimeOfDay> anyTime() {
    return rc::gen::map(rc::gen::inRange(0, 1440), [](int minute) { return TimeOfDay(minute / 60, minute % 60); });
}

Names wildNames() {
    return {anyName<ItemId>(),
            anyName<Registration>(),
            anyName<RequirementId>(),
            anyName<InspectionId>(),
            anyName<DefectId>(),
            anyName<PersonId>(),
            anyName<EntryId>(),
            rc::gen::map(rc::gen::inRange(-141'349, 2'932'897), [](int day) { return CivilDate::fromDayNumber(day); })};
}

/// Patches of the kind that paper gives rise to; on an entry of another kind they make no sense, as happens.
rc::Gen<std::string> anyPatch(const Names& names) {
    return rc::gen::exec([names] {
        nlohmann::json patch = nlohmann::json::object();
        switch (*rc::gen::inRange(0, 6)) {
        case 0:
            patch["minutes"] = *rc::gen::inRange(1, 600);
            break;
        case 1:
            patch["on"] = (*names.on).iso();
            break;
        case 2:
            patch["note"] = nullptr;
            break;
        case 3:
            patch["balloon"] = (*names.balloon).text();
            break;
        case 4:
            patch["item"] = (*names.item).text();
            break;
        default:
            patch["landings"] = nullptr;
            patch["minutes"] = *rc::gen::inRange(-5, 600);
            break;
        }
        return patch.dump();
    });
}

rc::Gen<ItemEntered> anyItemEntered(const rc::Gen<ItemId>& item) {
    using rc::gen::set;
    return rc::gen::build<ItemEntered>(
        set(&ItemEntered::item, item),
        set(&ItemEntered::kind,
            rc::gen::map(rc::gen::inRange(0, itemKindCount), [](int i) { return static_cast<ItemKind>(i); })),
        set(&ItemEntered::serial, optionally(anyText())), set(&ItemEntered::type, optionally(anyText())),
        set(&ItemEntered::made, optionally(anyMade())), set(&ItemEntered::broughtForward, anyFigures()));
}

rc::Gen<BalloonEntered> anyBalloonEntered(const rc::Gen<Registration>& balloon) {
    using rc::gen::set;
    return rc::gen::build<BalloonEntered>(
        set(&BalloonEntered::balloon, balloon), set(&BalloonEntered::title, anyText()),
        set(&BalloonEntered::operations, rc::gen::elementOf(std::vector<std::vector<std::string>>{
                                             {}, {"for-hire"}, {"private"}, {"for-hire", "instruction"}})));
}

rc::Gen<FlightLogged> anyFlight(const Names& names) {
    using rc::gen::set;
    const auto use = rc::gen::build<Usage>(set(&Usage::minutes, anyCount<Minutes>(1, 10'080)),
                                           set(&Usage::landings, anyCount<Landings>(0, 200)),
                                           set(&Usage::inflations, anyCount<Inflations>(0, 200)));
    return rc::gen::build<FlightLogged>(
        set(&FlightLogged::balloon, names.balloon), set(&FlightLogged::use, use),
        set(&FlightLogged::kit, optionally(someOf(names.item))),
        set(&FlightLogged::maxCelsius,
            optionally(rc::gen::map(rc::gen::inRange(-600, 4001), [](int tenths) { return tenths / 10.0; }))),
        set(&FlightLogged::tethered));
}

rc::Gen<RequirementDone> anyDone(const Names& names) {
    using rc::gen::set;
    return rc::gen::build<RequirementDone>(
        set(&RequirementDone::item, names.item), set(&RequirementDone::requirement, names.requirement),
        set(&RequirementDone::clock, anyFigures()),
        set(&RequirementDone::method, rc::gen::oneOf(rc::gen::just(std::string()), anySlug())),
        set(&RequirementDone::ref, anyText()));
}

/// Of a document that is some JSON object, not a programme that could be adopted.
rc::Gen<ProgrammeAdopted> anyAdopted(const Names& names) {
    return rc::gen::exec([names] {
        ProgrammeAdopted body{*anyName<ProgrammeId>(), BoundEverything{}, {}, {}};
        if (*rc::gen::arbitrary<bool>())
            body.bound = BoundBalloons{*someOf(names.balloon)};
        else if (*rc::gen::arbitrary<bool>())
            body.bound = BoundItems{*someOf(names.item)};
        if (*rc::gen::arbitrary<bool>()) {
            body.document = nlohmann::json{{"title", *anyText()}, {"list", {1, nullptr, 2.5}}}.dump();
            body.digest = hex(sha256(body.document));
        }
        return body;
    });
}

rc::Gen<EventReported> anyEvent(const Names& names) {
    using Subject = std::variant<Registration, ItemId>;
    return rc::gen::build<EventReported>(
        rc::gen::set(&EventReported::subject,
                     rc::gen::oneOf(rc::gen::cast<Subject>(names.balloon), rc::gen::cast<Subject>(names.item))),
        rc::gen::set(&EventReported::event, anySlug()),
        rc::gen::set(&EventReported::celsius, optionally(rc::gen::element(-60.0, 99.5, 135.0, 400.0))),
        rc::gen::set(&EventReported::lasted, optionally(anyCount<Minutes>(1, 10'080))));
}

template <class Fitting>
rc::Gen<Fitting> anyFitting(const Names& names) {
    return rc::gen::build<Fitting>(rc::gen::set(&Fitting::balloon, names.balloon),
                                   rc::gen::set(&Fitting::item, names.item), rc::gen::set(&Fitting::place, anyText()));
}

rc::Gen<EntryCorrected> anyCorrection(const Names& names) {
    return rc::gen::build<EntryCorrected>(rc::gen::set(&EntryCorrected::replaces, names.target),
                                          rc::gen::set(&EntryCorrected::with, anyPatch(names)));
}

rc::Gen<EntryVoided> anyVoid(const Names& names) {
    return rc::gen::build<EntryVoided>(
        rc::gen::set(&EntryVoided::voids, names.target),
        rc::gen::set(&EntryVoided::reason, rc::gen::element<std::string>("twice", "never flown")));
}

/// Any body but an item or balloon entered, a programme adopted and amendments.
rc::Gen<Body> anyEvents(const Names& names) {
    using rc::gen::cast;
    return rc::gen::oneOf(cast<Body>(anyFlight(names)), cast<Body>(anyFlight(names)),
                          cast<Body>(anyFitting<ItemFitted>(names)), cast<Body>(anyFitting<ItemRemoved>(names)),
                          cast<Body>(anyDone(names)), cast<Body>(anyEvent(names)), anyOfTheBench(names));
}
rc::Gen<Body> anyBody(const Names& names) {
    using rc::gen::cast;
    return rc::gen::oneOf(anyEvents(names), cast<Body>(anyItemEntered(names.item)),
                          cast<Body>(anyBalloonEntered(names.balloon)), cast<Body>(anyAdopted(names)),
                          cast<Body>(anyCorrection(names)), cast<Body>(anyVoid(names)));
}

rc::Gen<Entry> entryWith(rc::Gen<EntryId> id, rc::Gen<CivilDate> on, rc::Gen<Body> body) {
    using rc::gen::set;
    return rc::gen::build<Entry>(set(&Entry::id, std::move(id)), set(&Entry::on, std::move(on)),
                                 set(&Entry::time, optionally(anyTime())), set(&Entry::by, anyText()),
                                 set(&Entry::note, anyText()), set(&Entry::body, std::move(body)));
}

}

rc::Gen<Entry> anyEntry() {
    const auto names = wildNames();
    return entryWith(rc::gen::oneOf(rc::gen::just(EntryId()), anyName<EntryId>()), names.on, anyBody(names));
}

rc::Gen<std::vector<Entry>> anyHistory(const Cast& cast, int most) {
    return rc::gen::exec([cast, most] {
        const auto on =
            rc::gen::map(rc::gen::inRange(0, cast.days), [cast](int day) { return addDays(cast.first, day); });
        std::vector<Entry> history;
        const auto add = [&](rc::Gen<Body> body) {
            history.push_back(
                *entryWith(rc::gen::just(EntryId("e" + std::to_string(history.size()))), on, std::move(body)));
        };
        for (const auto& balloon : cast.balloons)
            add(rc::gen::cast<Body>(anyBalloonEntered(rc::gen::just(balloon))));
        for (const auto& item : cast.items)
            add(rc::gen::cast<Body>(anyItemEntered(rc::gen::just(item))));
        for (const auto& body : castOfTheBench(cast.items))
            add(rc::gen::just(body));
        const int count = *rc::gen::inRange(0, most + 1);
        for (int i = 0; i < count; ++i) {
            const auto before = static_cast<int>(history.size());
            const Names names{
                rc::gen::elementOf(cast.items),
                rc::gen::elementOf(cast.balloons),
                rc::gen::elementOf(cast.requirements),
                rc::gen::just(InspectionId("inspection")),
                rc::gen::elementOf(std::vector<DefectId>{DefectId("d1"), DefectId("d2")}),
                rc::gen::just(PersonId("person")),
                rc::gen::map(rc::gen::inRange(0, before), [](int n) { return EntryId("e" + std::to_string(n)); }),
                on};
            if (*rc::gen::inRange(0, 4) > 0)
                add(anyEvents(names));
            else if (*rc::gen::arbitrary<bool>())
                add(rc::gen::cast<Body>(anyCorrection(names)));
            else
                add(rc::gen::cast<Body>(anyVoid(names)));
        }
        return history;
    });
}

}

namespace rc {

void showValue(const crownring::Entry& entry, std::ostream& os) { os << crownring::canonicalText(entry); }

}
