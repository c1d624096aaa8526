// SPDX-License-Identifier: MIT
#include "reports/picture.h"

#include <png.h>

#include <algorithm>
#include <array>
#include <cstring>

#include "reports/jpeg.h"

namespace tangmark::reports {

namespace {

Problem problem(std::string_view field, std::string sentence, std::string remedy) {
  return {std::string(field), std::move(sentence), std::move(remedy)};
}

bool is_png(std::string_view bytes) {
  return bytes.substr(0, 8) == "\x89PNG\r\n\x1A\n";
}

bool is_heif(std::string_view bytes) {
  if (bytes.size() < 12 || bytes.substr(4, 4) != "ftyp") return false;
  const std::string_view brand = bytes.substr(8, 4);
  return brand == "heic" || brand == "heix" || brand == "mif1" || brand == "msf1" ||
         brand == "avif";
}

bool too_large(std::int64_t width, std::int64_t height) {
  return width > most_picture_side_px || height > most_picture_side_px ||
         width * height > most_picture_pixels;
}

Picture without_alpha_plane(const png_image& image, const std::vector<std::uint8_t>& rgba) {
  Picture picture;
  picture.width_px = static_cast<int>(image.width);
  picture.height_px = static_cast<int>(image.height);
  const std::size_t pixels = rgba.size() / 4;
  picture.rgb.resize(pixels * 3);
  picture.alpha.resize(pixels);
  bool solid = true;
  for (std::size_t i = 0; i < pixels; ++i) {
    std::copy_n(&rgba[4 * i], 3, &picture.rgb[3 * i]);
    picture.alpha[i] = rgba[4 * i + 3];
    solid = solid && picture.alpha[i] == 255;
  }
  if (solid) picture.alpha.clear();
  return picture;
}

Outcome<Picture> decode_png(std::string_view bytes, std::string_view field) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  const auto damaged = [&] {
    png_image_free(&image);
    return problem(field, "The picture is a PNG that is damaged or cut off.",
                   "Save it again from the program that made it.");
  };
  if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) return damaged();
  if (too_large(image.width, image.height)) {
    png_image_free(&image);
    return problem(field, "The picture has more pixels than can be read safely.",
                   "Save it smaller, at most 100 million pixels.");
  }
  image.format = PNG_FORMAT_RGBA;
  std::vector<std::uint8_t> rgba(PNG_IMAGE_SIZE(image));
  if (png_image_finish_read(&image, nullptr, rgba.data(), 0, nullptr) == 0) return damaged();
  return without_alpha_plane(image, rgba);
}

// Sums of a box of source pixels: red, green and blue weighted by alpha, alpha, and their number.
struct BoxSum {
  std::array<std::uint64_t, 3> rgb{};
  std::uint64_t alpha = 0;
  std::uint64_t count = 0;
};

BoxSum sum_of(const Picture& p, int x0, int x1, int y0, int y1) {
  BoxSum sum;
  for (int y = y0; y < y1; ++y) {
    for (int x = x0; x < x1; ++x) {
      const std::size_t at = static_cast<std::size_t>(y) * static_cast<std::size_t>(p.width_px) +
                             static_cast<std::size_t>(x);
      const std::uint64_t a = p.alpha.empty() ? 255 : p.alpha[at];
      for (std::size_t c = 0; c < 3; ++c) sum.rgb[c] += p.rgb[3 * at + c] * a;
      sum.alpha += a;
      ++sum.count;
    }
  }
  return sum;
}

int scaled_edge(int at, int from, int to) {
  return static_cast<int>(static_cast<std::int64_t>(at) * from / to);
}

}  // namespace

Outcome<Picture> decode_picture(std::string_view bytes, std::string_view field,
                                int wanted_side_px) {
  if (bytes.empty()) return problem(field, "The picture file is empty.", "Choose another file.");
  if (is_jpeg(bytes)) {
    Outcome<Picture> picture = decode_jpeg(bytes, field, wanted_side_px);
    if (!picture) return picture;
    return upright(*picture, exif_orientation(bytes));
  }
  if (is_png(bytes)) return decode_png(bytes, field);
  if (is_heif(bytes)) {
    return problem(field, "The picture is in the HEIC format of a telephone.",
                   "Set the telephone to JPEG (most compatible), or save the picture as JPEG.");
  }
  return problem(field, "The file is not a picture that can be read.",
                 "Choose a JPEG or PNG picture.");
}

Picture scaled_down(const Picture& picture, int most_side_px) {
  const int side = std::max(picture.width_px, picture.height_px);
  if (side <= most_side_px || most_side_px < 1) return picture;
  Picture small;
  small.width_px = std::max(1, scaled_edge(picture.width_px, most_side_px, side));
  small.height_px = std::max(1, scaled_edge(picture.height_px, most_side_px, side));
  for (int y = 0; y < small.height_px; ++y) {
    const int y0 = scaled_edge(y, picture.height_px, small.height_px);
    const int y1 = scaled_edge(y + 1, picture.height_px, small.height_px);
    for (int x = 0; x < small.width_px; ++x) {
      const int x0 = scaled_edge(x, picture.width_px, small.width_px);
      const int x1 = scaled_edge(x + 1, picture.width_px, small.width_px);
      const BoxSum sum = sum_of(picture, x0, x1, y0, y1);
      for (const std::uint64_t c : sum.rgb) {
        const std::uint64_t half = sum.alpha / 2;
        small.rgb.push_back(
            static_cast<std::uint8_t>(sum.alpha == 0 ? 255 : (c + half) / sum.alpha));
      }
      if (!picture.alpha.empty()) {
        small.alpha.push_back(static_cast<std::uint8_t>((sum.alpha + sum.count / 2) / sum.count));
      }
    }
  }
  return small;
}

Outcome<StoredPhoto> photo_for_storing(std::string_view bytes, std::string_view field,
                                       int most_side_px, int quality) {
  const Outcome<Picture> picture = decode_picture(bytes, field, most_side_px);
  if (!picture) return picture.problems();
  const Picture small = scaled_down(*picture, most_side_px);
  return StoredPhoto{jpeg_bytes(small, quality), small.width_px, small.height_px};
}

}  // namespace tangmark::reports
