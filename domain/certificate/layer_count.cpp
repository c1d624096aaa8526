// SPDX-License-Identifier: MIT
#include "domain/certificate/layer_count.h"

#include <algorithm>
#include <set>

#include "domain/certificate/phrasing.h"
#include "domain/certificate/trail.h"

namespace tangmark::certificate {
namespace {

constexpr std::int64_t most_layers = 1'000'000'000;

Problem refusal(const Billet& billet, const std::string& what, const std::string& remedy) {
  return {"billet " + billet.tag.text,
          "The layers of billet " + billet.tag.text + " cannot be counted: " + what + ".", remedy};
}

// The billet that a piece was cut from, if it was; nullptr for bars and ingots.
const Billet* billet_behind(const SteelTrail& steel, PieceTag tag) {
  std::set<PieceTag> seen;
  while (seen.insert(tag).second) {
    const Piece* piece = find(steel, tag);
    if (!piece) return nullptr;
    if (const auto* billet = std::get_if<BilletTag>(&piece->from)) return find(steel, *billet);
    const auto* parent = std::get_if<PieceTag>(&piece->from);
    if (!parent) return nullptr;
    tag = *parent;
  }
  return nullptr;
}

class Counting {
 public:
  explicit Counting(const SteelTrail& steel) : steel_(steel) {}

  Outcome<LayerCount> count(const Billet& billet) {
    if (!open_.insert(billet.tag).second)
      return refusal(billet, "it is made of itself", "Correct the pieces of its stack.");
    LayerCount result;
    for (const WeldStage& stage : billet.stages) {
      if (stage.work != StageWork::stack && result.layers == 0)
        return refusal(billet, "its log does not begin with a stack", "Log the first stack.");
      Outcome<LayerCount> next = after(billet, result, stage);
      if (!next) return next;
      result = std::move(next).value();
      if (result.layers > most_layers)
        return refusal(billet, "the count passes a thousand million", "Check folds and cuts.");
    }
    open_.erase(billet.tag);
    if (result.layers == 0) return refusal(billet, "no stack is logged", "Log the first stack.");
    return result;
  }

 private:
  Outcome<LayerCount> after(const Billet& billet, LayerCount now, const WeldStage& stage) {
    const auto say = [&](const std::string& words) {
      now.how += (now.how.empty() ? "" : ", ") + words;
    };
    switch (stage.work) {
      case StageWork::stack: {
        Outcome<std::int64_t> stack = stacked(billet, stage);
        if (!stack) return stack.problem();
        say("a stack of " + std::to_string(*stack));
        now.layers += *stack;
        break;
      }
      case StageWork::fold:
        say("folded");
        now.layers *= 2;
        break;
      case StageWork::cut:
        if (stage.pieces < 2)
          return refusal(billet, "a cut and restack names fewer than two pieces",
                         "Say how many pieces were stacked again.");
        say("cut in " + std::to_string(stage.pieces) + " and stacked");
        now.layers = std::min(now.layers, most_layers) * stage.pieces;
        break;
      case StageWork::twist:
        say("twisted");
        break;
      case StageWork::press_pattern:
        say("pattern pressed or cut in");
        break;
      case StageWork::weld:
      case StageWork::draw:
      case StageWork::crop:
        break;
    }
    return now;
  }

  Outcome<std::int64_t> stacked(const Billet& billet, const WeldStage& stage) {
    std::int64_t sum = 0;
    for (const StackPart& part : stage.parts) {
      if (part.count < 1)
        return refusal(billet, "piece " + part.piece.text + " is stacked with no layer",
                       "Say how many layers it gave.");
      std::int64_t each = 1;
      if (const Billet* inner = billet_behind(steel_, part.piece)) {
        Outcome<LayerCount> counted = count(*inner);
        if (!counted) return counted.problem();
        each = counted->layers;
      }
      sum += std::min(each, most_layers) * part.count;
      if (sum > most_layers)
        return refusal(billet, "the count passes a thousand million", "Check the stack.");
    }
    if (sum == 0) return refusal(billet, "a stack names no parts", "Log what was stacked.");
    return sum;
  }

  const SteelTrail& steel_;
  std::set<BilletTag> open_;
};

}  // namespace

Outcome<LayerCount> layer_count(const SteelTrail& steel, const Billet& billet) {
  return Counting(steel).count(billet);
}

}  // namespace tangmark::certificate
