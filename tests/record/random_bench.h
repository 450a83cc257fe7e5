// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "record/random_names.h"

namespace crownring::random {

/// Any entry of the bench.
rc::Gen<Body> anyOfTheBench(const Names& names);

/// What those of a history speak of: an inspection, two defects and a person.
std::vector<Body> castOfTheBench(const std::vector<ItemId>& items);

}
