// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/energy.h"
#include "domain/measure/id.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace SQLite {
class Statement;
}

namespace tangmark::db {

/// A measure as the integer or text a column holds. The column's name says the unit.
inline std::int64_t stored(std::int64_t n) {
  return n;
}
inline std::int64_t stored(int n) {
  return n;
}
inline std::int64_t stored(bool b) {
  return b ? 1 : 0;
}
inline std::int64_t stored(Length l) {
  return l.nanometres();
}
inline std::int64_t stored(Mass m) {
  return m.micrograms();
}
inline std::int64_t stored(Volume v) {
  return v.microlitres();
}
inline std::int64_t stored(Energy e) {
  return e.joules();
}
inline std::int64_t stored(Temperature t) {
  return t.counts();
}
inline std::int64_t stored(TemperatureDifference d) {
  return d.counts();
}
inline std::int64_t stored(Share s) {
  return s.millionths();
}
inline std::int64_t stored(Money m) {
  return m.minor();
}
inline std::int64_t stored(Duration d) {
  return d.count();
}
inline std::string stored(Instant at) {
  return to_stored(at);
}
inline std::string stored(CalendarDate day) {
  return to_stored(day);
}
inline std::string stored(std::string_view text) {
  return std::string(text);
}
inline std::string stored(const std::string& text) {
  return text;
}
inline std::string stored(const char* text) {
  return text;
}
template <class Tag>
std::int64_t stored(Id<Tag> id) {
  return id.row();
}

/// One row on its way into a table.
///
///     Row row("lot");
///     row.set("grade", lot.grade).set("thickness_nm", lot.thickness);   // optionals become NULL
///     LotId id{row.insert(shop)};
class Row {
 public:
  explicit Row(std::string table) : table_(std::move(table)) {}
  template <class T>
  Row& set(std::string_view column, const T& value) {
    hold(column, stored(value));
    return *this;
  }
  template <class T>
  Row& set(std::string_view column, const std::optional<T>& value) {
    if (value) return set(column, *value);
    return set_null(column);
  }
  template <class E>
  Row& set_word(std::string_view column, E value) {
    return set(column, word_of(value));
  }
  Row& set_null(std::string_view column);
  Row& set_bytes(std::string_view column, std::string bytes);

  /// Adds the row; its new id.
  std::int64_t insert(const ShopFile& shop) const;
  /// Changes the set columns of the row with this id, which must exist.
  void update(const ShopFile& shop, std::int64_t id) const;

 private:
  enum class Kind { null, integer, text, bytes };
  struct Cell {
    std::string column;
    Kind kind;
    std::int64_t integer;
    std::string text;
  };
  void hold(std::string_view column, std::int64_t integer);
  void hold(std::string_view column, std::string text);
  void bind(SQLite::Statement& statement) const;
  std::string table_;
  std::vector<Cell> cells_;
};

/// Takes one row out of a table; only for lists of what is usual (bench hours), never for a record.
void delete_row(const ShopFile& shop, const std::string& table, std::int64_t id);

/// One whole readable statement and its rows, read by column name.
///
///     Query query(shop, "SELECT id, tag, mass_ug FROM piece WHERE lot_id = ? ORDER BY id");
///     query.bind(lot);
///     while (query.next()) use(query.text("tag"), query.mass("mass_ug"));
class Query {
 public:
  Query(const ShopFile& shop, const std::string& sql);
  Query(Query&&) noexcept;
  ~Query();
  /// Binds the next parameter.
  template <class T>
  Query& bind(const T& value) {
    return hold(stored(value));
  }
  bool next();

