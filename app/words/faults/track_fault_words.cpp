// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/track_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(TrackFault fault) {
    switch (fault) {
    case TrackFault::NoDate:
        return {QT_TRANSLATE_NOOP("Problem", "this track states no date (H record DTE)"),
                QT_TRANSLATE_NOOP("Problem", "save it again from the recorder as an IGC file")};
    case TrackFault::TooFewFixes:
        return {QT_TRANSLATE_N_NOOP("Problem", "this track has %n usable fixes (B records of validity A)"),
                QT_TRANSLATE_NOOP("Problem", "choose the file that holds the whole flight")};
    case TrackFault::NoAltitude:
        return {QT_TRANSLATE_NOOP("Problem", "no fix of this track has an altitude"),
                QT_TRANSLATE_NOOP("Problem", "log the flight by hand")};
    case TrackFault::NoFlight:
        return {QT_TRANSLATE_NOOP("Problem", "no flight can be found in this track"),
                QT_TRANSLATE_NOOP("Problem", "log the flight by hand")};
    }
    return {};
}

}
