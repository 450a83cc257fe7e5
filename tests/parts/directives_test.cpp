// SPDX-License-Identifier: GPL-3.0-or-later

/// Whom a directive binds. Directives, types and serials are invented.

#include "parts/directives.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <functional>

namespace directives_test {

using namespace crownring;

namespace {

FittedThing thing(std::string name, std::optional<std::string> type = {}, std::optional<std::string> serial = {},
                  std::vector<FittedThing> parts = {}, bool isWhole = true) {
    return {std::move(name), std::move(type), std::move(serial), std::move(parts), isWhole};
}

/// "An envelope whose burner has valve X-2 of serial 100 to 200."
const BoundBy envelopeWithValve{{"envelope", {"T-77"}, {}}, {{"valve", {"X-2"}, {{"100", "200"}}}}};

FittedThing envelope() { return thing("envelope", "T-77", "E 12"); }
FittedThing burnerWith(FittedThing valve) { return thing("burner", "B-3", "9", {std::move(valve)}); }

Applicability ofBalloon(const BoundBy& bound, const FittedThing& burner, bool isWhole = true) {
    return applies(bound, envelope(), {envelope(), burner}, isWhole);
}

// Everything is drawn from few words, so that things match now and then.
std::string anyOf(std::initializer_list<const char*> words) {
    return *rc::gen::elementOf(std::vector<std::string>(words.begin(), words.end()));
}
std::string anyType() { return anyOf({"X-1", "X-2"}); }
std::string anySerial() { return anyOf({"90", "0100", "150", "201"}); }

/// @param known in so many of ten cases type, serial and the list of parts are
FittedThing anyThing(const std::string& name, int depth, int known) {
    const auto isKnown = [&] { return *rc::gen::inRange(0, 10) < known; };
    auto made = thing(name);
    if (isKnown())
        made.type = anyType();
    if (isKnown())
        made.serial = anySerial();
    made.isWhole = isKnown();
    for (int count = depth > 0 ? *rc::gen::inRange(0, 3) : 0; count > 0; --count)
        made.parts.push_back(anyThing(anyOf({"valve", "hose", "coil"}), depth - 1, known));
    return made;
}
std::vector<FittedThing> anyBalloon(int known) {
    return {anyThing("envelope", 0, known), anyThing("burner", 2, known), anyThing("cylinder", 1, known)};
}
ThingAsked anyAsked(const std::string& name) {
    ThingAsked asked{name, {}, {}};
    if (*rc::gen::inRange(0, 3) > 0)
        asked.types = {anyType()};
    if (*rc::gen::inRange(0, 3) > 0)
        asked.serials = {{"100", "200"}};
    return asked;
}
BoundBy anyBound() {
    BoundBy bound{anyAsked("envelope"), {}};
    for (int count = *rc::gen::inRange(0, 3); count > 0; --count)
        bound.having.push_back(anyAsked(anyOf({"valve", "hose", "burner"})));
    return bound;
}

/// What nobody knew is filled in with anything.
void complete(FittedThing& made) {
    if (!made.type)
        made.type = anyType();
    if (!made.serial)
        made.serial = anySerial();
    if (!made.isWhole && *rc::gen::inRange(0, 2) == 1)
        made.parts.push_back(anyThing(anyOf({"valve", "hose", "coil"}), 1, 10));
    for (auto& part : made.parts)
        complete(part);
    made.isWhole = true;
}

/// All that is fitted, in one list.
void flatten(const std::vector<FittedThing>& things, std::vector<const FittedThing*>& into) {
    for (const auto& each : things) {
        into.push_back(&each);
        flatten(each.parts, into);
    }
}
/// Of things that are known: read off in the plainest way.
bool isPlainly(const ThingAsked& asked, const FittedThing& made) {
    const auto number = std::stoi(*made.serial);
    return asked.name == made.name && (asked.types.empty() || asked.types.front() == *made.type) &&
           (asked.serials.empty() || (number >= 100 && number <= 200));
}
bool plainlyBinds(const BoundBy& bound, const std::vector<FittedThing>& balloon) {
    std::vector<const FittedThing*> all;
    flatten(balloon, all);
    return isPlainly(bound.item, balloon.front()) && std::ranges::all_of(bound.having, [&](const ThingAsked& asked) {
               return std::ranges::any_of(all, [&](const FittedThing* each) { return isPlainly(asked, *each); });
           });
}

}

class DirectivesTest : public QObject {
    Q_OBJECT

private slots:
    void whatHasThePartIsBound() {
        const auto found = ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-2", "0150")));
        QVERIFY(found.applies == Truth::Yes && found.why == WhyBound::AllHolds);
    }
    void anotherValveIsNotBoundAndSaysWhy() {
        QVERIFY((ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-1", "150"))) ==
                 Applicability{Truth::No, WhyBound::NothingFitted, "valve"}));
        QVERIFY(ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-2", "201"))).applies == Truth::No);
    }
    void aMissingSerialIsUnknownNeverNo() {
        QVERIFY((ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-2"))) ==
                 Applicability{Truth::Unknown, WhyBound::SerialMissing, "valve"}));
        QVERIFY((ofBalloon(envelopeWithValve, burnerWith(thing("valve", {}, "150"))) ==
                 Applicability{Truth::Unknown, WhyBound::TypeMissing, "valve"}));
    }
    void whatIsKnownDecidesWhateverIsMissing() {
        QVERIFY(ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-1"))).applies == Truth::No);
        const auto other = thing("envelope", "T-90");
        QVERIFY((applies(envelopeWithValve, other, {other}, false) ==
                 Applicability{Truth::No, WhyBound::OtherType, "envelope"}));
        const auto basket = thing("basket");
        QVERIFY(applies(envelopeWithValve, basket, {basket}, false).why == WhyBound::OtherKind);
    }
    void aPartThatNobodyListedIsUnknown() {
        const auto unlisted = thing("burner", "B-3", "9", {}, false);
        QVERIFY((ofBalloon(envelopeWithValve, unlisted) ==
                 Applicability{Truth::Unknown, WhyBound::PartsUnlisted, "valve"}));
        QVERIFY(ofBalloon(envelopeWithValve, burnerWith(thing("valve", "X-1", "150")), false).applies ==
                Truth::Unknown);
        const auto loose = envelope();
        QVERIFY(applies(envelopeWithValve, loose, {loose}, false).applies == Truth::Unknown);
    }
    void aTypeIsTheSameHoweverItsDashIsWritten() {
        QVERIFY(ofBalloon(envelopeWithValve, burnerWith(thing("valve", "x 2", "150"))).applies == Truth::Yes);
    }
    void itTakesTheBindingPartAlongWhenItIsSwapped() {
        auto first = burnerWith(thing("valve", "X-2", "150"));
        auto second = burnerWith(thing("valve", "X-1", "7"));
        QVERIFY(ofBalloon(envelopeWithValve, first).applies == Truth::Yes);
        QVERIFY(ofBalloon(envelopeWithValve, second).applies == Truth::No);
        std::swap(first.parts.front(), second.parts.front());
        QVERIFY(ofBalloon(envelopeWithValve, first).applies == Truth::No);
        QVERIFY(ofBalloon(envelopeWithValve, second).applies == Truth::Yes);
    }

    /// Whatever turns out to be missing, a yes or a no stays what it was.
    void whatWasNotKnownOverturnsNoAnswer() {
        int decided = 0;
        const bool holds = rc::check("what was not known overturns no answer", [&] {
            const auto bound = anyBound();
            auto balloon = anyBalloon(*rc::gen::inRange(5, 10));
            const bool isWhole = *rc::gen::inRange(0, 3) > 0;
            const auto before = applies(bound, balloon.front(), balloon, isWhole).applies;
            RC_PRE(before != Truth::Unknown);
            ++decided;
            for (auto& each : balloon)
                complete(each);
            if (!isWhole && *rc::gen::inRange(0, 2) == 1) {
                balloon.push_back(anyThing("burner", 2, 10));
                complete(balloon.back());
            }
            RC_ASSERT((applies(bound, balloon.front(), balloon, true).applies == before));
        });
        QVERIFY(holds);
        QVERIFY(decided > 50);
    }

    /// Trees of fitted parts, swapped at random between two balloons: each is bound by what hangs in it now.
    void afterAnySwapsWhatHangsInItDecides() {
        const bool holds = rc::check("after any swaps what hangs in it decides", [] {
            const auto bound = anyBound();
            std::vector balloons{anyBalloon(10), anyBalloon(10)};
            for (auto& balloon : balloons)
                for (auto& each : balloon)
                    complete(each);
            for (int swaps = *rc::gen::inRange(0, 6); swaps > 0; --swaps) {
                auto& a = balloons[0][static_cast<std::size_t>(*rc::gen::inRange(1, 3))].parts;
                auto& b = balloons[1][static_cast<std::size_t>(*rc::gen::inRange(1, 3))].parts;
                if (!a.empty() && !b.empty())
                    std::swap(a[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(a.size())))],
                              b[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(b.size())))]);
            }
            for (const auto& balloon : balloons)
                RC_ASSERT((applies(bound, balloon.front(), balloon, true).applies ==
                           (plainlyBinds(bound, balloon) ? Truth::Yes : Truth::No)));
        });
        QVERIFY(holds);
    }
};

CROWNRING_TEST(DirectivesTest)

}

#include "directives_test.moc"
