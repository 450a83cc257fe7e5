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
    }
    return {ServicePhrase::LaidUp, {out.since}};
}

}

Argument reasonOf(const OutOfService& out) {
    return out.with ? Phrase{ServicePhrase::With, {*out.with, ownReason(out)}} : ownReason(out);
}

Argument reasonOf(const Renaming& renaming) {
    return Phrase{ServicePhrase::Renamed, {renaming.stamp.at.on(), renaming.to}};
}

Moment outFrom(Moment at) { return at == Moment::startOf(at.on()) ? Moment::endOf(at.on()) : at; }

}
