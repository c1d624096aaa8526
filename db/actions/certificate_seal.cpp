// SPDX-License-Identifier: MIT
#include "db/actions/certificate_seal.h"

#include "db/store/signing_key_store.h"

namespace tangmark::db {
namespace {

CertificatePrinter& held_printer() {
  static CertificatePrinter held;
  return held;
}

KeySmith& held_smith() {
  static KeySmith held;
  return held;
}

void refuse_retired(Work& work, Form& form, const std::string& fingerprint) {
  for (const KeptSigningKey& key : signing_keys(work.shop())) {
    if (key.fingerprint != fingerprint) continue;
    if (key.retired_at)
      form.add({"key_file", "This key was retired: " + key.retired_why.value_or("") + ".",
                "Make a new one with make_key."});
    return;
  }
}

std::optional<std::string> key_file_asked(Work& work, Form& form) {
  if (const auto named = form.maybe_file("key_file")) {
    const auto fingerprint = key_smith().fingerprint(named->bytes);
    if (!fingerprint) {
      form.add(fingerprint.problem());
      return std::nullopt;
    }
    refuse_retired(work, form, *fingerprint);
    return named->bytes;
  }
  const auto key = present_key(work.shop());
  if (!key || form.refused()) return std::nullopt;
  if (key->key_file) return key->key_file;
  form.add({"key_file",
            "The shop's key is kept in a file of its own" +
                (key->kept_at ? ", " + *key->kept_at : std::string()) + ".",
            "Name the file, or issue it without a seal."});
  return std::nullopt;
}

}  // namespace

void set_certificate_printer(CertificatePrinter given) { held_printer() = std::move(given); }
const CertificatePrinter& certificate_printer() { return held_printer(); }
void set_key_smith(KeySmith given) { held_smith() = std::move(given); }
const KeySmith& key_smith() { return held_smith(); }

std::optional<std::string> passphrase_in(Form& form) {
  const auto typed = form.maybe_text("passphrase");
  const auto file = form.maybe_file("passphrase_file");
  if (typed) return typed;
  if (!file) return std::nullopt;
  std::string words = file->bytes;
  if (words.ends_with('\n')) words.pop_back();
  if (words.ends_with('\r')) words.pop_back();
  return words;
}

std::optional<SealWith> seal_asked(Work& work, Form& form) {
  const bool without = form.yes("unsigned");
  const auto passphrase = passphrase_in(form);
  if (without && !form.has("key_file")) return std::nullopt;
  const auto key_file = key_file_asked(work, form);
  if (!key_file) {
    if (passphrase && !form.refused())
      form.add({"passphrase", "A passphrase is given, but there is no key that it opens.",
                "Make a key with make_key, or name its file."});
    return std::nullopt;
  }
  // A key that is not locked is refused where it is opened, in a sentence of its own.
  if (!passphrase && key_file->find("BEGIN ENCRYPTED PRIVATE KEY") != std::string::npos)
    form.add(
        {"passphrase", "The key is locked.", "Give its passphrase, or issue it without a seal."});
  return SealWith{*key_file, passphrase.value_or("")};
}

}  // namespace tangmark::db
