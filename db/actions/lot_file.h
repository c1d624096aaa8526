// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "domain/stock/lot.h"

namespace tangmark::db {

/// The photo of the mark and the scanned document that came with a lot.
struct LotFiles {
  std::optional<Form::File> photo, document;
};

/// Reads the fields `photo` and `document_file`. A photo that is no picture and a document that is
/// neither a PDF nor a picture are problems of the form.
LotFiles read_lot_files(Form& form);
/// Stores them in the shop file, tied to the lot.
void keep_lot_files(Work& work, const LotFiles& files, stock::LotId lot);

}  // namespace tangmark::db
