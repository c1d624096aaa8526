// SPDX-License-Identifier: MIT
// A program that dies at any moment loses nothing that it had acknowledged.
#include <catch2/catch.hpp>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <random>

#include "db/actions/action.h"
#include "db/check.h"
#include "db/row.h"
#include "db/shop_file.h"
#include "tests/scratch.h"

using namespace tangmark;

namespace {

Instant noon() {
  return date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(12);
}

// Notes one buyer after another and writes a byte for each that was acknowledged, until it is
// killed.
[[noreturn]] void note_buyers(const std::filesystem::path& file, int acknowledged) {
  auto shop = db::ShopFile::open(file, noon());
  if (!shop) _exit(2);
  for (;;) {
    if (!db::perform(*shop, "new_customer", {{"name", "Ida Holm"}}, noon())) _exit(3);
    if (write(acknowledged, "+", 1) != 1) _exit(4);
  }
}

std::int64_t buyers_in(const std::filesystem::path& file) {
  const auto shop = db::ShopFile::open(file, noon());
  REQUIRE(shop);
  CHECK(db::check_shop(*shop).wrong.empty());
  db::Query count(*shop, "SELECT count(*) AS n FROM customer");
  REQUIRE(count.next());
  return count.integer("n");
}

// Lets a child note buyers, kills it some time after it acknowledged so many, and returns how many
// it had acknowledged in all.
std::int64_t killed_after(const std::filesystem::path& file, int first,
                          std::chrono::microseconds then) {
  int ends[2];
  REQUIRE(pipe(ends) == 0);
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    close(ends[0]);
    note_buyers(file, ends[1]);
  }
  close(ends[1]);
  std::int64_t acknowledged = 0;
  char byte = 0;
  while (acknowledged < first && read(ends[0], &byte, 1) == 1) ++acknowledged;
  usleep(static_cast<useconds_t>(then.count()));
  kill(child, SIGKILL);
  int status = 0;
  waitpid(child, &status, 0);
  CHECK(WIFSIGNALED(status));
  while (read(ends[0], &byte, 1) == 1) ++acknowledged;
  close(ends[0]);
  return acknowledged;
}

void kill_many(int times) {
  const test::Scratch scratch;
  const auto file = scratch / "shop.tangmark";
  REQUIRE(db::ShopFile::create(file, noon()));
  std::mt19937 chance(7);
  std::uniform_int_distribution<int> first(0, 6), then(0, 6'000);
  std::int64_t before = 0, in_all = 0;
  for (int i = 0; i < times; ++i) {
    const std::int64_t acknowledged =
        killed_after(file, first(chance), std::chrono::microseconds{then(chance)});
    const std::int64_t kept = buyers_in(file);
    REQUIRE(kept >= before + acknowledged);
    REQUIRE(kept <= before + acknowledged + 1);  // the last may have been kept unacknowledged
    in_all += acknowledged;
    before = kept;
  }
  CHECK(in_all > 0);
}

}  // namespace

TEST_CASE("no acknowledged change is lost when the program is killed") {
  kill_many(40);
}

TEST_CASE("nor in a thousand kills", "[.long]") {
  kill_many(1000);
}
