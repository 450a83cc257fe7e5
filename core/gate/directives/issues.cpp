// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/told.h"
#include "gate/defects/deciding.h"
#include "gate/directives/answering.h"
#include "problem/faults/directives/directive_fault.h"
#include "rules/programme/serial_order.h"

#include <algorithm>

namespace crownring {

namespace {

bool isReversed(const std::vector<SerialSpan>& spans) {
    return std::ranges::any_of(
        spans, [](const SerialSpan& span) { return span.from && span.to && compareSerials(*span.from, *span.to) > 0; });
}

bool isOneIssuers(const DirectiveIssued& a, const DirectiveIssued& b) {
    return a.issuer == b.issuer && a.issuedBy == b.issuedBy && a.state == b.state;
}

/// What some revision of a directive supersedes leads back to it.
bool isInARing(const std::vector<Said<DirectiveIssued>>& all, const DirectiveIssued& issued, const DirectiveId& first) {
    std::vector<DirectiveId> led{first};
    for (std::size_t at = 0; at < led.size(); ++at) {
        if (led[at] == issued.directive)
            return true;
        const auto from = led[at];
        for (const auto& each : all)
            if (each.body.directive == from && isOneIssuers(each.body, issued))
                for (const auto& next : each.body.supersedes)
                    if (std::ranges::find(led, next) == led.end())
                        led.push_back(next);
    }
    return false;
}

/// A directive is cancelled by who issued it, and none that binds by one that does not.
Findings judgedSuperseding(Books& books, const DirectiveIssued& issued, int line) {
    std::vector<Problem> problems;
    if (issued.supersedes.empty())
        return problems;
    const auto all = directivesIssued(books, CivilDate::last());
    if (!all)
        return tl::unexpected(all.error());
    const auto refuse = [&](DirectiveFault fault, std::vector<Argument> about) {
        problems.push_back(Problem{fault, std::move(about), {{}, line, "supersedes"}});
    };
    for (const auto& number : issued.supersedes) {
        if (isInARing(*all, issued, number))
            refuse(DirectiveFault::SupersedesInARing, {issued.directive, number});
        const auto former = std::ranges::find_if(*all, [&](const auto& each) {
            return each.body.directive == number &&
                   (!isOneIssuers(each.body, issued) || (issued.recommended && !each.body.recommended));
        });
        if (former == all->end())
            continue;
        if (!isOneIssuers(former->body, issued))
            refuse(DirectiveFault::SupersedesAnothers, {number, former->body.issuer});
        else
            refuse(DirectiveFault::SupersedesMandatory, {number});
    }
    return problems;
}

/// A revision that only recommends what was mandatory takes that away: who may decide that of a defect says why.
Findings judgedLesser(const Batch& batch, const Entry& entry, const DirectiveIssued& issued,
                      const std::vector<Entry>& issues, int line) {
    const bool wasMandatory = std::ranges::any_of(issues, [&](const Entry& other) {
        return other.id != entry.id && !std::get<DirectiveIssued>(other.body).recommended;
    });
    const auto written = batch.journal.line(entry.id);
    if (!written)
        return tl::unexpected(written.error());
    // What is amended is asked with all that grounds.
    if (!issued.recommended || !wasMandatory || !*written || (*written)->current)
        return std::vector<Problem>{};
    return askWhoDecides(batch, entry, {**written, {}, {}, ReleaseFault::GroundUnsaid, issued.directive}, line);
}

}

Result<std::vector<Entry>> issuesOf(Books& books, const DirectiveId& directive) {
    const auto told =
        books.told({Subject::Directive, directive.text(), {kindName<DirectiveIssued>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entry> issues;
    for (const auto& line : *told)
        if (std::holds_alternative<DirectiveIssued>(nowOf(line).body))
            issues.push_back(nowOf(line));
    return issues;
}

Findings judgedIssue(const Batch& batch, const Entry& entry, const DirectiveIssued& issued, int line) {
    const auto issues = issuesOf(batch.books, issued.directive);
    if (!issues)
        return tl::unexpected(issues.error());
    std::vector<Problem> problems;
    if (isReversed(issued.applies.serials) ||
        std::ranges::any_of(issued.applies.fitted, [](const auto& part) { return isReversed(part.serials); }))
        problems.push_back(Problem{DirectiveFault::RangeReversed, {}, {{}, line, "applies"}});
    if (issued.until && *issued.until < issued.effective)
        problems.push_back(
            Problem{DirectiveFault::DueBeforeEffective, {*issued.until, issued.effective}, {{}, line, "first.by"}});
    for (const auto& other : *issues) {
        const auto& said = std::get<DirectiveIssued>(other.body);
        if (other.id == entry.id)
            continue;
        if (!isOneIssuers(said, issued))
            problems.push_back(
                Problem{DirectiveFault::OtherIssuer, {issued.directive, said.issuer}, {{}, line, "issuer"}});
        else if (said.revision == issued.revision)
            problems.push_back(
                Problem{DirectiveFault::IssuedTwice, {issued.directive, issued.revision}, {{}, line, "revision"}});
    }
    const auto superseding = judgedSuperseding(batch.books, issued, line);
    const auto lesser = judgedLesser(batch, entry, issued, *issues, line);
    if (!superseding || !lesser)
        return tl::unexpected(superseding ? lesser.error() : superseding.error());
    problems.insert(problems.end(), superseding->begin(), superseding->end());
    problems.insert(problems.end(), lesser->begin(), lesser->end());
    return problems;
}

}
