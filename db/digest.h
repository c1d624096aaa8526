// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace tangmark::db {

/// SHA-256 of bytes as 64 lower-case hexadecimal digits. Source: FIPS 180-4, by OpenSSL.
std::string sha256_hex(std::string_view bytes);
/// 16 unpredictable bytes, for salting personal fields.
std::string random_salt();

}  // namespace tangmark::db
