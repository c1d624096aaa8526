// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::reports {

/// Whose key it is, as the certificate of the key says.
struct KeyOwner {
  std::string maker;
  std::string shop;
};

/// The public half: an X.509 certificate that the maker signed for himself. Nobody else vouches for
/// it; a reader compares its fingerprint with the one that the maker publishes.
struct KeyCertificate {
  std::string der;
  /// SHA-256 of the public key, 64 hex digits; renewal leaves it as it is.
  std::string fingerprint;
  std::string owner;        ///< "O. Renwick, Renwick Knives"
  Instant from{};
  Instant to{};
  friend bool operator==(const KeyCertificate&, const KeyCertificate&) = default;
};

/// The maker's own key for sealing certificates: RSA of 3072 bits, whose signatures are the same
/// bytes each time. **Source** RFC 8017, 8.2 (RSASSA-PKCS1-v1_5); RFC 5280 (X.509).
class SigningKey {
 public:
  /// A new key with a certificate of its own. Takes about half a second.
  static SigningKey make(const KeyOwner& owner, Instant from, Instant to);
  /// Opens a key file: PEM text with a private key, locked as PKCS #8, and its certificate.
  /// Refuses, naming the field: no key in it, one that is not locked, a wrong passphrase, a key
  /// that is not RSA of 2048 to 4096 bits, a certificate of another key or none at all.
  static Outcome<SigningKey> unlock(std::string_view pem, std::string_view passphrase);

  /// The key file: the certificate, and the private key locked with the passphrase (PKCS #8 with
  /// scrypt and AES-256, RFC 7914 and RFC 8018).
  std::string locked(std::string_view passphrase) const;
  /// The same key with a new certificate.
  SigningKey renewed(Instant from, Instant to) const;
  const KeyCertificate& certificate() const;

  struct Held;  ///< OpenSSL's values
  const Held& held() const { return *held_; }

 private:
  explicit SigningKey(std::shared_ptr<const Held> held) : held_(std::move(held)) {}
  std::shared_ptr<const Held> held_;  // shared: a key is copied about and never changes
};

/// The certificate inside a key file, which needs no passphrase. Refuses text without one.
Outcome<KeyCertificate> certificate_in(std::string_view pem);

}  // namespace tangmark::reports
