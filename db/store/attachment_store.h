// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/id.h"
#include "domain/measure/when.h"

namespace tangmark::db {

using AttachmentId = Id<struct AttachmentTag>;

/// A file that came from outside, without its bytes.
struct Attachment {
  AttachmentId id;
  std::string kind;        ///< "photo", "document", "kiln record"
  std::string name;        ///< of the file it came from
  std::string media_type;  ///< "image/jpeg"
  std::optional<Instant> taken_at;
  Instant added_at;
  std::optional<std::string> caption;
  std::string subject;  ///< table of what it belongs to: "blade", "finding", "lot", "piece"
  std::int64_t subject_id;
};

/// What belongs to one row of one table, by the time taken, else added.
std::vector<Attachment> attachments_of(const ShopFile& shop, std::string_view subject,
                                       std::int64_t id);
/// Photos of a blade and of its findings.
std::vector<Attachment> photos_of_blade(const ShopFile& shop, std::int64_t blade_row);
std::optional<Attachment> load_attachment(const ShopFile& shop, AttachmentId id);
std::string bytes_of(const ShopFile& shop, AttachmentId id);
/// Adds one; its own id is not read.
AttachmentId insert_attachment(const ShopFile& shop, const Attachment& attachment,
                               std::string bytes);

}  // namespace tangmark::db
