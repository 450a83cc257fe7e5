// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_entries.h"

#include "record/chain/chain.h"
#include "record/entry_json.h"
#include "record/random_kinds.h"

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
            anyName<DirectiveId>(),
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

rc::Gen<std::optional<VesselStamped>> anyVessel() {
    return optionally(rc::gen::exec([] {
        VesselStamped vessel;
        if (*rc::gen::inRange(0, 2) == 0)
            vessel.material = static_cast<VesselMaterial>(*rc::gen::inRange(0, vesselMaterialCount));
        vessel.specification = *anyText();
        vessel.litres = *optionally(rc::gen::element(0.5, 51.0, 72.5));
        vessel.kilograms = *optionally(rc::gen::element(7.0, 12.75));
        return vessel;
    }));
}

}

rc::Gen<Body> any(Of<ItemEntered>, const Names& names) {
    using rc::gen::set;
    return rc::gen::cast<Body>(rc::gen::build<ItemEntered>(
        set(&ItemEntered::item, names.item),
        set(&ItemEntered::kind,
            rc::gen::map(rc::gen::inRange(0, itemKindCount), [](int i) { return static_cast<ItemKind>(i); })),
        set(&ItemEntered::serial, optionally(anyText())), set(&ItemEntered::type, optionally(anyText())),
        set(&ItemEntered::made, optionally(anyMade())), set(&ItemEntered::broughtForward, anyFigures()),
        set(&ItemEntered::lot, anyText()), set(&ItemEntered::release, anyRelease()),
        set(&ItemEntered::vessel, anyVessel())));
}

rc::Gen<Body> any(Of<BalloonEntered>, const Names& names) {
    using rc::gen::set;
    return rc::gen::cast<Body>(rc::gen::build<BalloonEntered>(
        set(&BalloonEntered::balloon, names.balloon), set(&BalloonEntered::title, anyText()),
        set(&BalloonEntered::operations, rc::gen::elementOf(std::vector<std::vector<std::string>>{
                                             {}, {"for-hire"}, {"private"}, {"for-hire", "instruction"}}))));
}

