// SPDX-License-Identifier: MIT
#include "domain/certificate/record_json.h"

#include <charconv>
#include <optional>

#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

void write_string(std::string& out, std::string_view text) {
  static constexpr char hex[] = "0123456789abcdef";
  out += '"';
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      (out += '\\') += c;
    else if (c == '\n')
      out += "\\n";
    else if (c == '\t')
      out += "\\t";
    else if (byte < 0x20)
      ((out += "\\u00") += hex[byte >> 4]) += hex[byte & 15];
    else
      out += c;
  }
  out += '"';
}

void write(std::string& out, const RecordJson& json, std::size_t depth) {
  const std::string inner(2 * depth + 2, ' ');
  const std::string outer(2 * depth, ' ');
  if (const auto* number = json.number())
    out += std::to_string(*number);
  else if (const auto* text = json.text())
    write_string(out, *text);
  else if (const auto* list = json.list()) {
    out += list->empty() ? "[" : "[\n";
    for (std::size_t i = 0; i < list->size(); ++i) {
      out += inner;
      write(out, (*list)[i], depth + 1);
      out += i + 1 < list->size() ? ",\n" : "\n" + outer;
    }
    out += ']';
  } else if (const auto* members = json.members()) {
    out += members->empty() ? "{" : "{\n";
    for (std::size_t i = 0; i < members->size(); ++i) {
      out += inner;
      write_string(out, (*members)[i].first);
      out += ": ";
      write(out, (*members)[i].second, depth + 1);
      out += i + 1 < members->size() ? ",\n" : "\n" + outer;
    }
    out += '}';
  } else {
    out += "null";
  }
}

class Reader {
 public:
  explicit Reader(std::string_view text) : text_(text) {}

  Outcome<RecordJson> read() {
    if (!is_valid_utf8(text_)) return Problem{"record", "The record is not UTF-8 text.", ""};
    RecordJson value;
    if (!take_value(value, 0)) return refusal();
    skip_blanks();
    if (at_ != text_.size()) return refusal();
    return value;
  }

 private:
  Problem refusal() const {
    return {"record", "The record cannot be read at byte " + std::to_string(at_) + ".",
            "Use the record as it was attached to the certificate."};
  }
  void skip_blanks() {
    while (at_ < text_.size() &&
           (text_[at_] == ' ' || text_[at_] == '\n' || text_[at_] == '\r' || text_[at_] == '\t'))
      ++at_;
  }
  bool take(std::string_view word) {
    skip_blanks();
    if (text_.substr(at_, word.size()) != word) return false;
    at_ += word.size();
    return true;
  }

  bool take_value(RecordJson& value, int depth) {
    if (depth > 32) return false;
    skip_blanks();
    if (at_ >= text_.size()) return false;
    switch (text_[at_]) {
      case '{':
        return take_members(value, depth);
      case '[':
        return take_list(value, depth);
      case '"': {
        std::string text;
        if (!take_string(text)) return false;
        value = RecordJson(std::move(text));
        return true;
      }
      case 'n':
        return take("null");
      default:
        return take_number(value);
    }
  }

  bool take_number(RecordJson& value) {
    std::int64_t number = 0;
    const char* begin = text_.data() + at_;
    const auto [end, error] = std::from_chars(begin, text_.data() + text_.size(), number);
    if (error != std::errc()) return false;
    const std::string_view digits(begin, static_cast<std::size_t>(end - begin));
    const bool canonical = digits == std::to_string(number);
    at_ += digits.size();
    const bool fraction =
        at_ < text_.size() && (text_[at_] == '.' || text_[at_] == 'e' || text_[at_] == 'E');
    value = RecordJson(number);
    return canonical && !fraction;
  }

  std::optional<char32_t> take_hex() {
    if (at_ + 4 > text_.size()) return std::nullopt;
    unsigned code = 0;
    const char* begin = text_.data() + at_;
    const auto [end, error] = std::from_chars(begin, begin + 4, code, 16);
    if (error != std::errc() || end != begin + 4) return std::nullopt;
    at_ += 4;
    return static_cast<char32_t>(code);
  }

  bool take_escape(std::string& text) {
    if (at_ >= text_.size()) return false;
    const char c = text_[at_++];
    switch (c) {
      case '"':
      case '\\':
      case '/':
        text += c;
        return true;
      case 'n':
        text += '\n';
        return true;
      case 't':
        text += '\t';
        return true;
      case 'r':
        text += '\r';
        return true;
      case 'b':
        text += '\b';
        return true;
      case 'f':
        text += '\f';
        return true;
      case 'u':
        break;
      default:
        return false;
    }
    const auto code = take_hex();
    // The writer escapes control characters only; pairs of surrogates are not read.
    if (!code || (*code >= 0xD800 && *code <= 0xDFFF)) return false;
    append_code_point(text, *code);
    return true;
  }

  bool take_string(std::string& text) {
    ++at_;
    while (at_ < text_.size()) {
      const char c = text_[at_++];
      if (c == '"') return true;
      if (static_cast<unsigned char>(c) < 0x20) return false;
      if (c != '\\')
        text += c;
      else if (!take_escape(text))
        return false;
    }
    return false;
  }

  bool take_list(RecordJson& value, int depth) {
    ++at_;
    RecordJson::List list;
    if (!take("]")) {
      do {
        list.emplace_back();
        if (!take_value(list.back(), depth + 1)) return false;
      } while (take(","));
      if (!take("]")) return false;
    }
    value = RecordJson(std::move(list));
    return true;
  }

  bool take_members(RecordJson& value, int depth) {
    ++at_;
    RecordJson::Members members;
    if (!take("}")) {
      do {
        skip_blanks();
        std::string name;
        if (at_ >= text_.size() || text_[at_] != '"' || !take_string(name)) return false;
        for (const auto& known : members)
          if (known.first == name) return false;
        if (!take(":")) return false;
        members.emplace_back(std::move(name), RecordJson());
        if (!take_value(members.back().second, depth + 1)) return false;
      } while (take(","));
      if (!take("}")) return false;
    }
    value = RecordJson(std::move(members));
    return true;
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace

std::string record_text(const RecordJson& json) {
  std::string out;
  write(out, json, 0);
  return out + "\n";
}

Outcome<RecordJson> read_record_json(std::string_view text) {
  return Reader(text).read();
}

}  // namespace tangmark::certificate
