// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/track_fault.h"

namespace crownring {

FaultRow rowOf(TrackFault fault) {
    switch (fault) {
    case TrackFault::NoDate:
        return {"no-date", Code::IgcBadTrack};
    case TrackFault::TooFewFixes:
        return {"too-few-fixes", Code::IgcBadTrack};
    case TrackFault::NoAltitude:
        return {"no-altitude", Code::IgcBadTrack};
    case TrackFault::NoFlight:
        return {"no-flight", Code::IgcNoFlight};
    }
    return {};
}

}
