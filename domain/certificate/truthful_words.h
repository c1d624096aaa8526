// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "domain/certificate/judge.h"

namespace tangmark::certificate {

/// Fills "{made}", "{shape}", "{hardness}", "{layers}", "{cold}", "{steel}", "{handle}", "{heat}"
/// of a wording from the record, in the language of the word it replaces where that is given. None
/// when the record cannot fill it, so that nothing untrue is proposed.
std::optional<std::string> filled(std::string_view wording, std::string_view language,
                                  const BladeCase& blade, const Judgements& judgements);

}  // namespace tangmark::certificate
