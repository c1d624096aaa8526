// SPDX-License-Identifier: MIT
#include "reports/text_check.h"

#include <algorithm>
#include <string>

#include "reports/qr.h"

namespace tangmark::reports {

void TextCheck::text(std::string_view text, std::string_view field) {
  if (auto problem = fonts_.unprintable(text, field)) problems_.push_back(std::move(*problem));
}

void TextCheck::texts(const std::vector<std::string>& texts, std::string_view field) {
  for (const std::string& each : texts) text(each, field);
}

void TextCheck::needed(std::string_view words, std::string_view field) {
  const std::string name(field);
  if (words.empty()) {
    add({name, "The " + name + " is missing from the paper.", "Enter the " + name + "."});
  }
  text(words, field);
}

void TextCheck::letterhead(const Letterhead& shop) {
  needed(shop.shop, "name of the shop");
  text(shop.maker, "name of the maker");
  texts(shop.address, "address of the shop");
  text(shop.contact, "contact line of the shop");
  text(shop.tax_number, "tax number");
  if (shop.mark) picture(*shop.mark, "maker's mark");
}

void TextCheck::addressee(const Addressee& buyer) {
  text(buyer.name, "name of the buyer");
  texts(buyer.address, "address of the buyer");
}

void TextCheck::picture(const Picture& picture, std::string_view field) {
  const std::string name(field);
  const auto pixels = static_cast<std::size_t>(std::max(0, picture.width_px)) *
                      static_cast<std::size_t>(std::max(0, picture.height_px));
  const bool alpha_fits = picture.alpha.empty() || picture.alpha.size() == pixels;
  const bool rgb_fits =
      picture.rgb.size() == 3 * pixels || (picture.rgb.empty() && !picture.jpeg.empty());
  if (pixels == 0 || !rgb_fits || !alpha_fits) {
    add({name, "The " + name + " is not a whole picture.", "Attach the " + name + " again."});
  }
}

void TextCheck::code(std::string_view ascii, std::string_view field) {
  if (ascii.empty()) return;
  const auto modules = qr_modules(ascii, field);
  if (!modules) add(modules.problem());
}

}  // namespace tangmark::reports
