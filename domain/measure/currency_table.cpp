// SPDX-License-Identifier: MIT
#include "domain/measure/currency_table.h"

#include <array>

namespace tangmark {
namespace {

struct CurrencyRow {
  int minor_digits;
  std::string_view codes;  // three letters and a space each
};

constexpr std::array<CurrencyRow, 4> rows = {{
    {0, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF "},
    {2,
     "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP "
     "BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR "
     "FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HRK HTG HUF IDR ILS INR IRR JMD KES KGS KHR "
     "KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR "
     "MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK "
     "SGD SHP SLE SLL SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN "
     "UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG ZWL "},
    {3, "BHD IQD JOD KWD LYD OMR TND "},
    {4, "CLF UYW "},
}};

}  // namespace

std::optional<int> minor_digits_of(std::string_view code) {
  if (code.size() != 3) return std::nullopt;
  for (const CurrencyRow& row : rows) {
    for (std::size_t at = 0; at < row.codes.size(); at += 4) {
      if (row.codes.substr(at, 3) == code) return row.minor_digits;
    }
  }
  return std::nullopt;
}

}  // namespace tangmark
