// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/dossier.h"
#include "reports/build_certificate.h"

namespace tangmark::desk {

/// The steel's family tree as boxes, from lots to the blade.
std::vector<reports::TrailBox> trail_boxes(const certificate::Dossier& dossier);
/// The analyses on file beside the limits of their grades.
std::vector<reports::Analysis> analyses_of(const certificate::Dossier& dossier);
/// "All inside the limits.", or which are not.
std::string analysis_note(const certificate::Dossier& dossier);

}  // namespace tangmark::desk
