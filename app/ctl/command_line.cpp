// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/command_line.h"

#include "ctl/bench/bench_options.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/forecast/forecast_calls.h"
#include "ctl/options.h"
#include "ctl/parts/component_calls.h"
#include "ctl/shown_output.h"
#include "paper/wrapping.h"
#include "problem/faults/use_fault.h"
#include "record/kinds/body.h"
#include "sheets/sheets.h"
#include "text/utf8.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

namespace {

constexpr const char* about =
    "crownringctl keeps the record of hot-air balloons in service and answers what is due, without a screen.\n"
    "\n"
    "A first round:\n"
    "  crownringctl --record fleet.crownring post entries.jsonl      put entries into a record (made if there is "
    "none)\n"
    "  crownringctl --record fleet.crownring due --on 2026-11-25     what is due, worst first\n"
    "  crownringctl --record fleet.crownring rig-up --kit E1,K1,R1,C1 --minutes 60\n"
    "                                                                may these fly together, and what governs\n"
    "  crownringctl --record fleet.crownring verify                  has anything been altered, what is contradictory\n"
    "\n"
    "Answers go to standard output (one JSON document with --json), messages to standard error.\n"
    "Exit status: 0 done; 1 the answer is no; 2 bad input or use, and then nothing was written.\n"
    "\n"
    "Crownring keeps records and computes. It never declares a balloon airworthy: the licensed person, the competent\n"
    "authority and the manufacturer's current instructions decide.";

/// Each kind of entry with its keys.
std::string kindsText() {
    constexpr std::size_t width = 90;
    const auto longest = std::ranges::max(kindNames(), {}, &std::string_view::size).size();
    std::string text;
    for (const auto& [name, keys] :
         ofEachKind([]<class Said>() { return std::pair(Kind<Said>::name, Kind<Said>::keys); })) {
        std::string before = "  " + std::string(name) + std::string(longest + 2 - name.size(), ' ');
        for (const auto& line : paper::wrapped(keys, width)) {
            text += before + line + '\n';
            before.assign(before.size(), ' ');
        }
    }
    return text;
}

void addPost(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<PostOptions>(app, chosen, "post", "Put entries into the record: all of them or none");
    call->add_option("FILE", options->file, "Entries as JSON, one a line; - for standard input")->required();
    call->add_flag("--json", alwaysJson);
    call->footer("An entry says what happened, when (on, time) and by whom (by). The kinds and their keys:\n" +
                 kindsText() +
                 "Example:\n"
                 "  "
                 "{\"entry\":\"flight.logged\",\"on\":\"2026-05-03\",\"time\":\"05:40Z\",\"balloon\":\"QE-OAK\","
                 "\"minutes\":62}\n"
                 "Unknown keys are refused with the line number and the key. The schemas are in assets/schema.");
}

void addAdopt(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<AdoptOptions>(app, chosen, "adopt", "Adopt a programme of requirements: its text goes into the record");
    call->add_option("PROGRAMME", options->file,
                     "A programme's file, or the name of one on the shelf (part-ml-hot-air …)")
        ->required();
    call->add_option("--balloon", options->balloons, "Binds whatever is fitted to this balloon on the day asked")
        ->type_name("REG");
    call->add_option("--item", options->items, "Binds this item")->type_name("ID");
    call->add_flag("--all", options->all, "Binds everything, the pool too");
    addDay(*call, options->on, "In force from this day (default: today)");
    call->add_option("--by", options->by, "Who adopts it")->type_name("NAME");
    call->add_flag("--json", alwaysJson);
    call->footer("A programme that breaks its schema is refused with the path inside the document.");
}

void addDue(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<DueOptions>(app, chosen, "due", "What is due on a day, worst first");
    addDay(*call, options->on, "The day, past or future (default: today)");
    call->add_option("--balloon", options->balloon, "Only what is fitted to this balloon")->type_name("REG");
    call->add_option("--item", options->items, "Only this item (may repeat)")->type_name("ID");
    call->add_option("--most", options->most, "At most so many lines of the table; 0 for all (default: 60)")
        ->check(CLI::Range(0, 1'000'000));
    call->add_flag("--out-of-service", options->outOfService, "Also what is out of service, as if it were in service");
    call->add_option("--if", options->supposed,
                     "Suppose that a flight is flown (may repeat), and ask what it makes due; without --on the day of "
                     "the last one. Nothing is written")
        ->type_name("REG:MINUTES:DATE");
    call->add_flag("--json", options->json, "Answer as JSON, all rows");
    call->footer("Standings: spent (a life limit is reached), lapsed, unproven (no record to count from), tolerance,\n"
                 "nearing, clear, closed (done once for all, or ended).");
}

void addBalloons(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<BalloonsOptions>(app, chosen, "balloons", "One line a balloon: what governs it");
    addDay(*call, options->on, "The day, past or future (default: today)");
    call->add_option("--balloon", options->balloon, "Only this balloon")->type_name("REG");
    call->add_flag("--out-of-service", options->outOfService, "Also those out of service, as if they were in service");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "Among what is mandatory and blocks flight the worst standing governs; among rows that stand clear or\n"
        "nearing the one that comes first, by date, or by hours at the pace of the last 24 months.\n"
        "Flights and minutes are those logged for the registration, whatever envelope flew.");
}

