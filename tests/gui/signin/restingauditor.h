// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "audit/auditor.h"

namespace ui {

/// For windows in which nobody verifies anything.
class RestingAuditor : public Auditor {
  public:
    base::Result<proof::KnownHead> headOfPaper(const std::string&) const override {
        return base::Error{base::Code::StoreDamaged};
    }
    base::Result<proof::KnownHead> headOfBackup(const std::string&) const override {
        return base::Error{base::Code::StoreDamaged};
    }
    base::Result<Run> begin(const proof::KnownHeads&) override {
        return base::Error{base::Code::StoreDamaged};
    }
};

}  // namespace ui
