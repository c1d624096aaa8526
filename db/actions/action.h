// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "domain/steel/step_advice.h"

namespace tangmark::db {

/// What a field of an action holds; tells a form which control and a terminal which example to
/// show.
enum class FieldKind {
  text,
  long_text,
  secret,
  choice,
  yes_no,
  number,
  share,
  money,
  date,
  instant,
  duration,
  temperature,
  temperature_step,
  length,
  mass,
  volume,
  file,
  commission,
  item,
  blade,
  lot,
  piece,
  billet,
  kiln,
  firing,
  bath,
  model,
  customer,
  finding,
  certificate,
  operation
};

/// One thing an action asks for.
struct Field {
  std::string_view name;   ///< what is typed at a terminal: "melt_number"
  std::string_view label;  ///< what a form shows: "Melt number"
  FieldKind kind = FieldKind::text;
  bool required = false;
  std::string_view help = {};      ///< one short sentence or example
  std::string_view fallback = {};  ///< what is taken when nothing is given; empty for none
  std::vector<std::string_view> choices = {};  ///< of FieldKind::choice
};

/// What was typed, by field name.
using Given = std::map<std::string, std::string, std::less<>>;

/// What an action did.
struct ActionResult {
  std::string number;                 ///< number or tag of what was made; may be empty
  std::vector<std::string> warnings;  ///< sentences; the work was done all the same
  /// What the steel desk says about it; what to heed is also warned of.
  std::vector<steel::Advice> advice{};
};

class Work;
class Form;

/// One thing a maker does: one file, one transaction. Every action also takes `at` (when it really
/// happened; now when not given), `override` (why a catch of the trade is set aside) and `note_why`
/// (the reason kept in history).
struct Action {
  std::string_view name;
  std::string_view summary;  ///< "Receive one purchase of one material."
  std::vector<Field> fields;
  std::function<Outcome<ActionResult>(Work&, Form&)> run;
};

/// All actions, in the order of a job from enquiry to aftercare.
std::span<const Action* const> all_actions();
/// The action of a name, or nullptr.
const Action* find_action(std::string_view name);

/// Does an action as one transaction. When it is refused nothing has changed, and every problem
/// names its field. Fields that the action does not know are refused. Throws Failure when the
/// machine fails; then, too, nothing has changed.
Outcome<ActionResult> perform(ShopFile& shop, const Action& action, const Given& given,
                              Instant now);
Outcome<ActionResult> perform(ShopFile& shop, std::string_view action, const Given& given,
                              Instant now);

/// Holds one transaction open around many actions (a demo shop, an import), each of which is then a
/// step in it. Destroying it without keep() undoes them all.
class Batch {
 public:
  explicit Batch(ShopFile& shop);
  ~Batch();
  void keep();

 private:
  ShopFile& shop_;
  bool open_ = true;
};

}  // namespace tangmark::db
