// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "reports/seal/signing_key.h"

namespace tangmark::reports {

/// Bytes that a signature covers, in pieces.
using Covered = std::vector<std::string_view>;

/// A detached CMS signature in DER: SHA-256, the signer's certificate, and the signed attributes
/// content type, signing time, digest and signing certificate. Nothing unsigned. The same bytes,
/// key and time give the same signature.
/// **Source** RFC 5652 (CMS), RFC 5035 (signing certificate), ISO 32000-1, 12.8.3.3.
std::string signature_of(const Covered& bytes, const SigningKey& key, Instant at);

/// Who signed and when, as the signature says.
struct SignatureFacts {
  KeyCertificate key;
  Instant at{};
};

/// Reads and checks a signature over these bytes. It must be, byte for byte, what signature_of
/// would have written: the canonical form is made again from its certificate, its time, its value
/// and the digest of the bytes, so that a change of any of its bytes is found. Refuses in a
/// sentence.
Outcome<SignatureFacts> check_signature(std::string_view der, const Covered& bytes);

}  // namespace tangmark::reports
