// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/station_letter.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/document_text.h"
#include "print/ahead/ahead_papers.h"
#include "print/pdf.h"
#include "words/spoken.h"
#include "writing/write_out.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

int run(const LetterOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto letter = letterOf(*record, EntryId(options.visit), record.on, std::min(record.on, today()));
    if (!letter)
        return refuse(letter.error());
    static const words::Spoken language;
    const auto document = print::letter(*letter);
    if (options.out.empty()) {
        std::cout << paper::toText(document, language);
        return Done;
    }
    const auto replace = options.force ? Replace::Asked : Replace::Never;
    const auto written =
        options.out.ends_with(".pdf")
            ? print::writePdf(document, options.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4,
                              options.out, replace)
            : writeOut(options.out,
                       options.out.ends_with(".json") ? letterText(*letter) : paper::toText(document, language),
                       replace);
    if (!written)
        return refuse(written.error());
    print({{"out", options.out}});
    return Done;
}

}
