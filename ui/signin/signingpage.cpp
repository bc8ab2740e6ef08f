// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/signingpage.h"

#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "render/words.h"
#include "signin/doorwork.h"
#include "signin/passphrasefield.h"
#include "signin/waitstrip.h"

namespace ui {

SigningPage::SigningPage(DoorWork& work, QWidget* parent)
    : Page(QStringLiteral("signing"), parent),
      m_work(work),
      m_passphrase(new PassphraseField(tr("Your passphrase, once for all of it"),
                                       QStringLiteral("signing.passphrase"))) {
    column()->addWidget(pageHeader(
        tr("Sign with your passphrase"),
        tr("A signature is never undone. What is recorded later is shown as new since then.")));
    m_what = cardIn(column(), {});
    m_who = cardIn(column(), {});
    QVBoxLayout* secret = cardIn(column(), {});
    secret->addWidget(m_passphrase);
    secret->addWidget(new WaitStrip(work));
    QPushButton* back = addSecondary(tr("Back, nothing is signed"), QStringLiteral("signing.back"));
    setPrimary(tr("Sign"));
    connect(back, &QPushButton::clicked, this, [this] {
        m_passphrase->clear();
        Q_EMIT left();
    });
    connect(this, &Page::pressed, this, &SigningPage::confirm);
    connect(&work, &DoorWork::changed, this, [this] { primary()->setEnabled(m_work.isFree()); });
}

void SigningPage::begin(const ToSign& toSign) {
    forgetFocus();
    errors()->clear();
    m_passphrase->clear();
    m_work.tick();
    primary()->setEnabled(m_work.isFree() && !toSign.lines.isEmpty());
    fill(toSign);
    scrollToTop();
}

void SigningPage::fill(const ToSign& toSign) {
    empty(m_what);
    empty(m_who);
    m_what->addWidget(text(tr("You sign this"), Size::Lead, Tone::Ink, Weight::Strong));
    for (const QString& line : toSign.lines) {
        auto* words = text(QStringLiteral("•  ") + line);
        words->setObjectName(QStringLiteral("signing.line"));
        m_what->addWidget(words);
    }
    const auto who = m_work.door().who();
    if (who)
        m_who->addWidget(text(tr("%1 (%2), %3", "name, initials, role")
                                  .arg(who->name, who->initials, render::roleWords(who->role)),
                              Size::Lead, Tone::Ink, Weight::Strong));
    m_who->addWidget(text(toSign.meaning));
    const base::Instant& when = toSign.when;
    m_who->addWidget(text(tr("%1, %2", "date with time, offset from UTC")
                              .arg(render::momentWords(when.wallMs, when.offsetMinutes, QLocale()),
                                   render::offsetWords(when.offsetMinutes)),
                          Size::Body, Tone::Quiet));
}

void SigningPage::confirm() {
    if (!m_work.isFree() || !primary()->isEnabled()) return;
    if (!m_passphrase->checkTyped()) return scrollTo(m_passphrase);
    errors()->clear();
    m_work.ask(this, m_work.door().confirm(m_passphrase->take()),
               [this](const base::Outcome& outcome) {
                   if (outcome.ok()) return Q_EMIT confirmed();
                   m_passphrase->refuse(outcome.error());
                   scrollTo(m_passphrase);
                   if (outcome.error().code != base::Code::SealWrongPassphrase)
                       errors()->say(outcome.error());
               });
}

}  // namespace ui
