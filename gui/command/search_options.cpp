// SPDX-License-Identifier: MIT
#include "gui/command/search_options.h"

#include <algorithm>
#include <charconv>
#include <chrono>

namespace tangmark::command {
namespace {

using Clock = std::chrono::steady_clock;

Outcome<std::int64_t> whole_of(const Call& call, std::string_view name, std::int64_t usual) {
  const auto text = call.option(name);
  if (!text) return usual;
  std::int64_t n = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), n);
  if (error != std::errc() || end != text->data() + text->size() || n < 0)
    return Problem{"--" + std::string(name), "\"" + *text + "\" is not a whole number.",
                   "Write a whole number from 0 on."};
  return n;
}

}  // namespace

Outcome<double> seconds_of(const Call& call, double usual) {
  const auto text = call.option("seconds");
  if (!text) return usual;
  double seconds = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), seconds);
  if (error != std::errc() || end != text->data() + text->size() || !(seconds > 0) ||
      seconds > 86'400)
    return Problem{"--seconds", "\"" + *text + "\" is not a number of seconds.",
                   "Write, for example: --seconds 5."};
  return seconds;
}

Outcome<Search> search_of(const Call& call, double usual_seconds) {
  Gather gather;
  const double seconds = gather.take(seconds_of(call, usual_seconds));
  const std::int64_t iterations = gather.take(whole_of(call, "iterations", 0));
  const std::int64_t seed = gather.take(whole_of(call, "seed", 1));
  if (gather.refused()) return gather.problems();
  Search search;
  const auto began = Clock::now();
  const double allowed = std::max(0.01, seconds - kept_back_s);
  search.limits.time_used = [began, allowed] {
    return std::chrono::duration<double>(Clock::now() - began).count() / allowed;
  };
  search.limits.iterations = iterations;
  search.seed = static_cast<std::uint64_t>(seed);
  return search;
}

}  // namespace tangmark::command
