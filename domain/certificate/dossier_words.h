// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "domain/certificate/dossier.h"
#include "domain/measure/trade_word.h"

// The trade's words for every enum of a dossier: what is stored, printed and written into the
// record of a certificate.
namespace tangmark {

template <>
inline constexpr auto trade_words<certificate::Operation> = [] {
  using enum certificate::Operation;
  return std::array<std::pair<certificate::Operation, std::string_view>, 28>{{
      {profile, "profile"},
      {drill, "drill"},
      {mark, "mark"},
      {forge, "forge"},
      {forge_weld, "forge-weld"},
      {twist, "twist"},
      {anneal, "anneal"},
      {stress_relief, "stress relief"},
      {normalize, "normalize"},
      {thermal_cycle, "thermal cycle"},
      {rough_grind, "rough grind"},
      {clay, "clay"},
      {harden, "harden"},
      {sub_zero, "sub-zero"},
      {snap_temper, "snap temper"},
      {temper, "temper"},
      {straighten, "straighten"},
      {finish_grind, "finish grind"},
      {hand_sand, "hand sand"},
      {polish, "polish"},
      {etch, "etch"},
      {fit_up, "fit-up"},
      {glue, "glue"},
      {handle, "handle"},
      {sharpen, "sharpen"},
      {sheath, "sheath"},
      {inspect, "inspect"},
      {other, "other"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::SupplyDocument> = [] {
  using enum certificate::SupplyDocument;
  return std::array<std::pair<certificate::SupplyDocument, std::string_view>, 7>{{
      {type_3_2, "3.2"},
      {type_3_1, "3.1"},
      {type_2_2, "2.2"},
      {type_2_1, "2.1"},
      {label, "label"},
      {suppliers_word, "word"},
      {none, "none"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::StageWork> = [] {
  using enum certificate::StageWork;
  return std::array<std::pair<certificate::StageWork, std::string_view>, 8>{{
      {stack, "stack"},
      {fold, "fold"},
      {cut, "cut"},
      {weld, "weld"},
      {twist, "twist"},
      {press_pattern, "press pattern"},
      {draw, "draw"},
      {crop, "crop"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::Role> = [] {
  using enum certificate::Role;
  return std::array<std::pair<certificate::Role, std::string_view>, 3>{{
      {layer, "layer"},
      {core, "core"},
      {cladding, "cladding"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::HardnessScale> = [] {
  using enum certificate::HardnessScale;
  return std::array<std::pair<certificate::HardnessScale, std::string_view>, 4>{{
      {hrc, "HRC"},
      {hra, "HRA"},
      {hv, "HV"},
      {file_set, "files"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::FindingKind> = [] {
  using enum certificate::FindingKind;
  return std::array<std::pair<certificate::FindingKind, std::string_view>, 17>{{
      {crack, "crack"},
      {delamination, "delamination"},
      {warp, "warp"},
      {soft_area, "soft area"},
      {overheated_edge, "overheated edge"},
      {inclusion, "inclusion"},
      {pit, "pit"},
      {weld_line, "weld line"},
      {cold_shut, "cold shut"},
      {decarb, "decarb"},
      {handle_fault, "handle fault"},
      {shorter_than_drawn, "shorter than drawn"},
      {pattern_layers, "layers seen"},
      {pattern_carbides, "carbide pattern seen"},
      {no_pattern, "no pattern seen"},
      {hamon_seen, "hamon seen"},
      {other, "other"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::Decision> = [] {
  using enum certificate::Decision;
  return std::array<std::pair<certificate::Decision, std::string_view>, 7>{{
      {open, "open"},
      {no_fault, "no fault"},
      {removed, "removed"},
      {closed, "closed"},
      {left_disclosed, "left and disclosed"},
      {done_again, "done again"},
      {scrapped, "scrap"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::TreatyWatch> = [] {
  using enum certificate::TreatyWatch;
  return std::array<std::pair<certificate::TreatyWatch, std::string_view>, 5>{{
      {none, "not listed"},
      {appendix_1, "appendix I"},
      {appendix_2, "appendix II"},
      {appendix_3, "appendix III"},
      {look_alike, "look-alike"},
  }};
}();

template <>
inline constexpr auto trade_words<certificate::OutsideKind> = [] {
  using enum certificate::OutsideKind;
  return std::array<std::pair<certificate::OutsideKind, std::string_view>, 8>{{
      {billet, "billet"},
      {heat_treatment, "heat treatment"},
      {blank_cutting, "blank cutting"},
      {grinding, "grinding"},
      {handle, "handle"},
      {sheath, "sheath"},
      {engraving, "engraving"},
      {other, "other"},
  }};
}();

}  // namespace tangmark
