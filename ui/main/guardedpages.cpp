// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/guardedpages.h"

#include <QFileInfo>

#include "audit/auditor.h"
#include "audit/auditpage.h"
#include "audit/knownfields.h"
#include "main/madeonce.h"
#include "main/verifying.h"
#include "parts/field.h"
#include "pieces/visitwords.h"
#include "render/words.h"
#include "signin/accountpage.h"
#include "signin/erasepage.h"
#include "signin/peoplepage.h"
#include "signin/signingpage.h"
#include "text/errortext.h"

namespace ui {

GuardedPages::GuardedPages(DoorWork& work, Auditor& auditor, desk::Desk& desk,
                           QStackedWidget& stack, QObject* parent)
    : QObject(parent), m_work(work), m_auditor(auditor), m_desk(desk), m_stack(stack) {}

bool GuardedPages::isOfAccount(const QWidget* page) const {
    for (const QWidget* one : std::initializer_list<const QWidget*>{m_account, m_people, m_audit})
        if (one && one == page) return true;
    return false;
}

bool GuardedPages::isSigning(const QWidget* page) const { return m_signing && m_signing == page; }

void GuardedPages::forget() {
    forgetMade(m_verifying);  // first: what it finds is told to the page
    forgetMade(m_account);
    forgetMade(m_people);
    forgetMade(m_signing);
    forgetMade(m_audit);
    forgetMade(m_erase);
}

AccountPage& GuardedPages::account() {
    return madeOnce(m_account, &m_stack, [this] {
        auto* page = new AccountPage(m_work);
        connect(page, &AccountPage::left, this, &GuardedPages::left);
        connect(page, &AccountPage::lockWanted, this, &GuardedPages::lockWanted);
        connect(page, &AccountPage::signOutWanted, this, &GuardedPages::signOutWanted);
        connect(page, &AccountPage::auditWanted, this, &GuardedPages::showAudit);
        connect(page, &AccountPage::peopleWanted, this, [this] {
            people().begin();
            Q_EMIT wanted(m_people);
        });
        return page;
    });
}

void GuardedPages::showAccount() {
    account().begin();
    Q_EMIT wanted(m_account);
}

PeoplePage& GuardedPages::people() {
    return madeOnce(m_people, &m_stack, [this] {
        auto* page = new PeoplePage(m_work);
        connect(page, &PeoplePage::left, this, [this] {
            Q_EMIT houseChanged();
            showAccount();
        });
        return page;
    });
}

SigningPage& GuardedPages::signing() {
    return madeOnce(m_signing, &m_stack, [this] {
        auto* page = new SigningPage(m_work);
        connect(page, &SigningPage::left, this, &GuardedPages::signingLeft);
        connect(page, &SigningPage::confirmed, this, &GuardedPages::confirmed);
        return page;
    });
}

void GuardedPages::showSigning(const ToSign& toSign) {
    signing().begin(toSign);
    Q_EMIT wanted(m_signing);
}

AuditPage& GuardedPages::audit() {
    return madeOnce(m_audit, &m_stack, [this] {
        auto* page = new AuditPage;
        connect(page, &AuditPage::left, this, &GuardedPages::showAccount);
        connect(page, &AuditPage::verifyWanted, this, &GuardedPages::verify);
        m_verifying = new Verifying(this);
        connect(page, &AuditPage::stopWanted, this, &GuardedPages::stopVerifying);
        connect(page, &AuditPage::putAway, this, &GuardedPages::stopVerifying);
        connect(m_verifying, &Verifying::ended, this, &GuardedPages::showVerified);
        connect(m_verifying, &Verifying::progressed, page, [this, page](quint64 looked) {
            page->showProgress(looked, m_desk.view().head.size);
        });
        return page;
    });
}

void GuardedPages::showAudit() {
    audit().begin();
    Q_EMIT wanted(m_audit);
    m_desk.noteUse(record::Use::ReadLog, {});
    showLooked();
}

void GuardedPages::showLooked() {
    const auto log = m_desk.useLog();
    if (m_audit->errors()->took(log)) m_audit->showLooked(*log);
}

/// What papers and backups know; nothing where the page says which of them is refused.
std::optional<proof::KnownHeads> GuardedPages::knownHeads() const {
    KnownFields& known = m_audit->known();
    proof::KnownHeads heads;
    for (WordsField* paper : known.papers()) {
        const auto head = m_auditor.headOfPaper(paper->words());
        if (!head) {
            known.refuse(*paper, ErrorText::of(head.error()));
            return std::nullopt;
        }
        heads.push_back(*head);
    }
    for (const QString& file : known.backups()) {
        const auto head = m_auditor.headOfBackup(file.toStdString());
        if (!head) {
            known.refuseBackups(tr("%1: %2", "a file: what is wrong with it")
                                    .arg(QFileInfo(file).fileName(), ErrorText::of(head.error())));
            return std::nullopt;
        }
        heads.push_back(*head);
    }
    return heads;
}

void GuardedPages::verify() {
    const auto heads = knownHeads();
    if (!heads) return;
    auto run = m_auditor.begin(*heads);
    if (!run) return m_audit->refuse(run.error());
    m_audit->setRunning(true);
    m_audit->showProgress(0, m_desk.view().head.size);
    m_verifying->start(std::move(*run));
}

/// The keys are at hand only while somebody looks at the page; so whoever locks, leaves or signs
/// out waits for the moment that it takes to stop.
void GuardedPages::stopVerifying() {
    if (!m_verifying || !m_verifying->isRunning()) return;
    m_verifying->stop();
    // Not now: the page may be on its way out, with all windows.
    QMetaObject::invokeMethod(m_audit, &AuditPage::showStopped, Qt::QueuedConnection);
}

void GuardedPages::showVerified(const base::Result<proof::Report>& report) {
    if (!report) return m_audit->refuse(report.error());
    m_audit->showResult(*report);
    m_desk.noteUse(record::Use::Verified, {});
    showLooked();
}

bool GuardedPages::mayErase() const {
    const auto who = m_work.door().who();
    return who && who->role != record::Role::Teacher;
}

ErasePage& GuardedPages::erasing() {
    return madeOnce(m_erase, &m_stack, [this] {
        auto* page = new ErasePage(m_work);
        connect(page, &ErasePage::left, this, &GuardedPages::erasingLeft);
        connect(page, &ErasePage::done, this, &GuardedPages::erased);
        return page;
    });
}

void GuardedPages::showErasing() {
    const auto& record = m_desk.view().record;
    if (!record) return;
    const auto& patient = record->patient;
    erasing().begin(record->id, tr("%1, born %2, number %3")
                                    .arg(render::plain(patient.name), bornWords(patient.born),
                                         render::isolated(render::plain(patient.number))));
    Q_EMIT wanted(m_erase);
}

}  // namespace ui
