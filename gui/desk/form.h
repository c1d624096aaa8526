// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "gui/desk/offer.h"

namespace tangmark::desk {

/// How a field is filled in: by typing, by choosing, by ticking, by naming a file. What is typed
/// into a secret is not shown.
enum class Entry { line, lines, secret, choice, tick, file };

/// A choice: what is stored and what the maker reads.
struct Choice {
  std::string value;
  std::string words;
};

/// One field of a form.
struct FormField {
  std::string name{};  ///< as the action and the command line call it
  std::string label{};
  Entry entry = Entry::line;
  std::vector<Choice> choices{};
  std::string value{};  ///< filled in already: sensible defaults, last time's figures
  std::string help{};   ///< units it reads, what it is for
  bool required = false;
  bool hidden = false;  ///< kept behind "more" until it is wanted or at fault
};

/// The form of one action, shown beside the list, never over it.
struct Form {
  std::string action;
  std::string title;
  std::string under;
  std::string submit;  ///< the words on its target: "Log it", "Receive the lot"
  std::vector<FormField> fields;
};

/// The problems of one field, as one text to stand beside it.
std::string beside(const Problems& problems, const std::string& field);
/// The problems that belong to no field of the form, to stand above it.
std::string above(const Problems& problems, const Form& form);

}  // namespace tangmark::desk
