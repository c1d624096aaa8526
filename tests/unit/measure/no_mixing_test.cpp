// SPDX-License-Identifier: MIT
// What must not compile: measures of two kinds, and measures with bare numbers.
#include <catch2/catch.hpp>
#include <type_traits>

#include "domain/measure/energy.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

using namespace tangmark;

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Equatable = requires(A a, B b) {
  a == b;
};

static_assert(Addable<Money, Money> && Addable<Length, Length> && Addable<Mass, Mass>);
static_assert(!Addable<Money, int> && !Addable<Money, Mass> && !Addable<Money, double>);
static_assert(!Multipliable<Money, Money> && !Comparable<Money, Mass> && !Comparable<Money, int>);
static_assert(!Addable<Length, int> && !Addable<Length, Mass> && !Comparable<Length, double>);
static_assert(!Multipliable<Length, Length>);
static_assert(!Addable<Mass, double> && !Comparable<Mass, Energy> && !Equatable<Mass, Length>);
static_assert(!Addable<Energy, Volume> && !Comparable<Energy, Volume>);
static_assert(!Addable<Share, double> && !Comparable<Share, double>);

// Two readings of a thermometer have a difference but no sum.
static_assert(!Addable<Temperature, Temperature>);
static_assert(Subtractable<Temperature, Temperature>);
static_assert(std::is_same_v<decltype(Temperature() - Temperature()), TemperatureDifference>);
static_assert(Addable<Temperature, TemperatureDifference> && !Addable<Temperature, int>);
static_assert(!Comparable<Temperature, TemperatureDifference>);
static_assert(!Addable<Instant, Instant> && Addable<Instant, Duration>);
static_assert(!Comparable<Instant, CalendarDate>);

// Bare numbers do not become measures by themselves.
static_assert(!std::is_convertible_v<int, Money> && !std::is_constructible_v<Money, int>);
static_assert(!std::is_convertible_v<int, Length> && !std::is_constructible_v<Length, int>);
static_assert(!std::is_convertible_v<double, Mass> && !std::is_constructible_v<Mass, double>);
static_assert(!std::is_convertible_v<double, Temperature>);
static_assert(!std::is_constructible_v<Temperature, double>);
static_assert(!std::is_convertible_v<Temperature, TemperatureDifference>);
static_assert(!std::is_convertible_v<double, Share> && !std::is_constructible_v<Share, double>);
static_assert(!std::is_convertible_v<std::string, Currency>);
static_assert(!std::is_constructible_v<Currency, std::string>);

}  // namespace

TEST_CASE("measures of two kinds do not mix, which the compiler has checked above") {
  CHECK(Length::millimetres(1) + Length::millimetres(2) == Length::millimetres(3));
}
