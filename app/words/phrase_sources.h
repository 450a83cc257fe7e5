// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What each family of phrases is in English, one function and one file of `phrases/` a family. Each is a switch
/// without a default: a phrase without its words does not compile.

#include "problem/argument.h"

namespace crownring::words {

[[nodiscard]] const char* sourceOf(SchemaPhrase phrase);
[[nodiscard]] const char* sourceOf(DuePhrase phrase);
[[nodiscard]] const char* sourceOf(ReadingPhrase phrase);
[[nodiscard]] const char* sourceOf(LimitPhrase phrase);
[[nodiscard]] const char* sourceOf(JudgedPhrase phrase);
[[nodiscard]] const char* sourceOf(DoubtPhrase phrase);
[[nodiscard]] const char* sourceOf(BarredPhrase phrase);
[[nodiscard]] const char* sourceOf(ContentPhrase phrase);
[[nodiscard]] const char* sourceOf(SignedPhrase phrase);
[[nodiscard]] const char* sourceOf(ReleasePhrase phrase);
[[nodiscard]] const char* sourceOf(LogPhrase phrase);
[[nodiscard]] const char* sourceOf(TrackPhrase phrase);
[[nodiscard]] const char* sourceOf(LeftOutPhrase phrase);
[[nodiscard]] const char* sourceOf(VerdictPhrase phrase);
[[nodiscard]] const char* sourceOf(SheetPhrase phrase);
[[nodiscard]] const char* sourceOf(ReviewPhrase phrase);
[[nodiscard]] const char* sourceOf(PaperPhrase phrase);
[[nodiscard]] const char* sourceOf(ChecklistPhrase phrase);
[[nodiscard]] const char* sourceOf(FlightPhrase phrase);
[[nodiscard]] const char* sourceOf(ServicePhrase phrase);

}
