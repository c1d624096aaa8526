// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "domain/certificate/compose.h"
#include "domain/certificate/dossier.h"

// Invented blades whose records are complete, so that a test can take one piece of evidence away.
namespace tangmark::certificate::sample {

/// 7 November 2026, this clock time, in UTC.
Instant clock(int hours, int minutes = 0);

/// A kitchen knife cut and ground from a bar of 1095 bought by label; two tempers; 61 HRC measured.
Dossier bar_blade();
/// The same bar with clay, water quench, and a hamon seen after polish.
Dossier hamon_blade();
/// Forged from a billet of 1084 and 15N20 that was welded here: 11 layers, cut in 3, cut in 4.
Dossier pattern_blade();
/// Ground from a pattern-welded bar that was bought; the supplier states 300 layers.
Dossier bought_pattern_blade();
/// Core of 52100 between sides of soft iron, welded here.
Dossier laminated_blade();
/// Forged from an ingot melted here in a crucible, carbide pattern seen after etch.
Dossier wootz_blade();
/// Forged from a bar of 52100, cycled and etched until its bands show.
Dossier banded_blade();
/// Forged from steel smelted here from ore.
Dossier smelted_blade();
/// Ground from the bar of 1095, an image etched through a stencil.
Dossier image_blade();
/// Ground from a stainless bar with an inspection document, hardened in plates, -196 C for two
/// hours.
Dossier stainless_blade();
/// Ground from a coil spring that nobody answers for.
Dossier spring_blade();

/// The sample of a name used in tables: "bar", "hamon", "pattern", "bought", "laminated", "wootz",
/// "banded", "smelted", "image", "stainless", "spring".
Dossier blade_called(std::string_view name);

/// A log line with the next number.
BenchEntry& add(Dossier& dossier, Operation operation, Instant from, Instant to);
/// The line of an operation; the first, counted from 0.
BenchEntry& line(Dossier& dossier, Operation operation, int which = 0);
void drop(Dossier& dossier, Operation operation);

const Statement* statement(const CertificateDraft& draft, Claim claim);
const Missing* missing(const CertificateDraft& draft, Claim claim);
/// Composes with the claim asked for.
CertificateDraft asked(Dossier dossier, Claim claim);
bool granted(const Dossier& dossier, Claim claim);
/// Whether the claim is refused with a need that holds these words.
bool refused(const Dossier& dossier, Claim claim, std::string_view need);
bool blocked(const Dossier& dossier, std::string_view words);
bool told(const Dossier& dossier, std::string_view words);

}  // namespace tangmark::certificate::sample
