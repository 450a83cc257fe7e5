// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/parts/component_calls.h"
#include "print/pdf.h"
#include "print/tags/tag_sheet.h"

namespace crownring::ctl {

int run(const TagsOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto items = record->facts({std::nullopt, {options.items.begin(), options.items.end()}}, record.on);
    if (!items)
        return refuse(items.error());
    const auto written = print::writePdf(print::tagSheet(*items, record.on),
                                         options.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4,
                                         options.to, options.force ? Replace::Asked : Replace::Never);
    return written ? int{Done} : refuse(written.error());
}

}
