// SPDX-License-Identifier: MIT
#pragma once

#include "reports/block.h"
#include "reports/build_certificate.h"
#include "reports/font_book.h"
#include "reports/type.h"

namespace tangmark::reports {

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
