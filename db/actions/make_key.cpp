// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

#include "db/actions/certificate_action_list.h"
#include "db/actions/certificate_seal.h"
#include "db/actions/outside_deed.h"
#include "db/row.h"
#include "db/store/signing_key_store.h"

namespace tangmark::db {
namespace {

constexpr std::size_t shortest_passphrase = 8;  // common practice, no source

const Field passphrase_field{"passphrase", "Passphrase", FieldKind::secret, false,
                             "eight characters or more; kept nowhere"};
const Field passphrase_file_field{"passphrase_file", "Passphrase in a file", FieldKind::file, false,
                                  "instead of typing it"};
const Field years_field{"years", "Good for years", FieldKind::number, false, "1 to 30", "10"};
const Field write_field{"file", "Write the key to", FieldKind::text, false,
                        "a new file, such as on a stick; else it stays locked in the shop file"};

Instant years_after(Instant from, std::int64_t years) {
  return from + std::chrono::hours(24) * 36525 / 100 * years;
}

Outcome<ActionResult> no_smith() {
  return Problem{"passphrase", "This program was started without what makes keys.",
                 "Make the key from the window or the terminal."};
}

std::optional<std::string> new_passphrase(Form& form) {
  const auto passphrase = passphrase_in(form);
  if (!passphrase)
    form.add({"passphrase", "The key needs a passphrase that locks it.",
              "Choose a sentence that you will remember, and write it down where you keep papers "
              "of value."});
  else if (passphrase->size() < shortest_passphrase)
    form.add(
        {"passphrase", "The passphrase is shorter than eight characters.", "Choose a sentence."});
  return passphrase;
}

void check_place(Form& form, const std::optional<std::string>& place) {
  std::error_code error;
  if (place && std::filesystem::exists(*place, error))
    form.add({"file", "There is a file " + *place + " already.",
              "Choose a new name; nothing is written over."});
}

// The whole key is on the disk before the shop file says that it is there, and is taken away again
// when the shop file does not keep it. From its first byte on nobody but the maker may read it, and
// a file that is there already is never written over.
Outcome<Done> write_key(const std::string& place, const std::string& key_file) {
  const Problem refused{"file", "The file " + place + " cannot be written.",
                        "Check that its folder exists and may be written."};
  const int file =
      ::open(place.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
  if (file < 0) return refused;
  const auto written = ::write(file, key_file.data(), key_file.size());
  const bool whole = written == static_cast<ssize_t>(key_file.size()) && ::fsync(file) == 0;
  if (::close(file) != 0 || !whole) {
    ::unlink(place.c_str());
    return refused;
  }
  undo_unless_kept([place] { ::unlink(place.c_str()); });
  return Done{};
}

Outcome<ActionResult> keep(Work& work, const MadeKey& made,
                           const std::optional<std::string>& place) {
  Row row("signing_key");
  row.set("fingerprint", made.fingerprint)
      .set("owner", made.owner)
      .set("made_at", work.now())
      .set("valid_from", made.from)
      .set("valid_to", made.to)
      .set("kept_at", place);
  if (!place) row.set("key_file", made.key_file);
  if (place)
    if (auto done = write_key(*place, made.key_file); !done) return done.problems();
  row.insert(work.shop());
  work.warn("Fingerprint " + made.fingerprint +
            ". Publish it (site, card): a buyer compares it with the one on a certificate.");
  work.warn(
      "Nobody can find a lost passphrase. If key or passphrase is lost, retire the key and make a "
      "new one; certificates sealed "
      "before stay good, since each carries what checks it.");
  work.warn(place ? "Keep a copy of " + *place + " apart from this machine."
                  : "The locked key is in the shop file and in its backups.");
  return work.done(made.fingerprint.substr(0, 16));
}

Outcome<ActionResult> make(Work& work, Form& form) {
  const auto passphrase = new_passphrase(form);
  const auto place = form.maybe_text("file");
  const auto years = form.whole("years", 1, 30);
  check_place(form, place);
  if (const auto key = present_key(work.shop()))
    form.add({"passphrase", "The shop has a key already, " + key->fingerprint.substr(0, 16) + ".",
              "Renew it with renew_key, or retire it first with retire_key."});
  if (form.refused()) return form.problems();
  if (!key_smith().make) return no_smith();
  const auto& settings = work.settings();
  return keep(work,
              key_smith().make(settings.maker_name, settings.shop_name, *passphrase, work.now(),
                               years_after(work.now(), years)),
              place);
}

Outcome<ActionResult> renew(Work& work, Form& form) {
  const auto named = form.maybe_file("key_file");
  const auto passphrase = passphrase_in(form);
  const auto place = form.maybe_text("file");
  const auto years = form.whole("years", 1, 30);
  check_place(form, place);
  const auto key = present_key(work.shop());
  if (!key)
    form.add({"key_file", "The shop has no key to renew.", "Make one with make_key."});
  else if (!named && !key->key_file)
    form.add({"key_file", "The shop's key is kept in a file of its own.", "Name the file."});
  else if (!named && place)
    form.add({"file", "The shop's key stays in the shop file.", "Leave the file out."});
  else if (named && !place)
    form.add({"file", "The renewed key needs a new file.",
              "Say where to write it; the old file may then be thrown away."});
  if (!passphrase) form.add({"passphrase", "The key is locked.", "Give its passphrase."});
  if (form.refused()) return form.problems();
  if (!key_smith().renew) return no_smith();
  const auto made = key_smith().renew({named ? named->bytes : *key->key_file, *passphrase},
                                      work.now(), years_after(work.now(), years));
  if (!made) return made.problems();
  if (made->fingerprint != key->fingerprint)
    return Problem{"key_file", "The file holds another key than the shop's.",
                   "Name the file of the key " + key->fingerprint.substr(0, 16) + "."};
  return keep(work, *made, place);
}

Outcome<ActionResult> retire(Work& work, Form& form) {
  const auto given = form.text("key");
  const auto why = form.text("reason");
  if (form.refused()) return form.problems();
  const auto key = find_key(work.shop(), given, "key");
  if (!key) return key.problems();
  if (key->retired_at)
    return Problem{"key", "This key is retired already.", "Nothing is left to do."};
  for (const KeptSigningKey& each : signing_keys(work.shop()))
    if (each.fingerprint == key->fingerprint && !each.retired_at)
      Row("signing_key")
          .set("retired_at", work.now())
          .set("retired_why", why)
          .update(work.shop(), each.id.row());
  work.warn(
      "Nothing more is sealed with this key. Certificates sealed before stay good; if somebody "
      "else may have the key, say so beside "
      "the fingerprint that you publish and issue anew what matters.");
  return work.done(key->fingerprint.substr(0, 16));
}

}  // namespace

const Action make_key{"make_key",
                      "Make the shop's own key, which seals certificates.",
                      {passphrase_field, passphrase_file_field, write_field, years_field},
                      make};
const Action renew_key{"renew_key",
                       "Give the shop's key further years; its fingerprint stays.",
                       {passphrase_field,
                        passphrase_file_field,
                        {"key_file", "Key file", FieldKind::file, false,
                         "where the key is kept, if not in the shop file"},
                        write_field,
                        years_field},
                       renew};
const Action retire_key{
    "retire_key",
    "Retire a key that is lost, known to others or replaced; nothing more is sealed with it.",
    {{"key", "Key", FieldKind::text, true, "the first digits of its fingerprint"},
     {"reason", "Why", FieldKind::text, true, "the passphrase is lost"}},
    retire};

}  // namespace tangmark::db
