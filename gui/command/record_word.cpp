// SPDX-License-Identifier: MIT
// The kiln record from a terminal.
#include "gui/command/record_word.h"

#include <fstream>

#include "domain/kiln/record_stream.h"
#include "gui/command/desk_json.h"
#include "gui/command/shop_of.h"

namespace tangmark::command {
namespace {

// "790C..815C"
Outcome<std::optional<kiln::SoakWindow>> window_of(const Call& call) {
  const auto text = call.option("window");
  if (!text) return std::optional<kiln::SoakWindow>();
  const auto dots = text->find("..");
  const Problem refused{"--window", "\"" + *text + "\" is not a window of temperatures.",
                        "Write, for example: --window 790C..815C."};
  if (dots == std::string::npos) return refused;
  const auto low = parse_temperature(text->substr(0, dots), TemperatureUnit::celsius, "--window");
  const auto high = parse_temperature(text->substr(dots + 2), TemperatureUnit::celsius, "--window");
  if (!low || !high || *high < *low) return refused;
  return std::optional(kiln::SoakWindow{*low, *high});
}

// How its columns are to be read, where that is said.
Outcome<kiln::ShapeHints> hints_of(const Call& call) {
  kiln::TypedMapping typed;
  typed.time = call.option("time").value_or("");
  typed.date = call.option("date").value_or("");
  typed.sensors = call.option("sensors").value_or("");
  typed.unit = call.option("unit").value_or("");
  typed.decimals = call.option("decimals").value_or("");
  typed.separator = call.option("separator").value_or("");
  typed.dates = call.option("dates").value_or("");
  typed.counts = call.option("counts").value_or("");
  return kiln::read_hints(typed);
}

// A record of any length goes by in pieces.
Outcome<kiln::JudgedRecord> judge_file(const std::string& path, const Zone& zone,
                                       const std::optional<kiln::SoakWindow>& window,
                                       const kiln::ShapeHints& hints) {
  std::error_code error;
  std::ifstream file(path, std::ios::binary);
  if (!std::filesystem::is_regular_file(path, error) || !file)
    return Problem{path, "There is no file " + path + " that can be read.", "Check the name."};
  kiln::RecordStream stream(window, zone, hints);
  std::string piece(1 << 18, '\0');
  while (file) {
    file.read(piece.data(), static_cast<std::streamsize>(piece.size()));
    const auto read = static_cast<std::size_t>(file.gcount());
    if (read == 0 || !stream.feed(std::string_view(piece).substr(0, read))) break;
  }
  return stream.finish();
}

}  // namespace

Exit kiln_record(const Call& call) {
  const auto window = window_of(call);
  const auto zone = Zone::of(call.option("zone").value_or("Etc/UTC"), "--zone");
  if (!window) return refused(call, window.problems());
  if (!zone) return refused(call, zone.problems());
  const auto hints = hints_of(call);
  if (!hints) return refused(call, hints.problems());
  const auto judged = judge_file(call.words[0], *zone, *window, *hints);
  if (!judged) return refused(call, judged.problems());
  const Json json = json_of(steel::DeskValue(kiln::record_answer(*judged, *zone)));
  if (call.has("json")) {
    say_json(json);
    return Exit::done;
  }
  for (const auto& [name, value] : json.items())
    if (!value.is_null() && !(value.is_array() && value.empty()))
      say(name + " = " + plain_text(value));
  return Exit::done;
}

}  // namespace tangmark::command
