// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/certificate/compose.h"
#include "domain/certificate/dossier.h"
#include "domain/measure/outcome.h"
#include "domain/stock/cutting_plan.h"
#include "reports/font_book.h"
#include "reports/page.h"
#include "reports/public_list.h"

/// Papers of the shop: what the record says, set as the pages that are printed and previewed. Each
/// refuses a thing that is not there, and text that the fonts cannot print, naming the field.
namespace tangmark::desk {

/// Everything a paper is made with.
struct Press {
  const db::ShopFile& shop;
  const reports::FontBook& fonts;
  Instant now;
};

/// The newest quote of a commission: price lines only.
Outcome<reports::Document> quote_paper(const Press& press, std::string_view commission);
/// The receipt of the newest deposit of a commission: the one issued last, else what one issued now
/// would say.
Outcome<reports::Document> receipt_paper(const Press& press, std::string_view commission);
/// The newest invoice, correction or credit note issued on a commission.
Outcome<reports::Document> invoice_paper(const Press& press, std::string_view commission);
/// Any issued paper about money by its own number.
Outcome<reports::Document> issued_paper(const Press& press, std::string_view number);
/// The letter of delay: the text given, else what the buyer was told last and has not answered,
/// else the draft. Refuses a commission that is not late and whose buyer was never told of a delay.
Outcome<reports::Document> delay_letter_paper(const Press& press, std::string_view commission,
                                              const std::optional<std::string>& text);
Outcome<reports::Document> traveller_paper(const Press& press, std::string_view blade);
Outcome<reports::Document> firing_sheet_paper(const Press& press, std::string_view firing);
/// The records of a firing: curves with the window as a band, and what they show blade by blade.
Outcome<reports::Document> record_paper(const Press& press, std::string_view firing);
/// A trial: each variable plotted against the outcome, and what that shows.
Outcome<reports::Document> trial_paper(const Press& press, std::string_view trial);
/// What needs hands on a day.
Outcome<reports::Document> day_list_paper(const Press& press, CalendarDate day);
/// The cuts of a lot for the queue, to scale, with boxes to tick. Refuses a lot of which nothing
/// lies free or nothing is wanted; the plan must be of that lot as it stands.
Outcome<reports::Document> cutting_sheet_paper(const Press& press, std::string_view lot,
                                               const stock::CuttingPlan& plan);
/// Labels of "lots", "pieces" or "blades" by number or tag; none named: all that are on hand or in
/// work.
Outcome<reports::Document> label_paper(const Press& press, std::string_view kind,
                                       const std::vector<std::string>& numbers);

/// A certificate that is not issued, DRAFT across it; made also of a blade that may not have one.
Outcome<reports::Document> draft_paper(const Press& press, const certificate::Dossier& dossier,
                                       const certificate::CertificateDraft& draft);

/// Every issue and every key, for the maker's site.
reports::PublicList public_list(const Press& press);

/// Firings and promises as a calendar file (RFC 5545).
Outcome<std::string> calendar_file(const Press& press);

}  // namespace tangmark::desk
