// SPDX-License-Identifier: MIT
#pragma once

namespace tangmark::desk {

/// Hands the actions the printer of certificates. Called once at the start of each program.
void lend_certificate_printer();

}  // namespace tangmark::desk
