// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/certificate/certificate_sheet.h"
#include "reports/font_book.h"
#include "reports/seal/signing_key.h"

namespace tangmark::test {

const reports::FontBook& fonts();
/// One key for all cases, since making one takes long.
const reports::SigningKey& key();
/// The record of a sample blade; see sample_blades.h for the names.
certificate::CertificateSheet sheet_of(std::string_view blade);
/// A small photograph, and the record that names it.
std::string photo();
certificate::CertificateSheet sheet_with_photo(std::string_view blade);
std::string sealed(const certificate::CertificateSheet& sheet, const std::string& photo = {});

}  // namespace tangmark::test
