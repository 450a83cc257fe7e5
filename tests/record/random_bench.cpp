// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_kinds.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace crownring::random {

namespace {

using rc::gen::set;

rc::Gen<double> anyNumber() {
    return rc::gen::oneOf(
        rc::gen::map(rc::gen::inRange(-1'000'000, 1'000'000), [](int value) { return value / 64.0; }),
        rc::gen::map(rc::gen::arbitrary<double>(), [](double value) { return std::abs(value) <= 1e12 ? value : 0.1; }));
}

template <class AmountOf>
rc::Gen<AmountOf> anyAmount() {
    return rc::gen::map(rc::gen::inRange(1, 1'000'000), [](int value) { return AmountOf(value / 16.0); });
}

rc::Gen<std::string> saying() {
    return rc::gen::map(anyText(), [](const std::string& text) { return "x" + text; });
}

rc::Gen<std::string> anyDigest() { return rc::gen::element(std::string(64, '0'), std::string(64, 'a')); }

rc::Gen<std::string> anyHex(std::size_t digits) {
    return rc::gen::container<std::string>(digits, rc::gen::element('0', '5', 'a', 'f'));
}

rc::Gen<Zone> anyZone() {
    return rc::gen::map(rc::gen::inRange(0, zoneCount), [](int i) { return static_cast<Zone>(i); });
}

rc::Gen<PanelPlace> anyPlace() {
    const auto onBasket = rc::gen::map(rc::gen::inRange(0, basketPlaceCount), [](int i) {
        return PanelPlace{{}, {}, Zone::Envelope, static_cast<BasketPlace>(i)};
    });
    const auto onEnvelope = rc::gen::build<PanelPlace>(set(&PanelPlace::zone, anyZone()),
                                                       set(&PanelPlace::gore, optionally(rc::gen::inRange(1, 1001))),
                                                       set(&PanelPlace::row, optionally(rc::gen::inRange(1, 1001))));
    return rc::gen::weightedOneOf<PanelPlace>({{3, onEnvelope}, {1, onBasket}});
}

rc::Gen<TestCircumstances> anyCircumstances() {
    using C = TestCircumstances;
    return rc::gen::build<C>(
        set(&C::seconds, optionally(rc::gen::map(rc::gen::inRange(0, 864'000), [](int s) { return s / 10.0; }))),
        set(&C::dry, optionally(rc::gen::arbitrary<bool>())),
        set(&C::side, optionally(rc::gen::element(Side::Inside, Side::Outside))),
        set(&C::temperature, optionally(rc::gen::map(rc::gen::inRange(-60, 400), [](int c) { return Celsius(c); }))));
}

rc::Gen<TestConditions> anyConditions() {
    using C = TestConditions;
    return rc::gen::build<C>(set(&C::direction, optionally(rc::gen::element<std::string>("warp", "weft"))),
                             set(&C::jaw, optionally(anyAmount<Millimetres>())),
                             set(&C::pressure, optionally(anyAmount<Pascals>())),
                             set(&C::area, optionally(anyAmount<SquareCentimetres>())));
}

rc::Gen<ItemKind> anyKind() {
    return rc::gen::map(rc::gen::inRange(0, itemKindCount), [](int i) { return static_cast<ItemKind>(i); });
}

}

rc::Gen<std::optional<Proof>> anyProof() {
    return optionally(rc::gen::build<Proof>(set(&Proof::key, anyHex(64)), set(&Proof::signature, anyHex(128))));
}

rc::Gen<Body> any(Of<SignatoryCode>, const Names& names) {
    using S = SignatoryCode;
    return rc::gen::cast<Body>(rc::gen::build<S>(set(&S::signatory, names.person), set(&S::salt, anyHex(32)),
                                                 set(&S::key, anyHex(64)), set(&S::proof, anyProof()),
                                                 set(&S::reason, anyText())));
}

rc::Gen<Body> any(Of<ReadingTaken>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        ReadingTaken body;
        body.item = *names.item;
        body.quantity = *anySlug();
        body.value = *anyNumber();
        body.held = *rc::gen::arbitrary<bool>();
        if (!body.held && *rc::gen::arbitrary<bool>())
            body.below = std::nextafter(body.value, 2e12);
        body.unit = *rc::gen::element<std::string>("N", "mm/s", "°C");
        body.place = *anyPlace();
        body.conditions = *anyConditions();
        body.circumstances = *anyCircumstances();
        body.method = *anyText();
        body.inspection = *optionally(names.inspection);
        body.line = *anyText();
        body.tester = *optionally(anyName<TesterId>());
        body.confirmed = *rc::gen::arbitrary<bool>();
        return body;
    });
}

rc::Gen<std::vector<std::string>> anyPhotographs() {
    return rc::gen::elementOf(std::vector<std::vector<std::string>>{
        {}, {std::string(64, '0')}, {std::string(64, 'a'), std::string(64, '1')}});
}

rc::Gen<Body> any(Of<LineSettled>, const Names& names) {
    using L = LineSettled;
    const auto settled = rc::gen::build<L>(
        set(&L::inspection, names.inspection), set(&L::line, saying()), set(&L::item, optionally(names.item)),
        set(&L::state, rc::gen::element(LineState::Open, LineState::Done, LineState::NotApplicable)),
        set(&L::finding, anyText()), set(&L::tester, optionally(anyName<TesterId>())),
        set(&L::photographs, anyPhotographs()));
    return rc::gen::exec([settled]() -> Body {
        auto body = *settled;
        if (body.state != LineState::NotApplicable || *rc::gen::arbitrary<bool>())
            return body;
        body.why = *rc::gen::element(WhyNot::NotFitted, WhyNot::NotAsked, WhyNot::Other);
        if (body.why == WhyNot::NotAsked)
            body.page = *saying();
        if (body.why == WhyNot::Other)
            body.finding = *saying();
        return body;
    });
}

rc::Gen<Body> any(Of<ReleaseRevoked>, const Names& names) {
    using R = ReleaseRevoked;
    return rc::gen::cast<Body>(rc::gen::build<R>(set(&R::inspection, names.inspection), set(&R::reason, saying()),
                                                 set(&R::proof, anyProof())));
}

rc::Gen<Body> any(Of<ReturnApproved>, const Names& names) {
    using R = ReturnApproved;
    return rc::gen::cast<Body>(rc::gen::build<R>(set(&R::inspection, names.inspection), set(&R::statement, anyText()),
                                                 set(&R::signatory, names.person), set(&R::capacity, anySlug()),
                                                 set(&R::licence, anyText()), set(&R::confirmed, anyConfirmed(names)),
                                                 set(&R::proof, anyProof())));
}

rc::Gen<Body> any(Of<DefectFound>, const Names& names) {
    using D = DefectFound;
    const auto found =
        rc::gen::build<D>(set(&D::defect, names.defect), set(&D::item, names.item), set(&D::what, saying()),
                          set(&D::severity, rc::gen::element(Severity::Barring, Severity::Minor, Severity::Grounding,
                                                             Severity::Deferrable)),
                          set(&D::inspection, optionally(names.inspection)), set(&D::line, anyText()),
                          set(&D::reading, optionally(names.target)), set(&D::place, anyPlace()),
                          set(&D::photographs, anyPhotographs()), set(&D::gradedBy, optionally(names.person)));
    // A reading that failed says enough.
    return rc::gen::exec([found]() -> Body {
        auto body = *found;
        if (body.reading && *rc::gen::arbitrary<bool>())
            body.what.clear();
        return body;
    });
}

rc::Gen<Body> any(Of<DefectDeferred>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        DefectDeferred body{*names.defect,
                            *names.item,
                            *saying(),
                            *optionally(names.on),
                            {},
                            *names.person,
                            *optionally(names.inspection)};
        if (!body.until || *rc::gen::arbitrary<bool>())
            body.untilMinutes = *anyCount<Minutes>(0, largestCount);
        body.notRequired = *rc::gen::arbitrary<bool>();
        body.placard = *anyText();
        return body;
    });
}

