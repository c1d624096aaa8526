// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "db/shop_file.h"
#include "domain/certificate/compose.h"
#include "domain/certificate/dossier.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// What a printer is given: what the record says, what may be said, and the head of the issue.
struct CertificateToPrint {
  const certificate::Dossier& dossier;
  const certificate::CertificateDraft& draft;
  std::int64_t number, issue;
  std::string record, digest;
  std::string replaces;  ///< sentence of a reissue; empty for a first issue
  Instant now;
};

/// Sets the page and gives its bytes. This layer knows no pages, so the program hands one in at its
/// start; without one nothing can be issued.
using CertificatePrinter = std::function<Outcome<std::string>(const ShopFile&, const CertificateToPrint&)>;
void set_certificate_printer(CertificatePrinter printer);

}  // namespace tangmark::db
