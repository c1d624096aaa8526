// SPDX-License-Identifier: MIT
#include "gui/desk/record_desk.h"

#include <fstream>

#include "db/actions/action.h"
#include "db/store/kiln_store.h"
#include "db/store/record_store.h"
#include "domain/kiln/record_preview.h"
#include "gui/desk/desk_forms.h"
#include "gui/desk/forms.h"

namespace tangmark::desk {
namespace {

constexpr std::size_t beginning_bytes = 64 * 1024;
constexpr std::string_view mapping_fields[] = {"unit",   "dates",  "separator", "decimals",
                                               "counts", "time",   "date",      "sensors",
                                               "zone",   "judged", "anew"};

bool says_how(const Typed& typed) {
  for (const std::string_view field : mapping_fields)
    if (const std::string said = typed_value(typed, field); !said.empty() && said != "no")
      return true;
  return false;
}

Outcome<std::string> beginning_of(const std::string& path) {
  std::ifstream file(with_home(path), std::ios::binary);
  std::string bytes(beginning_bytes, '\0');
  if (path.empty() || !file || !file.read(bytes.data(), 1))
    return Problem{"file", "There is no file \"" + path + "\" that can be read.",
                   "Choose the file that the logger wrote."};
  file.read(bytes.data() + 1, static_cast<std::streamsize>(beginning_bytes - 1));
  bytes.resize(1 + static_cast<std::size_t>(file.gcount()));
  return bytes;
}

Outcome<kiln::ShapeHints> hints_of(const Typed& typed) {
  kiln::TypedMapping mapping;
  mapping.unit = typed_value(typed, "unit");
  mapping.dates = typed_value(typed, "dates");
  mapping.separator = typed_value(typed, "separator");
  mapping.decimals = typed_value(typed, "decimals");
  mapping.counts = typed_value(typed, "counts");
  mapping.time = typed_value(typed, "time");
  mapping.date = typed_value(typed, "date");
  mapping.sensors = typed_value(typed, "sensors");
  if (mapping.sensors.empty()) mapping.sensors = typed_value(typed, "judged");
  mapping.zone = typed_value(typed, "zone");
  return kiln::read_hints(mapping);
}

Table table_of(const kiln::RecordPreview& preview) {
  Table table;
  TableRow uses;
  uses.strong = true;
  for (const kiln::PreviewColumn& column : preview.columns) {
    table.columns.push_back({column.head});
    uses.cells.push_back(column.use);
  }
  if (preview.shape) {
    table.columns.push_back({"Read as"});
    uses.cells.emplace_back("");
  }
  table.rows.push_back(std::move(uses));
  for (std::size_t i = 0; i < preview.rows.size(); ++i) {
    TableRow row;
    row.cells = preview.rows[i];
    row.cells.resize(preview.columns.size());
    if (preview.shape) row.cells.push_back(i < preview.read_as.size() ? preview.read_as[i] : "");
    table.rows.push_back(std::move(row));
  }
  return table;
}

Section section_of(const kiln::RecordPreview& preview, const Typed& typed) {
  Section section;
  section.proposed = true;
  section.title =
      preview.why_not.empty() ? "How this record would be read" : "This record cannot be read so";
  for (const Problem& problem : preview.why_not)
    section.paragraphs.push_back(problem.sentence + " " + problem.remedy);
  section.table = table_of(preview);
  if (preview.why_not.empty())
    section.offers.push_back({"Attach it so", DoNow{"attach_record", typed}, "", ""});
  section.offers.push_back({"Name its columns", OpenForm{"desk.record", typed}, "", ""});
  return section;
}

Section taken_for_granted(const kiln::RecordPreview& preview) {
  Section section;
  section.title = "Taken for granted";
  section.paragraphs = preview.assumptions;
  return section;
}

}  // namespace

Form record_form(const Sight& sight, const Typed& filled) {
  Form form;
  form.action = "desk.record";
  form.title = "Look at a kiln record before it is attached";
  form.under =
      "Shows its first rows and what each column would be taken for. Columns can be named by their "
      "head or their number, and are remembered for the kiln once the record is attached.";
  form.submit = "Show it";
  form.fields = form_fields(db::find_action("attach_record")->fields, sight, filled);
  return form;
}

Outcome<LookedAtRecord> record_sheet(const Sight& sight, const Typed& typed) {
  const auto firing = db::find_firing(sight.shop, typed_value(typed, "firing"), "firing");
  const auto bytes = beginning_of(typed_value(typed, "file"));
  const auto hints = hints_of(typed);
  Gather form;
  if (!firing) form.add(firing.problem());
  if (!bytes) form.add(bytes.problem());
  if (!hints)
    for (const Problem& problem : hints.problems()) form.add(problem);
  if (form.refused()) return form.problems();
  const auto logger =
      typed_value(typed, "independent") == "yes" ? db::Logger::check : db::Logger::controller;
  const auto known =
      says_how(typed) ? std::nullopt : db::record_shape_of(sight.shop, firing->kiln, logger);
  const TemperatureUnit unit = sight.settings.temperature_unit;
  const auto preview = known ? kiln::preview_record(*bytes, sight.zone(), *known, unit)
                             : kiln::preview_record(*bytes, sight.zone(), *hints, unit);
  Typed kept = typed;
  std::erase_if(kept, [](const auto& pair) { return pair.second.empty(); });
  kept["file"] = with_home(typed_value(typed, "file"));
  return LookedAtRecord{std::to_string(firing->number),
                        {section_of(preview, kept), taken_for_granted(preview)}};
}

}  // namespace tangmark::desk
