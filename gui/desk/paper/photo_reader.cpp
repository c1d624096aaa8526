// SPDX-License-Identifier: MIT
#include "gui/desk/paper/photo_reader.h"

#include <string>
#include <utility>

#include "db/actions/attach_photo.h"
#include "reports/picture.h"

namespace tangmark::desk {
namespace {

Outcome<std::string> reduced_photo(std::string_view bytes, std::string_view field) {
  auto photo = reports::photo_for_storing(bytes, field);
  if (!photo) return photo.problems();
  return std::move(photo->jpeg);
}

}  // namespace

void lend_photo_reader() { db::set_photo_reader(reduced_photo); }

}  // namespace tangmark::desk
