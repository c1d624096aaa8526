// SPDX-License-Identifier: MIT
#pragma once

#include "domain/commission/commission.h"
#include "domain/commission/invoice.h"
#include "domain/commission/shop_settings.h"
#include "gui/desk/paper/paper.h"
#include "reports/quote_paper.h"

namespace tangmark::desk {

/// The buyer as papers address them; a buyer whose data was erased stays unnamed.
reports::Addressee buyer_of(const Press& press, const commission::KeptCommission& commission);
reports::TaxIn tax_in(commission::TaxMode mode);
std::vector<reports::TaxLine> taxes(Money tax, Share rate);

/// An issued receipt, invoice, correction or credit note, from its frozen body: a reprint says the
/// same whatever changed since, but for the buyer's address, which stays with the customer.
Outcome<reports::Document> issued_document(const Press& press,
                                           const commission::KeptCommission& commission,
                                           const commission::KeptInvoice& issued);

}  // namespace tangmark::desk
