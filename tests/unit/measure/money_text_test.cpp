// SPDX-License-Identifier: MIT
#include "domain/measure/money.h"
#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

struct Read {
  const char* text;
  const char* code;
  std::int64_t minor;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("money is read with or without its code and with thousands marks") {
  const auto row = GENERATE(values<Read>({
      {"12.50", "EUR", 1250},
      {"12.5", "EUR", 1250},
      {"1290", "EUR", 129'000},
      {"0", "EUR", 0},
      {"12.50 EUR", "EUR", 1250},
      {"12.50 usd", "USD", 1250},
      {"EUR 1 290.00", "EUR", 129'000},
      {"USD1290", "USD", 129'000},
      {"1'290.00", "EUR", 129'000},
      {"1\xE2\x80\x99"
       "290",
       "EUR", 129'000},
      {"1\xE2\x80\xAF"
       "290.00 EUR",
       "EUR", 129'000},
      {"1 234 567.89", "EUR", 123'456'789},
      {"1290 JPY", "JPY", 1290},
      {"1.234 KWD", "KWD", 1234},
      {"1000000000000", "EUR", 100'000'000'000'000},
  }));
  CAPTURE(row.text);
  const auto money = parse_money(row.text, Currency(), "price");
  REQUIRE(money.ok());
  CHECK(*money == Money(row.minor, *Currency::of(row.code)));
}

TEST_CASE("money that means two things or none is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "no amount"},
      {"12,50", "comma"},
      {"1,290.00", "comma"},
      {"1.290,00", "comma"},
      {"-5", "below zero"},
      {"-5 EUR", "below zero"},
      {"EUR -5", "below zero"},
      {"12.505", "more decimals"},
      {"12.5 JPY", "more decimals"},
      {"12.", "not an amount"},
      {".50", "not an amount"},
      {"1.2.3", "not an amount"},
      {"12 90", "not an amount"},
      {"1 2900", "not an amount"},
      {"1290 0", "not an amount"},
      {"' 290", "not an amount"},
      {"abc", "not a currency"},
      {"12.50 XYZ", "not a currency"},
      {"EUR 12.50 EUR", "not an amount"},
      {"EUR", "not an amount"},
      {"\xE2\x82\xAC"
       "12",
       "not an amount"},
      {"1000000000000.01", "more than a million million"},
      {"99999999999999999999999999", "more than a million million"},
      {"1e3", "not an amount"},
      {"12 mm", "not a currency"},
  }));
  CAPTURE(row.text);
  check_refused(parse_money(row.text, Currency(), "price"), "price", row.word);
}

TEST_CASE("money is shown with thin groups and always all minor digits") {
  CHECK(to_text(Money(129'000, Currency())) ==
        "1\xE2\x80\xAF"
        "290.00 EUR");
  CHECK(to_text(Money(5, Currency())) == "0.05 EUR");
  CHECK(to_text(Money(-5, Currency())) == "-0.05 EUR");
  CHECK(to_text(Money(-129'000, Currency())) ==
        "-1\xE2\x80\xAF"
        "290.00 EUR");
  CHECK(to_text(Money(1'290'000, *Currency::of("JPY"))) ==
        "1\xE2\x80\xAF"
        "290\xE2\x80\xAF"
        "000 JPY");
  CHECK(amount_text(Money(1234, *Currency::of("KWD"))) == "1.234");
  CHECK(amount_text(Money(99'900, Currency())) == "999.00");
}

TEST_CASE("shown money is read back to the same cent") {
  for (std::int64_t minor = 0; minor < 100'000'000'000; minor = minor * 3 + 7) {
    const Money money(minor, Currency());
    REQUIRE(*parse_money(to_text(money), *Currency::of("USD"), "price") == money);
  }
}
