// SPDX-License-Identifier: MIT
#include "gui/desk/paper/letterhead.h"

#include "db/row.h"
#include "reports/picture.h"

namespace tangmark::desk {

reports::Look look_of(const commission::ShopSettings& s) {
  return {s.paper == commission::Paper::letter ? reports::Paper::letter : reports::Paper::a4,
          s.temperature_unit, s.length_unit, s.mass_unit, s.zone};
}

reports::Letterhead letterhead_of(const commission::ShopSettings& s) {
  reports::Letterhead head;
  head.shop = s.shop_name;
  head.maker = s.maker_name;
  head.address = lines_of(s.address);
  return head;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::string line;
  const auto take = [&] {
    const auto first = line.find_first_not_of(' ');
    if (first != std::string::npos)
      lines.push_back(line.substr(first, line.find_last_not_of(' ') - first + 1));
    line.clear();
  };
  for (const char c : text) {
    if (c == '\n' || c == ';' || c == ',') take();
    else line += c;
  }
  take();
  return lines;
}

std::optional<reports::Picture> photo_of(const db::ShopFile& shop, std::string_view subject,
                                         std::int64_t id) {
  db::Query q(
      shop,
      "SELECT bytes FROM attachment WHERE kind = 'photo' AND subject = ? AND subject_id = ? "
      "ORDER BY id DESC LIMIT 1");
  q.bind(subject).bind(id);
  if (!q.next()) return std::nullopt;
  auto picture = reports::decode_picture(q.text("bytes"), "photo", 1600);
  if (!picture) return std::nullopt;
  return std::move(picture).value();
}

std::string section_text(std::optional<Length> width, std::optional<Length> thickness,
                         std::optional<Length> diameter, LengthUnit unit) {
  if (diameter) return "round " + to_text(*diameter, unit);
  if (width && thickness) return to_text(*width, unit) + " × " + to_text(*thickness, unit);
  if (width) return to_text(*width, unit);
  if (thickness) return to_text(*thickness, unit);
  return {};
}

}  // namespace tangmark::desk
