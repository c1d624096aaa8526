// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/commission/quote.h"

namespace tangmark::db {

/// Versions of a quote side by side: a row for each cost line and for the sums, a column for each
/// version and one for the change from the first to the last.
struct ComparedQuotes {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;
  std::vector<std::string> sentences;  ///< the three lines that changed most
};

/// The oldest first, at least one; all in one currency. Lines of the same kind and words are the
/// same line, several of one name are added up. `heads` names the columns.
ComparedQuotes compared_quotes(const std::vector<commission::Quote>& quotes,
                               const std::vector<std::string>& heads);

/// "v2 2026-11-03".
std::string version_head(const commission::Quote& quote);

}  // namespace tangmark::db
