// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace tangmark::reports {

/// text as character data or a quoted attribute of XML and HTML: & < > " become entities.
/// Source: Extensible Markup Language (XML) 1.0, 2.4 "Character Data and Markup".
std::string escaped_markup(std::string_view text);

}  // namespace tangmark::reports
