// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A reading as it was written, to be said.

#include "record/kinds/readings.h"
#include "registry/reading_phrase.h"

namespace crownring {

/// "…, gore 3, row 12"; where nothing is known of the place, `what` itself.
[[nodiscard]] Argument inPlace(Argument what, const PanelPlace& place);

/// "grab strength held at 150 N, gore 3, row 12".
[[nodiscard]] Argument said(const ReadingTaken& reading);

}
