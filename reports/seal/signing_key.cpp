// SPDX-License-Identifier: MIT
#include "reports/seal/signing_key.h"

#include <openssl/err.h>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/rand.h>
#include <openssl/rsa.h>
#include <openssl/x509v3.h>

#include <array>
#include <cstring>

#include "reports/seal/openssl_values.h"

namespace tangmark::reports {

using namespace openssl;

namespace openssl {

std::string sha256(std::string_view bytes) {
  std::string digest(32, '\0');
  needed(EVP_Digest(bytes.data(), bytes.size(), reinterpret_cast<unsigned char*>(digest.data()),
                    nullptr, EVP_sha256(), nullptr));
  return digest;
}

std::string hex_of(std::string_view bytes) {
  static constexpr std::string_view digits = "0123456789abcdef";
  std::string out;
  out.reserve(2 * bytes.size());
  for (const char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    out += digits[byte >> 4];
    out += digits[byte & 15];
  }
  return out;
}

namespace {

Instant instant_of(const ASN1_TIME* time) {
  std::tm parts{};
  if (ASN1_TIME_to_tm(time, &parts) != 1) return Instant{};
  const auto day = date::year(parts.tm_year + 1900) / (parts.tm_mon + 1) / parts.tm_mday;
  return date::sys_days(day) + std::chrono::hours(parts.tm_hour) +
         std::chrono::minutes(parts.tm_min) + std::chrono::seconds(parts.tm_sec);
}

std::string name_part(X509_NAME* name, int which) {
  const int at = X509_NAME_get_index_by_NID(name, which, -1);
  if (at < 0) return {};
  unsigned char* text = nullptr;
  const int size =
      ASN1_STRING_to_UTF8(&text, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(name, at)));
  if (size < 0) return {};
  std::string out(reinterpret_cast<char*>(text), static_cast<std::size_t>(size));
  OPENSSL_free(text);
  return out;
}

}  // namespace

KeyCertificate described(X509* certificate) {
  KeyCertificate out;
  out.der = der_of(certificate, i2d_X509);
  out.fingerprint = hex_of(sha256(der_of(X509_get_X509_PUBKEY(certificate), i2d_X509_PUBKEY)));
  X509_NAME* name = X509_get_subject_name(certificate);
  out.owner = name_part(name, NID_commonName);
  const std::string shop = name_part(name, NID_organizationName);
  if (!shop.empty() && shop != out.owner) out.owner += (out.owner.empty() ? "" : ", ") + shop;
  out.from = instant_of(X509_get0_notBefore(certificate));
  out.to = instant_of(X509_get0_notAfter(certificate));
  return out;
}

}  // namespace openssl

namespace {

// scrypt at N = 16384, r = 8, p = 4: 16 MiB and about a fifth of a second for each guess.
constexpr std::uint64_t scrypt_n = 16384, scrypt_r = 8, scrypt_p = 4;

void add_name(X509_NAME* name, const char* part, const std::string& text) {
  // X.520 allows 64 characters in each of these names.
  std::string fitted = text.substr(0, 64);
  while (!fitted.empty() && (static_cast<unsigned char>(fitted.back()) & 0xC0) == 0x80 &&
         fitted.size() < text.size())
    fitted.pop_back();
  if (fitted.empty()) return;
  needed(X509_NAME_add_entry_by_txt(name, part, MBSTRING_UTF8,
                                    reinterpret_cast<const unsigned char*>(fitted.data()),
                                    static_cast<int>(fitted.size()), -1, 0));
}

void add_extension(X509* certificate, int which, const char* value) {
  X509V3_CTX context;
  X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
  Holder<X509_EXTENSION, X509_EXTENSION_free> extension(
      needed(X509V3_EXT_conf_nid(nullptr, &context, which, value)));
  needed(X509_add_ext(certificate, extension.get(), -1));
}

void set_serial(X509* certificate) {
  std::array<unsigned char, 16> serial{};
  needed(RAND_bytes(serial.data(), static_cast<int>(serial.size())) == 1);
  serial[0] = static_cast<unsigned char>((serial[0] & 0x7F) | 0x40);  // positive, full length
  Holder<BIGNUM, BN_free> number(
      needed(BN_bin2bn(serial.data(), static_cast<int>(serial.size()), nullptr)));
  needed(BN_to_ASN1_INTEGER(number.get(), X509_get_serialNumber(certificate)));
}

void set_time(ASN1_TIME* time, Instant at) {
  needed(ASN1_TIME_set(time, at.time_since_epoch().count()));
}

Certificate self_signed(EVP_PKEY* key, X509_NAME* name, Instant from, Instant to) {
  Certificate certificate(needed(X509_new()));
  X509* x = certificate.get();
  needed(X509_set_version(x, 2));
  set_serial(x);
  needed(X509_set_subject_name(x, name));
  needed(X509_set_issuer_name(x, name));
  set_time(X509_getm_notBefore(x), from);
  set_time(X509_getm_notAfter(x), to);
  needed(X509_set_pubkey(x, key));
  add_extension(x, NID_basic_constraints, "critical,CA:FALSE");
  add_extension(x, NID_key_usage, "critical,digitalSignature,nonRepudiation");
  add_extension(x, NID_subject_key_identifier, "hash");
  needed(X509_sign(x, key, EVP_sha256()));
  return certificate;
}

std::shared_ptr<const SigningKey::Held> hold(Key key, Certificate certificate) {
  KeyCertificate described = openssl::described(certificate.get());
  return std::make_shared<const SigningKey::Held>(
      SigningKey::Held{std::move(key), std::move(certificate), std::move(described)});
}

int give_passphrase(char* into, int size, int, void* given) {
  const auto& passphrase = *static_cast<const std::string_view*>(given);
  if (passphrase.size() > static_cast<std::size_t>(size)) return -1;
  std::memcpy(into, passphrase.data(), passphrase.size());
  return static_cast<int>(passphrase.size());
}

Certificate read_certificate(std::string_view pem) {
  Certificate certificate(PEM_read_bio_X509(reader_of(pem).get(), nullptr, nullptr, nullptr));
  ERR_clear_error();
  return certificate;
}

Problem no_certificate() {
  return {"key_file", "The key file holds no certificate of the key.",
          "Take the file as make_key wrote it."};
}

std::optional<Problem> unfit(EVP_PKEY* key, X509* certificate) {
  const int bits = EVP_PKEY_get_bits(key);
  if (EVP_PKEY_get_base_id(key) != EVP_PKEY_RSA || bits < 2048 || bits > 4096) {
    return Problem{"key_file", "The key is not an RSA key of 2048 to 4096 bits.",
                   "Make one with make_key."};
  }
  if (X509_check_private_key(certificate, key) != 1 || X509_verify(certificate, key) != 1) {
    ERR_clear_error();
    return Problem{"key_file", "The certificate in the key file is not this key's own.",
                   "Take the file as make_key wrote it."};
  }
  return std::nullopt;
}

// PEM holds a private key in other ways too: open, or locked with the weak cipher of old.
std::optional<Problem> not_locked(std::string_view pem) {
  if (pem.find("BEGIN ENCRYPTED PRIVATE KEY-----") != std::string_view::npos) return std::nullopt;
  const bool weakly = pem.find("Proc-Type: 4,ENCRYPTED") != std::string_view::npos;
  return Problem{
      "key_file",
      weakly ? "The private key in the file is locked in an old way that is easily opened."
             : "The private key in the file is not locked: whoever has the file can sign in "
               "your name.",
      "Lock it with a passphrase as PKCS #8, or make a new key with make_key."};
}

}  // namespace

