// SPDX-License-Identifier: MIT
#include "db/store/attachment_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr const char* attachment_columns =
    "SELECT id, kind, name, media_type, taken_at, added_at, caption, subject, subject_id FROM "
    "attachment ";

Attachment attachment_from(const Query& row) {
  return {row.id<AttachmentId>("id"),
          row.text("kind"),
          row.text("name"),
          row.text("media_type"),
          row.maybe_instant("taken_at"),
          row.instant("added_at"),
          row.maybe_text("caption"),
          row.text("subject"),
          row.integer("subject_id")};
}

}  // namespace

std::vector<Attachment> attachments_of(const ShopFile& shop, std::string_view subject,
                                       std::int64_t id) {
  Query query(shop,
              std::string(attachment_columns) +
                  "WHERE subject = ? AND subject_id = ? ORDER BY coalesce(taken_at, added_at), id");
  query.bind(subject).bind(id);
  return all_rows(std::move(query), attachment_from);
}

std::vector<Attachment> photos_of_blade(const ShopFile& shop, std::int64_t blade_row) {
  Query query(shop, std::string(attachment_columns) +
                        "WHERE kind = 'photo' AND ((subject = 'blade' AND subject_id = ?1) OR "
                        "(subject = 'finding' "
                        "AND subject_id IN (SELECT id FROM finding WHERE blade_id = ?1))) "
                        "ORDER BY coalesce(taken_at, added_at), id");
  query.bind(blade_row);
  return all_rows(std::move(query), attachment_from);
}

std::optional<Attachment> load_attachment(const ShopFile& shop, AttachmentId id) {
  Query query(shop, std::string(attachment_columns) + "WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return attachment_from(query);
}

std::string bytes_of(const ShopFile& shop, AttachmentId id) {
  Query query(shop, "SELECT bytes FROM attachment WHERE id = ?");
  query.bind(id);
  return query.next() ? query.text("bytes") : std::string();
}

AttachmentId insert_attachment(const ShopFile& shop, const Attachment& attachment,
                               std::string bytes) {
  Row row("attachment");
  row.set("kind", attachment.kind)
      .set("name", attachment.name)
      .set("media_type", attachment.media_type);
  row.set_bytes("bytes", std::move(bytes)).set("taken_at", attachment.taken_at);
  row.set("added_at", attachment.added_at).set("caption", attachment.caption);
  row.set("subject", attachment.subject).set("subject_id", attachment.subject_id);
  return AttachmentId{row.insert(shop)};
}

}  // namespace tangmark::db
