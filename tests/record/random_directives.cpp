// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/random_kinds.h"

namespace crownring::random {

namespace {

rc::Gen<std::string> said() {
    return rc::gen::map(anyText(), [](const std::string& text) { return "y" + text; });
}

std::vector<std::string> someTexts() {
    std::vector<std::string> texts;
    for (int count = *rc::gen::inRange(0, 3); count > 0; --count)
        texts.push_back(*said() + std::to_string(count));
    return texts;
}

std::vector<SerialSpan> someSpans() {
    std::vector<SerialSpan> spans;
    for (int count = *rc::gen::inRange(0, 3); count > 0; --count) {
        SerialSpan span{*optionally(said()), *optionally(said())};
        if (!span.from && !span.to)
            span.to = "A-0150";
        spans.push_back(std::move(span));
    }
    return spans;
}

ItemKind someKind() { return static_cast<ItemKind>(*rc::gen::inRange(0, itemKindCount)); }

AppliesTo someApplies() {
    AppliesTo applies{{someKind()}, someTexts(), someSpans(), {}};
    if (const auto other = someKind(); other != applies.kinds.front())
        applies.kinds.push_back(other);
    for (int count = *rc::gen::inRange(0, 3); count > 0; --count)
        applies.fitted.push_back({*anySlug(), {}, someTexts(), someSpans()});
    for (auto& part : applies.fitted)
        if (*rc::gen::arbitrary<bool>())
            part.in = someKind();
    return applies;
}

DoneWithin someWithin() {
    const auto count = [](std::int64_t most) { return *optionally(rc::gen::inRange<std::int64_t>(1, most + 1)); };
    return {count(largestCount), count(largestCount), count(largestCount), count(36'600), count(1'200)};
}

std::vector<ListedPart> someParts(int depth) {
    std::vector<ListedPart> parts;
    for (int count = depth > 0 ? *rc::gen::inRange(0, 3) : 0; count > 0; --count) {
        ListedPart part{*anySlug(), *optionally(said()), {}, someParts(depth - 1), *rc::gen::arbitrary<bool>()};
        if (*rc::gen::arbitrary<bool>()) // in one place each
            part.serial = "S" + std::to_string(*rc::gen::inRange(0, 1'000'000'000)) + '/' + std::to_string(depth);
        parts.push_back(std::move(part));
    }
    return parts;
}

}

DirectiveIssued directiveOfTheCast() {
    DirectiveIssued issued;
    issued.directive = DirectiveId("directive");
    issued.revision = "0";
    issued.title = "Look at the valve";
    issued.issuer = "Authority of Q";
    issued.state = "Q";
    issued.effective = CivilDate::fromDayNumber(20'000);
    issued.source = "invented for tests";
    issued.applies.kinds = {ItemKind::Burner};
    issued.beforeFlight = true;
    return issued;
}

rc::Gen<Body> any(Of<DirectiveIssued>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        DirectiveIssued body;
        body.directive = *names.directive;
        body.revision = *said();
        body.title = *said();
        body.issuer = *said();
        body.issuedBy = static_cast<IssuedBy>(*rc::gen::inRange(0, issuedByCount));
        body.state = *said();
        body.effective = *names.on;
        body.source = *said();
        body.applies = someApplies();
        body.recommended = *rc::gen::arbitrary<bool>();
        body.beforeFlight = *rc::gen::arbitrary<bool>();
        body.until = *optionally(names.on);
        body.first = someWithin();
        if (!body.until && body.first.empty())
            body.beforeFlight = true;
        body.repeat = someWithin();
        body.terminating = *anyText();
        if (*rc::gen::arbitrary<bool>())
            body.supersedes = *someOf(anyName<DirectiveId>());
        body.credits = someTexts();
        return body;
    });
}

rc::Gen<Body> any(Of<DirectiveAnswered>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        DirectiveAnswered body;
        body.directive = *names.directive;
        body.revision = *said();
        if (*rc::gen::arbitrary<bool>())
            body.item = *names.item;
        else
            body.balloon = *names.balloon;
        if (*rc::gen::arbitrary<bool>()) {
            body.method = *said();
            body.amoc = *anyText();
            body.terminating = *rc::gen::arbitrary<bool>();
            if (body.item)
                body.clock.minutes = *optionally(anyCount<Minutes>(0, largestCount));
        } else {
            body.answer = DirectiveAnswer::NotApplicable;
            body.why = *said();
        }
        if (*rc::gen::arbitrary<bool>())
            body.capacity = *anySlug();
        body.licence = *anyText();
        body.ref = *anyText();
        body.inspection = *optionally(names.inspection);
        return body;
    });
}

rc::Gen<Body> any(Of<PartsListed>, const Names& names) {
    return rc::gen::exec([names]() -> Body {
        return PartsListed{*names.item, someParts(2), *rc::gen::arbitrary<bool>(), *anyText()};
    });
}

}
