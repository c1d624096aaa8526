// SPDX-License-Identifier: MIT
// Checkers that had no part in sealing: pdfsig (its own reading of CMS, by NSS), the openssl
// program, qpdf --check, pdftotext, pdffonts, pdfdetach and pdftoppm of poppler-utils, and zbarimg.
#include <sys/wait.h>

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>

#include "db/digest.h"
#include "domain/certificate/certificate_record.h"
#include "reports/seal/sealed_pdf.h"
#include "tests/scratch.h"
#include "tests/unit/seal/sealed_samples.h"

using namespace tangmark;
using namespace tangmark::test;
using Catch::Contains;

namespace {

struct Ran {
  int exit = -1;
  std::string said;
};

Ran run(const std::string& command) {
  Ran ran;
  FILE* pipe = popen((command + " 2>/dev/null").c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 4096> part{};
  while (const std::size_t got = fread(part.data(), 1, part.size(), pipe)) {
    ran.said.append(part.data(), got);
  }
  ran.exit = WEXITSTATUS(pclose(pipe));
  return ran;
}

struct SealedFile {
  Scratch scratch;
  certificate::CertificateSheet sheet = sheet_with_photo("pattern");
  std::string bytes = sealed(sheet, photo());
  std::string path = (scratch / "certificate.pdf").string();
  SealedFile() { write_file(path, bytes); }
};

// The signature taken out of its place, without the padding.
std::string signature_in(const std::string& pdf) {
  const auto place = reports::signature_place(pdf).value();
  std::string der;
  for (std::size_t at = place.from + 1; at + 1 < place.to - 1; at += 2)
    der += static_cast<char>(std::stoi(pdf.substr(at, 2), nullptr, 16));
  const auto octet = [&](std::size_t at) { return static_cast<unsigned char>(der[at]); };
  return der.substr(0, 4 + octet(2) * std::size_t{256} + octet(3));
}

}  // namespace

TEST_CASE("pdfsig finds a valid signature over the whole document, and none in a changed one") {
  SealedFile file;
  const Ran ran = run("pdfsig '" + file.path + "'");
  CHECK_THAT(ran.said, Contains("Signature is Valid"));
  CHECK_THAT(ran.said, Contains("Total document signed"));
  CHECK_THAT(ran.said, Contains("Signer Certificate Common Name: I. Marlow"));
  CHECK_THAT(ran.said, Contains("SHA-256"));
  file.bytes[file.bytes.size() / 2] ^= 1;
  write_file(file.path, file.bytes);
  CHECK_THAT(run("pdfsig '" + file.path + "'").said, !Contains("Signature is Valid"));
}

TEST_CASE("openssl verifies the signature over the bytes outside its place") {
  SealedFile file;
  const auto place = reports::signature_place(file.bytes).value();
  const std::string der = (file.scratch / "seal.der").string();
  const std::string covered = (file.scratch / "covered").string();
  write_file(der, signature_in(file.bytes));
  const std::string own = (file.scratch / "own.pem").string();
  write_file(own, key().locked("a long sentence"));
  const auto verified = [&](const std::string& bytes) {
    write_file(covered, bytes);
    return run("openssl cms -verify -binary -inform DER -in '" + der + "' -content '" + covered +
               "' -CAfile '" + own + "' -purpose any -attime 1794200000 -cades -out /dev/null")
               .exit == 0;
  };
  std::string bytes = file.bytes.substr(0, place.from) + file.bytes.substr(place.to);
  CHECK(verified(bytes));
  bytes[1000] ^= 1;
  CHECK_FALSE(verified(bytes));
}

TEST_CASE("openssl opens the locked key, and its certificate is its own") {
  Scratch scratch;
  const std::string file = (scratch / "key.pem").string();
  write_file(file, key().locked("a long sentence"));
  const Ran open =
      run("openssl pkey -in '" + file + "' -passin 'pass:a long sentence' -noout -text");
  CHECK(open.exit == 0);
  CHECK_THAT(open.said, Contains("3072 bit"));
  CHECK(run("openssl pkey -in '" + file + "' -passin pass:another -noout").exit != 0);
  CHECK_THAT(run("sed -n '/BEGIN ENC/,/END ENC/p' '" + file + "' | openssl asn1parse").said,
             Contains("scrypt"));
  CHECK(run("openssl verify -CAfile '" + file + "' -attime 1794200000 '" + file + "'").exit == 0);
  const Ran digest =
      run("openssl x509 -in '" + file +
          "' -noout -pubkey | openssl pkey -pubin -outform DER | openssl dgst -sha256");
  CHECK_THAT(digest.said, Contains(key().certificate().fingerprint));
}

TEST_CASE("qpdf finds no fault, every font is embedded, and the record comes out whole") {
  SealedFile file;
  CHECK(run("qpdf --check '" + file.path + "'").exit == 0);
  const Ran fonts =
      run("pdffonts '" + file.path + "' | tail -n +3 | awk '{print $(NF-4)}' | sort -u");
  CHECK(fonts.said == "yes\n");
  const std::string record = (file.scratch / "record.json").string();
  CHECK(run("pdfdetach -save 1 -o '" + record + "' '" + file.path + "'").exit == 0);
  CHECK(bytes_of(record) == certificate::record_text(file.sheet));
  const Ran digest = run("openssl dgst -sha256 '" + record + "'");
  CHECK_THAT(digest.said, Contains(db::sha256_hex(certificate::record_text(file.sheet))));
  CHECK_THAT(run("pdfinfo '" + file.path + "'").said,
             Contains("Title:           Build certificate"));
}

TEST_CASE("words stand in reading order, and the code holds what the seal prints") {
  SealedFile file;
  const std::string words = run("pdftotext -layout '" + file.path + "' -").said;
  std::size_t at = 0;
  for (const char* part : {"Build certificate", "The steel and its trail", "Heat treatment",
                           "What we state", "Seal"}) {
    const std::size_t found = words.find(part, at);
    INFO(part);
    REQUIRE(found != std::string::npos);
    at = found;
  }
  const std::string page = (file.scratch / "page").string();
  run("pdftoppm -r 200 -png '" + file.path + "' '" + page + "'");
  const std::string code =
      run("cat /dev/null; for p in '" + page + "'-*.png; do zbarimg -q --raw \"$p\"; done").said;
  CHECK_THAT(code, Contains("CERTIFICATE 7/1 BLADE 42 SHA256 " +
                            db::sha256_hex(certificate::record_text(file.sheet)) + " KEY " +
                            key().certificate().fingerprint));
}