template <class Options>
void addFabricWords(CLI::App& call, Options& options) {
    call.add_option("--quantity", options.quantity,
                    "grab-strength, strip-strength or air-permeability (default: the first that is bounded)")
        ->type_name("NAME");
    addDay(call, options.on, "The day (default: today)");
    call.add_option("--seed", options.seed, "The same seed gives the same answer (default: 1)");
    call.add_flag("--json", options.json, "Answer as JSON");
}

void addFabric(CLI::App& app, Chosen& chosen) {
    auto* group = app.add_subcommand("fabric", "How strong fabric is and how it ages");
    group->require_subcommand(1);
    const auto [forecast, asked] =
        begin<FabricForecastOptions>(*group, chosen, "forecast", "An envelope's strength and life from the record");
    forecast->add_option("ENVELOPE", asked->envelope, "The envelope's id")->required();
    addFabricWords(*forecast, *asked);
    forecast->footer(
        "All envelopes whose manuals bound the same test are fitted together; the limit is that of its own type.\n"
        "Dates follow what it flew in the last two years, month by month.\n"
        "A forecast plans tests; it takes the place of none. What retires fabric is the manual's test.");
    const auto [lots, ofLots] =
        begin<FabricLotsOptions>(*group, chosen, "lots", "Which lots of fabric age faster than the others of theirs");
    addFabricWords(*lots, *ofLots);
    lots->footer("watch: of lots called so, one in ten may be as good as the others. alarm: two looks three months\n"
                 "apart agree, and in one fleet of twenty some lot is called so although all are good.");
    const auto [score, ofScore] = begin<FabricScoreOptions>(
        *group, chosen, "score", "How the forecasts of the last four years did against what the tests found");
    addFabricWords(*score, *ofScore);
    const auto [fit, options] = begin<FabricFitOptions>(*group, chosen, "fit", "Fit a bare table of strength tests");
    fit->add_option("--readings", options->readings,
                    "CSV with the columns envelope,lot,fabric,hours,row,dose,load,outcome; - for standard input")
        ->required()
        ->type_name("FILE");
    fit->add_option("--limit", options->limit, "The load that fabric must hold, in the unit of the table")
        ->required()
        ->check(CLI::PositiveNumber);
    fit->add_option("--seed", options->seed, "The same seed gives the same answer (default: 1)");
    fit->add_flag("--json", options->json, "Answer as JSON");
    fit->footer(
        "row runs from 0 at the mouth to 1 at the crown, dose is in equivalent hours of over-temperature, outcome\n"
        "is held or broke; an empty envelope is a coupon of new fabric at zero hours. Life is in hours flown at the\n"
        "crown without further over-temperature, given that the envelope serves now.\n"
        "A forecast plans tests; it takes the place of none. What retires fabric is the manual's test.");
}

void addClock(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<ClockOptions>(app, chosen, "clock", "An item's clock at the end of a day: minutes, landings, inflations");
    call->add_option("ITEM", options->item, "The item's id")->required();
    addDay(*call, options->on, "The day (default: today)");
    call->add_flag("--json", options->json, "Answer as JSON; an unknown figure is null");
}

void addRigUp(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<RigUpOptions>(app, chosen, "rig-up", "May these items fly together on a day, and what governs?");
    call->add_option("--kit", options->kit, "The items: envelope, basket, burner, cylinders …")
        ->delimiter(',')
        ->required()
        ->type_name("A,B,C");
    addDay(*call, options->on, "The day of the flight (default: today)");
    call->add_option("--minutes", options->minutes, "How long it is to last")
        ->check(CLI::Range(std::int64_t{0}, longestFlight.value()));
    call->add_flag("--check-flight", options->checkFlight,
                   "Flown only to complete maintenance that was released incomplete, within its limitation");
    call->add_flag("--positioning", options->positioning, "Flown only to reach the place of an inspection");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "Exit status 1 when the kit may not fly. The kit flies as the balloon that its envelope is fitted to.");
}

