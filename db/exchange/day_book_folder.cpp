// SPDX-License-Identifier: MIT
#include <algorithm>
#include <fstream>
#include <iterator>

#include "db/exchange/day_book.h"
#include "db/new_shop.h"

namespace tangmark::db {
namespace {

namespace fs = std::filesystem;

Outcome<std::vector<DayBook>> books_in(const fs::path& folder) {
  std::vector<DayBook> books;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    if (entry.path().extension() != ".daybook") continue;
    const std::string name = entry.path().filename().string();
    std::ifstream file(entry.path(), std::ios::binary);
    if (!file) return Problem{name, "The day book cannot be read.", "See that it may be read."};
    books.push_back({name, std::string(std::istreambuf_iterator<char>(file), {}), folder});
  }
  if (books.empty()) {
    return Problem{"folder", "There are no day books at " + folder.string() + ".",
                   "Keep the project's folder where it was built."};
  }
  std::sort(books.begin(), books.end(),
            [](const DayBook& a, const DayBook& b) { return a.name < b.name; });
  return books;
}

}  // namespace

Outcome<int> begin_shop_from_day_books(const fs::path& path, const fs::path& folder, Instant now,
                                       const Stopped& stopped) {
  const auto books = books_in(folder);
  if (!books) return books.problems();
  Outcome<int> done = Problem{};
  {
    auto shop = begin_shop(path, {}, now);
    if (!shop) return shop.problems();
    done = perform_day_books(*shop, *books, now, stopped);
  }
  if (!done) remove_shop_files(path);
  return done;
}

}  // namespace tangmark::db
