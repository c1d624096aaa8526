// SPDX-License-Identifier: MIT
// Cases and plans read from their text.
#include <fmt/format.h>

#include <limits>
#include <nlohmann/json.hpp>

#include "domain/kiln/plan_json.h"
#include "domain/kiln/plan_kind.h"
#include "domain/kiln/plan_problems.h"

namespace tangmark::kiln {
namespace {

using nlohmann::json;

struct Range {
  std::int64_t least;
  std::int64_t most;
};

// Beyond these a number is a slip of the pen; within them every sum of the planner fits 64 bits.
constexpr Range minutes{0, 5'000'000};
constexpr Range any_minute{-5'000'000, 5'000'000};
constexpr Range degrees{-100, 3000};
constexpr Range count{1, 1000};
constexpr Range price{0, 10'000'000};

/// Reads fields of one object, noting what is wrong and where.
class Reader {
 public:
  Reader(const json& object, std::string path, Problems& problems)
      : object_(object), path_(std::move(path)), problems_(problems) {
    if (!object_.is_object()) bad("", "must be an object in braces.");
  }

  std::string at(std::string_view key) const {
    if (key.empty()) return path_.empty() ? "the case" : path_;
    return path_.empty() ? std::string(key) : fmt::format("{}.{}", path_, key);
  }

  void bad(std::string_view key, std::string_view words, std::string remedy = "") const {
    problems_.push_back({at(key), fmt::format("{} {}", at(key), words), std::move(remedy)});
  }

  const json* find(const char* key) const {
    if (!object_.is_object()) return nullptr;
    auto found = object_.find(key);
    return found == object_.end() ? nullptr : &*found;
  }

  /// The field, or a problem when it is missing.
  const json* need(const char* key) const {
    const json* found = find(key);
    if (!found && object_.is_object()) bad(key, "is missing.", "Add it.");
    return found;
  }

  template <class Int = int>
  Int number(const char* key, Range range) const {
    const json* found = need(key);
    return found ? static_cast<Int>(number_of(*found, key, range)) : Int{};
  }

  std::optional<int> maybe_number(const char* key, Range range) const {
    const json* found = find(key);
    if (!found || found->is_null()) return std::nullopt;
    return static_cast<int>(number_of(*found, key, range));
  }

  std::string text(const char* key) const {
    const json* found = need(key);
    if (!found) return "";
    if (!found->is_string()) return bad(key, "must be text in quotes."), "";
    return found->get<std::string>();
  }

  bool yes_or_no(const char* key) const {
    const json* found = need(key);
    if (!found) return false;
    if (!found->is_boolean()) return bad(key, "must be true or false."), false;
    return found->get<bool>();
  }

  PlanKind kind(const char* key) const {
    const std::string name = text(key);
    for (auto& [value, word] : trade_words<PlanKind>)
      if (name == word) return value;
    if (!name.empty()) bad(key, "must be soak, harden or anneal.");
    return PlanKind::soak;
  }

  /// Each element of a list, with a reader for it.
  template <class Each>
  void list(const char* key, bool needed, Each each) const {
    const json* found = needed ? need(key) : find(key);
    if (!found || (!needed && found->is_null())) return;
    if (!found->is_array()) return bad(key, "must be a list in brackets.");
    for (std::size_t i = 0; i < found->size(); ++i)
      each((*found)[i], fmt::format("{}[{}]", at(key), i));
  }

  std::int64_t number_of(const json& value, std::string_view key, Range range) const {
    if (!value.is_number_integer()) return bad(key, "must be a whole number."), range.least;
    const bool above_int64 =
        value.is_number_unsigned() &&
        value.get<std::uint64_t>() > std::uint64_t{std::numeric_limits<std::int64_t>::max()};
    if (above_int64 || value.get<std::int64_t>() < range.least ||
        value.get<std::int64_t>() > range.most) {
      bad(key, fmt::format("is {}, which is not between {} and {}.", value.dump(), range.least,
                           range.most));
      return range.least;
    }
    return value.get<std::int64_t>();
  }

