// SPDX-License-Identifier: MIT
#include "reports/public_list.h"

#include "domain/measure/table_text.h"
#include "reports/markup.h"

namespace tangmark::reports {

namespace {

constexpr const char* style =
    "body{font:16px/1.5 serif;color:#1e2426;max-width:60rem;margin:2rem auto;padding:0 1rem}"
    "table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;"
    "padding:.3rem .8rem .3rem 0;border-bottom:1px solid #c3c7c6}"
    "code{font-size:.8em;word-break:break-all}";

std::string row(const std::vector<std::string>& cells, const char* tag) {
  std::string out = "<tr>";
  for (const std::string& cell : cells) {
    out += std::string("<") + tag + ">" + cell + "</" + tag + ">";
  }
  return out + "</tr>\n";
}

std::string code(const std::string& digits) {
  return digits.empty() ? "none" : "<code>" + escaped_markup(digits) + "</code>";
}

std::string keys_html(const PublicList& list) {
  if (list.keys.empty()) return "<p>This shop does not seal its certificates with a key.</p>\n";
  std::string out =
      "<h2>Keys</h2>\n<table>\n" + row({"Fingerprint", "Owner", "From", "To", "State"}, "th");
  for (const PublicKey& key : list.keys) {
    out += row(
        {code(key.fingerprint), escaped_markup(key.owner), to_stored(key.from), to_stored(key.to),
         key.retired.empty() ? "in use" : "retired " + escaped_markup(key.retired)},
        "td");
  }
  return out + "</table>\n";
}

}  // namespace

std::string public_list_csv(const PublicList& list) {
  std::vector<std::vector<std::string>> table{
      {"certificate", "issue", "blade", "title", "issued", "state", "record_sha256", "key"}};
  for (const PublicIssue& one : list.issues) {
    table.push_back({one.number, std::to_string(one.issue), std::to_string(one.blade), one.title,
                     to_stored(one.day), one.state, one.record, one.key});
  }
  return to_table_text(table);
}

std::string public_list_html(const PublicList& list) {
  const std::string head = "Build certificates of " + escaped_markup(list.shop);
  std::string out = "<!DOCTYPE html>\n<html lang=\"en\">\n<head><meta charset=\"utf-8\"><title>" +
                    head + "</title><style>" + style + "</style></head>\n<body>\n<h1>" + head +
                    "</h1>\n<p>As of " + to_stored(list.day) +
                    ". Compare number, issue, record and key with those on your certificate.</p>\n";
  out += "<table>\n" +
         row({"Certificate", "Blade", "Title", "Issued", "State", "Record, SHA-256"}, "th");
  for (const PublicIssue& one : list.issues) {
    out += row({escaped_markup(one.number) + ", issue " + std::to_string(one.issue),
                std::to_string(one.blade), escaped_markup(one.title), to_stored(one.day),
                escaped_markup(one.state), code(one.record)},
               "td");
  }
  return out + "</table>\n" + keys_html(list) + "</body>\n</html>\n";
}

}  // namespace tangmark::reports
