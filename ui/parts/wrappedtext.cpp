// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/wrappedtext.h"

#include <QEvent>

namespace ui {

WrappedText::WrappedText(const QString& words) : QLabel(words) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
}

/// What is known of the words as they are now.
WrappedText::Known& WrappedText::known() const {
    ensurePolished();  // before that the letters are not those of the look
    const bool isSame = m_known.words == text() && m_known.letters == font() &&
                        m_known.margins == contentsMargins();
    if (!isSame) m_known = {text(), font(), contentsMargins(), {}, {}, {}};
    return m_known;
}

QSize WrappedText::sizeHint() const {
    Known& now = known();
    if (!now.size.isValid()) now.size = QLabel::sizeHint();
    return now.size;
}

QSize WrappedText::minimumSizeHint() const {
    Known& now = known();
    if (!now.least.isValid()) now.least = QLabel::minimumSizeHint();
    return now.least;
}

int WrappedText::heightForWidth(int width) const {
    Known& now = known();
    const auto at = now.heights.find(width);
    if (at != now.heights.end()) return at->second;
    return now.heights[width] = QLabel::heightForWidth(width);
}

/// A style may draw the same letters at another size.
void WrappedText::changeEvent(QEvent* event) {
    m_known = {};
    QLabel::changeEvent(event);
}

}  // namespace ui
