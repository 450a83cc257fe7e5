// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calls about components, the pool and what is in its cylinders, and their options.

#include "ctl/options.h"

namespace crownring::ctl {

struct PoolOptions {
    std::string kind; ///< empty: any
    std::string lot;  ///< empty: any
    std::string on;
    bool json = false;
};
int run(const PoolOptions& options, const Common& common);

struct ReplaceOptions {
    std::string off;
    std::string with;
    std::string release; ///< "FORM:NUMBER"
    std::string lot;
    bool unserviceable = false;
    std::string on;
    std::string time;
    std::string by;
};
int run(const ReplaceOptions& options, const Common& common);

struct SendOptions {
    std::vector<std::string> items;
    std::string to;
    std::string on;
    std::string by;
};
int run(const SendOptions& options, const Common& common);

struct ReturnOptions {
    std::vector<std::string> items;
    std::vector<std::string> condemned;
    std::string requirement;
    std::string method;
    std::string mark;
    std::string ref;
    std::string signatory;
    std::string licence;
    std::string release;
    std::string tested;
    std::string on;
    std::string by;
};
int run(const ReturnOptions& options, const Common& common);

struct TagsOptions {
    std::vector<std::string> items;
    std::string on;
    std::string to;
    std::string paper = "a4";
    bool force = false; ///< an older file that is there is replaced
};
int run(const TagsOptions& options, const Common& common);

struct TagOptions {
    std::string picture;
    std::string on;
    bool json = false;
};
int run(const TagOptions& options, const Common& common);

void addComponents(CLI::App& app, Chosen& chosen);

struct PropaneOptions {
    std::string celsius;      ///< of the liquid, as written
    std::string butane = "0"; ///< mole fraction, as written
    bool json = false;
};
int run(const PropaneOptions& options, const Common& common);

}
