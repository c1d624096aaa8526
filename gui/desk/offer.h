// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "gui/desk/place.h"

namespace tangmark::desk {

/// What was or will be typed, by the name of the field.
using Typed = std::map<std::string, std::string>;

/// What stands in a field; empty when it was left empty.
inline std::string typed_value(const Typed& typed, std::string_view field) {
  const auto found = typed.find(std::string(field));
  return found == typed.end() ? std::string() : found->second;
}

/// Open the form of an action beside the list, some fields already filled.
struct OpenForm {
  std::string action;
  Typed filled;
};
/// Do an action at once: nothing is left to ask.
struct DoNow {
  std::string action;
  Typed fields;
};
/// Go to a place and select one thing there.
struct GoTo {
  Place place = Place::today;
  std::string id;
};
/// Show a document as it will be printed: "quote", "certificate", "firing-sheet" ... of one id.
struct ShowDocument {
  std::string kind;
  std::string id;
};
/// Something only its own place can do, such as planning or opening the quote desk.
struct PlaceWork {
  std::string name;
  std::string id;
};

using Deed = std::variant<OpenForm, DoNow, GoTo, ShowDocument, PlaceWork>;

/// Something the maker can do now: a label in the trade's words, the key that does it, and the
/// deed.
struct Offer {
  std::string label;
  Deed deed;
  std::string key;      ///< shown after the label: "Enter", "Ctrl Enter"; may be empty
  std::string why_not;  ///< when set, it cannot be done now, and this sentence says why
};

/// The first thing the eye meets: what hands should do next, why, and at most two actions, the
/// first of which Enter does.
struct NextLine {
  std::string sentence;
  std::string why;
  std::vector<Offer> offers;
};

}  // namespace tangmark::desk
