// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/bench/bench_options.h"

#include "sheets/sheets.h"

namespace crownring::ctl {

namespace {

/// Never on the command line itself: there everybody on the machine reads it.
void addCodeFile(CLI::App& call, std::string& file) {
    call.add_option("--code-file", file, "A file with the signatory's own code, or - for standard input")
        ->type_name("FILE");
}

void addOpening(CLI::App& group, Chosen& chosen) {
    const auto [open, opened] =
        begin<InspectionOpenOptions>(group, chosen, "open", "Open a visit of a balloon or of loose items");
    open->add_option("--visit", opened->visit, "Its kind: part-ml-inspection, us-annual, part-ml-repair …")
        ->required()
        ->type_name("VISIT");
    auto* balloon = open->add_option("--balloon", opened->balloon, "All that is fitted to it");
    balloon->type_name("REG");
    open->add_option("--letter", opened->letter,
                     "The file that came beside a letter: its balloon, its items and the work that it wants")
        ->type_name("FILE.json")
        ->excludes(balloon);
    open->add_option("--item", opened->items, "Loose items, or of the balloon these alone (may repeat)")
        ->type_name("ID");
    auto* work = open->add_option("--work", opened->work, "What it is to accomplish (may repeat; default: what is due)")
                     ->type_name("ITEM=REQUIREMENT");
    open->add_flag("--nothing-due", opened->nothing, "Take in nothing of what is due")->excludes(work);
    open->add_option("--order", opened->order, "The shop's own number of the work order");
    open->add_option("--by", opened->by, "Who opens it")->type_name("NAME");
    addDay(*open, opened->on, "The day (default: today)");
    open->add_flag("--json", alwaysJson);
    open->footer(
        "Answers with its name and its lines. Settle them with entries line.settled, describe work with\n"
        "work.performed (see post --help), then sign. In work that is no inspection the lines of an item come\n"
        "with the work on it. An inspection after an event is opened once the event is reported.");
}

void addSigning(CLI::App& group, Chosen& chosen) {
    const auto [sign, asked] = begin<InspectionSignOptions>(
        group, chosen, "sign", "Sign a visit: release, list of discrepancies, incomplete maintenance; or abandon it");
    sign->add_option("ID", asked->inspection, "Its name, as list has it")->required();
    sign->add_option("--by", asked->by, "Who signs")->required()->type_name("PERSON");
    sign->add_option("--as", asked->capacity, "Signing as what: independent-certifying-staff, repair-station …")
        ->required()
        ->type_name("AS");
    sign->add_option("--outcome", asked->outcome, "How it ends (default: released); incomplete: it goes on")
        ->check(CLI::IsMember({"released", "discrepancies", "abandoned", "incomplete"}));
    sign->add_option("--data", asked->data, "Data used, with revision (may repeat)")->type_name("TEXT");
    sign->add_option("--limitations", asked->limitations, "Limitations, if any")->type_name("TEXT");
    sign->add_option("--outstanding", asked->outstanding, "With incomplete: an optional line that is to be done")
        ->type_name("LINE");
    sign->add_option("--until", asked->until, "With incomplete: the last day on which it may fly so")
        ->type_name("DATE");
    sign->add_option("--minutes", asked->minutes, "With incomplete: how long it may fly so in all")
        ->check(CLI::Range(1, 100'000));
    sign->add_option("--flights", asked->flights, "With incomplete: how often it may fly so")
        ->check(CLI::Range(1, 1000));
    addDay(*sign, asked->on, "The day of the signature (default: today)");
    sign->add_option("--time", asked->time, "Its time in UTC, where that day needs one")->type_name("HH:MMZ");
    addCodeFile(*sign, asked->codeFile);
    sign->add_flag("--draft", asked->draft, "Show what would be signed and what stands in the way; write nothing");
    sign->add_flag("--json", alwaysJson);
    sign->footer(
        "Refused, with every reason, while anything stands in the way. Whether a balloon may be released is for\n"
        "the person who signs.");
}

}

void addInspection(CLI::App& app, Chosen& chosen) {
    auto* group = app.add_subcommand(
        "inspection", "Visits on the bench: list them, show one, print its papers, open, sign, approve a return");
    group->require_subcommand(1);
    const auto [list, listed] =
        begin<InspectionListOptions>(*group, chosen, "list", "All inspections, open ones first");
    addDay(*list, listed->on, "Opened up to this day (default: today)");
    list->add_flag("--json", listed->json, "Answer as JSON");
    const auto [show, shown] =
        begin<InspectionShowOptions>(*group, chosen, "show", "One inspection: lines, readings, defects, release");
    show->add_option("ID", shown->inspection, "Its name, as list has it")->required();
    addDay(*show, shown->on, "One still open with the facts of this day (default: today)");
    auto* csv = show->add_option("--csv", shown->csv, "Only the lines or the readings, for a spreadsheet")
                    ->check(CLI::IsMember({"lines", "readings"}));
    show->add_flag("--json", shown->json, "Answer as JSON")->excludes(csv);
    const auto [print, printed] = begin<InspectionPrintOptions>(*group, chosen, "print", "Its papers as PDF");
    print->add_option("ID", printed->inspection, "Its name, as list has it")->required();
    print->add_option("--to", printed->to, "The PDF file to write")->required()->type_name("FILE.pdf");
    print->add_flag("--force", printed->force, "Replace a file that is there; never a record or another database");
    addDay(*print, printed->on, "One still open with the facts of this day (default: today)");
    auto papers = sheetNames();
    papers.emplace_back("all");
    print->add_option("--what", printed->what, "Which papers (default: all that apply)")->check(CLI::IsMember(papers));
    print->add_option("--paper", printed->paper, "The size of its pages (default: a4)")
        ->check(CLI::IsMember({"a4", "letter"}));
    addOpening(*group, chosen);
    addSigning(*group, chosen);
    const auto [approve, approved] = begin<InspectionApproveOptions>(
        *group, chosen, "approve", "Approve the return to service after a list of discrepancies");
    approve->add_option("ID", approved->inspection, "Its name, as list has it")->required();
    approve->add_option("--by", approved->by, "Who approves")->required()->type_name("PERSON");
    approve->add_option("--as", approved->capacity, "Signing as what: inspection-authorization, repair-station …")
        ->required()
        ->type_name("AS");
    addDay(*approve, approved->on, "The day of the approval (default: today)");
    approve->add_option("--time", approved->time, "Its time in UTC, where that day needs one")->type_name("HH:MMZ");
    addCodeFile(*approve, approved->codeFile);
    approve->add_flag("--json", alwaysJson);
    approve->footer(
        "Refused while any item on the list stands, and for whoever may not release such a visit. What the\n"
        "inspection accomplished then counts from the day of the inspection.");
    const auto [revoke, revoked] =
        begin<InspectionRevokeOptions>(*group, chosen, "revoke", "Withdraw a release, or the approval of a return");
    revoke->add_option("ID", revoked->inspection, "Its name, as list has it")->required();
    revoke->add_option("--by", revoked->by, "Who withdraws it")->required()->type_name("PERSON");
    revoke->add_option("--reason", revoked->reason, "Why")->required()->type_name("TEXT");
    addDay(*revoke, revoked->on, "The day of the withdrawal (default: today)");
    revoke->add_option("--time", revoked->time, "Its time in UTC, where that day needs one")->type_name("HH:MMZ");
    addCodeFile(*revoke, revoked->codeFile);
    revoke->add_flag("--json", alwaysJson);
    revoke->footer("What the closing accomplished then counts no more. It is never taken back.");
    group->footer(
        "Example: crownringctl --record fleet.crownring inspection print OL-2026-017 --to release.pdf --what release");
}

void addReview(CLI::App& app, Chosen& chosen) {
    auto* group = app.add_subcommand("review", "Airworthiness reviews: list them, show or print one, sign one");
    group->require_subcommand(1);
    const auto [list, listed] = begin<ReviewListOptions>(*group, chosen, "list", "Those signed, the latest first");
    list->add_option("--balloon", listed->balloon, "Only of this balloon")->type_name("REG");
    addDay(*list, listed->on, "Issued up to this day (default: today)");
    list->add_flag("--json", listed->json, "Answer as JSON");
    const auto [show, shown] = begin<ReviewShowOptions>(*group, chosen, "show", "One of them, as a paper to file");
    show->add_option("ID", shown->review, "The number of its certificate, or the id of its entry")->required();
    addDay(*show, shown->on, "Issued up to this day (default: today)");
    show->add_flag("--json", shown->json, "Answer as JSON");
    const auto [print, printed] = begin<ReviewShowOptions>(*group, chosen, "print", "The same as PDF");
    print->add_option("ID", printed->review, "The number of its certificate, or the id of its entry")->required();
    print->add_option("--to", printed->to, "The PDF file to write")->required()->type_name("FILE.pdf");
    print->add_flag("--force", printed->force, "Replace a file that is there; never a record or another database");
    addDay(*print, printed->on, "Issued up to this day (default: today)");
    print->add_option("--paper", printed->paper, "The size of its pages (default: a4)")
        ->check(CLI::IsMember({"a4", "letter"}));
    const auto [sign, made] = begin<ReviewSignOptions>(*group, chosen, "sign", "Sign a review of a balloon");
    sign->add_option("--balloon", made->balloon, "Its registration")->required()->type_name("REG");
    sign->add_option("--act", made->act, "Which act (default: review)")
        ->check(CLI::IsMember({"review", "extension", "recommendation"}));
    sign->add_option("--form", made->form, "Which form, e.g. 'EASA Form 15c'")->required();
    sign->add_option("--certificate", made->certificate, "Its number")->required()->type_name("NUMBER");
    sign->add_option("--expires", made->expires, "The last good day as printed (default: what the rule gives)")
        ->type_name("DATE");
    sign->add_option("--by", made->by, "Who signs")->required()->type_name("PERSON");
    sign->add_option("--as", made->capacity,
                     "Signing as what: airworthiness-review-staff, review-authorisation, authority")
        ->required()
        ->type_name("AS");
    sign->add_option("--findings", made->findings, "What was found");
    sign->add_option("--photograph", made->photographs,
                     "A photograph or a scan of the certificate, PNG or JPEG (may repeat)")
        ->type_name("FILE");
    sign->add_option("--inspection", made->inspection, "The annual or 100-hour inspection while which it is made")
        ->type_name("ID");
    addDay(*sign, made->on, "The day of issue (default: today)");
    sign->add_option("--time", made->time, "Its time in UTC, where that day needs one")->type_name("HH:MMZ");
    addCodeFile(*sign, made->codeFile);
    sign->add_flag("--json", alwaysJson);
    sign->footer(
        "Refused while anything mandatory stands against it on the balloon, for whoever may not review it, and\n"
        "where another expiry is printed than the rule gives: then both days are said.");
    const auto [annul, voided] =
        begin<ReviewVoidOptions>(*group, chosen, "void", "Void one that was signed wrongly, before it is signed anew");
    annul->add_option("ID", voided->review, "The number of its certificate, or the id of its entry")->required();
    annul->add_option("--by", voided->by, "Who voids it")->required()->type_name("PERSON");
    annul->add_option("--reason", voided->reason, "Why")->required()->type_name("TEXT");
    addDay(*annul, voided->on, "The day (default: today)");
    addCodeFile(*annul, voided->codeFile);
    annul->add_flag("--json", alwaysJson);
}

void addSignatory(CLI::App& app, Chosen& chosen) {
    auto* group = app.add_subcommand("signatory", "Codes that signatories sign with: set one, list who has one");
    group->require_subcommand(1);
    const auto [code, set] = begin<SignatoryCodeOptions>(*group, chosen, "code", "Set the code of a signatory");
    code->add_option("--name", set->name, "Whose it is, as the record names the person")
        ->required()
        ->type_name("PERSON");
    code->add_option("--code-file", set->codeFile, "A file with the new code, or - for standard input")
        ->required()
        ->type_name("FILE");
    auto* before =
        code->add_option("--before-file", set->beforeFile, "A file with the code that it replaces")->type_name("FILE");
    auto* by = code->add_option("--by", set->by, "Who sets it in the name of another who forgot his")
                   ->excludes(before)
                   ->type_name("PERSON");
    code->add_option("--by-code-file", set->byCodeFile, "A file with the code of that person")
        ->needs(by)
        ->type_name("FILE");
    code->add_option("--reason", set->reason, "Why that person does")->needs(by)->type_name("TEXT");
    addDay(*code, set->on, "The day (default: today)");
    code->add_option("--time", set->time, "Its time in UTC, where that day needs one")->type_name("HH:MMZ");
    code->add_flag("--json", alwaysJson);
    code->footer(
        "The first of a person needs nothing besides. Another is proven by the one that it replaces. A forgotten one "
        "is\n"
        "set by somebody else who has one, and stays an open question of the record until the signatory has set one\n"
        "himself. A code stands nowhere in the record: nobody can look it up.");
    const auto [list, listed] =
        begin<SignatoryListOptions>(*group, chosen, "list", "Who has a code, since when, its key");
    list->add_flag("--json", listed->json, "Answer as JSON");
}

void addText(CLI::App& app, Chosen& chosen) {
    auto* group = app.add_subcommand("text", "Wording that is signed: list it, show, adopt and confirm it");
    group->require_subcommand(1);
    const auto [list, listed] = begin<TextListOptions>(*group, chosen, "list", "Texts and checklists in use");
    addDay(*list, listed->on, "As of this day (default: today)");
    list->add_flag("--json", listed->json, "Answer as JSON");
    const auto [show, shown] =
        begin<TextShowOptions>(*group, chosen, "show", "One of them: its wording and its source");
    show->add_option("ID", shown->text, "A text or a checklist")->required();
    show->add_option("--revision", shown->revision, "Of a checklist that is in use in several")->type_name("REV");
    addDay(*show, shown->on, "As of this day (default: today)");
    show->add_flag("--json", shown->json, "Answer as JSON");
    const auto [adopt, adopted] = begin<TextAdoptOptions>(*group, chosen, "adopt", "Adopt wording for an organisation");
    adopt->add_option("ID", adopted->text, "A text, or 'all' of them")->required();
    adopt->add_option("--for", adopted->organisation, "Which organisation adopts it")->required()->type_name("NAME");
    auto* body =
        adopt->add_option("--body", adopted->body, "Its own wording (default: as it ships)")->type_name("FILE");
    auto* revision = adopt->add_option("--revision", adopted->revision, "Of its own wording")->type_name("REV");
    body->needs(revision);
    revision->needs(body);
    adopt->add_option("--title", adopted->title, "Of its own wording")->needs(body);
    adopt->add_option("--source", adopted->source, "Which manual or rule it is from")->needs(body);
    adopt->add_option("--by", adopted->by, "Who writes it")->type_name("NAME");
    addDay(*adopt, adopted->on, "In use from this day (default: today)");
    adopt->add_flag("--json", alwaysJson);
    adopt->footer(
        "Places in braces are filled in by the record; a wording without one that its rule wants is refused.");
    const auto [confirm, confirmed] =
        begin<TextConfirmOptions>(*group, chosen, "confirm", "Say that it is what the current rule says");
    confirm->add_option("ID", confirmed->text, "A text or a checklist")->required();
    confirm->add_option("--against", confirmed->against, "Which rule, as amended when")->required()->type_name("RULE");
    confirm->add_option("--by", confirmed->by, "Who confirms")->required()->type_name("PERSON");
    confirm->add_option("--as", confirmed->capacity, "As what: independent-certifying-staff, pilot-owner …")
        ->required()
        ->type_name("AS");
    confirm->add_option("--revision", confirmed->revision, "Of a checklist that is in use in several")
        ->type_name("REV");
    confirm->add_option("--digest", confirmed->digest, "Of what was read (default: of what is in use)");
    addDay(*confirm, confirmed->on, "The day of it (default: today)");
    confirm->add_flag("--json", alwaysJson);
    confirm->footer(
        "Refused for whoever may not sign what it is for. Nothing is signed by wording that nobody has confirmed;\n"
        "another revision is to be confirmed again.");
}

}
