// SPDX-License-Identifier: MIT
#include "reports/jpeg.h"

#include <array>
#include <csetjmp>
#include <cstdio>
#include <cstring>
#include <utility>
#include <vector>

// After <cstdio>, which it needs.
#include <jerror.h>
#include <jpeglib.h>

#include "reports/page_failure.h"
#include "reports/picture.h"

namespace tangmark::reports {

namespace {

// libjpeg reports by a jump out of its own frames; nothing with a destructor may live between.
struct Trouble {
  jpeg_error_mgr base;
  std::jmp_buf back;
  bool damaged;
  int code;
};

void on_error(j_common_ptr info) {
  auto* trouble = reinterpret_cast<Trouble*>(info->err);
  trouble->code = info->err->msg_code;
  std::longjmp(trouble->back, 1);
}

void on_message(j_common_ptr info, int level) {
  auto* trouble = reinterpret_cast<Trouble*>(info->err);
  if (level >= 0) return;
  const int code = info->err->msg_code;
  // Some cameras leave a few stray bytes; these two mean that part of the picture is missing.
  if (code == JWRN_JPEG_EOF || code == JWRN_HIT_MARKER) trouble->damaged = true;
}

void on_output(j_common_ptr /*info*/) {}

jpeg_error_mgr* quiet(Trouble& trouble) {
  jpeg_error_mgr* errors = jpeg_std_error(&trouble.base);
  errors->error_exit = on_error;
  errors->emit_message = on_message;
  errors->output_message = on_output;
  trouble.damaged = false;
  trouble.code = 0;
  return errors;
}

enum class Read { whole, damaged, too_large, wrong_colours };

unsigned eighths_for(const jpeg_decompress_struct& info, int wanted_side_px) {
  const auto side = std::max(info.image_width, info.image_height);
  for (unsigned eighths : {1U, 2U, 4U}) {
    if (wanted_side_px > 0 && side * eighths / 8 >= static_cast<unsigned>(wanted_side_px)) {
      return eighths;
    }
  }
  return 8;
}

// The pixels go to `picture`, which is made before and outlives the jump.
Read read_into(Picture& picture, std::string_view bytes, int wanted_side_px) {
  jpeg_decompress_struct info;
  Trouble trouble;
  info.err = quiet(trouble);
  if (setjmp(trouble.back) != 0) {
    jpeg_destroy_decompress(&info);
    return trouble.code == JERR_CONVERSION_NOTIMPL ? Read::wrong_colours : Read::damaged;
  }
  jpeg_create_decompress(&info);
  jpeg_mem_src(&info, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
  jpeg_read_header(&info, TRUE);
  const auto pixels = static_cast<std::int64_t>(info.image_width) * info.image_height;
  if (pixels > most_picture_pixels || info.image_width > most_picture_side_px ||
      info.image_height > most_picture_side_px) {
    jpeg_destroy_decompress(&info);
    return Read::too_large;
  }
  info.out_color_space = JCS_RGB;
  info.scale_num = eighths_for(info, wanted_side_px);
  info.scale_denom = 8;
  jpeg_start_decompress(&info);
  picture.width_px = static_cast<int>(info.output_width);
  picture.height_px = static_cast<int>(info.output_height);
  const std::size_t row_bytes = std::size_t{3} * info.output_width;
  picture.rgb.resize(row_bytes * info.output_height);
  while (info.output_scanline < info.output_height) {
    JSAMPROW row = picture.rgb.data() + row_bytes * info.output_scanline;
    jpeg_read_scanlines(&info, &row, 1);
  }
  jpeg_finish_decompress(&info);
  jpeg_destroy_decompress(&info);
  return trouble.damaged ? Read::damaged : Read::whole;
}

// Encodes into memory that libjpeg allocates; true when it worked.
bool encode(const Picture& picture, const std::uint8_t* rgb, int quality, unsigned char** out,
            unsigned long* size) {
  jpeg_compress_struct info;
  Trouble trouble;
  info.err = quiet(trouble);
  if (setjmp(trouble.back) != 0) {
    jpeg_destroy_compress(&info);
    return false;
  }
  jpeg_create_compress(&info);
  jpeg_mem_dest(&info, out, size);
  info.image_width = static_cast<JDIMENSION>(picture.width_px);
  info.image_height = static_cast<JDIMENSION>(picture.height_px);
  info.input_components = 3;
  info.in_color_space = JCS_RGB;
  jpeg_set_defaults(&info);
  jpeg_set_quality(&info, quality, TRUE);
  jpeg_start_compress(&info, TRUE);
  const std::size_t row_bytes = std::size_t{3} * info.image_width;
  while (info.next_scanline < info.image_height) {
    auto* row = const_cast<JSAMPROW>(rgb + row_bytes * info.next_scanline);
    jpeg_write_scanlines(&info, &row, 1);
  }
  jpeg_finish_compress(&info);
  jpeg_destroy_compress(&info);
  return true;
}

std::vector<std::uint8_t> on_white(const Picture& picture) {
  std::vector<std::uint8_t> rgb = picture.rgb;
  for (std::size_t i = 0; i < picture.alpha.size(); ++i) {
    const unsigned a = picture.alpha[i];
    for (std::size_t c = 3 * i; c < 3 * i + 3; ++c) {
      rgb[c] = static_cast<std::uint8_t>((rgb[c] * a + 255U * (255U - a)) / 255U);
    }
  }
  return rgb;
}

class ExifReader {
 public:
  explicit ExifReader(std::string_view tiff) : tiff_(tiff) {}

  int orientation() const {
    if (tiff_.size() < 8) return 1;
    little_ = tiff_[0] == 'I';
    const std::size_t directory = number(4, 4);
    const std::size_t entries = number(directory, 2);
    for (std::size_t i = 0; i < entries; ++i) {
      const std::size_t entry = directory + 2 + 12 * i;
      if (entry + 12 > tiff_.size()) return 1;
      if (number(entry, 2) == 0x0112) {
        const std::size_t value = number(entry + 8, 2);
        return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
      }
    }
    return 1;
  }

 private:
  std::size_t number(std::size_t at, std::size_t bytes) const {
    if (at > tiff_.size() || bytes > tiff_.size() - at) return 0;
    std::size_t n = 0;
    for (std::size_t i = 0; i < bytes; ++i) {
      const std::size_t from = little_ ? bytes - 1 - i : i;
      n = n * 256 + static_cast<unsigned char>(tiff_[at + from]);
    }
    return n;
  }

  std::string_view tiff_;
  mutable bool little_ = false;
};

Problem refusal(Read read, std::string_view field) {
  switch (read) {
    case Read::too_large:
      return {std::string(field), "The picture has more pixels than can be read safely.",
              "Save it smaller, at most 100 million pixels."};
    case Read::wrong_colours:
      return {std::string(field), "The picture is a JPEG in printing colours.",
              "Save it as an ordinary RGB JPEG."};
    case Read::whole:
    case Read::damaged:
      break;
  }
  return {std::string(field), "The picture is a JPEG that is damaged or cut off.",
          "Copy it from the camera again."};
}

}  // namespace

bool is_jpeg(std::string_view bytes) {
  return bytes.substr(0, 3) == "\xFF\xD8\xFF";
}

Outcome<Picture> decode_jpeg(std::string_view bytes, std::string_view field, int wanted_side_px) {
  Picture picture;
  const Read read = read_into(picture, bytes, wanted_side_px);
  if (read != Read::whole) return refusal(read, field);
  return picture;
}

int exif_orientation(std::string_view bytes) {
  using namespace std::string_view_literals;
  const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(bytes[at]); };
  for (std::size_t at = 2; at + 4 <= bytes.size() && byte(at) == 0xFF;) {
    const std::size_t length = byte(at + 2) * std::size_t{256} + byte(at + 3);
    if (length < 2 || byte(at + 1) == 0xDA) return 1;
    const std::string_view body = bytes.substr(at + 4, length - 2);
    if (byte(at + 1) == 0xE1 && body.substr(0, 6) == "Exif\0\0"sv) {
      return ExifReader(body.substr(6)).orientation();
    }
    at += 2 + length;
  }
  return 1;
}

Picture upright(const Picture& picture, int orientation) {
  if (orientation <= 1 || orientation > 8) return picture;
  const int w = picture.width_px;
  const int h = picture.height_px;
  const bool sideways = orientation >= 5;
  Picture turned;
  turned.width_px = sideways ? h : w;
  turned.height_px = sideways ? w : h;
  turned.rgb.resize(picture.rgb.size());
  for (int y = 0; y < turned.height_px; ++y) {
    for (int x = 0; x < turned.width_px; ++x) {
      int sx = sideways ? y : x;
      int sy = sideways ? x : y;
      // Where column 0 and row 0 of the stored picture lie: Exif 4.6.4, orientation.
      const bool flip_x =
          orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
      const bool flip_y =
          orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
      if (flip_x) sx = w - 1 - sx;
      if (flip_y) sy = h - 1 - sy;
      const std::size_t from = 3 * (static_cast<std::size_t>(sy) * static_cast<std::size_t>(w) +
                                    static_cast<std::size_t>(sx));
      const std::size_t to =
          3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(turned.width_px) +
               static_cast<std::size_t>(x));
      std::memcpy(&turned.rgb[to], &picture.rgb[from], 3);
    }
  }
  return turned;
}

std::string jpeg_bytes(const Picture& picture, int quality) {
  const std::vector<std::uint8_t> rgb = on_white(picture);
  unsigned char* out = nullptr;
  unsigned long size = 0;
  const bool done = encode(picture, rgb.data(), quality, &out, &size);
  std::string bytes;
  if (done) bytes.assign(reinterpret_cast<const char*>(out), size);
  std::free(out);
  if (!done) throw PageFailure("The picture could not be encoded; the machine is short of memory.");
  return bytes;
}

}  // namespace tangmark::reports
