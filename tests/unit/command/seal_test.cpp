// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "tests/unit/command/program.h"

using namespace tangmark::test;

namespace {

// The demo shop with a key of its own, outside the shop file.
struct SealingShop : DemoShop {
  std::string key = (scratch / "key.pem").string(), pass = (scratch / "pass").string(),
              pdf = (scratch / "c.pdf").string();
  SealingShop() {
    write_file(pass, "a long sentence\n");
    REQUIRE(run("do " + file + " make_key passphrase_file=" + pass + " file=" + key).exit == 0);
  }
  Ran issue(const std::string& blade, const std::string& more = {}) {
    return run("certificate " + file + " " + blade + " --pdf " + pdf +
               " --reason sealed --key-file " + key + " --passphrase-file " + pass + " " + more);
  }
};

}  // namespace

TEST_CASE("a certificate sealed at the terminal is valid by itself and against its shop") {
  SealingShop shop;
  REQUIRE(shop.issue("21").exit == 0);
  const Ran alone = run("verify " + shop.pdf + " --json");
  CHECK(alone.exit == 0);
  for (const char* key : {"valid", "signature", "record", "visible"})
    CHECK(alone.json().at(key) == true);
  CHECK(alone.json().at("problems").empty());
  CHECK(run("verify " + shop.pdf + " --shop " + shop.file + " --json").json().at("valid") == true);
  auto bytes = bytes_of(shop.pdf);
  bytes[bytes.size() - 300] ^= 1;
  write_file(shop.pdf, bytes);
  const Ran changed = run("verify " + shop.pdf + " --json");
  CHECK(changed.exit == 1);
  CHECK(changed.json().at("signature") == false);
}

TEST_CASE("against its shop a revoked or replaced certificate is no longer valid, and says why") {
  SealingShop shop;
  REQUIRE(shop.issue("21").exit == 0);
  const std::string first = bytes_of(shop.pdf);
  REQUIRE(shop.issue("21").exit == 0);
  const std::string second = bytes_of(shop.pdf);
  write_file(shop.pdf, first);
  const auto replaced = run("verify " + shop.pdf + " --shop " + shop.file + " --json").json();
  CHECK(replaced.at("valid") == false);
  CHECK(replaced.at("problems").at(0).get<std::string>().find("was replaced by issue 3: sealed") !=
        std::string::npos);
  REQUIRE(run("revoke " + shop.file + " 11/3 --reason 'the blade came back'").exit == 0);
  write_file(shop.pdf, second);
  CHECK(run("verify " + shop.pdf + " --shop " + shop.file).exit == 1);
  CHECK(run("verify " + shop.pdf).exit == 0);
  const std::string list = run("certificates " + shop.file).out;
  CHECK(list.find("11,3,21,") != std::string::npos);
  CHECK(list.find("revoked: the blade came back") != std::string::npos);
}

TEST_CASE("a wrong passphrase, a missing key and a retired key are refused and change nothing") {
  SealingShop shop;
  const std::string before = run("certificates " + shop.file).out;
  write_file(shop.pass, "another sentence\n");
  CHECK(shop.issue("21").exit == 3);
  write_file(shop.pass, "a long sentence\n");
  CHECK(run("certificate " + shop.file + " 21 --pdf " + shop.pdf +
            " --reason r --key-file /nowhere --passphrase-file " + shop.pass)
            .exit == 3);
  CHECK(run("certificate " + shop.file + " 21 --pdf " + shop.pdf + " --reason r").exit == 3);
  CHECK(run("certificates " + shop.file).out == before);
  CHECK(run("certificate " + shop.file + " 21 --pdf " + shop.pdf + " --reason r --unsigned").exit ==
        0);
  const auto keys = run("do " + shop.file + " make_key passphrase_file=" + shop.pass);
  CHECK(keys.exit == 3);
  const std::string html = (shop.scratch / "list.html").string();
  REQUIRE(run("certificates " + shop.file + " --html " + html).exit == 0);
  const std::string page = bytes_of(html);
  const std::string fingerprint = page.substr(page.rfind("<code>") + 6, 16);
  REQUIRE(
      run("do " + shop.file + " retire_key key=" + fingerprint + " reason='the passphrase is lost'")
          .exit == 0);
  CHECK(shop.issue("21").exit == 3);
  CHECK(run("do " + shop.file + " make_key passphrase_file=" + shop.pass).exit == 0);
}

TEST_CASE("a key inside the shop file is renewed and keeps its fingerprint") {
  DemoShop demo;
  const std::string pass = (demo.scratch / "pass").string(),
                    pdf = (demo.scratch / "c.pdf").string();
  write_file(pass, "a long sentence\n");
  REQUIRE(run("do " + demo.file + " make_key years=1 passphrase_file=" + pass).exit == 0);
  REQUIRE(run("do " + demo.file + " renew_key years=10 passphrase_file=" + pass).exit == 0);
  REQUIRE(run("certificate " + demo.file + " 21 --pdf " + pdf +
              " --reason sealed --passphrase-file " + pass)
              .exit == 0);
  CHECK(run("verify " + pdf + " --shop " + demo.file).exit == 0);
  CHECK(run("check " + demo.file).exit == 0);
}
