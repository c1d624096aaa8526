// SPDX-License-Identifier: MIT
#include "reports/seal/signature.h"

#include <openssl/err.h>
#include <openssl/objects.h>

#include "reports/seal/der.h"
#include "reports/seal/openssl_values.h"

namespace tangmark::reports {

using namespace openssl;

namespace {

constexpr unsigned form =
    CMS_DETACHED | CMS_BINARY | CMS_PARTIAL | CMS_NOSMIMECAP | CMS_CADES | CMS_NOCERTS;

std::string digest_of(const Covered& bytes) {
  Digest context(needed(EVP_MD_CTX_new()));
  needed(EVP_DigestInit_ex(context.get(), EVP_sha256(), nullptr));
  for (const std::string_view part : bytes) {
    needed(EVP_DigestUpdate(context.get(), part.data(), part.size()));
  }
  std::string digest(32, '\0');
  needed(EVP_DigestFinal_ex(context.get(), reinterpret_cast<unsigned char*>(digest.data()),
                            nullptr));
  return digest;
}

Time asn1_time(Instant at) {
  return Time(needed(ASN1_TIME_set(nullptr, at.time_since_epoch().count())));
}

std::string oid(int which) {
  return der_of(OBJ_nid2obj(which), i2d_ASN1_OBJECT);
}

std::string attribute(int which, const std::string& value) {
  return der::sequence(oid(which) + der::set_of({value}));
}

std::string issuer_of(X509* certificate) {
  return der_of(X509_get_issuer_name(certificate), i2d_X509_NAME);
}

std::string serial_of(X509* certificate) {
  return der_of(X509_get_serialNumber(certificate), i2d_ASN1_INTEGER);
}

// The attributes that are signed, as RFC 5652, 5.4 has them digested: a SET OF.
std::string attributes_of(X509* certificate, const ASN1_TIME* time, const std::string& digest) {
  const std::string hash = sha256(der_of(certificate, i2d_X509));
  // GeneralNames with one directoryName, which X.509 tags explicitly as [4].
  const std::string names = der::sequence(der::element(0xA4, issuer_of(certificate)));
  const std::string identity =
      der::sequence(der::octets(hash) + der::sequence(names + serial_of(certificate)));
  return der::set_of(
      {attribute(NID_pkcs9_contentType, oid(NID_pkcs7_data)),
       attribute(NID_pkcs9_signingTime, der_of(time, i2d_ASN1_TIME)),
       attribute(NID_pkcs9_messageDigest, der::octets(digest)),
       attribute(NID_id_smime_aa_signingCertificateV2, der::sequence(der::sequence(identity)))});
}

// The one form that a signature of ours has.
std::string canonical(X509* certificate, const std::string& attributes,
                      std::string_view signature) {
  const std::string digest_method = der::sequence(oid(NID_sha256));
  const std::string signature_method =
      der::sequence(oid(NID_rsaEncryption) + der::element(0x05, ""));
  std::string implicit = attributes;
  implicit[0] = static_cast<char>(0xA0);
  const std::string signer = der::sequence(
      der::small_integer(1) + der::sequence(issuer_of(certificate) + serial_of(certificate)) +
      digest_method + implicit + signature_method + der::octets(signature));
  const std::string signed_data = der::sequence(
      der::small_integer(1) + der::set_of({digest_method}) +
      der::sequence(oid(NID_pkcs7_data)) + der::element(0xA0, der_of(certificate, i2d_X509)) +
      der::set_of({signer}));
  return der::sequence(oid(NID_pkcs7_signed) + der::element(0xA0, signed_data));
}

Problem unsound(std::string why) {
  return {"signature", std::move(why), "Ask the maker for the certificate as it was issued."};
}

struct Parts {
  Message message;
  Certificate certificate;
  const ASN1_TIME* time = nullptr;
  std::string_view signature;
};

// What is needed to make the form again; everything else follows from these.
std::optional<Parts> parts_of(std::string_view der) {
  Parts parts;
  const auto* at = reinterpret_cast<const unsigned char*>(der.data());
  parts.message.reset(d2i_CMS_ContentInfo(nullptr, &at, static_cast<long>(der.size())));
  if (!parts.message || OBJ_obj2nid(CMS_get0_type(parts.message.get())) != NID_pkcs7_signed)
    return std::nullopt;
  STACK_OF(CMS_SignerInfo)* signers = CMS_get0_SignerInfos(parts.message.get());
  if (signers == nullptr || sk_CMS_SignerInfo_num(signers) != 1) return std::nullopt;
  CMS_SignerInfo* signer = sk_CMS_SignerInfo_value(signers, 0);
  STACK_OF(X509)* certificates = CMS_get1_certs(parts.message.get());
  while (sk_X509_num(certificates) > 0) parts.certificate.reset(sk_X509_pop(certificates));
  sk_X509_free(certificates);
  const int place = CMS_signed_get_attr_by_NID(signer, NID_pkcs9_signingTime, -1);
  if (!parts.certificate || place < 0) return std::nullopt;
  X509_ATTRIBUTE* attribute = CMS_signed_get_attr(signer, place);
  const ASN1_TYPE* value = X509_ATTRIBUTE_get0_type(attribute, 0);
  if (value == nullptr || (value->type != V_ASN1_UTCTIME && value->type != V_ASN1_GENERALIZEDTIME))
    return std::nullopt;
  parts.time = static_cast<const ASN1_TIME*>(
      X509_ATTRIBUTE_get0_data(attribute, 0, value->type, nullptr));
  const ASN1_OCTET_STRING* signature = CMS_SignerInfo_get0_signature(signer);
  parts.signature = {reinterpret_cast<const char*>(ASN1_STRING_get0_data(signature)),
                     static_cast<std::size_t>(ASN1_STRING_length(signature))};
  return parts;
}

bool verified(X509* certificate, std::string_view attributes, std::string_view signature) {
  EVP_PKEY* key = X509_get0_pubkey(certificate);
  if (key == nullptr || EVP_PKEY_get_base_id(key) != EVP_PKEY_RSA) return false;
  Digest context(needed(EVP_MD_CTX_new()));
  return EVP_DigestVerifyInit(context.get(), nullptr, EVP_sha256(), nullptr, key) == 1 &&
         EVP_DigestVerify(context.get(), reinterpret_cast<const unsigned char*>(signature.data()),
                          signature.size(),
                          reinterpret_cast<const unsigned char*>(attributes.data()),
                          attributes.size()) == 1;
}

Instant signing_time(const ASN1_TIME* time) {
  std::tm parts{};
  ASN1_TIME_to_tm(time, &parts);
  const auto day = date::year(parts.tm_year + 1900) / (parts.tm_mon + 1) / parts.tm_mday;
  return date::sys_days(day) + std::chrono::hours(parts.tm_hour) +
         std::chrono::minutes(parts.tm_min) + std::chrono::seconds(parts.tm_sec);
}

}  // namespace

std::string signature_of(const Covered& bytes, const SigningKey& key, Instant at) {
  X509* certificate = key.held().certificate.get();
  Message message(needed(CMS_sign(nullptr, nullptr, nullptr, nullptr, form)));
  needed(CMS_add1_cert(message.get(), certificate));
  CMS_SignerInfo* signer =
      needed(CMS_add1_signer(message.get(), certificate, key.held().key.get(), EVP_sha256(), form));
  const Time time = asn1_time(at);
  needed(CMS_signed_add1_attr_by_NID(signer, NID_pkcs9_signingTime, time->type, time.get(), -1));
  std::string whole;
  for (const std::string_view part : bytes) whole += part;
  needed(CMS_final(message.get(), reader_of(whole).get(), nullptr, form));
  return der_of(message.get(), i2d_CMS_ContentInfo);
}

Outcome<SignatureFacts> check_signature(std::string_view der, const Covered& bytes) {
  const auto parts = parts_of(der);
  ERR_clear_error();
  if (!parts)
    return unsound("The signature is damaged or not of the kind that this program makes.");
  X509* certificate = parts->certificate.get();
  const std::string attributes = attributes_of(certificate, parts->time, digest_of(bytes));
  const bool sound = verified(certificate, attributes, parts->signature);
  ERR_clear_error();
  if (!sound) return unsound("The file was changed after it was signed.");
  if (X509_verify(certificate, X509_get0_pubkey(certificate)) != 1) {
    ERR_clear_error();
    return unsound("The certificate of the key was changed.");
  }
  if (canonical(certificate, attributes, parts->signature) != der)
    return unsound("The wrapping of the signature was changed.");
  SignatureFacts facts{openssl::described(certificate), signing_time(parts->time)};
  if (facts.at < facts.key.from || facts.at > facts.key.to)
    return unsound("The file was signed outside the days for which the key was made.");
  return facts;
}

}  // namespace tangmark::reports
