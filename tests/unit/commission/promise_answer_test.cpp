// SPDX-License-Identifier: MIT
#include "domain/commission/promise_answer.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;
using namespace std::chrono_literals;
using namespace date::literals;

namespace {

QueuedBlade a_blade(std::int64_t commission, Spread bench, Share survival = Share::whole()) {
  QueuedOperation op;
  op.name = "operation";
  op.bench = bench;
  op.survival = survival;
  return {static_cast<std::uint64_t>(commission), CommissionId(commission), {op}};
}

/// Eight hours every day, three commissions of two days each.
PromiseQueue a_queue() {
  PromiseQueue queue;
  queue.now = date::sys_days(2026_y / 11 / 23);
  queue.week.bench.fill(8h);
  for (std::int64_t c = 1; c <= 3; ++c) queue.blades.push_back(a_blade(c, Spread::exactly(16h)));
  return queue;
}

}  // namespace

TEST_CASE("a commission accepted at the end of the queue harms nobody") {
  PromiseQueue queue = a_queue();
  queue.blades.push_back(a_blade(9, Spread::exactly(8h)));
  const auto answer = promise_answer(queue, CommissionId(9), {});
  REQUIRE(answer.ok());
  CHECK(answer->harmed.empty());
  CHECK(answer->forecast.p80 == 2026_y / 11 / 29);
}

TEST_CASE("the only commission of a shop is forecast and harms nobody") {
  PromiseQueue queue = a_queue();
  queue.blades = {a_blade(9, Spread::exactly(8h))};
  const auto answer = promise_answer(queue, CommissionId(9), {});
  REQUIRE(answer.ok());
  CHECK(answer->harmed.empty());
  CHECK(answer->forecast.p80 == 2026_y / 11 / 23);
}

TEST_CASE("a rush harms everyone behind it, and tells whose promise it breaks") {
  PromiseQueue queue = a_queue();
  queue.blades.insert(queue.blades.begin() + 1, a_blade(9, Spread::exactly(8h)));
  queue.promises = {{CommissionId(2), 2026_y / 11 / 30}, {CommissionId(3), 2026_y / 11 / 28}};
  const auto answer = promise_answer(queue, CommissionId(9), {});
  REQUIRE(answer->harmed.size() == 2);
  CHECK(answer->harmed[0] == Harm{CommissionId(2), 2026_y / 11 / 26, 2026_y / 11 / 27,
                                  2026_y / 11 / 30, false});
  CHECK(answer->harmed[1].before == 2026_y / 11 / 28);
  CHECK(answer->harmed[1].after == 2026_y / 11 / 29);
  CHECK(answer->harmed[1].breaks_promise);
  CHECK(answer->forecast.p50 == 2026_y / 11 / 25);
}

TEST_CASE("what most often makes it late is told in order") {
  PromiseQueue queue = a_queue();
  queue.blades[1] = a_blade(2, Spread::around(16h, 2.0));
  queue.blades.push_back(a_blade(9, Spread::around(2h, 1.1)));
  const auto ahead = promise_answer(queue, CommissionId(9), {2000, 1});
  REQUIRE_FALSE(ahead->causes.empty());
  CHECK(ahead->causes.front().cause == LateCause::others_work);
  CHECK(ahead->causes.front().part > 0.9);
  CHECK(sentence(ahead->causes.front().cause) == "the work ahead of it takes longer");

  queue = a_queue();
  queue.blades.push_back(a_blade(9, Spread::around(20h, 1.1), Share::percent(60)));
  CHECK(promise_answer(queue, CommissionId(9), {2000, 1})->causes.front().cause ==
        LateCause::own_losses);
}

TEST_CASE("nothing is blamed when nothing can be late") {
  CHECK(promise_answer(a_queue(), CommissionId(3), {})->causes.empty());
}

TEST_CASE("a commission without a blade in the queue has no promise") {
  CHECK(promise_answer(a_queue(), CommissionId(77), {}).problem().field == "commission");
}