rc::Gen<Body> any(Of<FlightLogged>, const Names& names) {
    using rc::gen::set;
    const auto use = rc::gen::build<Usage>(set(&Usage::minutes, anyCount<Minutes>(1, 10'080)),
                                           set(&Usage::landings, anyCount<Landings>(0, 200)),
                                           set(&Usage::inflations, anyCount<Inflations>(0, 200)));
    const auto track = rc::gen::build<TrackSource>(
        set(&TrackSource::file, rc::gen::elementOf(std::vector<std::string>{"evening.igc", "track 2.igc"})),
        set(&TrackSource::fixesSkipped, rc::gen::inRange(0, 10'000'001)), set(&TrackSource::beganAloft),
        set(&TrackSource::endedAloft),
        set(&TrackSource::highest, optionally(rc::gen::element(Metres(-500), Metres(812.5), Metres(22'000)))));
    return rc::gen::cast<Body>(rc::gen::build<FlightLogged>(
        set(&FlightLogged::balloon, names.balloon), set(&FlightLogged::use, use),
        set(&FlightLogged::kit, optionally(someOf(names.item))),
        set(&FlightLogged::hottest,
            optionally(rc::gen::map(rc::gen::inRange(-600, 4001), [](int tenths) { return Celsius(tenths / 10.0); }))),
        set(&FlightLogged::tethered), set(&FlightLogged::takeOff, optionally(anyTime())),
        set(&FlightLogged::track, optionally(track)),
        set(&FlightLogged::fuelWeighed, optionally(rc::gen::element(Kilograms(0.1), Kilograms(61.5), Kilograms(3000)))),
        set(&FlightLogged::fuelRead, optionally(rc::gen::element(Litres(0.1), Litres(120), Litres(6000)))),
        set(&FlightLogged::outside, optionally(rc::gen::element(Celsius(-60), Celsius(7.5), Celsius(400)))),
        set(&FlightLogged::load, optionally(rc::gen::element(Kilograms(1), Kilograms(455.5), Kilograms(5000))))));
}

rc::Gen<Body> any(Of<RequirementDone>, const Names& names) {
    using rc::gen::set;
    const auto inspection =
        rc::gen::map(names.inspection, [](const InspectionId& id) { return id.text(); }); // as its release says it
    const auto written = rc::gen::build<RequirementDone>(
        set(&RequirementDone::signatory, optionally(names.person)), set(&RequirementDone::licence, anyText()),
        set(&RequirementDone::item, names.item), set(&RequirementDone::requirement, names.requirement),
        set(&RequirementDone::mark, anyText()), set(&RequirementDone::clock, anyFigures()),
        set(&RequirementDone::method, rc::gen::oneOf(rc::gen::just(std::string()), anySlug())),
        set(&RequirementDone::ref, rc::gen::oneOf(anyText(), inspection)));
    return rc::gen::map(rc::gen::pair(written, optionally(names.on)), [](auto both) -> Body {
        auto& [body, expires] = both;
        if (!body.ref.empty() && body.signatory && !body.licence.empty()) // of a paper
            body.expires = expires;
        return std::move(body);
    });
}

/// Of a document that is some JSON object, not a programme that could be adopted.
rc::Gen<Body> any(Of<ProgrammeAdopted>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
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

rc::Gen<Body> any(Of<EventReported>, const Names& names) {
    using Subject = std::variant<Registration, ItemId>;
    return rc::gen::cast<Body>(rc::gen::build<EventReported>(
        rc::gen::set(&EventReported::subject,
                     rc::gen::oneOf(rc::gen::cast<Subject>(names.balloon), rc::gen::cast<Subject>(names.item))),
        rc::gen::set(&EventReported::event, anySlug()),
        rc::gen::set(&EventReported::hottest,
                     optionally(rc::gen::element(Celsius(-60), Celsius(99.5), Celsius(135), Celsius(400)))),
        rc::gen::set(&EventReported::lasted, optionally(anyCount<Minutes>(1, 10'080))),
        rc::gen::set(&EventReported::altitude,
                     optionally(rc::gen::element(Metres(-500), Metres(35), Metres(22'000))))));
}

rc::Gen<Body> any(Of<EventNotified>, const Names& names) {
    using Subject = std::variant<Registration, ItemId>;
    return rc::gen::cast<Body>(rc::gen::build<EventNotified>(
        rc::gen::set(&EventNotified::subject,
                     rc::gen::oneOf(rc::gen::cast<Subject>(names.balloon), rc::gen::cast<Subject>(names.item))),
        rc::gen::set(&EventNotified::event, anyName<EntryId>()),
        rc::gen::set(&EventNotified::to, rc::gen::element(Informed::Authority, Informed::Holder)),
        rc::gen::set(&EventNotified::ref, anyText())));
}

rc::Gen<Body> any(Of<BalloonRenamed>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        const auto from = *names.balloon;
        auto to = *names.balloon;
        if (to == from)
            to = Registration("not " + from.text().substr(0, 20));
        return BalloonRenamed{from, to};
    });
}

rc::Gen<Body> any(Of<EntryCorrected>, const Names& names) {
    return rc::gen::cast<Body>(rc::gen::build<EntryCorrected>(rc::gen::set(&EntryCorrected::replaces, names.target),
                                                              rc::gen::set(&EntryCorrected::with, anyPatch(names))));
}

rc::Gen<Body> any(Of<EntryVoided>, const Names& names) {
    return rc::gen::cast<Body>(rc::gen::build<EntryVoided>(
        rc::gen::set(&EntryVoided::voids, names.target),
        rc::gen::set(&EntryVoided::reason, rc::gen::element<std::string>("twice", "never flown")),
        rc::gen::set(&EntryVoided::proof, anyProof())));
}

namespace {

/// One of these, each as often.
rc::Gen<Body> oneOf(const std::vector<rc::Gen<Body>>& all) {
    // Of its own accord RapidCheck begins with the first few.
    const auto at = rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::size_t>(0, all.size()));
    return rc::gen::join(rc::gen::map(at, [all](std::size_t chosen) { return all[chosen]; }));
}

/// The generators of all kinds that `wanted<Kind>()` is true of.
template <class Wanted>
std::vector<rc::Gen<Body>> kindsWhere(const Names& names, const Wanted& wanted) {
    std::vector<rc::Gen<Body>> all;
    [&]<std::size_t... At>(std::index_sequence<At...>) {
        const auto add = [&]<class Said>(Of<Said> kind) {
            if (wanted.template operator()<Said>())
                all.push_back(any(kind, names));
        };
        (add(Of<std::variant_alternative_t<At, Body>>()), ...);
    }
    (std::make_index_sequence<std::variant_size_v<Body>>());
    return all;
}

template <class Said, class... Others>
constexpr bool isOneOf = (std::is_same_v<Said, Others> || ...);

/// What a history goes on with, mostly flights and what moves items.
rc::Gen<Body> anyEvents(const Names& names) {
    const auto rarer = kindsWhere(names, []<class Said>() {
        return !isOneOf<Said, FlightLogged, ItemFitted, ItemRemoved, RequirementDone, EventReported, ItemEntered,
                        BalloonEntered, ProgrammeAdopted, EntryCorrected, EntryVoided>;
    });
    return oneOf({any(Of<FlightLogged>(), names), any(Of<FlightLogged>(), names), any(Of<ItemFitted>(), names),
                  any(Of<ItemRemoved>(), names), any(Of<RequirementDone>(), names), any(Of<EventReported>(), names),
                  oneOf(rarer)});
}

rc::Gen<Body> anyBody(const Names& names) {
    return oneOf(kindsWhere(names, []<class>() { return true; }));
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
        const auto namesSoFar = [&] {
            const auto before = static_cast<int>(history.size());
            return Names{
                rc::gen::elementOf(cast.items),
                rc::gen::elementOf(cast.balloons),
                rc::gen::elementOf(cast.requirements),
                rc::gen::just(InspectionId("inspection")),
                rc::gen::elementOf(std::vector<DefectId>{DefectId("d1"), DefectId("d2")}),
                rc::gen::just(PersonId("person")),
                rc::gen::just(DirectiveId("directive")),
                rc::gen::map(rc::gen::inRange(0, before), [](int n) { return EntryId("e" + std::to_string(n)); }),
                on};
        };
        for (const auto& balloon : cast.balloons) {
            auto names = namesSoFar();
            names.balloon = rc::gen::just(balloon);
            add(any(Of<BalloonEntered>(), names));
        }
        for (const auto& item : cast.items) {
            auto names = namesSoFar();
            names.item = rc::gen::just(item);
            add(any(Of<ItemEntered>(), names));
        }
        for (const auto& body : castOfTheBench(cast.items))
            add(rc::gen::just(body));
        const int count = *rc::gen::inRange(0, most + 1);
        for (int i = 0; i < count; ++i) {
            const auto names = namesSoFar();
            if (*rc::gen::inRange(0, 4) > 0)
                add(anyEvents(names));
            else if (*rc::gen::arbitrary<bool>())
                add(any(Of<EntryCorrected>(), names));
            else
                add(any(Of<EntryVoided>(), names));
        }
        return history;
    });
}

}

namespace rc {

void showValue(const crownring::Entry& entry, std::ostream& os) { os << crownring::canonicalText(entry); }

}
