// SPDX-License-Identifier: MIT
#include "reports/picture.h"

#include <catch2/catch.hpp>

#include "reports/jpeg.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

// A PNG of one pixel, red at half strength: 8 bit RGBA, zlib's stored form, written by Python's
// zlib and struct modules after ISO/IEC 15948, 11.2.
const unsigned char one_red_pixel[] = {
    0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0x00, 0x00, 0x00, 0x0D, 0x49, 0x48, 0x44,
    0x52, 0x00, 0x00, 0x00, 0x01, 0x00, 0x00, 0x00, 0x01, 0x08, 0x06, 0x00, 0x00, 0x00, 0x1F,
    0x15, 0xC4, 0x89, 0x00, 0x00, 0x00, 0x10, 0x49, 0x44, 0x41, 0x54, 0x78, 0x01, 0x01, 0x05,
    0x00, 0xFA, 0xFF, 0x00, 0xFF, 0x00, 0x00, 0x80, 0x04, 0x81, 0x01, 0x80, 0x19, 0x2F, 0x85,
    0xB0, 0x00, 0x00, 0x00, 0x00, 0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82};

std::string bytes_of(const unsigned char* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

// The JPEG with an Exif segment that names this orientation.
std::string turned(const std::string& jpeg, char orientation) {
  using namespace std::string_literals;
  std::string tiff = "II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0"s;
  tiff += orientation;
  tiff += "\0\0\0\0\0\0\0"s;
  const std::string body = "Exif\0\0"s + tiff;
  std::string segment = "\xFF\xE1"s;
  segment += static_cast<char>((body.size() + 2) / 256);
  segment += static_cast<char>((body.size() + 2) % 256);
  return jpeg.substr(0, 2) + segment + body + jpeg.substr(2);
}

}  // namespace

TEST_CASE("a photograph survives encoding and reading within what JPEG loses") {
  const Picture drawn = drawn_picture(320, 200);
  const Outcome<Picture> read = decode_picture(jpeg_bytes(drawn, 95), "photo");
  REQUIRE(read.ok());
  CHECK(read->width_px == 320);
  CHECK(read->height_px == 200);
  double off = 0;
  for (std::size_t i = 0; i < drawn.rgb.size(); ++i) off += std::abs(drawn.rgb[i] - read->rgb[i]);
  CHECK(off / static_cast<double>(drawn.rgb.size()) < 4);
}

TEST_CASE("a PNG with a clear ground keeps its clearness") {
  const Outcome<Picture> read =
      decode_picture(bytes_of(one_red_pixel, sizeof one_red_pixel), "mark");
  REQUIRE(read.ok());
  CHECK(read->rgb == std::vector<std::uint8_t>{255, 0, 0});
  CHECK(read->alpha == std::vector<std::uint8_t>{128});
}

TEST_CASE("files that are not whole pictures are refused with a sentence") {
  const std::string jpeg = jpeg_bytes(drawn_picture(200, 200), 80);
  const std::string png = bytes_of(one_red_pixel, sizeof one_red_pixel);
  const auto sentence = [](const std::string& bytes) {
    const Outcome<Picture> read = decode_picture(bytes, "photo");
    REQUIRE(!read.ok());
    CHECK(read.problem().field == "photo");
    return read.problem().sentence;
  };
  CHECK_THAT(sentence(jpeg.substr(0, jpeg.size() / 2)), Catch::Contains("cut off"));
  CHECK_THAT(sentence(jpeg.substr(0, 20)), Catch::Contains("cut off"));
  CHECK_THAT(sentence(png.substr(0, png.size() / 2)), Catch::Contains("cut off"));
  CHECK_THAT(sentence("%PDF-1.4"), Catch::Contains("not a picture"));
  CHECK_THAT(sentence(""), Catch::Contains("empty"));
  CHECK_THAT(sentence(std::string("\0\0\0\x18"
                                  "ftypheic....",
                                  16)),
             Catch::Contains("HEIC"));
}

TEST_CASE("every cut of a picture file is either refused or read, never a crash") {
  const std::string jpeg = jpeg_bytes(drawn_picture(40, 30), 80);
  for (std::size_t n = 0; n < jpeg.size(); n += 7) {
    CHECK(!decode_picture(jpeg.substr(0, n), "photo"));
  }
  std::string broken = jpeg;
  for (std::size_t n = 20; n < jpeg.size(); n += 11) {
    broken[n] = static_cast<char>(broken[n] ^ 0x5A);
    const Outcome<Picture> read = decode_picture(broken, "photo");
    if (read)
      CHECK(read->rgb.size() == 3U * static_cast<unsigned>(read->width_px * read->height_px));
    broken[n] = jpeg[n];
  }
}

TEST_CASE("a picture of absurd size is refused before it is unpacked") {
  std::string png = bytes_of(one_red_pixel, sizeof one_red_pixel);
  png[16] = 0x00;
  png[17] = 0x00;
  png[18] = 0x7F;  // 32,513 pixels wide
  CHECK(!decode_picture(png, "photo"));
}

TEST_CASE("a photograph taken with the camera on its side comes out upright") {
  Picture wide;
  wide.width_px = 64;
  wide.height_px = 32;
  for (int i = 0; i < 64 * 32; ++i) {
    const bool left = i % 64 < 32;
    wide.rgb.insert(wide.rgb.end(), 3, left ? std::uint8_t{20} : std::uint8_t{230});
  }
  const std::string jpeg = jpeg_bytes(wide, 95);
  // Orientation 6: the first row is the right side, so the stored left goes to the top.
  const Picture upright_six = *decode_picture(turned(jpeg, 6), "photo");
  CHECK(upright_six.width_px == 32);
  CHECK(upright_six.height_px == 64);
  CHECK(upright_six.rgb.front() < 60);
  CHECK(upright_six.rgb.back() > 200);
  // Orientation 8: the first row is the left side, so the stored left goes to the foot.
  const Picture upright_eight = *decode_picture(turned(jpeg, 8), "photo");
  CHECK(upright_eight.rgb.front() > 200);
  // Orientation 3: upside down.
  const Picture upright_three = *decode_picture(turned(jpeg, 3), "photo");
  CHECK(upright_three.width_px == 64);
  CHECK(upright_three.rgb.front() > 200);
}

TEST_CASE("a photograph is reduced to the set size and never made larger") {
  const std::string large = jpeg_bytes(drawn_picture(900, 300), 90);
  const Outcome<StoredPhoto> stored = photo_for_storing(large, "photo", 400);
  REQUIRE(stored.ok());
  CHECK(stored->width_px == 400);
  CHECK(stored->height_px == 133);
  CHECK(stored->jpeg.size() < large.size());
  CHECK(photo_for_storing(large, "photo", 4000)->width_px == 900);
}

TEST_CASE("a reduced picture takes the mean of what each pixel covers") {
  const Picture checks{2, 2, {0, 0, 0, 100, 100, 100, 100, 100, 100, 200, 200, 200}, {}};
  CHECK(scaled_down(checks, 1).rgb == std::vector<std::uint8_t>{100, 100, 100});
  const Picture half_clear{2, 1, {0, 0, 0, 200, 200, 200}, {0, 255}};
  const Picture one = scaled_down(half_clear, 1);
  CHECK(one.rgb == std::vector<std::uint8_t>{200, 200, 200});
  CHECK(one.alpha == std::vector<std::uint8_t>{128});
}

}  // namespace tangmark::reports::samples
