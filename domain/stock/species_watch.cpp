// SPDX-License-Identifier: MIT
#include "domain/stock/species_watch.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "domain/measure/utf8.h"

namespace tangmark::stock {
namespace {

constexpr std::array watched{
    WatchedSpecies{"brazilian rosewood, rio rosewood, dalbergia nigra", Listing::appendix_1,
                   "The one rosewood under the strictest rules."},
    WatchedSpecies{
        "rosewood, dalbergia, african blackwood, grenadilla, cocobolo, kingwood, tulipwood, "
        "sonokeling, palisander",
        Listing::appendix_2,
        "Finished products up to 10 kg of the wood per shipment are exempt since 2019; "
        "blanks and scales are not finished products."},
    WatchedSpecies{"bubinga, guibourtia", Listing::appendix_2,
                   "Three species, with the same exemption for finished products."},
    WatchedSpecies{"lignum vitae, guaiacum", Listing::appendix_2, ""},
    WatchedSpecies{"ebony madagascar, diospyros madagascar", Listing::appendix_2,
                   "The populations of Madagascar."},
    WatchedSpecies{"african padauk, padouk, pterocarpus", Listing::appendix_2,
                   "African species of the genus since 2023."},
    WatchedSpecies{"snakewood, brosimum guianense, piratinera", Listing::origin_rules,
                   "Often asked about at borders."},
    WatchedSpecies{"elephant ivory, elephant, loxodonta, elephas", Listing::appendix_1,
                   "Near-total bans; national rules are stricter than the treaty."},
    WatchedSpecies{"mammoth, mammuthus, fossil ivory", Listing::look_alike,
                   "Looks like elephant; some places ban it; an expert's paper is advised."},
    WatchedSpecies{"walrus, odobenus", Listing::appendix_3, "Marine mammal rules may forbid it."},
    WatchedSpecies{"sperm whale, whale bone, physeter, baleen", Listing::appendix_1, ""},
    WatchedSpecies{"narwhal, monodon", Listing::appendix_2, "Marine mammal rules may forbid it."},
    WatchedSpecies{"hippo, hippopotamus", Listing::appendix_2, ""},
    WatchedSpecies{"giraffe, giraffa", Listing::appendix_2, "Listed since 2019."},
    WatchedSpecies{"warthog, phacochoerus", Listing::look_alike, "Looks like listed ivory."},
    WatchedSpecies{"rhinoceros, rhino", Listing::appendix_1, "Trade is forbidden."},
    WatchedSpecies{"sea turtle, tortoiseshell, turtle, tortoise", Listing::appendix_1,
                   "Some species stand in Appendix II."},
    WatchedSpecies{"crocodile, alligator, caiman", Listing::appendix_2,
                   "Tagged skins; some species stand in Appendix I."},
    WatchedSpecies{"python, snake skin, snakeskin, lizard, monitor, varanus", Listing::appendix_2,
                   ""},
    WatchedSpecies{"ray skin, rayskin, stingray, samegawa, shagreen", Listing::look_alike,
                   "Parcels with ray skin have been held for naming the species."},
    WatchedSpecies{"shark", Listing::appendix_2, "Most traded species."},
    WatchedSpecies{"coral", Listing::appendix_2, ""},
    WatchedSpecies{"sambar, stag india, rusa unicolor, axis", Listing::origin_rules,
                   "The country of origin forbids its export."},
    WatchedSpecies{"desert ironwood, olneya", Listing::origin_rules,
                   "The country of origin may ask for a paper."},
};

bool holds_all_words(const std::string& text, std::string_view name) {
  std::size_t from = 0;
  bool any = false;
  while (from < name.size()) {
    const auto blank = std::min(name.find(' ', from), name.size());
    const std::string word = folded(name.substr(from, blank - from));
    if (!word.empty()) {
      any = true;
      const std::string spaced = " " + text + " ";
      if (spaced.find(" " + word + " ") == std::string::npos) return false;
    }
    from = blank + 1;
  }
  return any;
}

// Words only, so that "rosewood (burl)" and "Rosewood," are the same word.
std::string words_only(std::string_view text) {
  std::string words = folded(text);
  for (char& c : words)
    if (static_cast<unsigned char>(c) < 128 && !(c >= 'a' && c <= 'z') && !(c >= '0' && c <= '9'))
      c = ' ';
  return words;
}

}  // namespace

std::span<const WatchedSpecies> watch_list() {
  return watched;
}
CalendarDate watch_list_day() {
  return date::year{2026} / 11 / 25;
}

const WatchedSpecies* find_watched(std::string_view species, std::string_view latin) {
  const std::string text = words_only(std::string(species) + " " + std::string(latin));
  for (const WatchedSpecies& entry : watched) {
    std::size_t from = 0;
    while (from < entry.words.size()) {
      const auto comma = std::min(entry.words.find(',', from), entry.words.size());
      if (holds_all_words(text, entry.words.substr(from, comma - from))) return &entry;
      from = comma + 1;
    }
  }
  return nullptr;
}

std::string_view words_of(Listing listing) {
  switch (listing) {
    case Listing::appendix_1:
      return "in Appendix I of CITES";
    case Listing::appendix_2:
      return "in Appendix II of CITES";
    case Listing::appendix_3:
      return "in Appendix III of CITES";
    case Listing::look_alike:
      return "taken for a listed one";
    case Listing::origin_rules:
      return "under rules of its country of origin";
  }
  return "";
}

bool goes_abroad(std::string_view home, std::string_view destination) {
  const std::string to = words_only(destination);
  return to.find_first_not_of(' ') != std::string::npos && to != words_only(home);
}

Catch watched_species_abroad(const HandleAbroad& handle) {
  if (!goes_abroad(handle.home, handle.destination)) return std::nullopt;
  const WatchedSpecies* found = find_watched(handle.species, handle.latin);
  if (!found) return std::nullopt;
  const std::string named =
      handle.latin.empty() ? handle.species : handle.species + " (" + handle.latin + ")";
  return Caught{
      18, Weight::remark, "handle",
      fmt::format("{} going to {} is on the watch list of {}: {}.{}{} {}", named,
                  handle.destination, to_text(watch_list_day()), words_of(found->listing),
                  found->note.empty() ? "" : " ", found->note,
                  handle.papers.empty() ? "No papers are on file."
                                        : "Papers on file: " + handle.papers + "."),
      "Verify with your authority and the buyer's before it is promised; the list may be out "
      "of date."};
}

}  // namespace tangmark::stock
