// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/id.h"

namespace tangmark::commission {

using CustomerId = Id<struct CustomerTag>;
using CommissionId = Id<struct CommissionTag>;
using ContactId = Id<struct ContactTag>;
using ModelId = Id<struct ModelTag>;
using ModelStepId = Id<struct ModelStepTag>;
using ModelUseId = Id<struct ModelUseTag>;
/// An item is also named by this number on cards and at a terminal: items are never removed.
using ItemId = Id<struct ItemTag>;
using ItemChangeId = Id<struct ItemChangeTag>;
using QuoteId = Id<struct QuoteTag>;
using QuoteLineId = Id<struct QuoteLineTag>;
using PaymentId = Id<struct PaymentTag>;
using InvoiceId = Id<struct InvoiceTag>;
using PromiseId = Id<struct PromiseTag>;
using DelayNoticeId = Id<struct DelayNoticeTag>;
using HoldId = Id<struct HoldTag>;
using OutsideWorkId = Id<struct OutsideWorkTag>;
using AftercareId = Id<struct AftercareTag>;

}  // namespace tangmark::commission
