// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/errorstrip.h"

#include <QAccessible>
#include <QHBoxLayout>

#include "parts/parts.h"
#include "text/errortext.h"

namespace ui {

ErrorStrip::ErrorStrip(QWidget* parent) : QFrame(parent) {
    setProperty("part", QStringLiteral("brick"));
    setObjectName(QStringLiteral("errorStrip"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 12, 16, 12);
    row->setSpacing(12);
    QLabel* glyph = text(QStringLiteral("▲"), Size::Lead, Tone::Brick);
    glyph->setWordWrap(false);
    glyph->setAccessibleName(tr("Not done"));
    m_words = text({}, Size::Body);
    row->addWidget(glyph, 0, Qt::AlignTop);
    row->addWidget(m_words, 1);
    hide();
}

void ErrorStrip::say(const base::Error& error) { sayWords(ErrorText::of(error)); }

void ErrorStrip::sayWords(const QString& sentence) {
    m_words->setText(sentence);
    setAccessibleName(sentence);
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void ErrorStrip::clear() {
    m_words->clear();
    hide();
}

QString ErrorStrip::words() const { return m_words->text(); }

}  // namespace ui