 private:
  const json& object_;
  std::string path_;
  Problems& problems_;
};

PlanOperation read_operation(const Reader& r) {
  PlanOperation op;
  op.kind = r.kind("kind");
  op.target_c = r.number("temp", degrees);
  op.lowest_c = r.number("t_lo", degrees);
  op.highest_c = r.number("t_hi", degrees);
  op.shortest_soak_min = r.number("soak_min", minutes);
  op.longest_soak_min = r.number("soak_max", minutes);
  op.shortest_gap_min = r.number("gap_min", minutes);
  op.longest_gap_min = r.maybe_number("gap_max", minutes);
  if (op.kind == PlanKind::harden) {
    op.quench_min = r.number("quench_min", minutes);
    op.unattended = false;
    if (r.find("bath")) {
      op.bath = r.text("bath");
      op.warms_mk = r.number("bath_rise_mk", {0, 1'000'000});
    }
  } else {
    op.unattended = r.yes_or_no("unattended");
  }
  if (op.kind == PlanKind::anneal) {
    op.cool_c_per_h = r.number("cool_c_per_h", {1, 100'000});
    op.cool_to_c = r.number("cool_to", degrees);
  }
  return op;
}

PlanBlade read_blade(const json& value, const std::string& path, Problems& problems) {
  Reader r(value, path, problems);
  PlanBlade b;
  b.id = r.text("id");
  b.length_mm = r.number("length_mm", {0, 100'000});
  b.release_min = r.number("release", any_minute);
  b.due_min = r.number("due", any_minute);
  b.late_mc_per_min = r.number<std::int64_t>("weight", price);
  b.previous_end_min = r.maybe_number("previous_end", any_minute);
  r.list("ops", true, [&](const json& op, const std::string& op_path) {
    b.operations.push_back(read_operation(Reader(op, op_path, problems)));
  });
  return b;
}

PlanKiln read_kiln(const json& value, const std::string& path, Problems& problems) {
  Reader r(value, path, problems);
  PlanKiln k;
  k.id = r.text("id");
  k.slots = r.number("slots", count);
  k.max_length_mm = r.number("max_len_mm", {0, 100'000});
  k.lowest_c = r.number("t_min", degrees);
  k.highest_c = r.number("t_max", degrees);
  k.heat_c_per_h = r.number("heat_c_per_h", {1, 100'000});
  k.time_constant_min = r.number("tau_min", {1, 100'000});
  k.heat_w = r.number<std::int64_t>("heat_w", {0, 1'000'000});
  k.hold_mw_per_c = r.number<std::int64_t>("hold_mw_per_c", {0, 1'000'000});
  k.load_min = r.number("load_min", {0, 10'000});
  k.unload_min = r.number("unload_min", {0, 10'000});
  if (const json* circuit = r.need("circuit"); circuit && !circuit->is_null()) {
    if (circuit->is_string()) k.circuit = circuit->get<std::string>();
    else r.bad("circuit", "must be null or text in quotes.");
  }
  if (const json* state = r.find("kiln_state"); state && !state->is_null()) {
    Reader s(*state, path + ".kiln_state", problems);
    k.state = PlanKilnState{s.number("off_temp", degrees), s.number("off_at", any_minute),
                            s.number("free_at", any_minute)};
  }
  if (r.find("stagger")) k.staggered = r.yes_or_no("stagger");
  if (r.find("load_mw_min_per_c"))
    k.load_mw_min_per_c = r.number<std::int64_t>("load_mw_min_per_c", {0, 1'000'000});
  return k;
}

PlanBath read_bath(const json& value, const std::string& path, Problems& problems) {
  Reader r(value, path, problems);
  PlanBath b;
  b.id = r.text("id");
  b.rest_c = r.number("rest_temp", degrees);
  b.highest_c = r.number("t_max", degrees);
  b.time_constant_min = r.number("tau_min", {1, 100'000});
  b.now_c = r.maybe_number("now_temp", degrees);
  return b;
}

PlanFiring read_firing(const json& value, const std::string& path, Problems& problems) {
  Reader r(value, path, problems);
  PlanFiring f;
  f.kiln = r.text("kiln");
  f.kind = r.kind("kind");
  f.temp_c = r.number("temp", degrees);
  f.start_min = r.number("start", minutes);
  f.soak_min = r.number("soak", minutes);
  f.rest_min = r.maybe_number("rest", minutes).value_or(0);
  r.list("members", true, [&](const json& m, const std::string& member_path) {
    Reader member(m, member_path, problems);
    f.members.push_back({member.text("blade"), member.number("op", {0, 100'000})});
  });
  return f;
}

void read_spans(const Reader& r, const char* key, bool needed,
                std::vector<std::pair<int, int>>& spans) {
  r.list(key, needed, [&](const json& w, const std::string& path) {
    if (!w.is_array() || w.size() != 2) return r.bad(path, "must be a pair [start, end].");
    spans.emplace_back(static_cast<int>(r.number_of(w[0], path, any_minute)),
                       static_cast<int>(r.number_of(w[1], path, any_minute)));
  });
}

/// What may be left away.
void read_beyond(const Reader& r, PlanCase& c, Problems& problems) {
  r.list("locked", false, [&](const json& f, const std::string& path) {
    c.locked.push_back(read_firing(f, path, problems));
  });
  r.list("baths", false, [&](const json& b, const std::string& path) {
    c.baths.push_back(read_bath(b, path, problems));
  });
  read_spans(r, "hands_taken", false, c.hands_taken);
}

PlanCase read_case(const json& root, Problems& problems) {
  Reader r(root, "", problems);
  PlanCase c;
  if (const std::string format = r.text("format"); !format.empty() && format != "kiln-plan-1")
    r.bad("format", "must be \"kiln-plan-1\".");
  c.name = r.text("name");
  c.horizon_min = r.number("horizon", minutes);
  c.ambient_c = r.number("ambient_c", degrees);
  if (const json* cost = r.need("cost")) {
    Reader prices(*cost, "cost", problems);
    c.prices.energy_cents_per_kwh =
        prices.number<std::int64_t>("energy_cents_per_kwh", {0, 100'000});
    c.prices.attention_mc_per_min = prices.number<std::int64_t>("attention_mc_per_min", price);
    c.prices.flow_mc_per_min = prices.number<std::int64_t>("flow_mc_per_min", price);
  }
  read_spans(r, "windows", true, c.windows);
  r.list("kilns", true, [&](const json& k, const std::string& path) {
    c.kilns.push_back(read_kiln(k, path, problems));
  });
  r.list("blades", true, [&](const json& b, const std::string& path) {
    c.blades.push_back(read_blade(b, path, problems));
  });
  read_beyond(r, c, problems);
  return c;
}

Outcome<json> parse(std::string_view text) {
  try {
    return json::parse(text.begin(), text.end());
  } catch (const json::parse_error& e) {
    return Problem{fmt::format("byte {}", e.byte),
                   fmt::format("The text is not JSON: it breaks off at byte {}.", e.byte),
                   "Check brackets, quotes and commas there."};
  }
}

}  // namespace

Outcome<PlanCase> read_plan_case(std::string_view text) {
  auto root = parse(text);
  if (!root) return root.problems();
  Problems problems;
  PlanCase c = read_case(*root, problems);
  if (problems.empty()) problems = problems_of(c);
  if (!problems.empty()) return problems;
  return c;
}

Outcome<FiringPlan> read_firing_plan(std::string_view text) {
  auto root = parse(text);
  if (!root) return root.problems();
  Problems problems;
  Reader r(*root, "", problems);
  FiringPlan plan;
  plan.instance = r.text("instance");
  r.list("firings", true, [&](const json& f, const std::string& path) {
    plan.firings.push_back(read_firing(f, path, problems));
  });
  if (!problems.empty()) return problems;
  return plan;
}

}  // namespace tangmark::kiln
