// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/measure/outcome.h"
#include "reports/seal/signature.h"

namespace tangmark::reports {

/// What the signature of a file says beside its bytes.
struct SealWords {
  std::string reason;  ///< "Build certificate 12, issue 1"
  std::string owner;   ///< of the key
  Instant at{};
};

/// A PDF written anew in one fixed way, with an empty place for its signature. The same PDF and
/// words give the same bytes. **Source** ISO 32000-1, 12.8.1 (ByteRange over all but the signature,
/// no change allowed after it: DocMDP level 1).
class SealedPdf {
 public:
  /// Throws PageFailure when the PDF cannot be read.
  static SealedPdf around(const std::string& pdf, const SealWords& words);
  /// The finished file. Throws PageFailure when the signature does not fit its place.
  std::string signed_with(const SigningKey& key) &&;
  /// The file before signing.
  const std::string& unsigned_bytes() const { return bytes_; }

 private:
  std::string bytes_;
  Instant at_{};
};

/// Where the signature of a file stands: its hexadecimal digits with the brackets around them.
struct SignaturePlace {
  std::size_t from = 0;
  std::size_t to = 0;
};
/// Refuses a file that is no PDF, and one that carries no seal of this program over all its bytes.
Outcome<SignaturePlace> signature_place(std::string_view pdf);

/// Checks the seal of a file: the signature covers every byte outside its place, and its place
/// holds exactly the canonical signature, in lower-case digits, and zeros. So a change of any byte
/// of the file is found. Refuses in a sentence.
Outcome<SignatureFacts> check_seal(std::string_view pdf);

/// Whether two sealed files are the same outside the signature.
bool same_unsigned(std::string_view sealed, std::string_view before_signing);

}  // namespace tangmark::reports
