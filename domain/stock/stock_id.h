// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/id.h"

namespace tangmark::stock {

using LotId = Id<struct LotTag>;
using PieceId = Id<struct PieceTag>;
using CutId = Id<struct CutTag>;
using ReservationId = Id<struct ReservationTag>;
using BilletId = Id<struct BilletTag>;
using BilletPartId = Id<struct BilletPartTag>;
using WeldStageId = Id<struct WeldStageTag>;
using MeltId = Id<struct MeltTag>;
using ConsumableUseId = Id<struct ConsumableUseTag>;
using BathId = Id<struct BathTag>;

}  // namespace tangmark::stock
