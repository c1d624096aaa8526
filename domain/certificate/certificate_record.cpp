// SPDX-License-Identifier: MIT
#include "domain/certificate/certificate_record.h"

#include <array>
#include <utility>

#include "domain/certificate/record_json.h"

namespace tangmark::certificate {
namespace {

// The format's number is that of the page as well: what changes the words or the drawing of a page
// takes the next one.
constexpr std::string_view format_name = "tangmark build certificate ";
constexpr int format_number = 4;

std::string format() {
  return std::string(format_name) + std::to_string(format_number);
}

constexpr std::array<std::pair<Figures, std::string_view>, 2> figures_words = {
    {{Figures::each, "each"}, {Figures::lowest_to_highest, "lowest to highest"}}};

// Each list of members below is the one order in which a part is written and read. `Part` is the
// part itself for reading, and const for writing.
template <class Archive, class Part>
void members(Archive& a, Part& p, const TrailBoxLine*) {
  a("title", p.title), a("lines", p.lines), a("from", p.from);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const AnalysisRow*) {
  a("element", p.element), a("amount_ppm", p.amount), a("least_ppm", p.least);
  a("most_ppm", p.most);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const AnalysisBlock*) {
  a("lot", p.lot), a("source", p.source), a("rows", p.rows);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const HeatRow*) {
  a("step", p.step), a("temperatures_k1800", p.temperatures), a("figures", p.figures);
  a("time", p.time), a("evidence", p.evidence);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const RecordedCurve*) {
  a("at_s", p.at_s), a("read_k1800", p.read), a("window_low_k1800", p.window_low);
  a("window_high_k1800", p.window_high), a("blade_out", p.blade_out);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const RecordRow*) {
  a("step", p.step), a("from", p.from), a("to", p.to), a("curve", p.curve);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const HardnessRow*) {
  a("scale", p.scale), a("tenths", p.tenths), a("place", p.place);
  a("from_heel_nm", p.from_heel), a("from_edge_nm", p.from_edge);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const StatementRow*) {
  a("claim", p.claim), a("head", p.head), a("text", p.text), a("level", p.level);
  a("evidence", p.evidence);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const PictureRow*) {
  a("number", p.number), a("shows", p.shows), a("sha256", p.sha256);
}
template <class Archive, class Part>
void members(Archive& a, Part& p, const CertificateSheet*) {
  a("number", p.number), a("issue", p.issue), a("issued", p.issued), a("zone", p.zone);
  a("replaces", p.replaces), a("paper", p.paper), a("temperature", p.temperature);
  a("fonts", p.fonts);
  a("shop", p.shop), a("maker", p.maker), a("contact", p.contact), a("buyer", p.buyer);
  a("blade", p.blade), a("title", p.title), a("item", p.item), a("name", p.name);
  a("knife", p.knife), a("edge_length_nm", p.edge_length), a("height_nm", p.height);
  a("pictures", p.pictures);
  a("trail", p.trail), a("trail_note", p.trail_note), a("analyses", p.analyses);
  a("analysis_note", p.analysis_note), a("heat", p.heat), a("heat_note", p.heat_note);
  a("records", p.records), a("hardness", p.hardness);
  a("hardness_note", p.hardness_note), a("statements", p.statements);
  a("explanations", p.explanations), a("told_openly", p.told_openly), a("notes", p.notes);
  a("care", p.care), a("cautions", p.cautions), a("legend", p.legend);
}

class Writer {
 public:
  template <class T>
  void operator()(const char* name, const T& value) {
    members_.emplace_back(name, json(value));
  }
  RecordJson::Members take() { return std::move(members_); }

 private:
  static RecordJson json(const std::string& text) { return text; }
  static RecordJson json(int number) { return static_cast<std::int64_t>(number); }
  static RecordJson json(Share share) { return share.millionths(); }
  static RecordJson json(Length length) { return length.nanometres(); }
  static RecordJson json(Temperature temperature) { return temperature.counts(); }
  static RecordJson json(Instant at) { return to_stored(at); }
  static RecordJson json(Figures figures) {
    return std::string(figures_words[static_cast<std::size_t>(figures)].second);
  }
  template <class T>
  static RecordJson json(const std::optional<T>& value) {
    return value ? json(*value) : RecordJson();
  }
  template <class T>
  static RecordJson json(const std::vector<T>& values) {
    RecordJson::List list;
    for (const T& value : values) list.push_back(json(value));
    return list;
  }
  template <class T>
  static RecordJson json(const T& part) {
    Writer writer;
    members(writer, part, static_cast<const T*>(nullptr));
    return writer.take();
  }

