// SPDX-License-Identifier: MIT
#include "gui/desk/welcome.h"

#include <catch2/catch.hpp>

#include "gui/desk/desk.h"
#include "gui/desk/paper/certificate_printer.h"
#include "gui/desk/paper/photo_reader.h"
#include "tests/scratch.h"

using namespace tangmark;
using namespace tangmark::desk;

namespace {

const Instant now = date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(8);

}  // namespace

TEST_CASE("a look around writes the demo shop into a file of its own and opens it") {
  lend_certificate_printer();
  lend_photo_reader();
  const test::Scratch scratch;
  const auto begun =
      welcome_shop("demo_shop", {{"path", (scratch / "demo.tangmark").string()}}, now);
  REQUIRE(begun);
  const std::atomic<bool> stop{false};
  const auto path = std::get<ShopWriting>(*begun).work({stop, {}});
  REQUIRE(path);
  auto desk = Desk::open(*path, [] { return now; });
  REQUIRE(desk);
  CHECK(desk->list(Place::blades).list.size() > 30);
}

TEST_CASE("a demo shop stopped while it is written leaves no file") {
  const test::Scratch scratch;
  const auto begun =
      welcome_shop("demo_shop", {{"path", (scratch / "demo.tangmark").string()}}, now);
  REQUIRE(begun);
  const std::atomic<bool> stop{true};
  CHECK_FALSE(std::get<ShopWriting>(*begun).work({stop, {}}));
  CHECK(std::filesystem::is_empty(scratch.folder()));
}

TEST_CASE("the demo shop is never written over a file that is there") {
  const test::Scratch scratch;
  test::write_file(scratch / "mine.tangmark", "something of mine");
  const auto begun =
      welcome_shop("demo_shop", {{"path", (scratch / "mine.tangmark").string()}}, now);
  REQUIRE_FALSE(begun);
  CHECK(begun.problem().field == "path");
  CHECK(test::bytes_of(scratch / "mine.tangmark") == "something of mine");
}
