// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "tests/shop_fixture.h"

namespace tangmark::test {

/// A shop with a maker in it, and the few things most tests begin with. Only what a test is about
/// is spelled out in it.
struct Maker : ShopOnTheBench {
  Maker() {
    did("change_setting", {{"name", "maker_name"}, {"value", "the maker"}});
    did("change_setting", {{"name", "country"}, {"value", "Austria"}});
  }
  void set(const std::string& name, const std::string& value) {
    did("change_setting", {{"name", name}, {"value", value}});
  }
  std::string buyer(const std::string& name = "Ida Holm") {
    return did("new_customer", {{"name", name}});
  }
  std::string enquiry() { return did("new_commission", {{"customer", buyer()}}); }

  /// A model with a route of 6 h hands on, belts and a handle, in 80CrV2.
  std::string model(const std::string& name = "chef 240") {
    did("add_model", {{"name", name},
                      {"grade", "80CrV2"},
                      {"blade_length", "240 mm"},
                      {"blank_length", "390 mm"},
                      {"blank_width", "50 mm"},
                      {"blank_thickness", "4 mm"},
                      {"price", "420.00"}});
    did("add_model_step", {{"model", name}, {"operation", "rough grind"}, {"hands_on", "2h"}});
    did("add_model_step", {{"model", name},
                           {"operation", "harden"},
                           {"hands_on", "30 min"},
                           {"temperature", "830 C"},
                           {"soak", "10 min"},
                           {"survival", "95 %"}});
    did("add_model_step", {{"model", name}, {"operation", "handle"}, {"hands_on", "3h 30 min"}});
    did("add_model_use", {{"model", name},
                          {"kind", "used up"},
                          {"text", "belt 36"},
                          {"quantity", "0.5"},
                          {"unit", "belt"},
                          {"each", "8.00"}});
    did("add_model_use", {{"model", name},
                          {"kind", "material"},
                          {"text", "walnut block"},
                          {"quantity", "1"},
                          {"unit", "block"},
                          {"each", "25.00"}});
    return name;
  }
  /// Two bars of 80CrV2, 50 x 4 x 1000 mm, with a document whose melt number was found on them.
  std::string lot(const std::string& grade = "80CrV2") {
    return did("receive_lot", {{"name", grade + " flat 50 x 4"},
                               {"supplier", "the agent"},
                               {"grade", grade},
                               {"section", "flat"},
                               {"thickness", "4 mm"},
                               {"width", "50 mm"},
                               {"length", "1000 mm"},
                               {"count", "2"},
                               {"document", "3.1"},
                               {"melt_number", "4711"},
                               {"mark_matched", "yes"},
                               {"price", "62.80"}});
  }
  /// An item of the model in a commission that is accepted with its deposit paid.
  struct Order {
    std::string commission, item;
  };
  Order order() {
    Order order{enquiry(), {}};
    order.item = did("add_item",
                     {{"commission", order.commission}, {"model", model("m" + order.commission)}});
    did("make_quote", {{"commission", order.commission}});
    did("accept_quote", {{"commission", order.commission}});
    did("take_deposit", {{"commission", order.commission}});
    return order;
  }
};

/// An action that must be refused at this field, with nothing changed.
void check_refused(ShopOnTheBench& bench, std::string_view action, const db::Given& given,
                   std::string_view field);

/// Whether one of the warnings holds these words.
inline bool warns(const Outcome<db::ActionResult>& result, std::string_view words) {
  if (!result) return false;
  for (const std::string& warning : result->warnings)
    if (warning.find(words) != std::string::npos) return true;
  return false;
}

}  // namespace tangmark::test
