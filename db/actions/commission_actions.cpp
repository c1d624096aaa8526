// SPDX-License-Identifier: MIT
#include "db/actions/commission_action_list.h"
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> commission_actions() {
  return {&new_customer,
          &new_commission,
          &note_contact,
          &add_model,
          &add_model_step,
          &add_model_use,
          &accept_estimate,
          &add_price_extra,
          &choose_option,
          &add_item,
          &change_item,
          &sell_stock_knife,
          &make_quote,
          &send_quote,
          &accept_quote,
          &decline_quote,
          &take_deposit,
          &promise_date,
          &confirm_specification,
          &tell_delay,
          &record_consent,
          &hold,
          &release_hold,
          &send_outside,
          &back_from_outside,
          &make_ready,
          &issue_invoice,
          &take_balance,
          &deliver,
          &cancel_commission,
          &refund,
          &correct_payment,
          &note_rate,
          &note_aftercare,
          &erase_customer};
}

}  // namespace tangmark::db
