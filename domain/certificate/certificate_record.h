// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/certificate/certificate_sheet.h"

namespace tangmark::certificate {

/// The record of a certificate as text: everything the page says, as JSON with members in a fixed
/// order, whole numbers only (millionths, nanometres, counts of 1/1800 K, tenths), times in UTC.
/// The same sheet always gives the same bytes; their SHA-256 is what the seal carries.
std::string record_text(const CertificateSheet& sheet);

/// Reads a record back. Refuses text that is no record of this format, naming the member at fault,
/// and text that is not byte for byte what record_text() writes. A record of an earlier format is
/// refused in a sentence of its own: the page is a function of the record, and this program sets
/// the page of the present format alone.
Outcome<CertificateSheet> read_record(std::string_view text);

}  // namespace tangmark::certificate
