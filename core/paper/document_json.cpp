// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/document_json.h"

#include <nlohmann/json.hpp>

#include <array>

namespace crownring::paper {

namespace {

using Json = nlohmann::ordered_json;

std::string_view word(Emphasis emphasis) {
    constexpr std::array<std::string_view, 3> words = {"plain", "strong", "quiet"};
    return words[static_cast<std::size_t>(emphasis)];
}

std::string_view word(Align align) {
    constexpr std::array<std::string_view, 3> words = {"left", "right", "centre"};
    return words[static_cast<std::size_t>(align)];
}

/// Each item of a list, as JSON.
template <class Item, class Function>
Json each(const std::vector<Item>& items, const Function& json) {
    Json array = Json::array();
    for (const Item& item : items)
        array.push_back(json(item));
    return array;
}

Json json(const Heading& heading) { return {{"block", "heading"}, {"level", heading.level}, {"text", heading.text}}; }

Json json(const Paragraph& paragraph) {
    return {{"block", "paragraph"}, {"text", paragraph.text}, {"emphasis", word(paragraph.emphasis)}};
}

Json json(const Facts& facts) {
    return {{"block", "facts"}, {"facts", each(facts.facts, [](const Fact& fact) {
                                     return Json{{"label", fact.label}, {"value", fact.value}};
                                 })}};
}

Json json(const Table& table) {
    return {{"block", "table"},
            {"columns",
             each(table.columns,
                  [](const Column& column) {
                      return Json{{"title", column.title}, {"align", word(column.align)}, {"share", column.share}};
                  })},
            {"rows", table.rows},
            {"note", table.note}};
}

Json json(const Statement& statement) {
    return {{"block", "statement"}, {"text", statement.text}, {"source", statement.source}, {"note", statement.note}};
}

Json json(const Signature& signature) {
    return {{"block", "signature"},
            {"title", signature.title},
            {"lines", each(signature.lines, [](const SignatureLine& line) {
                 return Json{{"label", line.label}, {"value", line.value}, {"by_hand", line.byHand}};
             })}};
}

Json json(const EnvelopeMapFigure& map) {
    return {{"block", "envelope-map"},
            {"caption", map.caption},
            {"gores", map.gores},
            {"rows", map.rows},
            {"panels", each(map.panels,
                            [](const Panel& panel) {
                                return Json{{"gore", panel.gore},   {"row", panel.row},
                                            {"text", panel.text},   {"verdict", verdictName(panel.verdict)},
                                            {"bound", panel.bound}, {"shade", panel.shade}};
                            })},
            {"legend", map.legend}};
}

Json json(const PageBreak&) { return {{"block", "page-break"}}; }

Json json(const Checks& checks) {
    return {{"block", "checks"}, {"lines", each(checks.lines, [](const CheckLine& line) {
                                      return Json{{"text", line.text},       {"items", line.items},
                                                  {"source", line.source},   {"mark", checkMarkName(line.mark)},
                                                  {"finding", line.finding}, {"by", line.by}};
                                  })}};
}

Json json(const Labels& labels) {
    return {{"block", "labels"},
            {"labels", each(labels.labels, [](const Label& label) {
                 Json object{{"title", label.title},
                             {"subtitle", label.subtitle},
                             {"facts", each(label.facts,
                                            [](const Fact& fact) {
                                                return Json{{"label", fact.label}, {"value", fact.value}};
                                            })},
                             {"status", label.status},
                             {"bars", label.bars},
                             {"note", label.note}};
                 if (!label.code.empty())
                     object["code"] = label.code;
                 return object;
             })}};
}

}

std::string toJson(const Document& document) {
    const Json object = {{"title", document.title},
                         {"subtitle", document.subtitle},
                         {"record", document.recordId},
                         {"caution", document.caution},
                         {"blocks", each(document.blocks, [](const Block& block) {
                              return std::visit([](const auto& one) { return json(one); }, block);
                          })}};
    return object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}
