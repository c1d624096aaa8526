// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "domain/commission/commission_id.h"
#include "domain/commission/promise_calendar.h"
#include "domain/commission/promise_spread.h"
#include "domain/measure/share.h"

namespace tangmark::commission {

/// A day that is fixed from outside: a booked firing, work due back, steel on its way.
struct Booked {
  Instant at;
  Spread late;  ///< how late it may be
  friend bool operator==(const Booked&, const Booked&) = default;
};

/// One operation as the promise sees it.
struct QueuedOperation {
  std::string name;
  Spread bench;   ///< time that binds the maker: hands-on, and attended wait
  Spread wait;    ///< calendar time after it that binds nobody: cure, drying, a firing's soak, post
  Spread before;  ///< calendar time before it when nothing is booked: the next kiln day, a courier
  std::optional<Booked> booked = {};  ///< used once; a blade begun again finds nothing booked
  Share survival = Share::whole();
  friend bool operator==(const QueuedOperation&, const QueuedOperation&) = default;
};

/// A blade (or other piece of work) in the queue.
struct QueuedBlade {
  std::uint64_t key =
      0;  ///< its own number: its luck stays the same wherever it stands in the queue
  CommissionId commission;
  /// The whole route, as a lost blade needs the early part again.
  std::vector<QueuedOperation> route;
  std::size_t next = 0;        ///< first operation still to do; at the end, nothing is left
  std::size_t restart_at = 0;  ///< where a lost blade begins again: its first steel work
  std::optional<Booked> not_before = {};  ///< material awaited, buyer's answer awaited
  friend bool operator==(const QueuedBlade&, const QueuedBlade&) = default;
};

/// A promise already given.
struct GivenPromise {
  CommissionId commission;
  CalendarDate day;
  friend bool operator==(const GivenPromise&, const GivenPromise&) = default;
};

/// How the maker's estimates turn out as a whole: actual over estimated hours of finished work.
/// This is the error that goes the same way for every blade of a queue and does not average out.
struct Pace {
  double median = 1;
  double quarter_factor = 1;  ///< a quarter of the time it is worse than median x this
  friend bool operator==(const Pace&, const Pace&) = default;
};

/// Everything a forecast is made from. Blades are in the order of work: the maker takes the first
/// that is ready.
struct PromiseQueue {
  Instant now;
  Zone zone;
  BenchWeek week;
  Pace pace;
  std::vector<QueuedBlade> blades;
  std::vector<GivenPromise> promises;
};

}  // namespace tangmark::commission
