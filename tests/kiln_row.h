// SPDX-License-Identifier: MIT
#pragma once

#include "db/row.h"

namespace tangmark::test {

/// The row of a kiln of 3 kW for six blades of 450 mm; its id.
inline std::int64_t insert_kiln_row(const db::ShopFile& shop, const char* name) {
  return db::Row("kiln")
      .set("name", name)
      .set("kind", "kiln")
      .set("slots", 6)
      .set("usable_length_nm", Length::millimetres(450))
      .set("low_k1800", Temperature::celsius(100))
      .set("high_k1800", Temperature::celsius(1100))
      .set("heat_k1800_per_h", TemperatureDifference::celsius(900))
      .set("tau_s", 3 * 3600)
      .set("heat_w", 3000)
      .set("hold_mw_per_c", 900)
      .set("load_s", 300)
      .set("unload_s", 300)
      .set("currency", "EUR")
      .insert(shop);
}

}  // namespace tangmark::test
