// SPDX-License-Identifier: MIT
#include "domain/stock/mass_balance.h"

#include <fmt/format.h>

namespace tangmark::stock {
namespace {

// What a shop's scale cannot tell apart, and what splitting a bar's mass leaves over. Common
// practice, no source.
constexpr Mass a_gram = Mass::grams(1);

// Whether part / whole is above the share, without dividing.
bool is_above(Mass part, Mass whole, Share share) {
  return static_cast<double>(part.micrograms()) >
         static_cast<double>(whole.micrograms()) * share.fraction();
}

Caught more_out_than_in(const MassBalance& balance, MassUnit unit) {
  return {2, Weight::ask, "mass",
          fmt::format("{} went in and {} is said to have come out: {} too much.",
                      to_text(balance.in, unit), to_text(balance.in - balance.gap(), unit),
                      to_text(Mass() - balance.gap(), unit)),
          "Weigh again."};
}

Caught gap_shown(const MassBalance& balance, Share allowed, MassUnit unit) {
  if (is_above(balance.gap(), balance.in, allowed))
    return {2, Weight::ask, "mass",
            fmt::format("{} of {} is unexplained, more than the {} the shop lets pass.",
                        to_text(balance.gap(), unit), to_text(balance.in, unit), to_text(allowed)),
            "Weigh again, or give the crop, scale and swarf."};
  return {2, Weight::remark, "mass",
          fmt::format("{} of {} is unexplained.", to_text(balance.gap(), unit),
                      to_text(balance.in, unit)),
          ""};
}

}  // namespace

Catches mass_at_cut(const MassBalance& balance, Share gap_allowed, MassUnit shown_in) {
  if (balance.gap() < Mass() - a_gram) return {more_out_than_in(balance, shown_in)};
  if (balance.gap() > a_gram) return {gap_shown(balance, gap_allowed, shown_in)};
  return {};
}

Share usual_loss_at_most(StageWork work) {
  switch (work) {
    case StageWork::stack: return Share::percent(6);   // cleaning of the faces
    case StageWork::weld: return Share::percent(15);
    case StageWork::draw: return Share::percent(10);
    case StageWork::fold: return Share::percent(15);
    case StageWork::cut: return Share::percent(15);    // kerfs and cleaning of the faces
    case StageWork::twist: return Share::percent(10);
    case StageWork::crop: return Share::percent(5);
  }
  return Share::whole();
}

Catches mass_at_stage(StageWork work, const MassBalance& balance, Share gap_allowed,
                      MassUnit shown_in) {
  Catches caught = mass_at_cut(balance, gap_allowed, shown_in);
  const Mass loss = balance.in - balance.out - balance.crop;
  if (is_above(loss, balance.in, usual_loss_at_most(work)))
    caught.push_back({2, Weight::ask, "mass",
                      fmt::format("{} of {} was lost, more than the {} that {} usually costs.",
                                  to_text(loss, shown_in), to_text(balance.in, shown_in),
                                  to_text(usual_loss_at_most(work)), word_of(work)),
                      "Weigh again, or log the stages one by one."});
  return caught;
}

Catch mass_at_melt(Mass charge, Mass ingot, MassUnit shown_in) {
  if (ingot <= charge) return std::nullopt;
  return Caught{2, Weight::ask, "ingot_mass",
                fmt::format("The ingot of {} is heavier than its charge of {}.",
                            to_text(ingot, shown_in), to_text(charge, shown_in)),
                "Weigh again, or complete the charge."};
}

}  // namespace tangmark::stock
