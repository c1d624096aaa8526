// SPDX-License-Identifier: MIT
// Sources: NIST SP 811 (2008), appendix B.8, figures beside each; and GNU units, run as a second
// opinion when it is installed.
#include <catch2/catch.hpp>
#include <functional>

#include "domain/measure/energy.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/temperature.h"
#include "tests/reference/measure/outside_program.h"

using namespace tangmark;

namespace {

using Parse = std::function<std::int64_t(const char*)>;

std::int64_t nm(const char* t) {
  return parse_length(t, LengthUnit::millimetre, "x")->nanometres();
}
std::int64_t ug(const char* t) {
  return parse_mass(t, MassUnit::gram, "x")->micrograms();
}
std::int64_t joules(const char* t) {
  return parse_energy(t, "x")->joules();
}
std::int64_t ul(const char* t) {
  return parse_volume(t, "x")->microlitres();
}
double kelvin(const char* t) {
  return parse_temperature(t, TemperatureUnit::celsius, "x")->in_kelvin();
}
double step(const char* t) {
  return parse_temperature_difference(t, TemperatureUnit::celsius, "x")->kelvins();
}

double asked(const std::string& from, const std::string& to) {
  return std::stod(output_of("units -t -o %.17g '" + from + "' '" + to + "'"));
}

struct Question {
  const char* typed;
  const char* from;  // in the words of GNU units
  const char* to;
};

void agree(const Question& q, std::int64_t count) {
  CAPTURE(q.typed);
  CHECK(std::abs(static_cast<double>(count) - asked(q.from, q.to)) <= 0.501);
}

}  // namespace

TEST_CASE("the factors are those of NIST SP 811") {
  CHECK(nm("1 in") == 25'400'000);            // inch: 2.54 E+01 mm, exact
  CHECK(nm("1 ft") == 304'800'000);           // foot: 3.048 E-01 m, exact
  CHECK(nm("1 thou") == 25'400);              // mil: 2.54 E-02 mm, exact
  CHECK(ug("1 lb") == 453'592'370);           // pound (avoirdupois): 4.535 923 7 E-01 kg, exact
  CHECK(ug("1 oz") == 28'349'523);            // ounce (avoirdupois): 2.834 952 E+01 g
  CHECK(joules("1000 Btu") == 1'055'056);     // Btu (IT): 1.055 056 E+03 J
  CHECK(joules("1 kWh") == 3'600'000);        // kilowatt hour: 3.6 E+06 J, exact
  CHECK(ul("1000 US gal") == 3'785'411'784);  // gallon (US): 3.785 412 E+00 L
  CHECK(ul("1 imp gal") == 4'546'090);        // gallon (Imperial): 4.546 09 E+00 L, exact
  CHECK(ul("1 qt") == 946'353);               // quart (US liquid): 9.463 529 E-01 L
  CHECK(ul("1 US fl oz") == 29'574);          // ounce (US fluid): 2.957 353 E+01 mL
  CHECK(kelvin("32 F") == Approx(273.15));    // (F + 459.67) / 1.8
  CHECK(step("1.8 F") == Approx(1.0));        // degree Fahrenheit interval: 5/9 K
}

TEST_CASE("GNU units converts to the same figures") {
  if (!installed("units")) {
    WARN("units is not installed: the second opinion is not asked");
    return;
  }
  agree({"1/64 in", "1|64 inch", "nm"}, nm("1/64 in"));
  agree({"17 5/64 in", "(17+5|64) inch", "nm"}, nm("17 5/64 in"));
  agree({"3.2 mm", "3.2 mm", "nm"}, nm("3.2 mm"));
  agree({"5 ft 6 in", "5 ft + 6 inch", "nm"}, nm("5 ft 6 in"));
  agree({"2 lb 3 oz", "2 lb + 3 oz", "microgram"}, ug("2 lb 3 oz"));
  agree({"7.3 oz", "7.3 oz", "microgram"}, ug("7.3 oz"));
  agree({"2.5 US gal", "2.5 usgallon", "microliter"}, ul("2.5 US gal"));
  agree({"2.5 imp gal", "2.5 brgallon", "microliter"}, ul("2.5 imp gal"));
  agree({"3 qt", "3 usquart", "microliter"}, ul("3 qt"));
  agree({"7 US fl oz", "7 usfloz", "microliter"}, ul("7 US fl oz"));
  agree({"4.2 kWh", "4.2 kWh", "J"}, joules("4.2 kWh"));
  // NIST rounds the Btu (IT) to seven figures; GNU units carries it in full.
  CHECK(static_cast<double>(joules("12000 Btu")) == Approx(asked("12000 btu", "J")).epsilon(2e-7));
}

TEST_CASE("GNU units reads thermometers the same way") {
  if (!installed("units")) {
    WARN("units is not installed: the second opinion is not asked");
    return;
  }
  const auto same = [](double ours, const std::string& from, const std::string& to) {
    CAPTURE(from);
    CHECK(ours == Approx(asked(from, to)).epsilon(1e-12));
  };
  same(kelvin("1475 F"), "tempF(1475)", "K");
  same(kelvin("802.5 C"), "tempC(802.5)", "K");
  same(kelvin("-109.3 F"), "tempF(-109.3)", "K");
  same(step("50 F"), "50 degF", "K");
  same(Temperature::celsius(1280).in_fahrenheit(), "tempC(1280)", "tempF");
}
