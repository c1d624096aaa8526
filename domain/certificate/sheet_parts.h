// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/certificate_sheet.h"

namespace tangmark::certificate {

/// The parts of a sheet that are read off the record rather than judged.
std::vector<TrailBoxLine> trail_boxes(const BladeCase& blade);
/// Why no trail can be drawn; empty when there is one.
std::string trail_note(const BladeCase& blade);
std::vector<AnalysisBlock> analysis_blocks(const BladeCase& blade);
/// "All inside the limits.", or what was not compared; empty without any analysis.
std::string analysis_note(const BladeCase& blade);
std::vector<HeatRow> heat_rows(const BladeCase& blade);
std::vector<RecordRow> record_rows(const BladeCase& blade);
/// What the drawn records show; empty when there are none.
std::string heat_note(const BladeCase& blade);
std::vector<HardnessRow> hardness_rows(const BladeCase& blade);
std::string hardness_note(const BladeCase& blade);
/// "Kitchen knife. Edge 240.5 mm, 51 mm high, 2.9 mm thick. Knife 187 g."
std::string knife_sentence(const Dossier& dossier);

}  // namespace tangmark::certificate
