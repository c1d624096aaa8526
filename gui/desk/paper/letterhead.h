// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/commission/shop_settings.h"
#include "gui/desk/paper/paper.h"
#include "reports/look.h"
#include "reports/page.h"

namespace tangmark::desk {

reports::Look look_of(const commission::ShopSettings& settings);
reports::Letterhead letterhead_of(const commission::ShopSettings& settings);
/// Lines of a text divided by line breaks, semicolons or commas.
std::vector<std::string> lines_of(const std::string& text);
/// The newest photo of something, decoded; nothing when there is none that can be read.
std::optional<reports::Picture> photo_of(const db::ShopFile& shop, std::string_view subject,
                                         std::int64_t id);
/// A section such as "40 x 5 mm" or "round 12 mm".
std::string section_text(std::optional<Length> width, std::optional<Length> thickness,
                         std::optional<Length> diameter, LengthUnit unit);

}  // namespace tangmark::desk