rc::Gen<Body> any(Of<DefectCleared>, const Names& names) {
    using D = DefectCleared;
    return rc::gen::cast<Body>(rc::gen::build<D>(set(&D::defect, names.defect), set(&D::item, names.item),
                                                 set(&D::what, saying()), set(&D::ref, anyText()),
                                                 set(&D::inspection, optionally(names.inspection))));
}

rc::Gen<Body> any(Of<RepairMade>, const Names& names) {
    using R = RepairMade;
    return rc::gen::cast<Body>(rc::gen::build<R>(
        set(&R::item, names.item), set(&R::method, saying()), set(&R::place, anyPlace()),
        set(&R::width, optionally(anyAmount<Millimetres>())), set(&R::height, optionally(anyAmount<Millimetres>())),
        set(&R::lot, anyText()), set(&R::defect, optionally(names.defect)),
        set(&R::inspection, optionally(names.inspection)), set(&R::line, anyText())));
}

rc::Gen<Body> any(Of<PartReplaced>, const Names& names) {
    using P = PartReplaced;
    return rc::gen::cast<Body>(rc::gen::build<P>(
        set(&P::item, names.item), set(&P::part, saying()), set(&P::removedSerial, anyText()),
        set(&P::fittedSerial, anyText()), set(&P::releaseDocument, saying()), set(&P::defect, optionally(names.defect)),
        set(&P::inspection, optionally(names.inspection)), set(&P::line, anyText())));
}

