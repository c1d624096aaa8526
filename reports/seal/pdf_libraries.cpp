// SPDX-License-Identifier: MIT
#include "reports/seal/pdf_libraries.h"

#include <dlfcn.h>

#include <filesystem>

#include "reports/page_failure.h"

namespace tangmark::reports {
namespace {

// Looked for by its whole path: a search by name would follow the path of whoever calls dlopen,
// and under a sanitizer that is not the program.
const PdfLibraries* loaded() {
  const auto part = std::filesystem::canonical("/proc/self/exe").parent_path() / TANGMARK_PDF_PART;
  // Never closed: the functions are called until the program ends.
  void* const library = dlopen(part.c_str(), RTLD_NOW | RTLD_LOCAL);
  const void* const found =
      library == nullptr ? nullptr : dlsym(library, "tangmark_pdf_libraries");
  if (found == nullptr)
    throw PageFailure("A part of the program is missing or damaged: " + part.string() +
                      ". Install the program anew.");
  return static_cast<const PdfLibraries*>(found);
}

}  // namespace

const PdfLibraries& pdf_libraries() {
  static const PdfLibraries* const libraries = loaded();
  return *libraries;
}

}  // namespace tangmark::reports
