// SPDX-License-Identifier: MIT
#include "db/digest.h"

#include <openssl/evp.h>
#include <openssl/rand.h>

#include <array>

#include "db/failure.h"

namespace tangmark::db {

std::string sha256_hex(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1)
    throw Failure("The SHA-256 digest could not be computed.");
  static constexpr std::string_view hex = "0123456789abcdef";
  std::string text;
  text.reserve(2 * size);
  for (unsigned i = 0; i < size; ++i) {
    text += hex[digest[i] >> 4];
    text += hex[digest[i] & 15];
  }
  return text;
}

std::string random_salt() {
  std::array<unsigned char, 16> salt{};
  if (RAND_bytes(salt.data(), static_cast<int>(salt.size())) != 1)
    throw Failure("This machine gave no random numbers, so nothing personal was stored.");
  return {salt.begin(), salt.end()};
}

}  // namespace tangmark::db