rc::Gen<Body> any(Of<WorkPerformed>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        WorkPerformed body{*names.inspection, *names.item, *saying(), *saying()};
        body.grade = *optionally(rc::gen::element(Grade::Servicing, Grade::Minor, Grade::Major, Grade::Standard));
        body.approval = body.grade == Grade::Major ? *saying() : *anyText();
        body.performed = *optionally(names.person);
        body.line = *anyText();
        body.defect = *optionally(names.defect);
        return body;
    });
}

rc::Gen<Body> any(Of<ReleaseIncomplete>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        ReleaseIncomplete body;
        body.inspection = *names.inspection;
        body.statement = *anyText();
        body.signatory = *names.person;
        body.capacity = *anySlug();
        body.licence = *anyText();
        if (*rc::gen::arbitrary<bool>())
            body.manuals = {*saying()};
        body.limitations = *saying();
        body.outstanding = {{*saying(), *optionally(names.item), *anyText()}};
        for (int i = *rc::gen::inRange(0, 3); i > 0; --i)
            body.covers.push_back({*names.item, *names.requirement});
        if (*rc::gen::arbitrary<bool>())
            body.seal = Seal{{*names.target}, *anyDigest()};
        if (*rc::gen::arbitrary<bool>())
            body.within = {CivilDate::fromDayNumber(*rc::gen::inRange(0, 40'000)), Minutes(*rc::gen::inRange(1, 600)),
                           *rc::gen::inRange<std::int64_t>(1, 9)};
        body.proof = *anyProof();
        body.confirmed = *anyConfirmed(names);
        return body;
    });
}

rc::Gen<Body> any(Of<InspectionOpened>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        InspectionOpened body{*names.inspection, *anySlug(), *someOf(names.item), *optionally(names.balloon), {}, {}};
        for (int i = *rc::gen::inRange(0, 3); i > 0; --i)
            body.work.push_back({*names.item, *names.requirement});
        if (*rc::gen::arbitrary<bool>())
            body.checklist = nlohmann::json{{"title", *anyText()}, {"lines", {1, nullptr}}}.dump();
        body.order = *anyText();
        return body;
    });
}

rc::Gen<Body> any(Of<InspectionClosed>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        InspectionClosed body;
        body.inspection = *names.inspection;
        body.outcome = *rc::gen::element(Outcome::Released, Outcome::Discrepancies, Outcome::Abandoned);
        body.statement = *anyText();
        if (body.outcome != Outcome::Abandoned || *rc::gen::arbitrary<bool>())
            body.signatory = *names.person;
        body.capacity = *rc::gen::oneOf(rc::gen::just(std::string()), anySlug());
        body.licence = *anyText();
        if (*rc::gen::arbitrary<bool>())
            body.manuals = {*saying()};
        body.limitations = *anyText();
        if (*rc::gen::arbitrary<bool>())
            body.clocks = {{*names.item, {Minutes{*rc::gen::inRange(0, 100'000)}, {}, Inflations{7}}}};
        if (*rc::gen::arbitrary<bool>())
            body.seal = Seal{{*names.target}, *anyDigest()};
        if (*rc::gen::arbitrary<bool>())
            body.excepted = {{*names.item, *names.requirement, *anyText(),
                              *rc::gen::element<std::string>("spent", "lapsed", "unproven")}};
        body.proof = *anyProof();
        body.confirmed = *anyConfirmed(names);
        return body;
    });
}

rc::Gen<Body> any(Of<ReviewSigned>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        ReviewSigned body;
        body.balloon = *names.balloon;
        body.item = *names.item;
        body.act = static_cast<ReviewAct>(*rc::gen::inRange(0, reviewActCount));
        body.form = *saying();
        body.certificate = *saying();
        if (body.act != ReviewAct::Recommendation)
            body.expires = *names.on;
        body.reviewer = *names.person;
        body.capacity = *anySlug();
        body.authorisation = *anyText();
        body.findings = *anyText();
        if (*rc::gen::arbitrary<bool>())
            body.photographs = {*anyDigest()};
        body.inspection = *optionally(names.inspection);
        body.proof = *anyProof();
        body.statement = *anyText();
        body.confirmed = *anyConfirmed(names);
        return body;
    });
}

rc::Gen<Body> any(Of<PersonEntitled>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        PersonEntitled body{*names.person, *anySlug(), *saying(), *optionally(names.on), {}};
        body.organisation = *anyText();
        body.approval = *anyText();
        body.lastReview = *optionally(names.on);
        if (*rc::gen::arbitrary<bool>())
            body.balloons = {*names.balloon};
        return body;
    });
}

