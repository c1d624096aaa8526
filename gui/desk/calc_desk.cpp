// SPDX-License-Identifier: MIT
#include "gui/desk/calc_desk.h"

#include "db/store/grade_store.h"
#include "domain/steel/desk_calc.h"
#include "domain/steel/figure_text.h"

namespace tangmark::desk {
namespace {

using steel::DeskCalculation;
using steel::DeskValue;

constexpr int decimals_shown = 4;

std::string name_in(const Typed& typed) {
  const auto found = typed.find("calculation");
  return found == typed.end() ? std::string() : found->second;
}

// Very small figures (a diffusivity) keep their digits, the others four decimals.
std::string figure(double value) {
  const bool tiny = value != 0 && value > -0.001 && value < 0.001;
  return tiny ? steel::figure_text(value) : steel::rounded_text(value, decimals_shown);
}

// "di_mm" is told as "di" in "mm".
struct Named {
  std::string label, unit;
};
Named named(const std::string& key) {
  static constexpr std::pair<std::string_view, std::string_view> units[] = {
      {"_kg_m3", "kg/m3"}, {"_m2_s", "m2/s"},   {"_per_in", "1/in"}, {"_g_ml", "g/ml"},
      {"_mm", "mm"},       {"_in", "in"},       {"_kg", "kg"},       {"_ml", "ml"},
      {"_min", "min"},     {"_wt", "weight %"}, {"_mj", "MJ"},       {"_kwh", "kWh"},
      {"_btu", "Btu"},     {"_c", "°C"}};
  static constexpr std::pair<std::string_view, std::string_view> whole[] = {
      {"hrc", "HRC"},           {"hv", "HV"},
      {"hrc_low", "HRC from"},  {"hrc_high", "HRC to"},
      {"as_quenched", "Off the quench"}, {"after_each", "After each temper"}};
  for (const auto& [known, label] : whole)
    if (key == known) return {std::string(label), ""};
  Named made{key, ""};
  for (const auto& [ending, unit] : units) {
    if (!key.ends_with(ending)) continue;
    made = {key.substr(0, key.size() - ending.size()), std::string(unit)};
    break;
  }
  for (char& c : made.label)
    if (c == '_') c = ' ';
  made.label = sentence_case(made.label);
  return made;
}

std::string text_of(const DeskValue& value);

std::string text_of_list(const DeskValue::List& list) {
  std::string text;
  for (const DeskValue& part : list) text += (text.empty() ? "" : ", ") + text_of(part);
  return text.empty() ? "none" : text;
}

std::string text_of_fields(const DeskValue::Fields& fields) {
  std::string text;
  for (const auto& [name, value] : fields) {
    const Named label = named(name);
    text += (text.empty() ? "" : ", ") + label.label + " " + text_of(value) +
            (label.unit.empty() ? "" : " " + label.unit);
  }
  return text;
}

std::string text_of(const DeskValue& value) {
  struct Speak {
    std::string operator()(std::monostate) const { return "none"; }
    std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
    std::string operator()(std::int64_t whole) const { return std::to_string(whole); }
    std::string operator()(double number) const { return figure(number); }
    std::string operator()(const std::string& words) const { return words; }
    std::string operator()(const DeskValue::List& list) const { return text_of_list(list); }
    std::string operator()(const DeskValue::Fields& fields) const { return text_of_fields(fields); }
  };
  return std::visit(Speak{}, value.held());
}

// Temperatures stand in the shop's own degrees, to a tenth.
bool is_heat(const std::string& key, const DeskValue& value) {
  return key.ends_with("_c") && std::holds_alternative<double>(value.held());
}
std::string heat_unit(TemperatureUnit unit) {
  return unit == TemperatureUnit::fahrenheit ? "°F" : "°C";
}
std::string heat_text(const DeskValue& value, TemperatureUnit unit) {
  const double celsius = value.number();
  return steel::rounded_text(unit == TemperatureUnit::fahrenheit ? celsius * 1.8 + 32 : celsius, 1);
}

// Several sentences or names are paragraphs, not one long line.
bool is_words_list(const DeskValue& value) {
  const auto* list = std::get_if<DeskValue::List>(&value.held());
  return list && !list->empty() && std::holds_alternative<std::string>(list->front().held()) &&
         text_of(value).size() > 60;
}

// A list of named values is a table; the rest are facts.
bool is_table(const DeskValue& value) {
  const auto* list = std::get_if<DeskValue::List>(&value.held());
  return list && !list->empty() && std::holds_alternative<DeskValue::Fields>(list->front().held());
}

Section table_section(const std::string& name, const DeskValue::List& list, TemperatureUnit unit) {
  Section section;
  section.title = named(name).label;
  for (const auto& column : std::get<DeskValue::Fields>(list.front().held())) {
    const Named head = named(column.name);
    const std::string shown = is_heat(column.name, column.value) ? heat_unit(unit) : head.unit;
    section.table.columns.push_back({shown.empty() ? head.label : head.label + ", " + shown});
  }
  for (const DeskValue& row : list) {
    TableRow cells;
    for (const auto& cell : std::get<DeskValue::Fields>(row.held()))
      cells.cells.push_back(is_heat(cell.name, cell.value) ? heat_text(cell.value, unit)
                                                           : text_of(cell.value));
    section.table.rows.push_back(std::move(cells));
  }
  return section;
}

// A problem names keys as the terminal does; here they are the labels of the form.
std::string in_labels(std::string text, const DeskCalculation& calculation) {
  for (const steel::DeskKey& key : calculation.keys) {
    if (key.name.find('_') == std::string::npos) continue;  // a word of the trade as it stands
    const std::string label = "\"" + named(key.name).label + "\"";
    for (std::size_t at = 0; (at = text.find(key.name, at)) != std::string::npos;
         at += label.size())
      text.replace(at, key.name.size(), label);
  }
  return text;
}

Problems in_labels(Problems problems, const DeskCalculation& calculation) {
  for (Problem& problem : problems) {
    problem.sentence = in_labels(std::move(problem.sentence), calculation);
    problem.remedy = in_labels(std::move(problem.remedy), calculation);
  }
  return problems;
}

// "Carbon 1.0 weight %, Temperature 800 °C": what was typed, as the form calls it.
std::string asked_words(const Typed& keys) {
  std::string words;
  for (const auto& [key, value] : keys) {
    const Named label = named(key);
    const bool bare = value.find_first_not_of("0123456789.-") == std::string::npos;
    words += (words.empty() ? "" : ", ") + label.label + " " + value +
             (bare && !label.unit.empty() ? " " + label.unit : std::string());
  }
  return words;
}

Typed kept(const Typed& typed) {
  Typed keys = typed;
  std::erase_if(keys, [](const auto& pair) {
    return pair.second.find_first_not_of(" \t") == std::string::npos;
  });
  return keys;
}

FormField field_of(const steel::DeskKey& key, const Typed& filled) {
  FormField field;
  field.name = key.name;
  field.label = named(key.name).label;
  field.required = key.need == steel::Need::required;
  field.help = key.meaning + (key.unit.empty() ? "" : ", " + key.unit);
  const auto given = filled.find(key.name);
  field.value = given == filled.end() ? key.fallback : given->second;
  return field;
}

}  // namespace

Section calculations_section() {
  Section section;
  section.title = "Work something out";
  section.table.columns = {{""}, {""}};
  for (const DeskCalculation& calculation : steel::desk_calculations()) {
    section.table.rows.push_back(
        {{sentence_case(calculation.answers), calculation.name},
         false,
         {{"Work it out", OpenForm{"desk.calc", {{"calculation", calculation.name}}}, "", ""}}});
  }
  return section;
}

Form calculation_form(const Typed& filled) {
  Form form;
  form.action = "desk.calc";
  form.submit = "Work it out";
  const DeskCalculation* calculation = steel::find_desk_calculation(name_in(filled));
  if (!calculation) {
    form.title = "There is no computation \"" + name_in(filled) + "\".";
    return form;
  }
  form.title = sentence_case(calculation->answers);
  form.under = "Valid: " + calculation->range + ".";
  for (const steel::DeskKey& key : calculation->keys) form.fields.push_back(field_of(key, filled));
  FormField name;
  name.name = "calculation";
  name.label = "Computation";
  name.value = calculation->name;
  name.hidden = true;
  form.fields.push_back(std::move(name));
  return form;
}

namespace {

// What came out, sorted by where it stands on the sheet.
struct Answered {
  Section facts;
  std::vector<Section> tables;
  std::vector<std::string> long_lists;
};

Answered sorted_answer(const steel::DeskAnswer& answer, TemperatureUnit unit) {
  Answered sorted;
  for (const auto& [field, value] : answer.fields) {
    const Named label = named(field);
    if (is_table(value)) {
      sorted.tables.push_back(table_section(field, value.list(), unit));
    } else if (is_words_list(value)) {
      for (const DeskValue& words : value.list())
        sorted.long_lists.push_back(label.label + ": " + words.words() + ".");
    } else if (is_heat(field, value)) {
      sorted.facts.facts.push_back({label.label, heat_text(value, unit), heat_unit(unit), ""});
    } else {
      sorted.facts.facts.push_back({label.label, text_of(value), label.unit, ""});
    }
  }
  for (const std::string& note : answer.notes)
    sorted.facts.paragraphs.push_back(sentence_case(note));
  return sorted;
}

}  // namespace

Outcome<Sheet> calculation_sheet(const Sight& sight, const Typed& typed) {
  const std::string name = name_in(typed);
  Typed keys = kept(typed);
  keys.erase("calculation");
  const std::vector<std::pair<std::string, std::string>> pairs(keys.begin(), keys.end());
  const auto answer = steel::run_desk_calculation(name, pairs, db::grade_book(sight.shop));
  const DeskCalculation* known = steel::find_desk_calculation(name);
  if (!known) return answer.problems();
  const DeskCalculation& calculation = *known;
  if (!answer) return in_labels(answer.problems(), calculation);
  Answered sorted = sorted_answer(*answer, sight.settings.temperature_unit);
  Section& facts = sorted.facts;
  Sheet sheet;
  sheet.title = sentence_case(calculation.answers);
  sheet.under = asked_words(keys);
  facts.offers = {{"Work it out anew", OpenForm{"desk.calc", typed}, "", ""}};
  Section source;
  source.title = "Where it is from";
  source.paragraphs = {"Source: " + calculation.source + ".", "Valid: " + calculation.range + "."};
  source.paragraphs.insert(source.paragraphs.end(), sorted.long_lists.begin(),
                           sorted.long_lists.end());
  sheet.sections.push_back(std::move(facts));
  for (Section& table : sorted.tables) sheet.sections.push_back(std::move(table));
  sheet.sections.push_back(std::move(source));
  return sheet;
}

}  // namespace tangmark::desk
