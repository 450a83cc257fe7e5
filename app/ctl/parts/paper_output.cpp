// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/parts/paper_output.h"

#include "ctl/call.h"
#include "print/pdf.h"

namespace crownring::ctl {

int writePaper(const Result<paper::Document>& document, const PaperAsked& asked) {
    if (!document)
        return refuse(document.error());
    const auto written =
        print::writePdf(*document, asked.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4,
                        asked.to, asked.force ? Replace::Asked : Replace::Never);
    return written ? int{Done} : refuse(written.error());
}

}
