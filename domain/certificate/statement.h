// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "domain/certificate/claim.h"
#include "domain/certificate/evidence.h"

namespace tangmark::certificate {

/// One thing a certificate says, with what it rests on. The level is that of the weakest link.
struct Statement {
  Claim claim = Claim::unidentified;
  std::string text;
  Level level = Level::e;
  std::vector<Evidence> evidence;
  friend bool operator==(const Statement&, const Statement&) = default;
};

/// A statement whose level is computed from its evidence: the only way one is made.
inline Statement stated(Claim claim, std::string text, std::vector<Evidence> evidence) {
  const Level level = weakest(evidence);
  return {claim, std::move(text), level, std::move(evidence)};
}

/// A claim that the record does not bear, and each piece of evidence that it lacks.
struct Missing {
  Claim claim = Claim::unidentified;
  std::vector<std::string> needs;
  friend bool operator==(const Missing&, const Missing&) = default;
};

/// "a quench log with clay or an edge quench; a hamon seen after etch or polish".
std::string needs_text(const Missing& missing);

/// What the judge of one claim answers.
using Judgement = std::variant<Statement, Missing>;

inline bool holds(const Judgement& judgement) {
  return std::holds_alternative<Statement>(judgement);
}

/// A fact whose absence is said openly: "Sub-zero. Not done." It is printed with the rank of a
/// statement, and is not a claim.
struct Absence {
  Claim claim = Claim::unidentified;  ///< the claim that is not made
  std::string text;
  friend bool operator==(const Absence&, const Absence&) = default;
};

/// Why no certificate may be issued as things stand.
struct Refusal {
  std::string sentence;
  std::string remedy;
  std::optional<int> caught;  ///< number in the list of the 27 things to catch, where it is there
  friend bool operator==(const Refusal&, const Refusal&) = default;
};

}  // namespace tangmark::certificate
