// SPDX-License-Identifier: MIT
#include "db/actions/lot_file.h"

#include <utility>

#include "db/actions/attach_photo.h"
#include "db/row.h"

namespace tangmark::db {
namespace {

// Known by its first bytes, never by its name. Sources: ISO 10918-1 (JPEG), ISO/IEC 15948 (PNG),
// ISO 32000-1 (PDF).
std::string media_type_of(const std::string& bytes) {
  if (bytes.starts_with("\xFF\xD8\xFF")) return "image/jpeg";
  if (bytes.starts_with("\x89PNG\r\n\x1A\n")) return "image/png";
  if (bytes.starts_with("%PDF-")) return "application/pdf";
  return {};
}

void keep(Work& work, const Form::File& file, std::string_view kind, stock::LotId lot) {
  Row row("attachment");
  row.set("kind", kind).set("name", file.name).set("media_type", media_type_of(file.bytes));
  row.set_bytes("bytes", file.bytes).set("added_at", work.now()).set("subject", "lot");
  row.set("subject_id", lot).insert(work.shop());
}

}  // namespace

LotFiles read_lot_files(Form& form) {
  LotFiles files{form.maybe_file("photo"), form.maybe_file("document_file")};
  if (files.photo) {
    auto jpeg = read_photo(files.photo->bytes, "photo");
    if (jpeg)
      files.photo->bytes = std::move(jpeg).value();
    else
      form.add(jpeg.problem());
  }
  if (!files.document) return files;
  const std::string media = media_type_of(files.document->bytes);
  if (media.empty())
    form.add({"document_file", files.document->name + " is neither a PDF nor a picture.",
              "Give a PDF, JPEG or PNG file."});
  // A scan is kept as it is, to be read closely; but it must be a picture to its end.
  if (media.starts_with("image/")) {
    if (const auto read = read_photo(files.document->bytes, "document_file"); !read)
      form.add(read.problem());
  }
  return files;
}

void keep_lot_files(Work& work, const LotFiles& files, stock::LotId lot) {
  if (files.photo) keep(work, *files.photo, "photo", lot);
  if (files.document) keep(work, *files.document, "document", lot);
}

}  // namespace tangmark::db