SigningKey SigningKey::make(const KeyOwner& owner, Instant from, Instant to) {
  Key key(needed(EVP_RSA_gen(3072)));
  Holder<X509_NAME, X509_NAME_free> name(needed(X509_NAME_new()));
  add_name(name.get(), "CN", owner.maker.empty() ? owner.shop : owner.maker);
  if (!owner.maker.empty()) add_name(name.get(), "O", owner.shop);
  Certificate certificate = self_signed(key.get(), name.get(), from, to);
  return SigningKey(hold(std::move(key), std::move(certificate)));
}

SigningKey SigningKey::renewed(Instant from, Instant to) const {
  needed(EVP_PKEY_up_ref(held_->key.get()));
  Key key(held_->key.get());
  X509_NAME* name = X509_get_subject_name(held_->certificate.get());
  Certificate certificate = self_signed(key.get(), name, from, to);
  return SigningKey(hold(std::move(key), std::move(certificate)));
}

Outcome<SigningKey> SigningKey::unlock(std::string_view pem, std::string_view passphrase) {
  if (pem.find("PRIVATE KEY-----") == std::string_view::npos) {
    return Problem{"key_file", "The key file holds no private key.",
                   "Take the file as make_key wrote it."};
  }
  if (auto open = not_locked(pem)) return *open;
  Certificate certificate = read_certificate(pem);
  if (!certificate) return no_certificate();
  Key key(PEM_read_bio_PrivateKey(reader_of(pem).get(), nullptr, give_passphrase, &passphrase));
  ERR_clear_error();
  if (!key) {
    return Problem{"passphrase", "The passphrase does not open the key.",
                   "Type it again; a lost passphrase cannot be found: retire the key and make "
                   "a new one."};
  }
  if (auto problem = unfit(key.get(), certificate.get())) return *problem;
  return SigningKey(hold(std::move(key), std::move(certificate)));
}

std::string SigningKey::locked(std::string_view passphrase) const {
  Bio out(needed(BIO_new(BIO_s_mem())));
  needed(PEM_write_bio_X509(out.get(), held_->certificate.get()));
  Holder<PKCS8_PRIV_KEY_INFO, PKCS8_PRIV_KEY_INFO_free> open(
      needed(EVP_PKEY2PKCS8(held_->key.get())));
  X509_ALGOR* method = needed(PKCS5_pbe2_set_scrypt(EVP_aes_256_cbc(), nullptr, 16, nullptr,
                                                    scrypt_n, scrypt_r, scrypt_p));
  Holder<X509_SIG, X509_SIG_free> locked(needed(PKCS8_set0_pbe(
      passphrase.data(), static_cast<int>(passphrase.size()), open.get(), method)));
  needed(PEM_write_bio_PKCS8(out.get(), locked.get()));
  char* text = nullptr;
  const long size = BIO_get_mem_data(out.get(), &text);
  return {text, static_cast<std::size_t>(size)};
}

const KeyCertificate& SigningKey::certificate() const {
  return held_->described;
}

Outcome<KeyCertificate> certificate_in(std::string_view pem) {
  const Certificate certificate = read_certificate(pem);
  if (!certificate) return no_certificate();
  return openssl::described(certificate.get());
}

}  // namespace tangmark::reports