void addVerify(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<VerifyOptions>(app, chosen, "verify", "Recompute the chain over all entries; list the open questions");
    call->add_option("--expect", options->expect,
                     "An entry that must be there, as post answered it when it was the last; may repeat")
        ->type_name("WRITER:SEQUENCE:HASH");
    call->add_option("--expect-from", options->expectFrom, "A file of them, one a line; - for standard input")
        ->type_name("FILE");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "Exit status 1 when an entry is not what was written, when what was computed from the entries is not what\n"
        "they give, or when an expected entry is missing. Open questions are contradictions between entries; they do\n"
        "not break the chain. The chain shows an alteration, but not that its end was cut off and mended: keep what\n"
        "post answers (writer, sequence, hash) somewhere else, and expect it. A backup is verified in the same way.\n"
        "Only copies held by others prove against someone who rewrites everything.");
}

void addImport(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<ImportOptions>(app, chosen, "import", "Flights from a log (CSV with a header row) or a track (.igc)");
    call->add_option("FILE", options->file, "The log or the track")->required();
    call->add_option("--balloon", options->balloon, "The balloon of all flights, when the file does not say")
        ->type_name("REG");
    call->add_option("--date-order", options->dateOrder, "Order of dates where the file leaves it open")
        ->check(CLI::IsMember({"dmy", "mdy", "ymd"}));
    call->add_option("--duration", options->duration, "Unit of durations written as bare numbers")
        ->check(CLI::IsMember({"minutes", "hours"}));
    call->add_option("--fuel", options->fuel, "Unit of the fuel used, written as bare numbers")
        ->check(CLI::IsMember({"kg", "l", "lb", "usg"}));
    call->add_option("--load", options->load, "Unit of loads written as bare numbers")
        ->check(CLI::IsMember({"kg", "lb"}));
    call->add_flag("--utc", options->utc, "The times of the log are UTC");
    call->add_flag("--accept", options->accept, "Post the new flights; without it they are only shown");
    call->add_flag("--skip-bad", options->skipBad, "Accept although some rows are bad, and leave those out");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer("Flights that the record has already are recognised and not posted again.");
}

void addJournal(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<JournalOptions>(app, chosen, "journal", "The entries as they came in, latest first");
    call->add_option("--text", options->text, "Only entries that hold all these words")->type_name("WORDS");
    call->add_option("--kind", options->kind, "Only entries of this kind")
        ->type_name("KIND")
        ->check(CLI::IsMember(std::vector<std::string>(kindNames().begin(), kindNames().end())));
    call->add_option("--most", options->most, "At most so many (default: 100)")->check(CLI::Range(1, 1'000'000));
    call->add_flag("--json", options->json, "Answer as JSON: whole entries, with their ids");
}

void addBackup(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<BackupOptions>(app, chosen, "backup", "Write a copy of the record to a file, its chain checked");
    call->add_option("FILE", options->file, "The copy")->required();
    call->add_flag("--force", options->force, "Replace an older copy of this record, or what is no database");
    call->add_flag("--json", alwaysJson);
    call->footer("Without --force nothing that is there is replaced. With it an older copy is, once the new one is "
                 "checked: one\n"
                 "that nobody has open and that holds nothing which this record lacks. The open record, what stands "
                 "beside its file,\n"
                 "other records, databases of other programs, folders and devices are never written over.\n"
                 "Do not copy the record's file while it is open: what was written last stands in a file beside it.");
}

void addWear(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<WearOptions>(app, chosen, "wear", "How an item wears by its readings, and when a limit is met");
    call->add_option("ITEM", options->item, "The item's id")->required();
    addDay(*call, options->on, "The day (default: today)");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "A line through the readings of each quantity at each place, by least squares over the hours flown; intervals\n"
        "at 95 %. No time is told for fewer than three readings, or where the line may never meet the limit. A\n"
        "forecast plans work: what grounds is a reading beyond the limit.");
}

/// The options of a paper about one balloon.
void addPaper(CLI::App& call, PaperAsked& paper, const char* what, CLI::Option& balloon, CLI::Option& json) {
    call.add_option("--to", paper.to, what)->type_name("FILE.pdf")->needs(&balloon)->excludes(&json);
    call.add_option("--paper", paper.paper, "The size of its pages (default: a4)")
        ->check(CLI::IsMember({"a4", "letter"}));
    call.add_flag("--force", paper.force, "Replace a file that is there; never a record or another database");
}

