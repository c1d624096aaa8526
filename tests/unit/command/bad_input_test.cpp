// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/shop_file.h"
#include "tests/shop_fixture.h"
#include "tests/unit/command/program.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

std::string content(const std::string& file) {
  auto shop = db::ShopFile::open(file, bench_day);
  REQUIRE(shop);
  return content_of(*shop);
}

}  // namespace

TEST_CASE("bad input to any word is exit 3 with a sentence, and the shop is as it was") {
  DemoShop demo;
  const std::string before = content(demo.file);
  const std::string scratch = demo.scratch.folder().string();
  write_file(demo.scratch / "broken.csv", "grade\r\n\"1084\r\n");
  write_file(demo.scratch / "receive_lot.csv", "kind,name,price\r\nsteel,x,\"1,200.00\"\r\n");
  write_file(demo.scratch / "lots.csv", "");
  write_file(demo.scratch / "customers.csv", "name\r\n\xff\xfe\r\n");
  write_file(demo.scratch / "photo.jpg", "no picture at all");
  write_file(demo.scratch / "record.csv", "time,temp\n1,hot\n2,hotter\n");
  const std::string words[] = {
      "do FILE receive_lot kind=steel name=x price=-5",
      "do FILE receive_lot kind=steel name=x price=5 thickness='3 parsec'",
      "do FILE receive_lot kind=steel name=x price=5 thickness='-3 mm'",
      "do FILE receive_lot kind=steel name=x price=5 length='900 m'",
      "do FILE receive_lot kind=water name=x price=5",
      "do FILE log_quench blade=9999 bath='fast oil'",
      "do FILE log_temper blade=52 set='200 parsec' hold='2 h'",
      "do FILE log_temper blade=52 set='-400 C' hold='2 h'",
      "do FILE log_hardness blade=21 readings=ninety",
      "do FILE take_deposit commission=999 amount=5",
      "do FILE promise_date commission=26 day=2026-02-30",
      "do FILE no_such_action a=b",
      "do FILE add_day_off days=2026-12-01",
      "do FILE attach_photo blade=21 file=" + scratch + "/photo.jpg",
      "do FILE attach_photo blade=21 file=" + scratch + "/none.jpg",
      "do FILE attach_record firing=1 file=" + scratch + "/record.csv",
      "import FILE " + scratch + "/broken.csv",
      "import FILE " + scratch + "/receive_lot.csv",
      "import FILE " + scratch + "/lots.csv",
      "import FILE " + scratch + "/customers.csv",
      "quote FILE 999 --json",
      "quote FILE 42 --pdf /no/such/folder/q.pdf",
      "certificate FILE 9999 --json",
      "traveller FILE x --pdf " + scratch + "/t.pdf",
      "firing-sheet FILE 999 --pdf " + scratch + "/t.pdf",
      "day-list FILE tomorrow --pdf " + scratch + "/t.pdf",
      "labels FILE spoons --pdf " + scratch + "/t.pdf",
      "plan FILE --seconds never",
      "cut FILE 999",
      "ask FILE 99",
      "ask FILE six",
      "backup FILE /no/such/folder/b.tangmark",
      "export FILE " + scratch,
  };
  for (std::string line : words) {
    INFO(line);
    line.replace(line.find("FILE"), 4, demo.file);
    const Ran ran = run(line, true);
    CHECK(ran.exit == 3);
    CHECK(ran.out.find('.') != std::string::npos);
  }
  CHECK(content(demo.file) == before);
}

TEST_CASE("a foreign, damaged or missing file is refused by every word that opens one") {
  Scratch scratch;
  write_file(scratch / "foreign.tangmark", "a list of woods");
  for (const std::string name : {"foreign.tangmark", "missing.tangmark"}) {
    const std::string file = (scratch / name).string();
    for (const char* word :
         {"check FILE", "quote FILE 1", "plan FILE", "certificate FILE 1",
          "do FILE add_day_off day=2026-12-01", "ask FILE 6", "export FILE /tmp/x"}) {
      std::string line = word;
      line.replace(line.find("FILE"), 4, file);
      INFO(line);
      CHECK(run(line, true).exit == 3);
    }
  }
  CHECK(bytes_of(scratch / "foreign.tangmark") == "a list of woods");
}

TEST_CASE("wrong usage is exit 2") {
  for (const char* line :
       {"quote", "nonsense-word", "quote a b c", "plan", "plan --no-such-option", "revoke a 1"}) {
    INFO(line);
    CHECK(run(line, true).exit == 2);
  }
}

TEST_CASE("calc refuses what it cannot know with exit 3") {
  for (const char* line :
       {"calc cooling from_c=200 to_c=800 ambient_c=20 tau_min=60",
        "calc phases carbon_wt=3 temperature_c=800",
        "calc mass length_mm=-5 width_mm=2 thickness_mm=2", "calc no_such_name a=1",
        "calc hardness hrc=99", "calc layers start=3 operations=knot"}) {
    INFO(line);
    CHECK(run(line, true).exit == 3);
  }
}
