// SPDX-License-Identifier: MIT
#include "db/actions/attach_photo.h"

#include <utility>

#include "db/actions/asked.h"
#include "db/actions/blade_action_list.h"
#include "db/store/attachment_store.h"
#include "db/store/blade_store.h"
#include "db/store/finding_store.h"
#include "db/store/named.h"

namespace tangmark::db {
namespace {

PhotoReader& the_reader() {
  static PhotoReader reader;
  return reader;
}

struct Subject {
  std::string table;
  std::int64_t row;
};

template <class T>
void add(std::vector<Subject>& subjects, const char* table, const std::optional<T>& found) {
  if (found) subjects.push_back({table, found->id.row()});
}

std::optional<Subject> read_subject(Work& work, Form& form) {
  std::vector<Subject> subjects;
  add(subjects, "blade", asked(work, form, "blade", blade_named));
  add(subjects, "finding", asked(work, form, "finding", finding_named));
  add(subjects, "lot", asked(work, form, "lot", lot_named));
  add(subjects, "piece", asked(work, form, "piece", piece_named));
  if (subjects.size() == 1) return subjects.front();
  if (!form.refused())
    form.add({"blade",
              subjects.empty() ? "Nobody said what the picture shows."
                               : "A picture belongs to one thing.",
              "Give one of blade, finding, lot or piece."});
  return std::nullopt;
}

Outcome<ActionResult> attach(Work& work, Form& form) {
  if (!form.has("file"))
    form.add({"file", "No picture is named.", "Give the name of a JPEG or PNG file."});
  const auto file = form.maybe_file("file");
  const auto subject = read_subject(work, form);
  const auto caption = form.maybe_text("caption");
  const auto taken_at = form.maybe_instant("taken_at");
  if (form.refused()) return form.problems();
  const auto jpeg = read_photo(file->bytes, "file");
  if (!jpeg) return jpeg.problems();
  Attachment photo{.id = AttachmentId{0},
                   .kind = "photo",
                   .name = file->name,
                   .media_type = "image/jpeg",
                   .taken_at = taken_at,
                   .added_at = work.now(),
                   .caption = caption,
                   .subject = subject->table,
                   .subject_id = subject->row};
  return work.done(std::to_string(insert_attachment(work.shop(), photo, *jpeg).row()));
}

}  // namespace

void set_photo_reader(PhotoReader reader) {
  the_reader() = std::move(reader);
}

Outcome<std::string> read_photo(std::string_view bytes, std::string_view field) {
  if (!the_reader())
    return Problem{std::string(field), "This program cannot read pictures.",
                   "Attach it from the window or with tangmark do."};
  return the_reader()(bytes, field);
}

const Action attach_photo{"attach_photo",
                          "Attach a photograph, reduced to 1600 pixels, to what it shows.",
                          {{"file", "Picture", FieldKind::file, true, "a JPEG or PNG file"},
                           {"blade", "Blade", FieldKind::blade, false, "its number"},
                           {"finding", "Finding", FieldKind::finding, false, "its number"},
                           {"lot", "Lot", FieldKind::lot, false, "its number"},
                           {"piece", "Piece", FieldKind::piece, false, "its tag"},
                           {"caption", "Shows", FieldKind::text, false, "left side after etching"},
                           {"taken_at", "Taken", FieldKind::instant, false, "2026-11-25 14:20"}},
                          attach};

}  // namespace tangmark::db
