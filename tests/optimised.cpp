// SPDX-License-Identifier: GPL-3.0-or-later

/// What a sanitised program spends itself on outside of Crownring: JSON, texts and lists of them. Where many files of a
/// program hold the same template the linker takes the first, and these come first, optimised; else it would be those
/// of a test.

#include <nlohmann/json.hpp>

#include <map>
#include <string>
#include <vector>

using Json = nlohmann::json;
using Text = nlohmann::detail::iterator_input_adapter<const char*>;
using Reader = nlohmann::detail::json_sax_dom_parser<Json>;

template class nlohmann::basic_json<>;
template class nlohmann::detail::lexer<Json, Text>;
template class nlohmann::detail::parser<Json, Text>;
template class nlohmann::detail::json_sax_dom_parser<Json>;
template class nlohmann::detail::json_sax_dom_callback_parser<Json>;
template class nlohmann::detail::serializer<Json>;
template bool nlohmann::detail::parser<Json, Text>::sax_parse_internal(Reader*);
template class std::basic_string<char>;
template class std::vector<char>;
template class std::vector<bool>;
template class std::vector<std::string>;
template class std::vector<Json>;
template class std::map<std::string, Json, std::less<>>;
