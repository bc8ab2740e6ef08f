// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/recordview.h"

namespace desk {

const record::Visit* RecordView::visit() const {
    return record && openVisit ? record->visit(*openVisit) : nullptr;
}

const record::Learner* RecordView::learnerInView() const {
    return record && learner ? record->learner(*learner) : nullptr;
}

}  // namespace desk
