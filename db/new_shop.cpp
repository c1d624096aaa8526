// SPDX-License-Identifier: MIT
#include "db/new_shop.h"

namespace tangmark::db {
namespace {

Problems set_all(ShopFile& shop, const Given& settings, Instant now) {
  Batch batch(shop);
  for (const auto& [name, value] : settings) {
    const auto done = perform(shop, "change_setting", {{"name", name}, {"value", value}}, now);
    if (!done) return {{name, done.problem().sentence, done.problem().remedy}};
  }
  batch.keep();
  return {};
}

}  // namespace

Outcome<ShopFile> begin_shop(const std::filesystem::path& path, const Given& settings,
                             Instant now) {
  auto made = ShopFile::create(path, now);
  if (!made) return Problem{"path", made.problem().sentence, made.problem().remedy};
  const Problems problems = set_all(*made, settings, now);
  if (problems.empty()) return made;
  // A shop with half its settings is not begun.
  { const auto closed = std::move(made).value(); }
  remove_shop_files(path);
  return problems;
}

void remove_shop_files(const std::filesystem::path& path) {
  std::error_code ignored;
  for (const char* tail : {"", "-wal", "-shm"}) {
    std::filesystem::remove(path.string() + tail, ignored);
  }
}

}  // namespace tangmark::db
