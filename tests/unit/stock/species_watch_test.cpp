// SPDX-License-Identifier: MIT
#include "domain/stock/species_watch.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

TEST_CASE("catch 18: a species on the watch list going abroad prompts and gives no verdict") {
  const auto caught =
      watched_species_abroad({"cocobolo", "Dalbergia retusa", "", "Austria", "Canada"});
  REQUIRE(caught);
  CHECK(caught->number == 18);
  CHECK(caught->weight == Weight::remark);
  CHECK(caught->sentence.find("Appendix II") != std::string::npos);
  CHECK(caught->sentence.find("No papers are on file.") != std::string::npos);
  CHECK(caught->remedy.find("Verify") != std::string::npos);
}

TEST_CASE("papers on file are named in the prompt") {
  const auto caught = watched_species_abroad({"cocobolo", "", "permit 1234", "Austria", "Canada"});
  REQUIRE(caught);
  CHECK(caught->sentence.find("permit 1234") != std::string::npos);
}

TEST_CASE("a watched species that stays in the country prompts nothing") {
  CHECK_FALSE(watched_species_abroad({"cocobolo", "", "", "Austria", "austria"}));
  CHECK_FALSE(watched_species_abroad({"cocobolo", "", "", "Austria", ""}));
  CHECK(watched_species_abroad({"cocobolo", "", "", "", "Canada"}));
}

TEST_CASE("a species that nobody watches prompts nothing") {
  CHECK_FALSE(watched_species_abroad({"walnut", "Juglans regia", "", "Austria", "Canada"}));
  CHECK_FALSE(find_watched("", ""));
  CHECK_FALSE(find_watched("same old oak", "Quercus robur") != nullptr);
}

TEST_CASE("watched species are found by trade name and by Latin name") {
  struct Row { const char* species; const char* latin; Listing listing; };
  const Row row = GENERATE(Row{"Rosewood (burl)", "", Listing::appendix_2},
                           Row{"blackwood", "Dalbergia melanoxylon", Listing::appendix_2},
                           Row{"rosewood", "Dalbergia nigra", Listing::appendix_1},
                           Row{"Brazilian Rosewood", "", Listing::appendix_1},
                           Row{"mammoth tusk", "", Listing::look_alike},
                           Row{"giraffe bone", "", Listing::appendix_2},
                           Row{"sambar stag", "", Listing::origin_rules});
  const WatchedSpecies* found = find_watched(row.species, row.latin);
  REQUIRE(found);
  CHECK(found->listing == row.listing);
}
