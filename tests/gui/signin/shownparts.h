// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QtTest/QTest>

/// Driving a page by what can be seen of it.
namespace gui {

/// The visible part of this name; null when there is none.
template <class W>
W* shownPart(const QWidget& page, const QString& name) {
    W* found = nullptr;
    for (W* one : page.findChildren<W*>(name))
        if (one->isVisible()) found = one;
    return found;
}

/// Types this in the place of what stands there.
inline void typeInto(const QWidget& page, const char* name, const QString& words) {
    auto* edit = shownPart<QLineEdit>(page, QString::fromLatin1(name));
    ASSERT_TRUE(edit) << name;
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, words);
}

}  // namespace gui
