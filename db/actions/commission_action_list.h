// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

// In the order of a job.
extern const Action new_customer;
extern const Action new_commission;
extern const Action note_contact;
extern const Action add_model;
extern const Action add_model_step;
extern const Action add_model_use;
extern const Action accept_estimate;
extern const Action add_price_extra;
extern const Action choose_option;
extern const Action add_item;
extern const Action change_item;
extern const Action sell_stock_knife;
extern const Action make_quote;
extern const Action send_quote;
extern const Action accept_quote;
extern const Action decline_quote;
extern const Action take_deposit;
extern const Action promise_date;
extern const Action confirm_specification;
extern const Action tell_delay;
extern const Action record_consent;
extern const Action hold;
extern const Action release_hold;
extern const Action send_outside;
extern const Action back_from_outside;
extern const Action make_ready;
extern const Action issue_invoice;
extern const Action take_balance;
extern const Action deliver;
extern const Action cancel_commission;
extern const Action refund;
extern const Action correct_payment;
extern const Action note_rate;
extern const Action note_aftercare;
extern const Action erase_customer;

}  // namespace tangmark::db
