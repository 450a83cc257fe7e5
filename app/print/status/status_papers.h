// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is in the record of one balloon as papers to be filed: the status of directives, and events with what they made
/// due.

#include "paper/document.h"
#include "record/journal.h"
#include "registry/books.h"

namespace crownring::print {

/// Of what is fitted on that day and in service, worst first. UnknownReference for no such balloon.
[[nodiscard]] Result<paper::Document> directiveStatusOf(Books& books, const Registration& balloon, CivilDate on);

/// Of what is fitted on that day: reported since a day, and what is open however old it is, latest first.
[[nodiscard]] Result<paper::Document> eventStatusOf(Books& books, Journal& journal, const Registration& balloon,
                                                    CivilDate since, CivilDate on);

}
