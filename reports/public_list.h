// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/when.h"

namespace tangmark::reports {

/// One issue of a certificate as anybody may see it: no buyer, no price.
struct PublicIssue {
  std::string number;
  int issue = 1;
  int blade = 0;
  std::string title;
  CalendarDate day{};
  std::string state;   ///< "stands", "replaced by issue 2: length was mistyped", "revoked: ..."
  std::string record;  ///< SHA-256 of its record
  std::string key;     ///< fingerprint of the key that signed it; empty when unsigned
};

/// A key that the shop seals with, or sealed with.
struct PublicKey {
  std::string fingerprint;
  std::string owner;
  CalendarDate from{};
  CalendarDate to{};
  std::string retired;  ///< "2026-11-25: the passphrase is lost"; empty while it is used
};

/// What a maker may put on a site so that a buyer can compare.
struct PublicList {
  std::string shop;
  CalendarDate day{};
  std::vector<PublicIssue> issues;
  std::vector<PublicKey> keys;
};

/// One line for each issue, with a head. **Source** RFC 4180.
std::string public_list_csv(const PublicList& list);
/// A page of its own that needs nothing else: no script, no picture, no address outside it.
std::string public_list_html(const PublicList& list);

}  // namespace tangmark::reports
