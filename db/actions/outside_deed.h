// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

namespace tangmark::db {

/// Something that a running action did outside the shop file, such as writing a key file, and how
/// it is taken back. It is taken back when the transaction of the action is not kept: by a refusal,
/// a failure of the machine, or a commit that does not come through.
void undo_unless_kept(std::function<void()> undo);

}  // namespace tangmark::db
