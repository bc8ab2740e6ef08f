// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/auditpage.h"

#include <QAccessible>
#include <QHideEvent>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "audit/auditwords.h"
#include "audit/knownfields.h"
#include "audit/lookedtables.h"
#include "parts/parts.h"
#include "seal/papercode.h"

namespace ui {
namespace {

constexpr int mostShownFindings = 200;  // more are counted, not listed
constexpr int mostSteps = 1000;         // of the bar

}  // namespace

AuditPage::AuditPage(QWidget* parent)
    : Page(QStringLiteral("audit"), parent), m_known(new KnownFields) {
    column()->addWidget(pageHeader(
        tr("Is the record whole?"),
        tr("Holds every entry against all others and against what is known from outside. What "
           "nobody outside ever knew of can be cut off unseen: keep papers and backups.")));
    m_result = cardIn(column(), {});
    m_result->parentWidget()->setObjectName(QStringLiteral("audit.result"));
    cardIn(column(), {})->addWidget(m_known);
    m_looked = std::make_unique<LookedTables>(column());
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("audit.back"));
    setPrimary(tr("Verify now"));
    addStop();
    connect(back, &QPushButton::clicked, this, &AuditPage::left);
    connect(this, &Page::pressed, this, [this] {
        errors()->clear();
        m_known->refuseBackups({});
        if (m_known->check()) Q_EMIT verifyWanted();
    });
    begin();
}

AuditPage::~AuditPage() = default;

void AuditPage::addStop() {
    m_stop = addSecondary(tr("Cancel"), QStringLiteral("audit.stop"));
    m_stop->hide();
    connect(m_stop, &QPushButton::clicked, this, &AuditPage::stopWanted);
}

void AuditPage::begin() {
    errors()->clear();
    m_known->begin();
    setRunning(false);
    sayOnly(tr("Not verified since this page was opened."));
}

void AuditPage::sayOnly(const QString& sentence) {
    m_progress = nullptr;
    m_bar = nullptr;
    empty(m_result);
    m_result->addWidget(text(sentence, Size::Body, Tone::Quiet));
}

void AuditPage::setRunning(bool isRunning) {
    const bool hadFocus = primary()->hasFocus() || m_stop->hasFocus();
    primary()->setEnabled(!isRunning);
    setPrimary(isRunning ? tr("Verifying…") : tr("Verify now"));
    m_stop->setVisible(isRunning);
    if (hadFocus) (isRunning ? m_stop : primary())->setFocus();
}

void AuditPage::showProgress(std::uint64_t looked, std::uint64_t all) {
    if (!m_bar) {
        empty(m_result);
        m_progress = text({}, Size::Body);
        m_progress->setObjectName(QStringLiteral("audit.progress"));
        m_bar = new QProgressBar;
        m_bar->setObjectName(QStringLiteral("audit.bar"));
        m_bar->setAccessibleName(tr("How far it is"));
        m_bar->setTextVisible(false);
        m_bar->setRange(0, mostSteps);
        m_result->addWidget(m_progress);
        m_result->addWidget(m_bar);
    }
    const std::uint64_t most = std::max<std::uint64_t>({looked, all, 1});
    m_bar->setValue(static_cast<int>(looked * mostSteps / most));
    const QLocale locale;
    m_progress->setText(
        tr("%1 of %2 entries looked at").arg(locale.toString(looked), locale.toString(most)));
}

void AuditPage::showStopped() {
    setRunning(false);
    sayOnly(tr("Stopped before its end: nothing can be said of the record."));
}

/// A window that is only minimised is still open.
void AuditPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (!event->spontaneous()) Q_EMIT putAway();
}

void AuditPage::refuse(const base::Error& error) {
    if (m_bar) showStopped();
    errors()->say(error);
}

void AuditPage::showLooked(const std::vector<record::UseLine>& log) { m_looked->show(log); }

void AuditPage::showResult(const proof::Report& result) {
    setRunning(false);
    m_progress = nullptr;
    m_bar = nullptr;
    empty(m_result);
    const bool isWrong = result.isWrong();
    auto* verdict =
        text((isWrong ? QStringLiteral("▲  ") : QStringLiteral("✓  ")) + auditVerdict(result),
             Size::Lead, isWrong ? Tone::Brick : Tone::Leaf, Weight::Strong);
    verdict->setObjectName(QStringLiteral("audit.verdict"));
    verdict->setAccessibleName(auditVerdict(result));
    m_result->addWidget(verdict);
    int listed = 0;
    for (const proof::Finding& one : result.findings) {
        if (++listed > mostShownFindings) break;
        const bool isErased = !proof::isWrong(one.kind);
        m_result->addWidget(
            text((isErased ? QStringLiteral("○  ") : QStringLiteral("▲  ")) + auditSentence(one),
                 Size::Body, isErased ? Tone::Ink : Tone::Brick));
    }
    const int more = static_cast<int>(result.findings.size()) - mostShownFindings;
    if (more > 0) m_result->addWidget(text(tr("And %n more.", nullptr, more)));
    m_result->addWidget(text(tr("Looked at:"), Size::Body, Tone::Quiet));
    for (const QString& line : auditLines(result))
        m_result->addWidget(text(QStringLiteral("•  ") + line));
    sayHead(result);
    QAccessibleEvent alert(verdict, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
    scrollToTop();
}

/// The head, and where nothing is wrong its letters: whoever keeps them elsewhere can show later
/// that nothing before was changed.
void AuditPage::sayHead(const proof::Report& result) {
    if (result.head.root.empty()) return;
    m_result->addWidget(text(tr("Head: %1 entries, %2")
                                 .arg(result.head.size)
                                 .arg(breakable(QString::fromStdString(result.head.root))),
                             Size::Note, Tone::Quiet));
    const auto letters = seal::paperLetters(result.head);
    if (result.isWrong() || !letters) return;
    m_result->addWidget(
        text(tr("To be kept by somebody elsewhere, and held against the record "
                "another time:")));
    auto* kept = text(QString::fromStdString(*letters).replace(QLatin1Char('\n'), QLatin1Char(' ')),
                      Size::Lead, Tone::Ink, Weight::Strong);
    kept->setObjectName(QStringLiteral("audit.letters"));
    kept->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    kept->setAccessibleName(tr("Letters of the record as it is now"));
    m_result->addWidget(kept);
}

}  // namespace ui
