// SPDX-License-Identifier: MIT
#include "gui/desk/desk_forms.h"

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "db/actions/action.h"
#include "db/backup.h"
#include "db/exchange/export.h"
#include "db/store/ledger.h"
#include "gui/desk/forms.h"
#include "gui/desk/paper/certificate_check.h"
#include "gui/desk/paper/paper.h"
#include "gui/desk/papers.h"
#include "reports/page_failure.h"
#include "reports/pdf.h"
#include "reports/public_list.h"

namespace tangmark::desk {
namespace {

FormField path_field(const std::string& label, const std::string& suggestion,
                     const std::string& help) {
  FormField field;
  field.name = "path";
  field.label = label;
  field.value = suggestion;
  field.help = help;
  field.required = true;
  return field;
}

FormField plain_field(const std::string& name, const std::string& label, const std::string& help,
                      bool required) {
  FormField field;
  field.name = name;
  field.label = label;
  field.help = help;
  field.required = required;
  return field;
}

Outcome<Said> print(const Sight& sight, const Typed& typed) {
  const std::string path = with_home(typed_value(typed, "path"));
  if (path.empty())
    return Problem{"path", "It needs a name of a file.", "Give one such as ~/quote.pdf."};
  const auto bytes = printed_bytes(sight, typed_value(typed, "kind"), typed_value(typed, "id"));
  if (!bytes) return bytes.problems();
  try {
    reports::write_whole(*bytes, path);
  } catch (const reports::PageFailure& failure) {
    return Problem{"path", failure.what(), "Choose another place and print again."};
  }
  return Said{"Printed into " + path + ".", std::nullopt};
}

Outcome<Said> write_ledger(const Sight& sight, const Typed& typed) {
  const std::string path = with_home(typed_value(typed, "path")),
                    asked = typed_value(typed, "year");
  const auto year = asked.empty()
                        ? std::optional<std::int64_t>(static_cast<int>(sight.today().year()))
                        : number_of(asked);
  if (!year || *year < 1900 || *year > 2199)
    return Problem{"year", "\"" + asked + "\" is no year.", "Write it as 2026."};
  if (path.empty())
    return Problem{"path", "It needs a name of a file.", "Give one such as ~/ledger.csv."};
  const auto lines = db::ledger(sight.shop, static_cast<int>(*year), sight.settings);
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file << db::ledger_csv(lines, sight.settings.currency);
  file.close();
  if (!file) return Problem{"path", path + " cannot be written.", "Choose another place."};
  return Said{std::to_string(lines.size()) + " lines written into " + path + ".", std::nullopt};
}

Outcome<Said> verify(const Sight& sight, const Typed& typed) {
  const std::string path = with_home(typed_value(typed, "path"));
  std::ifstream file(path, std::ios::binary);
  std::stringstream held;
  held << file.rdbuf();
  if (path.empty() || !file)
    return Problem{"path", "The file " + path + " cannot be read.",
                   "Name a certificate as a PDF file."};
  CertificateCheck check = check_certificate(held.str(), fonts());
  compare_with_shop(check, held.str(), sight.shop);
  std::string said =
      check.valid()
          ? "The certificate is whole: signature, record and visible words agree, to the last byte."
          : "The certificate is not what it should be.";
  for (const std::string& problem : check.problems) said += " " + problem;
  for (const std::string& remark : check.remarks) said += " " + remark;
  return Said{said, std::nullopt};
}

Outcome<Said> write_public_list(const Sight& sight, const Typed& typed) {
  const std::string path = with_home(typed_value(typed, "path"));
  if (path.empty())
    return Problem{"path", "It needs a name of a file.", "Give one such as ~/certificates.html."};
  const auto list = public_list({sight.shop, fonts(), sight.now});
  try {
    reports::write_whole(
        path.ends_with(".csv") ? reports::public_list_csv(list) : reports::public_list_html(list),
        path);
  } catch (const reports::PageFailure& failure) {
    return Problem{"path", failure.what(), "Choose another place."};
  }
  return Said{"Written into " + path + ".", std::nullopt};
}

// "receive_lot" as the end of a sentence: what kind of thing the number counts.
struct Made {
  const char* action;
  const char* before;  // goes before the number
  const char* after;
  std::optional<Place> place;
  const char* id_before;
};
constexpr Made made_by[] = {
    {"accept_quote", "Commission ", " is accepted.", Place::commissions, ""},
    {"add_grade", "Grade ", " is added.", Place::steel, "grade "},
    {"add_item", "Item ", " is added.", std::nullopt, ""},
    {"assign_blade", "Blade ", " has begun.", Place::blades, ""},
    {"book_firing", "Firing ", " is booked.", Place::kiln, ""},
    {"deliver", "Commission ", " is delivered.", std::nullopt, ""},
    {"issue_certificate", "Certificate ", " is issued.", std::nullopt, ""},
    {"make_quote", "Quote ", " is made.", std::nullopt, ""},
    {"new_commission", "Commission ", " is open.", Place::commissions, ""},
    {"receive_lot", "Lot ", " is received.", Place::steel, "lot "},
    {"start_trial", "Trial ", " is started.", Place::blades, "trial "},
    {"start_billet", "Billet ", " is started.", Place::steel, "billet "},
    {"take_balance", "Balance taken, payment ", ".", std::nullopt, ""},
    {"take_deposit", "Deposit taken, payment ", ".", std::nullopt, ""},
};

FormField year_field(const Typed& filled) {
  FormField year;
  year.name = "year";
  year.label = "Year";
  year.help = "2026; this year when not given";
  year.value = typed_value(filled, "year");
  return year;
}

FormField certificate_field(const Typed& filled) {
  FormField file =
      path_field("The file", typed_value(filled, "path"), "a certificate as a PDF file");
  file.entry = Entry::file;
  return file;
}

std::vector<FormField> print_fields(const Typed& filled) {
  std::vector<FormField> fields{
      path_field("Into the file",
                 "~/" + typed_value(filled, "kind") + "-" + typed_value(filled, "id") + ".pdf",
                 "a file that is there already is replaced")};
  for (const char* kept : {"kind", "id"}) {
    FormField field;
    field.name = kept;
    field.label = kept;
    field.value = typed_value(filled, kept);
    field.hidden = true;
    fields.push_back(field);
  }
  return fields;
}

// The forms of the desk's own work, which is no action of the shop.
struct KnownForm {
  const char *name, *title, *under, *submit;
  std::vector<FormField> (*fields)(const Typed& filled);
};

constexpr KnownForm known_forms[] = {
    {"desk.backup", "Back up the shop",
     "The copy stands alone and is made while other windows go on.", "Back up",
     [](const Typed&) -> std::vector<FormField> {
       return {path_field("Into the file", "~/shop-backup.tangmark",
                          "a new file; a stick is a good place")};
     }},
    {"desk.ledger", "Write the ledger of a year",
     "Every line as a table (CSV), for an accountant. Tax rates are those you entered.", "Write it",
     [](const Typed& filled) -> std::vector<FormField> {
       return {
           path_field("Into the file", "~/ledger.csv", "a file that is there already is replaced"),
           year_field(filled)};
     }},
    {"desk.quote_line", "Add a line to this quote",
     "Something that no model counts. It stays with this quote and its next versions.", "Add it",
     [](const Typed&) -> std::vector<FormField> {
       return {plain_field("name", "What it is", "Mosaic pin", true),
               plain_field("much", "How much", "2; one when not given", false),
               plain_field("each", "One costs", "14.00", true)};
     }},
    {"desk.verify", "Check a certificate",
     "Signature, record and visible words, and how it stands in this shop.", "Check it",
     [](const Typed& filled) -> std::vector<FormField> { return {certificate_field(filled)}; }},
    {"desk.public_list", "Write the public list",
     "Every issue with its digest and standing, and every key; without buyers' names. For your "
     "site.",
     "Write it",
     [](const Typed&) -> std::vector<FormField> {
       return {path_field("Into the file", "~/certificates.html",
                          "a page; a table when the name ends in .csv")};
     }},
    {"desk.export", "Export everything in open formats",
     "Tables as CSV and JSON, photos and kiln records as files. An import gives the same shop "
     "back.",
     "Export",
     [](const Typed&) -> std::vector<FormField> {
       return {path_field("Into the folder", "~/shop-export", "a new or empty folder")};
     }},
};

}  // namespace

std::string with_home(const std::string& path) {
  if (!path.starts_with("~/")) return path;
  const char* home = std::getenv("HOME");
  return home == nullptr ? path : home + path.substr(1);
}

bool is_desk_form(const std::string& name) {
  return name.starts_with("desk.");
}

Form desk_form(const std::string& name, const Typed& filled) {
  for (const KnownForm& known : known_forms)
    if (name == known.name) {
      Form form{name, known.title, known.under, known.submit, known.fields(filled)};
      return form;
    }
  return {name, "Print the " + typed_value(filled, "kind"), "A PDF file, the very page shown here.",
          "Print", print_fields(filled)};
}

Outcome<Said> desk_act(const std::string& name, const Sight& sight, const Typed& typed) {
  if (name == "desk.print") return print(sight, typed);
  if (name == "desk.ledger") return write_ledger(sight, typed);
  if (name == "desk.verify") return verify(sight, typed);
  if (name == "desk.public_list") return write_public_list(sight, typed);
  const std::string path = with_home(typed_value(typed, "path"));
  if (path.empty())
    return Problem{"path", "It needs a place to write to.", "Give a path such as ~/shop-backup."};
  auto done =
      name == "desk.backup" ? db::back_up(sight.shop, path) : db::export_shop(sight.shop, path);
  if (!done) return Problem{"path", done.problem().sentence, done.problem().remedy};
  return Said{"Written into " + path + ".", std::nullopt};
}

std::string done_words(const std::string& action, const std::string& number) {
  for (const Made& made : made_by) {
    if (action == made.action && !number.empty()) return made.before + number + made.after;
  }
  if (action.starts_with("log_")) return "It is in the log.";
  if (action == "correct") return "Corrected; what was written first is kept.";
  const std::string done = submit_words(action);
  return done == "Save" ? "It is kept." : done + ": done.";
}

std::optional<GoTo> place_after(const std::string& action, const std::string& number,
                                const Typed& typed) {
  for (const Made& made : made_by) {
    if (action == made.action && made.place && !number.empty())
      return GoTo{*made.place, made.id_before + number};
  }
  if (action == "add_item" || action == "make_quote") {
    if (const std::string commission = typed_value(typed, "commission"); !commission.empty()) {
      return GoTo{Place::commissions, commission};
    }
  }
  return std::nullopt;
}

}  // namespace tangmark::desk
