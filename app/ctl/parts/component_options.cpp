// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/parts/component_calls.h"

namespace crownring::ctl {

namespace {

constexpr const char* formNumber = "FORM:NUMBER";

void addPool(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<PoolOptions>(app, chosen, "pool", "Where every item of a kind is, and until when it is good");
    call->add_option("--kind", options->kind, "envelope, basket, burner, cylinder, hose, instrument, other")
        ->type_name("KIND");
    call->add_option("--lot", options->lot, "Pieces of this lot, and what has material of it")->type_name("LOT");
    addDay(*call, options->on, "The day (default: today)");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer("Two dates each: airworthy (what blocks flight) and transport (what blocks filling). What was filled\n"
                 "before the second may be flown until it is empty. By what falls due first; what nothing is known of\n"
                 "comes before.");
}

void addReplace(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<ReplaceOptions>(app, chosen, "replace", "Take one item off and fit another in its place, as one act");
    call->add_option("--off", options->off, "What comes off")->required()->type_name("ID");
    call->add_option("--with", options->with, "What goes on")->required()->type_name("ID");
    call->add_option("--release", options->release,
                     "By what it is released: easa-form-1, faa-8130-3, owner-accepted, "
                     "declaration or inspection, and the number")
        ->type_name(formNumber);
    call->add_option("--lot", options->lot, "The lot that it is a piece of");
    call->add_flag("--unserviceable", options->unserviceable, "What came off is kept apart until it is released");
    addDay(*call, options->on, "The day (default: today)");
    call->add_option("--time", options->time, "Of that day, UTC (default: now; of an earlier day after its flights)")
        ->type_name("HH:MMZ");
    call->add_option("--by", options->by, "Who did it")->type_name("NAME");
    call->add_flag("--json", alwaysJson);
}

void addSend(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<SendOptions>(app, chosen, "send", "Send a batch to a test house or a shop, as one act");
    call->add_option("--items", options->items, "What goes")->required()->delimiter(',')->type_name("A,B,C");
    call->add_option("--to", options->to, "To whom")->required()->type_name("NAME");
    addDay(*call, options->on, "The day (default: today)");
    call->add_option("--by", options->by, "Who sent it")->type_name("NAME");
    call->add_flag("--json", alwaysJson);
    call->footer("What is fitted comes off. Nothing is asked of what is away.");
}

void addReturn(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<ReturnOptions>(app, chosen, "return", "Take a batch back from a test house or a shop, as one act");
    call->add_option("--items", options->items, "What came back in order")->delimiter(',')->type_name("A,B,C");
    call->add_option("--condemned", options->condemned, "What was condemned there, for good")
        ->delimiter(',')
        ->type_name("A,B,C");
    call->add_option("--requirement", options->requirement, "What was done on it: adr.periodic-test …")
        ->type_name("ID");
    call->add_option("--method", options->method, "How: volumetric, proof, external-visual …");
    call->add_option("--mark", options->mark, "The tester's mark");
    call->add_option("--ref", options->ref, "The tester's document");
    call->add_option("--signatory", options->signatory, "Who signed it")->type_name("NAME");
    call->add_option("--licence", options->licence, "The licence of who signed it: with both it is a paper");
    call->add_option("--release", options->release, "By what it is released, where it was kept apart")
        ->type_name(formNumber);
    call->add_option("--tested", options->tested, "The day of the test (default: of the return)")->type_name("DATE");
    addDay(*call, options->on, "The day (default: today)");
    call->add_option("--by", options->by, "Who took it back")->type_name("NAME");
    call->add_flag("--json", alwaysJson);
}

void addTags(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<TagsOptions>(app, chosen, "tags", "Tags to hang on items, with a QR code each, as PDF");
    call->add_option("--items", options->items, "Whose tags")->required()->delimiter(',')->type_name("A,B,C");
    call->add_option("--to", options->to, "The PDF file to write")->required()->type_name("FILE.pdf");
    addDay(*call, options->on, "The day that they are told of (default: today)");
    call->add_option("--paper", options->paper, "The size of its pages (default: a4)")
        ->check(CLI::IsMember({"a4", "letter"}));
    call->add_flag("--force", options->force, "Replace a file that is there; never a record or another database");
    call->footer("A camera reads \"crownring:item:NAME\". A tag says which item it is, and nothing of its state.");
}

void addTag(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<TagOptions>(app, chosen, "tag", "The item whose tag is on a picture");
    call->add_option("PICTURE", options->picture, "A photograph or a scan, PNG or JPEG")->required();
    addDay(*call, options->on, "The day that the item is told of (default: today)");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer("What is none of our tags, or names an item that is not in the record on that day, is refused.");
}

}

void addComponents(CLI::App& app, Chosen& chosen) {
    addPool(app, chosen);
    addReplace(app, chosen);
    addSend(app, chosen);
    addReturn(app, chosen);
    addTags(app, chosen);
    addTag(app, chosen);
}

}
