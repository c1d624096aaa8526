// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

namespace tangmark {

/// Minor digits of an active ISO 4217 currency, or nothing for a code that names none. Codes that
/// ISO 4217 lists without a minor unit (metals, funds units, tests: XAU, XDR, XXX) are left out:
/// money cannot be counted in them.
/// Source: ISO 4217:2015, list one, from memory, and checked against two published copies of it in
/// tests/reference; XCG and ZWG of later amendments from memory. BGN and HRK are kept for figures
/// from before the euro.
std::optional<int> minor_digits_of(std::string_view code);

}  // namespace tangmark
