// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the calls of the command line have in common.

#include "ctl/calls.h"

#include <CLI/CLI.hpp>

#include <functional>
#include <memory>
#include <string>
#include <utility>

namespace crownring::ctl {

/// The call that was chosen, ready to run.
using Chosen = std::function<int(const Common&)>;

inline constexpr const char* alwaysJson = "Answer as JSON (the answer always is)";

/// Begins a call whose options fill the structure returned; chosen on the command line, it runs with them.
template <class Options>
std::pair<CLI::App*, std::shared_ptr<Options>> begin(CLI::App& app, Chosen& chosen, const char* name,
                                                     const char* does) {
    auto* call = app.add_subcommand(name, does);
    auto options = std::make_shared<Options>();
    call->callback([options, &chosen] { chosen = [options](const Common& common) { return run(*options, common); }; });
    return {call, options};
}

/// A day that is named is one: an empty text is rather a mistake of a script than today.
inline void addDay(CLI::App& call, std::string& on, const char* what) {
    const auto given = [](std::string& text) {
        return text.empty() ? std::string("no day is given; write it as 2026-11-25") : std::string();
    };
    call.add_option("--on", on, what)->type_name("DATE")->check(CLI::Validator(given, std::string()));
}

}
