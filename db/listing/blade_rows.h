// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/length.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// One blade as a list shows it. Lists are read in one statement: loading every aggregate of a shop
/// of 100,000 blades would take seconds.
struct BladeRow {
  std::int64_t number = 0;
  std::string title;
  std::string construction;
  std::string grade;                         ///< empty: not identified
  Length length;
  std::optional<std::int64_t> commission;    ///< its number; none for a stock knife
  std::string buyer;                         ///< empty for a stock knife or an erased person
  std::optional<CalendarDate> due;
  std::string last_operation;                ///< newest entry that no correction superseded
  std::optional<Instant> last_at;
  std::string next_operation;                ///< first planned step neither done nor left out
  std::optional<Temperature> next_temperature;
  std::optional<Duration> next_soak;
  std::optional<Instant> quenched_at;        ///< of the newest quench
  int tempers_since_quench = 0;
  int tempers_ahead = 0;                     ///< planned and not yet done
  std::string held_by;                       ///< newest "snap temper" or "hold warm", if any
  std::optional<Instant> held_at;            ///< when that began
  std::optional<Temperature> held_set;
  bool open_finding = false;
  bool finished = false, delivered = false, scrapped = false;
};

/// Blades still in the shop first, newest number first.
std::vector<BladeRow> blade_rows(const ShopFile& shop);
/// Only those still in the shop: neither delivered nor scrapped.
std::vector<BladeRow> blades_in_shop(const ShopFile& shop);
std::optional<BladeRow> blade_row(const ShopFile& shop, std::int64_t number);

/// One entry of a blade's log that no correction superseded, as a table shows it.
struct LogRow {
  std::int64_t id = 0;
  std::string operation;
  Instant started_at;
  std::optional<Instant> ended_at;
  Instant entered_at;
  std::string how_timed;
  std::optional<Temperature> set, read;
  std::optional<Duration> hold;
  std::string medium;
  std::optional<Temperature> bath_at;
  std::string result, note, who;
  Duration hands_on{};
  std::optional<std::int64_t> firing;        ///< its number
  bool recorded = false;                     ///< a kiln record covers its firing
};
std::vector<LogRow> log_rows(const ShopFile& shop, std::int64_t blade_number);

/// One planned step of a blade's route.
struct StepRow {
  std::int64_t position = 0;
  std::string operation;
  Duration hands_on{}, attended{}, unattended{};
  std::optional<Temperature> temperature;
  std::optional<Duration> soak;
  std::string medium;
  bool done = false;
  std::string skipped_why;
  std::optional<Instant> booked_for;         ///< start of the booked firing it is in
  std::string booked_kiln;
};
std::vector<StepRow> step_rows(const ShopFile& shop, std::int64_t blade_number);

struct FindingRow {
  std::int64_t number = 0;
  Instant at;
  std::string kind, words, place, decision;
  bool affects = false;
  bool waits = false;  ///< for the maker's decision; a pattern that came out waits for none
};
std::vector<FindingRow> finding_rows(const ShopFile& shop, std::int64_t blade_number);

struct HardnessRow {
  Instant at;
  std::string place, scale, tester;
  std::int64_t tenths = 0;
  bool on_coupon = false;
  std::string void_why;
};
std::vector<HardnessRow> hardness_rows(const ShopFile& shop, std::int64_t blade_number);

/// A picture of a blade, without its bytes.
struct PhotoRow {
  std::int64_t id = 0;
  std::string caption, name;
  Instant added_at;
  std::optional<Instant> taken_at;
};
std::vector<PhotoRow> photo_rows(const ShopFile& shop, std::int64_t blade_number);
/// The bytes of one attachment; nothing when it is gone.
std::optional<std::string> attachment_bytes(const ShopFile& shop, std::int64_t id);

}  // namespace tangmark::db
