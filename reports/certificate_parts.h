// SPDX-License-Identifier: MIT
#pragma once

#include "reports/block.h"
#include "reports/build_certificate.h"
#include "reports/font_book.h"
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
/// What is told openly; care, cautions and the maker's own words; what the levels mean.
Flow told_part(const CertificateSetting& set, const BuildCertificate& certificate, Points width);
Flow care_part(const CertificateSetting& set, const BuildCertificate& certificate, Points width);
Flow legend_part(const CertificateSetting& set, const BuildCertificate& certificate, Spread spread,
                 Points width);

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
