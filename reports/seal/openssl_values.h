// SPDX-License-Identifier: MIT
#pragma once

#include <openssl/asn1.h>
#include <openssl/bio.h>
#include <openssl/cms.h>
#include <openssl/evp.h>
#include <openssl/x509.h>

#include <memory>
#include <string>
#include <string_view>

#include "domain/measure/when.h"
#include "reports/page_failure.h"
#include "reports/seal/signing_key.h"

/// OpenSSL's values held so that none is leaked; only the files of the seal use them.
namespace tangmark::reports::openssl {

template <auto release>
struct Release {
  template <class T>
  void operator()(T* value) const {
    release(value);
  }
};
template <class T, auto release>
using Holder = std::unique_ptr<T, Release<release>>;

using Bio = Holder<BIO, BIO_free_all>;
using Key = Holder<EVP_PKEY, EVP_PKEY_free>;
using Certificate = Holder<X509, X509_free>;
using Message = Holder<CMS_ContentInfo, CMS_ContentInfo_free>;
using Time = Holder<ASN1_TIME, ASN1_TIME_free>;
using Digest = Holder<EVP_MD_CTX, EVP_MD_CTX_free>;

/// Throws PageFailure: OpenSSL fails here only when the machine does.
template <class T>
T needed(T value) {
  if (!value) throw PageFailure("The seal could not be made; OpenSSL refused to work.");
  return value;
}

inline Bio reader_of(std::string_view bytes) {
  return Bio(needed(BIO_new_mem_buf(bytes.data(), static_cast<int>(bytes.size()))));
}

/// An OpenSSL value as DER, by its i2d function.
template <class T, class Encode>
std::string der_of(const T* value, Encode encode) {
  unsigned char* out = nullptr;
  const int size = encode(value, &out);
  if (size < 0) throw PageFailure("The seal could not be encoded.");
  std::string bytes(reinterpret_cast<char*>(out), static_cast<std::size_t>(size));
  OPENSSL_free(out);
  return bytes;
}

std::string sha256(std::string_view bytes);
std::string hex_of(std::string_view bytes);
KeyCertificate described(X509* certificate);

}  // namespace tangmark::reports::openssl

namespace tangmark::reports {

struct SigningKey::Held {
  openssl::Key key;
  openssl::Certificate certificate;
  KeyCertificate described;
};

}  // namespace tangmark::reports