void addEvents(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<EventsOptions>(app, chosen, "events", "What happened, what it made due, and the clock of a report");
    addDay(*call, options->on, "The day (default: today)");
    auto* balloon =
        call->add_option("--balloon", options->balloon, "Only what is fitted to this balloon")->type_name("REG");
    call->add_option("--days", options->days, "So many days back (default: 365); what is still open, however old")
        ->check(CLI::Range(0, 36'500));
    auto* json = call->add_flag("--json", options->json, "Answer as JSON");
    addPaper(*call, options->paper, "The PDF file to write: events of the balloon and what they made due", *balloon,
             *json);
    call->footer("Where a report to the authority may be owed, the end of its 72 hours is told, counted from the "
                 "event. Whether\n"
                 "it is owed nobody computes; that it was made is said where an entry event.notified says so alone.");
}

void addFuel(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<FuelOptions>(app, chosen, "fuel", "Whether a balloon burns more than it did, by its flight log");
    call->add_option("BALLOON", options->balloon, "Its registration")->required();
    addDay(*call, options->on, "The day (default: today)");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "The latest three flights against the earlier ones at like temperatures and loads (flight.logged: fuel_kg or\n"
        "fuel_l, oat_c, load_kg), intervals at 95 %. It proposes to look, and reports nothing by itself.");
}

void addDirectives(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<DirectivesOptions>(
        app, chosen, "directives", "Whom directives and bulletins bind, what was answered, and what is due next");
    addDay(*call, options->on, "The day (default: today)");
    auto* balloon =
        call->add_option("--balloon", options->balloon, "Only what is fitted to this balloon")->type_name("REG");
    auto* json = call->add_flag("--json", options->json, "Answer as JSON");
    addPaper(*call, options->paper, "The PDF file to write: the status list of the balloon", *balloon, *json);
    call->footer(
        "What is not known is unknown and never \"not bound\": a serial number or a part that is not in the record\n"
        "leaves a directive unproven. Superseded ones are told where they were answered. Lists of parts are entries\n"
        "parts.listed; answers are entries directive.answered.");
}

void addPropane(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<PropaneOptions>(app, chosen, "propane", "The pressure over liquid propane at a temperature");
    call->add_option("--celsius", options->celsius, "Temperature of the liquid in the cylinder")
        ->required()
        ->type_name("T");
    call->add_option("--butane", options->butane, "Mole fraction of n-butane in the liquid, 0 to 1 (default: 0)")
        ->type_name("F");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "The pressure at rest, while nothing is burnt; absolute, and as a gauge shows it at sea level. A mixture is\n"
        "given by Raoult's law, slightly too high. No record is asked.");
}

void addRebuild(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<RebuildOptions>(app, chosen, "rebuild", "Make all projections anew from the journal");
    call->add_flag("--json", alwaysJson);
}

}

int runCommandLine(int argc, const char* const* argv) {
    const ShownOutput answers(std::cout);
    const ShownOutput messages(std::cerr);
    for (int at = 1; at < argc; ++at)
        if (const auto bad = firstBadByte(argv[at]))
            return refuse(Problem{UseFault::NotUtf8, {at, *bad + 1}});
    CLI::App app{about, "crownringctl"};
    Common common;
    Chosen chosen;
    app.add_option("--record", common.record, "The record: a file, or postgresql://user@host/name for a shared one")
        ->type_name("FILE|URL");
    app.add_option("--writer", common.writer, "Who writes: names the chain of entries (default: this machine)")
        ->type_name("NAME");
    app.set_version_flag("--version", "crownringctl " CROWNRING_VERSION);
    app.require_subcommand(1);
    app.fallthrough();
    addPost(app, chosen);
    addAdopt(app, chosen);
    addInspection(app, chosen);
    addReview(app, chosen);
    addSignatory(app, chosen);
    addText(app, chosen);
    addDue(app, chosen);
    addForecast(app, chosen);
    addBalloons(app, chosen);
    addFabric(app, chosen);
    addClock(app, chosen);
    addRigUp(app, chosen);
    addComponents(app, chosen);
    addWear(app, chosen);
    addEvents(app, chosen);
    addFuel(app, chosen);
    addDirectives(app, chosen);
    addPropane(app, chosen);
    addVerify(app, chosen);
    addImport(app, chosen);
    addJournal(app, chosen);
    addBackup(app, chosen);
    addRebuild(app, chosen);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? Done : BadInput;
    }
    return chosen(common);
}

}
