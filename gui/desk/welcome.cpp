// SPDX-License-Identifier: MIT
#include "gui/desk/welcome.h"

#include "db/exchange/day_book.h"
#include "db/new_shop.h"
#include "db/shop_file.h"
#include "gui/desk/desk_forms.h"

namespace tangmark::desk {
namespace {

FormField line(const std::string& name, const std::string& label, const std::string& value,
               const std::string& help, bool required) {
  FormField field;
  field.name = name;
  field.label = label;
  field.value = value;
  field.help = help;
  field.required = required;
  return field;
}

using Welcomed = std::variant<std::filesystem::path, ShopWriting>;

Outcome<Welcomed> new_shop(const Typed& typed, const std::filesystem::path& path, Instant now) {
  db::Given settings;
  for (const char* name : {"shop_name", "maker_name", "zone", "currency"}) {
    const std::string value = typed_value(typed, name);
    if (!value.empty()) settings[name] = value;
  }
  const auto made = db::begin_shop(path, settings, now);
  if (!made) return made.problems();
  return Welcomed(path);
}

// The invented shop is written by its day books, a year and a half of them: longer than a hand
// waits.
Outcome<Welcomed> demo_shop(const std::filesystem::path& path, Instant now) {
  if (std::filesystem::exists(path)) {
    return Problem{"path", "There is already something at " + path.string() + ".",
                   "Choose a name that is free."};
  }
  return Welcomed(ShopWriting{
      "Writing the demo shop", [path, now](const Going& going) -> Outcome<std::filesystem::path> {
        const auto written = db::begin_shop_from_day_books(path, TANGMARK_DEMO_SHOP, now,
                                                           [&going] { return going.stop.load(); });
        if (!written) return written.problems();
        return path;
      }});
}

}  // namespace

PlaceView welcome_view() {
  PlaceView view;
  view.next = {"Open your shop, or begin one",
               "One shop is one file on this machine; nothing leaves it.",
               {{"Open a shop", OpenForm{"open_shop", {}}, "Enter", ""},
                {"Begin a new shop", OpenForm{"new_shop", {}}, "Ctrl Enter", ""}}};
  Section start;
  start.title = "A start in ten minutes";
  start.paragraphs = {
      "Begin a shop, begin one blade, and log its first step. Customers, steel and prices can come "
      "later: a blade may "
      "come from an unlisted bar."};
  Section demo;
  demo.title = "A shop to look around in";
  demo.paragraphs = {
      "The demo shop is an invented maker with a year and a half of work. It is a file of its own, "
      "and may be thrown away."};
  demo.offers = {{"Write the demo shop", OpenForm{"demo_shop", {}}, "", ""}};
  view.sheet.title = "Tangmark";
  view.sheet.under = "Quotes, kiln firings and honest certificates of one knife shop.";
  view.sheet.sections = {start, demo};
  return view;
}

Form welcome_form(const std::string& name) {
  Form form;
  form.action = name;
  if (name == "new_shop") {
    form.title = "Begin a new shop";
    form.under = "All of it can be changed later under Shop.";
    form.submit = "Begin";
    form.fields = {line("path", "Shop file", "~/shop.tangmark", "a new file", true),
                   line("shop_name", "Name of the shop", "", "as it stands on papers", true),
                   line("maker_name", "Your name", "", "", false),
                   line("zone", "Time zone", "", "such as Europe/Oslo or US/Eastern", true),
                   line("currency", "Currency", "", "its three letters: EUR, USD, NOK", true)};
  } else if (name == "demo_shop") {
    form.title = "Write the demo shop";
    form.under = "An invented maker and invented buyers; its dates lie around today.";
    form.submit = "Write and open it";
    form.fields = {line("path", "Shop file", "~/demo.tangmark", "a new file", true)};
  } else {
    form.title = "Open a shop";
    form.submit = "Open";
    FormField file = line("path", "Shop file", "", "ends in .tangmark, usually", true);
    file.entry = Entry::file;
    form.fields = {file};
  }
  return form;
}

Outcome<Welcomed> welcome_shop(const std::string& name, const Typed& typed, Instant now) {
  const std::string path = with_home(typed_value(typed, "path"));
  if (path.empty()) return Problem{"path", "It needs the name of a file.", "Type or choose one."};
  if (name == "new_shop") {
    if (typed_value(typed, "shop_name").empty()) {
      return Problem{"shop_name", "A shop needs a name for its papers.", "Your own name will do."};
    }
    return new_shop(typed, path, now);
  }
  if (name == "demo_shop") return demo_shop(path, now);
  auto opened = db::ShopFile::open(path, now);
  if (!opened) return Problem{"path", opened.problem().sentence, opened.problem().remedy};
  return Welcomed(std::filesystem::path(path));
}

}  // namespace tangmark::desk