  RecordJson::Members members_;
};

// Reads members in their order; the first that is missing, of another kind or out of place is kept
// as the one at fault.
class MemberReader {
 public:
  explicit MemberReader(const RecordJson& json, std::size_t skip = 0)
      : members_(json.members()), at_(skip) {}
  template <class T>
  void operator()(const char* name, T& value) {
    if (!fault_.empty()) return;
    const bool there = members_ && at_ < members_->size() && (*members_)[at_].first == name;
    if (!there || !take((*members_)[at_].second, value)) fault_ = name;
    ++at_;
  }
  const std::string& fault() const { return fault_; }
  bool complete() const { return fault_.empty() && members_ && at_ == members_->size(); }

 private:
  static bool take(const RecordJson& json, std::string& text) {
    if (json.text()) text = *json.text();
    return json.text() != nullptr;
  }
  static bool take(const RecordJson& json, int& number) {
    if (!json.number() || *json.number() < INT32_MIN || *json.number() > INT32_MAX) return false;
    number = static_cast<int>(*json.number());
    return true;
  }
  static bool take(const RecordJson& json, Share& share) {
    if (json.number()) share = Share::millionths(*json.number());
    return json.number() != nullptr;
  }
  static bool take(const RecordJson& json, Length& length) {
    if (json.number()) length = Length::nanometres(*json.number());
    return json.number() != nullptr;
  }
  static bool take(const RecordJson& json, Temperature& temperature) {
    if (json.number()) temperature = Temperature::counts(*json.number());
    return json.number() != nullptr;
  }
  static bool take(const RecordJson& json, Figures& figures) {
    for (const auto& [known, word] : figures_words) {
      if (!json.text() || *json.text() != word) continue;
      figures = known;
      return true;
    }
    return false;
  }
  static bool take(const RecordJson& json, Instant& at) {
    if (!json.text()) return false;
    const auto read = from_stored_instant(*json.text(), "record");
    if (read) at = *read;
    return read.ok();
  }
  template <class T>
  static bool take(const RecordJson& json, std::optional<T>& value) {
    if (json.is_null()) return true;
    return take(json, value.emplace());
  }
  template <class T>
  static bool take(const RecordJson& json, std::vector<T>& values) {
    if (!json.list()) return false;
    for (const RecordJson& one : *json.list())
      if (!take(one, values.emplace_back())) return false;
    return true;
  }
  template <class T>
  static bool take(const RecordJson& json, T& part) {
    MemberReader reader(json);
    members(reader, part, static_cast<const T*>(nullptr));
    return reader.complete();
  }

  const RecordJson::Members* members_;
  std::size_t at_;
  std::string fault_;
};

Problem other_format(const std::string& found) {
  const std::string number =
      found.starts_with(format_name) ? found.substr(format_name.size()) : std::string();
  if (number.size() == 1 && number[0] >= '1' && number[0] < '0' + format_number)
    return {"format",
            "The record is of format " + number +
                ", of an earlier version of the program, whose page "
                "this version does not set, so that its words cannot be compared with its record.",
            "Ask the maker for a new issue."};
  return {"format", "This is no record of a build certificate that this program knows.", ""};
}

}  // namespace

std::string record_text(const CertificateSheet& sheet) {
  Writer writer;
  writer("format", format());
  members(writer, sheet, static_cast<const CertificateSheet*>(nullptr));
  return record_text(RecordJson(writer.take()));
}

Outcome<CertificateSheet> read_record(std::string_view text) {
  const Outcome<RecordJson> json = read_record_json(text);
  if (!json) return json.problems();
  CertificateSheet sheet;
  std::string found_format;
  MemberReader reader(*json);
  reader("format", found_format);
  members(reader, sheet, static_cast<const CertificateSheet*>(nullptr));
  if (found_format != format()) return other_format(found_format);
  if (!reader.complete())
    return Problem{reader.fault().empty() ? "record" : reader.fault(),
                   "The record does not have the members of its format.", ""};
  if (record_text(sheet) != text)
    return Problem{"record", "The record is not written as this program writes it.",
                   "Somebody wrote it anew; use the record as it was attached."};
  return sheet;
}

}  // namespace tangmark::certificate
