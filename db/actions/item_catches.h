// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/work.h"
#include "domain/commission/item.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// What is caught about the handle of an item: a watched species going abroad (18), another
/// customer's material (25).
Catches handle_catches(Work& work, const commission::Item& item);

/// What is caught when work on an item begins, at the first cut or when a blade is assigned:
/// deposit missing (20), specification not confirmed (26). Nothing for a stock knife or when work
/// has begun.
Catches catches_before_work(Work& work, const commission::KeptItem& item);

/// The commission of an item goes from accepted to in work. Refuses an item whose commission was
/// not accepted or is over, and a cancelled item.
Outcome<Done> begin_work(Work& work, const commission::KeptItem& item, std::string_view field);

/// What is caught when a piece is taken for an item: not there any more (3), another steel (4),
/// another customer's material (25).
Catches piece_catches(Work& work, const commission::KeptItem& item, const stock::KeptPiece& piece);

}  // namespace tangmark::db
