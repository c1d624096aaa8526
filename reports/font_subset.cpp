// SPDX-License-Identifier: MIT
#include "reports/font_subset.h"

#include <hb-subset.h>
#include <hb.h>

#include <memory>

#include "reports/page_failure.h"

namespace tangmark::reports {

namespace {

template <class T, void (*destroy)(T*)>
struct Destroy {
  void operator()(T* held) const { destroy(held); }
};
using Blob = std::unique_ptr<hb_blob_t, Destroy<hb_blob_t, hb_blob_destroy>>;
using FontFace = std::unique_ptr<hb_face_t, Destroy<hb_face_t, hb_face_destroy>>;
using SubsetInput =
    std::unique_ptr<hb_subset_input_t, Destroy<hb_subset_input_t, hb_subset_input_destroy>>;

}  // namespace

std::string font_subset(const std::string& path, const std::set<char32_t>& characters) {
  const PageFailure failure("The font file " + path +
                            " cannot be read; install its package again.");
  const Blob file(hb_blob_create_from_file_or_fail(path.c_str()));
  if (!file) throw failure;
  const FontFace whole(hb_face_create(file.get(), 0));
  const SubsetInput input(hb_subset_input_create_or_fail());
  if (!input) throw failure;
  for (const char32_t c : characters) hb_set_add(hb_subset_input_unicode_set(input.get()), c);
  hb_set_clear(hb_subset_input_set(input.get(), HB_SUBSET_SETS_LAYOUT_FEATURE_TAG));
  for (const hb_tag_t table :
       {HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'D', 'E', 'F')}) {
    hb_set_add(hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG), table);
  }
  hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_NO_HINTING);
  const FontFace cut(hb_subset_or_fail(whole.get(), input.get()));
  if (!cut) throw failure;
  const Blob bytes(hb_face_reference_blob(cut.get()));
  unsigned size = 0;
  const char* data = hb_blob_get_data(bytes.get(), &size);
  return {data, size};
}

}  // namespace tangmark::reports
