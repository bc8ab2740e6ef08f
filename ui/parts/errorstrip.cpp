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
    m_glyph = text(QStringLiteral("▲"), Size::Lead, Tone::Brick);
    m_glyph->setWordWrap(false);
    m_glyph->setAccessibleName(tr("Not done"));
    m_words = text({}, Size::Body);
    row->addWidget(m_glyph, 0, Qt::AlignTop);
    row->addWidget(m_words, 1);
    hide();
}

void ErrorStrip::say(const base::Error& error) { sayWords(ErrorText::of(error)); }

void ErrorStrip::sayWords(const QString& sentence) {
    m_isTold = false;
    setPart(this, "part", QStringLiteral("brick"));
    m_glyph->setVisible(true);
    showWords(sentence);
}

void ErrorStrip::tell(const QString& sentence) {
    m_isTold = true;
    setPart(this, "part", QStringLiteral("amber"));
    m_glyph->setVisible(false);
    showWords(sentence);
}

void ErrorStrip::clearTold() {
    if (m_isTold) clear();
}

void ErrorStrip::showWords(const QString& sentence) {
    m_words->setText(sentence);
    setAccessibleName(sentence);
    show();
    Q_EMIT told(true);
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void ErrorStrip::clear() {
    m_words->clear();
    hide();
    Q_EMIT told(false);
}

QString ErrorStrip::words() const { return m_words->text(); }

}  // namespace ui
