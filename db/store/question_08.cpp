// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "db/store/family_tree.h"
#include "db/store/piece_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using stock::KeptPiece;

// What was measured on the bench; anything left out is not compared.
struct Measured {
  std::optional<Length> length, width, thickness, diameter;
  std::optional<Mass> mass;
  bool nothing() const { return !length && !width && !thickness && !diameter && !mass; }
};

template <class T>
std::optional<T> read(const Given& given, std::string_view key, Problems& problems, auto parse) {
  const auto text = given_text(given, key);
  if (!text) return std::nullopt;
  auto value = parse(*text, key);
  if (value) return *value;
  problems.push_back(value.problem());
  return std::nullopt;
}

Measured read_measured(const Given& given, const commission::ShopSettings& settings,
                       Problems& problems) {
  const auto length = [&](const std::string& t, std::string_view k) {
    return parse_length(t, settings.length_unit, k);
  };
  const auto mass = [&](const std::string& t, std::string_view k) {
    return parse_mass(t, settings.mass_unit, k);
  };
  return {read<Length>(given, "length", problems, length),
          read<Length>(given, "width", problems, length),
          read<Length>(given, "thickness", problems, length),
          read<Length>(given, "diameter", problems, length),
          read<Mass>(given, "mass", problems, mass)};
}

// How far a size on record is off, as a part; a size that is not on record cannot disagree.
double off(std::optional<Length> measured, std::optional<Length> kept) {
  if (!measured || !kept || *kept <= Length()) return 0;
  return std::abs(measured->in_millimetres() - kept->in_millimetres()) / kept->in_millimetres();
}

// The worst of all sizes: a section is off by scale and rolling, a length by a sloppy cut.
double worst_of(const Measured& measured, const KeptPiece& piece) {
  double worst =
      std::max({off(measured.length, piece.length), off(measured.width, piece.width),
                off(measured.thickness, piece.thickness), off(measured.diameter, piece.diameter)});
  if (measured.mass && piece.mass > Mass())
    worst = std::max(
        worst, std::abs(measured.mass->in_grams() - piece.mass.in_grams()) / piece.mass.in_grams());
  return worst;
}

std::string grade_of(const ShopFile& shop, const KeptPiece& piece) {
  std::string all;
  for (const auto& grade : grades_of(shop, piece.id))
    all += (all.empty() ? "" : ", ") + grade.value_or("unknown");
  return all;
}

Outcome<Answer> answer_08(const ShopFile& shop, const Given& given, Instant) {
  const auto settings = load_settings(shop);
  Problems problems;
  const Measured measured = read_measured(given, settings, problems);
  if (!problems.empty()) return problems;
  if (measured.nothing())
    return Problem{"mass", "Nothing of the piece was measured.",
                   "Give any of length, width, thickness, diameter, mass."};
  constexpr double near_enough = 0.10;  // of each size; common practice, no source
  auto pieces = pieces_on_hand(shop);
  std::erase_if(pieces,
                [&](const KeptPiece& piece) { return worst_of(measured, piece) > near_enough; });
  std::stable_sort(pieces.begin(), pieces.end(),
                   [](const KeptPiece& a, const KeptPiece& b) { return a.made_at > b.made_at; });

  Answer answer{"What is this unmarked piece on my bench?",
                {},
                {"Piece", "Grade", "Made", "Length", "Mass", "Mark", "Off by"},
                {}};
  for (const KeptPiece& piece : pieces)
    answer.rows.push_back({piece.tag, grade_of(shop, piece), to_text(piece.made_at, settings.zone),
                           piece.length ? to_text(*piece.length, settings.length_unit) : "",
                           to_text(piece.mass, settings.mass_unit),
                           std::string(word_of(piece.mark)),
                           std::to_string(std::lround(100 * worst_of(measured, piece))) + " %"});
  if (pieces.empty())
    answer.sentences.push_back("No piece on record comes within 10 % of these sizes.");
  else
    answer.sentences.push_back(std::to_string(pieces.size()) +
                               " on record come within 10 % of these sizes, the newest first.");
  answer.sentences.push_back(
      "Size cannot prove what steel it is: without its mark it stays an identity gap until it is "
      "analysed.");
  return answer;
}

}  // namespace

const Question question_08{8,
                           "What is this unmarked piece on my bench?",
                           {{"length", "Length", FieldKind::length, false, "608 mm"},
                            {"width", "Width", FieldKind::length, false, "50 mm"},
                            {"thickness", "Thickness", FieldKind::length, false, "4 mm"},
                            {"diameter", "Diameter", FieldKind::length, false, "25 mm"},
                            {"mass", "Mass", FieldKind::mass, false, "955 g"}},
                           answer_08};

}  // namespace tangmark::db