rc::Gen<Body> any(Of<TesterCalibrated>, const Names& names) {
    using T = TesterCalibrated;
    return rc::gen::cast<Body>(rc::gen::build<T>(
        set(&T::tester, anyName<TesterId>()), set(&T::until, names.on), set(&T::what, anyText()),
        set(&T::certificate, anyText()),
        set(&T::measures,
            rc::gen::element(std::vector<std::string>{}, std::vector<std::string>{"grab-strength", "tear-strength"})),
        set(&T::unit, rc::gen::element<std::string>("", "N", "°C")), set(&T::from, optionally(anyNumber())),
        set(&T::to, optionally(anyNumber())), set(&T::station, anyText())));
}

rc::Gen<Body> any(Of<TypeDescribed>, const Names&) {
    using T = TypeDescribed;
    return rc::gen::cast<Body>(rc::gen::build<T>(
        set(&T::type, anyName<TypeName>()), set(&T::kind, anyKind()), set(&T::manual, saying()),
        set(&T::revision, saying()), set(&T::gores, optionally(rc::gen::inRange(1, 1001))),
        set(&T::rows, optionally(rc::gen::inRange(1, 1001))), set(&T::confirmed, rc::gen::arbitrary<bool>())));
}

rc::Gen<Body> any(Of<LimitStated>, const Names&) {
    return rc::gen::exec([]() -> Body {
        LimitStated body;
        body.type = *anyName<TypeName>();
        body.kind = *anyKind();
        body.quantity = *anySlug();
        body.unit = *rc::gen::element<std::string>("N", "mm/s", "°C");
        const auto figure = *anyNumber();
        const int which = *rc::gen::inRange(0, 4);
        if ((which & 1) != 0)
            body.least = figure;
        if ((which & 2) != 0)
            body.most = figure;
        body.proof = which == 0 ? std::optional(figure) : *optionally(anyNumber());
        body.places = *optionally(rc::gen::inRange(1, 1001));
        body.zone = *optionally(anyZone());
        body.conditions = *anyConditions();
        body.passes = *anyText();
        body.source = *saying();
        body.retires = *rc::gen::element(Retired::Panel, Retired::Item);
        body.confirmed = *rc::gen::arbitrary<bool>();
        body.seconds = *optionally(rc::gen::map(rc::gen::inRange(1, 600), [](int value) { return double(value); }));
        return body;
    });
}

rc::Gen<Body> any(Of<FabricStated>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        FabricStated body{*names.item, *saying(), *anyText(), {}, {}, {}, {}};
        body.firstGore = *optionally(rc::gen::inRange(1, 500));
        body.lastGore = *optionally(rc::gen::inRange(500, 1001));
        body.firstRow = *optionally(rc::gen::inRange(1, 500));
        body.lastRow = *optionally(rc::gen::inRange(500, 1001));
        return body;
    });
}

rc::Gen<Body> any(Of<ChecklistAdopted>, const Names&) {
    return rc::gen::map(anyName<ChecklistId>(), [](const ChecklistId& checklist) -> Body {
        return ChecklistAdopted{checklist, nlohmann::json{{"lines", {1, "two"}}}.dump()};
    });
}

std::vector<Body> castOfTheBench(const std::vector<ItemId>& items) {
    return {PersonEntitled{PersonId("person"), "mechanic", "L 1", {}, {}},
            InspectionOpened{InspectionId("inspection"), "us-annual", items, {}, {}, {}},
            DefectFound{DefectId("d1"), items.front(), "torn", Severity::Barring, {}, {}, {}, {}},
            DefectFound{DefectId("d2"), items.back(), "worn", Severity::Minor, {}, {}, {}, {}}, directiveOfTheCast()};
}

}
