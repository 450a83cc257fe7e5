// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"

#include <QtCore/QCoreApplication>

#include <iostream>

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

}

int main(int argc, char** argv) {
    using namespace crownring::ctl;
    const QCoreApplication application(argc, argv);
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
    addPost(app, common, chosen);
    addAdopt(app, common, chosen);
    addDue(app, common, chosen);
    addClock(app, common, chosen);
    addRigUp(app, common, chosen);
    addVerify(app, common, chosen);
    addImport(app, common, chosen);
    addJournal(app, common, chosen);
    addBackup(app, common, chosen);
    addRebuild(app, common, chosen);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? Done : BadInput;
    }
    return chosen();
}
