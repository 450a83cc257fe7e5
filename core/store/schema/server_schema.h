// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Is a shared record built as this version builds it? A server has no text of a table to compare, and each version of
/// it prints parts otherwise: so it builds our tables anew for itself, and describes both in the same words.

#include "store/connection/connection.h"

#include <map>
#include <string>

namespace crownring {

/// Kind and name of each part of a schema, to what it is.
using Schema = std::map<std::string, std::string>;

/// Of the tables where the record is, those that this version knows: what else a shop keeps there is its own.
[[nodiscard]] Schema schemaOnServer(const Connection& connection, const Schema& made);

/// Of tables that are made as temporary ones on a connection of their own and are gone after.
/// @throws StoreError `RightsMissing` where the server does not let us
[[nodiscard]] Schema madeOnServer(const std::string& location);

}