  bool is_null(const char* column) const;
  std::string text(const char* column) const;  ///< empty when NULL
  std::int64_t integer(const char* column) const;
  bool yes(const char* column) const { return integer(column) != 0; }
  Length length(const char* c) const { return Length::nanometres(integer(c)); }
  Mass mass(const char* c) const { return Mass::micrograms(integer(c)); }
  Volume volume(const char* c) const { return Volume::microlitres(integer(c)); }
  Energy energy(const char* c) const { return Energy::joules(integer(c)); }
  Temperature temperature(const char* c) const { return Temperature::counts(integer(c)); }
  TemperatureDifference difference(const char* c) const {
    return TemperatureDifference::counts(integer(c));
  }
  Share share(const char* c) const { return Share::millionths(integer(c)); }
  Duration duration(const char* c) const { return Duration(integer(c)); }
  Instant instant(const char* column) const;    ///< throws Failure when the file is damaged
  CalendarDate date(const char* column) const;  ///< likewise
  Currency currency(const char* column) const;  ///< likewise
  Money money(const char* amount, const char* currency_column) const {
    return {integer(amount), currency(currency_column)};
  }
  template <class E>
  E word(const char* column) const {
    auto value = of_word<E>(text(column), column);
    if (!value) damaged(column);
    return *value;
  }
  template <class I>
  I id(const char* column) const {
    return I{integer(column)};
  }

  /// The same, or nothing when the column is NULL.
  std::optional<std::string> maybe_text(const char* c) const {
    return maybe(c, [&] { return text(c); });
  }
  std::optional<std::int64_t> maybe_integer(const char* c) const {
    return maybe(c, [&] { return integer(c); });
  }
  std::optional<bool> maybe_yes(const char* c) const {
    return maybe(c, [&] { return yes(c); });
  }
  std::optional<Length> maybe_length(const char* c) const {
    return maybe(c, [&] { return length(c); });
  }
  std::optional<Mass> maybe_mass(const char* c) const {
    return maybe(c, [&] { return mass(c); });
  }
  std::optional<Volume> maybe_volume(const char* c) const {
    return maybe(c, [&] { return volume(c); });
  }
  std::optional<Energy> maybe_energy(const char* c) const {
    return maybe(c, [&] { return energy(c); });
  }
  std::optional<Temperature> maybe_temperature(const char* c) const {
    return maybe(c, [&] { return temperature(c); });
  }
  std::optional<TemperatureDifference> maybe_difference(const char* c) const {
    return maybe(c, [&] { return difference(c); });
  }
  std::optional<Share> maybe_share(const char* c) const {
    return maybe(c, [&] { return share(c); });
  }
  std::optional<Duration> maybe_duration(const char* c) const {
    return maybe(c, [&] { return duration(c); });
  }
  std::optional<Instant> maybe_instant(const char* c) const {
    return maybe(c, [&] { return instant(c); });
  }
  std::optional<CalendarDate> maybe_date(const char* c) const {
    return maybe(c, [&] { return date(c); });
  }
  std::optional<Money> maybe_money(const char* c, const char* currency_column) const {
    return maybe(c, [&] { return money(c, currency_column); });
  }
  template <class I>
  std::optional<I> maybe_id(const char* c) const {
    return maybe(c, [&] { return id<I>(c); });
  }
  template <class E>
  std::optional<E> maybe_word(const char* c) const {
    return maybe(c, [&] { return word<E>(c); });
  }

 private:
  template <class F>
  auto maybe(const char* column, F read) const -> std::optional<decltype(read())> {
    if (is_null(column)) return std::nullopt;
    return read();
  }
  Query& hold(std::int64_t integer);
  Query& hold(const std::string& text);
  [[noreturn]] void damaged(const char* column) const;
  std::unique_ptr<SQLite::Statement> statement_;
  int bound_ = 0;
};

/// What read(row) makes of every row of a query, in its order.
template <class Read>
auto all_rows(Query query, Read read) {
  std::vector<decltype(read(query))> rows;
  while (query.next()) rows.push_back(read(query));
  return rows;
}

/// The same of its first row, or nothing when there is none.
template <class Read>
auto first_row(Query query, Read read) -> std::optional<decltype(read(query))> {
  if (!query.next()) return std::nullopt;
  return read(query);
}

}  // namespace tangmark::db
