// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "pieces/learnersees.h"
#include "pieces/moment.h"

namespace ui {

/// Cuts the visit down to what its learner may see now.
class LearnerFeed : public LearnerSource {
    Q_OBJECT
  public:
    LearnerFeed(desk::Desk& desk, QObject* parent);
    LearnerSees sees() const override;

  private:
    LearnerSees::Say sayNow(const Moment& moment) const;

    desk::Desk& m_desk;
};

}  // namespace ui
