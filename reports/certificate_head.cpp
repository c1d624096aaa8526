// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "reports/certificate_parts.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/qr.h"

namespace tangmark::reports {

namespace {

constexpr Points mark_side = 37;
constexpr Points code_side = 72;
constexpr Grey picture_ground{246};

std::string issue_words(const BuildCertificate& c, const Look& look) {
  if (c.state == IssueState::draft) return "Draft, not issued";
  std::string words = "Issue " + std::to_string(c.issue) + ", ";
  words += to_text(look.zone.date_of(c.issued)).substr(4);  // without the day of the week
  if (c.state == IssueState::revoked) words += ", revoked";
  return words;
}

// 64 hex digits in groups that an eye can compare.
std::string grouped(const std::string& hex) {
  std::string out;
  for (std::size_t i = 0; i < hex.size(); ++i) {
    if (i > 0 && i % 8 == 0) out += ' ';
    out += hex[i];
  }
  return out;
}

void put(Block& block, const Flow& flow, Points x, Points y) {
  put_into(block, glued(flow), x, y);
}

Flow seal_lines(const CertificateSetting& set, const BuildCertificate& c, Points width) {
  const Font code = mono(6.2);
  const auto line = [&](const std::string& name, const std::string& digits) {
    return paragraph(set.fonts, {{name + "  ", set.type.table, ink}, {digits, code, ink}}, width,
                     set.type.leading);
  };
  Flow flow = paragraph(set.fonts, {{"Seal", set.type.head, ink}}, width, 1.25 * set.type.leading);
  const bool draft = c.state == IssueState::draft;
  const std::string number = draft || c.number.empty() ? "" : "Certificate " + c.number + ". ";
  append(flow,
         paragraph(set.fonts, {{number + issue_words(c, set.look) + ".", set.type.table, ink}},
                   width, set.type.leading));
  if (!c.seal.record_sha256.empty()) append(flow, line("Record", grouped(c.seal.record_sha256)));
  if (!c.seal.picture_sha256.empty()) {
    append(flow, line("Photograph", grouped(c.seal.picture_sha256)));
  }
  append(flow, c.seal.key.empty()
                   ? paragraph(set.fonts, {{"Not signed with a key.", set.type.table, ink}}, width,
                               set.type.leading)
                   : line("Key", grouped(c.seal.key)));
  append(flow,
         paragraph(set.fonts,
                   {{"Computed from the records of this shop. A chain is as strong as its weakest "
                     "link. A correction is a new issue that names this one.",
                     set.type.note, second_ink}},
                   width, 10));
  return flow;
}

Points put_code(const CertificateSetting& set, const BuildCertificate& c, Block& block, Points y) {
  if (c.state != IssueState::draft && !c.seal.qr.empty()) {
    if (const auto code = qr_modules(c.seal.qr, "seal code")) {
      // The quiet margin of the code reaches over the left margin of the text.
      const Points quiet = code_side * 4.0 / (code->across + 8);
      block.marks.push_back(
          {Role::figure, block.elements.size(), 1, false, false, false, c.seal.qr});
      block.elements.push_back(placed_qr(*code, {-quiet, y - quiet}, code_side));
      return code_side - 2 * quiet;
    }
  }
  const Points side = code_side - 14;
  block.elements.push_back(
      Rectangle{{0, y, side, side}, {true, 0.6, rule_grey, false, paper_white}});
  const std::string words = c.state == IssueState::draft ? "no seal" : "no code";
  block.elements.push_back(run_at(set.fonts, {side / 2, y + side / 2 + 2.5}, words, set.type.note,
                                  second_ink, Align::centre));
  return side;
}

}  // namespace

Block certificate_head(const CertificateSetting& set, const BuildCertificate& c, Points width) {
  const Points left = mark_side + 11;
  const Font under = serif(10);
  const std::string issue = issue_words(c, set.look);
  TextRun number = fitted_run(set.fonts, {width, 0}, "Blade " + c.blade, set.type.title,
                              width * 0.4, 8, Align::right);
  const TextRun issued = run_at(set.fonts, {width, 0}, issue, under, ink, Align::right);
  const Points right = std::max(number.width, issued.width);
  const Points names = width - left - right - 16;
  std::string shop = c.shop.shop;
  if (!c.shop.maker.empty()) shop += ", " + c.shop.maker;
  Flow flow{
      marked(glued(paragraph(set.fonts, {{"Build certificate", set.type.title, ink}}, names, 24)),
             Role::title)};
  append(flow, paragraph(set.fonts, {{shop, under, ink}}, names, 13.5));
  if (!c.shop.contact.empty()) {
    append(flow, paragraph(set.fonts, {{c.shop.contact, set.type.note, second_ink}}, names, 10));
  }
  Block block = blank(std::max(height_of(flow), mark_side) + 7);
  for (const Element& e : mark_in(set.fonts, c.shop, {0, 1}, mark_side)) {
    block.elements.push_back(e);
  }
  block = marked(std::move(block), Role::figure, "The mark of " + c.shop.shop);
  put(block, flow, left, 0);
  block.elements.push_back(moved(number, 0, baseline_in(24)));
  block.elements.push_back(moved(issued, 0, 24 + baseline_in(13.5)));
  block.outline = "Build certificate, blade " + c.blade;
  return block;
}

Block photo_part(const CertificateSetting& set, const BuildCertificate& c, Points width,
                 Points height) {
  Block block = blank(height);
  block.elements.push_back(
      Rectangle{{0, 0, width, height}, {true, 0.5, rule_grey, true, picture_ground}});
  if (c.photo) {
    const double scale =
        std::min((width - 8) / c.photo->width_px, (height - 8) / c.photo->height_px);
    const Points w = c.photo->width_px * scale;
    const Points h = c.photo->height_px * scale;
    block.elements.push_back(PlacedPicture{{(width - w) / 2, (height - h) / 2, w, h}, *c.photo});
    return marked(std::move(block), Role::figure, "Photograph of blade " + c.blade);
  }
  const Points blade_height = height * 0.5;
  const Box outline{width * 0.3, height * 0.25, width * 0.62, blade_height};
  block.elements.push_back(Polygon{blade_outline(outline), {true, 0.7, rule_grey, false, ink}});
  const char* words = c.state == IssueState::draft ? "Place for the photograph"
                                                   : "No photograph is on record.";
  block.elements.push_back(run_at(set.fonts, {9, height - 8}, words, set.type.note, second_ink));
  return block;
}

Block seal_part(const CertificateSetting& set, const BuildCertificate& c, Points width) {
  const Points top = 9;
  Block block = blank(0);
  for (const Points y : {0.0, 1.8}) {
    block.elements.push_back(Line{{0, y}, {width, y}, 0.6, ink, 0});
  }
  const Points code = put_code(set, c, block, top);
  const Points sign_width = width * 0.22;
  const Points x = code + 16;
  const Flow lines = seal_lines(set, c, width - x - sign_width - 16);
  put(block, lines, x, top - 3);
  block.height = std::max(top + code, top - 3 + height_of(lines)) + 2;
  const Points sign_y = block.height - 16;
  const Points sign_x = width - sign_width;
  block.elements.push_back(Line{{sign_x, sign_y}, {width, sign_y}, 0.6, ink, 0});
  const std::string name = c.shop.maker.empty() ? c.shop.shop : c.shop.maker;
  block.elements.push_back(
      fitted_run(set.fonts, {sign_x, sign_y + 11}, name, set.type.text, sign_width, 5));
  return block;
}

}  // namespace tangmark::reports
