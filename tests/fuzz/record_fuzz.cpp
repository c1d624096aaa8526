// SPDX-License-Identifier: MIT
// Any bytes as a kiln record: read, judged and answered, or refused in words.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "domain/kiln/record_soak.h"
#include "domain/kiln/record_stream.h"

using namespace tangmark;
using namespace tangmark::kiln;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  static const Zone zone = Zone::of("Europe/Berlin").value();
  const SoakWindow window{Temperature::celsius(790), Temperature::celsius(815)};
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);

  RecordStream stream(window, zone);
  stream.feed(text.substr(0, size / 2));
  stream.feed(text.substr(size / 2));
  if (const auto judged = stream.finish()) (void)record_answer(*judged, zone);

  if (const auto record = read_kiln_record(text, zone)) {
    (void)blade_soak(*record, window, record->ms.front(), record->ms.back());
    (void)door_openings(*record);
    if (!shape_from_stored(shape_to_stored(record->shape), "shape")) __builtin_trap();
  }
  (void)shape_from_stored(text, "shape");
  return 0;
}
