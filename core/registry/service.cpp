// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/service.h"

#include "registry/service_phrase.h"

namespace crownring {

namespace {

Phrase ownReason(const OutOfService& out) {
    switch (out.state) {
    case ServiceState::InService:
    case ServiceState::LaidUp:
        break;
    case ServiceState::Sold:
        return out.to.empty() ? Phrase{ServicePhrase::Sold, {out.since}}
                              : Phrase{ServicePhrase::SoldTo, {out.since, out.to}};
    case ServiceState::Scrapped:
        return {ServicePhrase::Scrapped, {out.since}};
    case ServiceState::Lost:
        return {ServicePhrase::Lost, {out.since}};
    case ServiceState::Away:
        return out.to.empty() ? Phrase{ServicePhrase::Away, {out.since}}
                              : Phrase{ServicePhrase::AwayTo, {out.since, out.to}};
    case ServiceState::Unserviceable:
        return {ServicePhrase::Unserviceable, {out.since}};
    case ServiceState::Quarantined:
        return {ServicePhrase::Quarantined, {out.since}};
    case ServiceState::Condemned:
        return out.hottest ? Phrase{ServicePhrase::Overheated, {out.since, InUnit{out.hottest->value(), "degC"}}}
                           : Phrase{ServicePhrase::Condemned, {out.since}};
    }
    return {ServicePhrase::LaidUp, {out.since}};
}

}

Argument reasonOf(const OutOfService& out) {
    if (out.with)
        return Phrase{ServicePhrase::With, {*out.with, ownReason(out)}};
    if (out.takenOut)
        return Phrase{out.by == Hurt::Overheated ? ServicePhrase::TakenOutHot
                      : out.by == Hurt::Fire     ? ServicePhrase::TakenOutBurnt
                                                 : ServicePhrase::TakenOut,
                      {out.since, *out.part}};
    return out.part ? Phrase{ServicePhrase::With, {*out.part, ownReason(out)}} : ownReason(out);
}

Argument reasonOf(const Renaming& renaming) {
    return Phrase{ServicePhrase::Renamed, {renaming.stamp.at.on(), renaming.to}};
}

Moment outFrom(Moment at) { return at == Moment::startOf(at.on()) ? Moment::endOf(at.on()) : at; }

}
