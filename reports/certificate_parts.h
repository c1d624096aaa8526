// SPDX-License-Identifier: MIT
#pragma once

#include "reports/block.h"
#include "reports/build_certificate.h"
#include "reports/font_book.h"
#include "reports/paragraph.h"
#include "reports/type.h"

namespace tangmark::reports {

/// On one page everything stands closer.
enum class Spread { one_page, more_pages };

/// The parts of a certificate, each set to a width; build_certificate.cpp puts them on the pages.
struct CertificateSetting {
  const FontBook& fonts;
  const Look& look;
  TypeScale type = certificate_type();
};

/// A heading with a rule above it, which stays with what follows.
Flow part_heading(const CertificateSetting& set, const std::string& words, Points width);
/// A paragraph in the leading of the page.
Flow text_flow(const CertificateSetting& set, const std::vector<Span>& spans, Points width);

/// The steel as a family tree from the lots at the left to the blade at the right; as sentences
/// when it has more boxes than the width can show.
/// Without boxes `note` says why.
Flow trail_part(const CertificateSetting& set, const std::vector<TrailBox>& trail,
                const std::string& note, Points width);

/// Each analysis with its figures as marks on the limits of the grade.
Flow analysis_part(const CertificateSetting& set, const std::vector<Analysis>& analyses,
                   const std::string& note, Points width);

/// The readings at their places on the outline of a blade.
Flow hardness_part(const CertificateSetting& set, const Hardness& hardness, Points width);

/// The heats as a table, each with its evidence.
Flow heat_part(const CertificateSetting& set, const BuildCertificate& certificate, Spread spread,
               Points width);
/// Whether the heats are so many that their table takes the whole width, in two halves.
bool heats_across(const BuildCertificate& certificate);
/// The lines from `first` to before `end` of that table, with its head; and the note under it.
struct HeatLines {
  std::size_t first = 0;
  std::size_t end = 0;
  Spread spread = Spread::one_page;
};
Flow heat_table(const CertificateSetting& set, const BuildCertificate& certificate,
                const HeatLines& lines, Points width);
Flow heat_note_part(const CertificateSetting& set, const BuildCertificate& certificate,
                    Points width);

/// How many records stand beside each other, and how high they are drawn.
struct ChartRows {
  std::size_t across = 1;
  Points height = 88;
};
/// The recorded curves with the windows set for them.
Flow records_part(const CertificateSetting& set, const BuildCertificate& certificate, Points width,
                  const ChartRows& rows);

/// One statement, its evidence in italic under it; and those from `first` to before `end`.
Flow statement_flow(const CertificateSetting& set, const Statement& statement, Points width);
Flow statements_flow(const CertificateSetting& set, const BuildCertificate& certificate,
                     std::size_t first, std::size_t end, Points width);
/// What is told openly; care and cautions, the maker's own words, words kept apart; what the levels
/// mean. One flow for each part that has something to say, in this order.
std::vector<Flow> fact_parts(const CertificateSetting& set, const BuildCertificate& certificate,
                             Spread spread, Points width);

/// Two columns of facts and statements, each set to its own width.
struct ColumnWidths {
  Points left = 0;
  Points right = 0;
};
struct FactColumns {
  bool heading_across = false;  ///< the statements begin at the left, under a heading over both
  Flow left;
  Flow right;
};
/// The facts at the left and the statements at the right, where both are of like height; else
/// such that the higher column is the lowest: with the last facts under the statements, or with the
/// statements beginning at the left and going on at the head of the right column.
FactColumns fact_columns(const CertificateSetting& set, const BuildCertificate& certificate,
                         bool opens_with_hardness, const ColumnWidths& widths);
/// The heading of the statements.
Flow stated_heading(const CertificateSetting& set, Points width);

/// An outline of a blade in a box, heel at the left, edge below.
std::vector<Place> blade_outline(const Box& box);

/// The head of the first page: mark, names, number of the blade, issue.
Block certificate_head(const CertificateSetting& set, const BuildCertificate& certificate,
                       Points width);
/// The photograph in its frame, or a drawn place for it.
Block photo_part(const CertificateSetting& set, const BuildCertificate& certificate, Points width,
                 Points height);
/// The seal, as high as it needs.
Block seal_part(const CertificateSetting& set, const BuildCertificate& certificate, Points width);

}  // namespace tangmark::reports
