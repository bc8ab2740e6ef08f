// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStackedWidget>

namespace ui {

/// The page in this slot; `make` puts one there when there is none.
template <class P, class Make>
P& madeOnce(P*& slot, QStackedWidget* stack, Make make) {
    if (!slot) {
        slot = make();
        stack->addWidget(slot);
    }
    return *slot;
}

/// With all that was typed and shown there; the next who wants it gets a new one.
template <class P>
void forgetMade(P*& slot) {
    delete std::exchange(slot, nullptr);
}

}  // namespace ui
