// SPDX-License-Identifier: MIT
#include "db/actions/correct_field.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

// One place that turns the text of a value into its column by kind.
template <class T>
Problems put(Row& row, std::string_view column, const Outcome<T>& value) {
  if (!value) return value.problems();
  row.set(column, *value);
  return {};
}

Outcome<bool> yes_no(const std::string& text) {
  if (text == "yes" || text == "no") return text == "yes";
  return Problem{"value", "\"" + text + "\" is neither yes nor no.", "Write yes or no."};
}

Problems read_into(Row& row, const Work& work, const Correctable& what, const std::string& text) {
  const auto& settings = work.settings();
  switch (what.kind) {
    case FieldKind::length:
      return put(row, what.column, parse_length(text, settings.length_unit, "value"));
    case FieldKind::temperature:
      return put(row, what.column, parse_temperature(text, settings.temperature_unit, "value"));
    case FieldKind::mass:
      return put(row, what.column, parse_mass(text, settings.mass_unit, "value"));
    case FieldKind::duration:
      return put(row, what.column, parse_duration(text, "value"));
    case FieldKind::share:
      return put(row, what.column, parse_share(text, "value"));
    case FieldKind::number:
      return put(row, what.column, parse_quantity(text, "value"));
    case FieldKind::date:
      return put(row, what.column, parse_date(text, "value"));
    case FieldKind::instant:
      return put(row, what.column, parse_instant(text, settings.zone, work.now(), "value"));
    case FieldKind::yes_no:
      return put(row, what.column, yes_no(text));
    default:
      row.set(what.column, text);
      return {};
  }
}

}  // namespace

const std::vector<Correctable>& correctable_fields() {
  static const std::vector<Correctable> all{
      {"blade", "title", "title", FieldKind::text, true},
      {"blade", "grade", "grade", FieldKind::text},
      {"blade", "length", "length_nm", FieldKind::length, true},
      {"blade", "width", "width_nm", FieldKind::length},
      {"blade", "thickness", "thickness_nm", FieldKind::length},
      {"blade", "hardness_aim", "hardness_aim", FieldKind::text},
      {"blade", "due", "due", FieldKind::date},
      {"finding", "words", "words", FieldKind::text, true},
      {"finding", "place", "place", FieldKind::text},
      {"finding", "side", "side", FieldKind::text},
      {"finding", "size", "size_nm", FieldKind::length},
      {"finding", "affects", "affects", FieldKind::yes_no, true},
      {"lot", "name", "name", FieldKind::text, true},
      {"lot", "supplier", "supplier", FieldKind::text},
      {"lot", "invoice", "invoice", FieldKind::text},
      {"lot", "grade", "grade", FieldKind::text},
      {"lot", "melt_number", "melt_number", FieldKind::text},
      {"lot", "mark_words", "mark_words", FieldKind::text},
      {"lot", "condition", "condition", FieldKind::text},
      {"lot", "species", "species", FieldKind::text},
      {"lot", "species_latin", "species_latin", FieldKind::text},
      {"lot", "source", "source", FieldKind::text},
      {"lot", "papers", "papers", FieldKind::text},
      {"lot", "expires_on", "expires_on", FieldKind::date},
      {"piece", "place", "place", FieldKind::text},
      {"piece", "note", "note", FieldKind::text},
      {"commission", "wanted_by", "wanted_by", FieldKind::date},
      {"commission", "wanted_why", "wanted_why", FieldKind::text},
      {"commission", "destination", "destination", FieldKind::text},
      {"commission", "buyers_words", "buyers_words", FieldKind::text},
      {"commission", "reply_by", "reply_by", FieldKind::date},
      {"item", "title", "title", FieldKind::text, true},
      {"item", "description", "description", FieldKind::text},
      {"item", "hardness_aim", "hardness_aim", FieldKind::text},
      {"item", "handle", "handle", FieldKind::text},
      {"item", "sheath", "sheath", FieldKind::text},
  };
  return all;
}

std::string correctable_text(std::string_view subject) {
  std::string text;
  for (const Correctable& one : correctable_fields())
    if (one.subject == subject) text += (text.empty() ? "" : ", ") + std::string(one.field);
  return text;
}

Problems correct_column(Work& work, const Correctable& what, std::string_view table,
                        std::int64_t row_id, const std::string& text) {
  Row row{std::string(table)};
  if (text.empty()) {
    if (what.required)
      return {{"value", std::string(what.field) + " cannot be empty.", "Give the right value."}};
    row.set_null(what.column);
  } else if (Problems problems = read_into(row, work, what, text); !problems.empty()) {
    return problems;
  }
  row.update(work.shop(), row_id);
  return {};
}

}  // namespace tangmark::db
