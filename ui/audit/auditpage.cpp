// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/auditpage.h"

#include <QAccessible>
#include <QHeaderView>
#include <QHideEvent>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "audit/auditwords.h"
#include "parts/field.h"
#include "parts/parts.h"
#include "render/words.h"
#include "seal/papercode.h"
#include "text/reasontext.h"

namespace ui {
namespace {

constexpr int mostShownFindings = 200;  // more are counted, not listed
constexpr int mostSteps = 1000;         // of the bar

QTableWidget* logTable(const QString& objectName, const QString& name, const QStringList& heads) {
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()));
    table->setObjectName(objectName);
    table->setAccessibleName(name);
    table->setHorizontalHeaderLabels(heads);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setWordWrap(true);
    return table;
}

void fillLogRow(QTableWidget* table, int row, const QStringList& words) {
    for (int column = 0; column < words.size(); ++column)
        table->setItem(row, column, new QTableWidgetItem(words[column]));
}

QString whenUsed(const record::Used& used) {
    return render::momentWords(used.atMs, used.offsetMinutes, QLocale()) + QStringLiteral(" ") +
           render::offsetWords(used.offsetMinutes);
}

}  // namespace

AuditPage::AuditPage(QWidget* parent)
    : Page(QStringLiteral("audit"), parent),
      m_paper(new WordsField(
          tr("Letters from a paper, or kept by somebody elsewhere"), QStringLiteral("audit.paper"),
          Must::MayStayEmpty,
          tr("They are held against the record. On a paper they stand beside its square code."))) {
    column()->addWidget(pageHeader(
        tr("Is the record whole?"),
        tr("Holds every entry against all others and against what is known from outside. What "
           "nobody outside ever knew of can be cut off unseen: keep papers and backups.")));
    cardIn(column(), {})->addWidget(m_paper);
    m_result = cardIn(column(), {});
    m_result->parentWidget()->setObjectName(QStringLiteral("audit.result"));
    addTables();
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("audit.back"));
    setPrimary(tr("Verify now"));
    addStop();
    connect(back, &QPushButton::clicked, this, &AuditPage::left);
    connect(this, &Page::pressed, this, [this] {
        errors()->clear();
        if (m_paper->check()) Q_EMIT verifyWanted(m_paper->typed());
    });
    begin();
}

void AuditPage::addTables() {
    QVBoxLayout* apart = cardIn(column(), tr("Opened by somebody with no part in it"),
                                tr("Who opens a record with no part in it is asked why. Whether "
                                   "what they say holds is for people to say. While a visit of the "
                                   "patient is open nobody is asked: who opened the record then "
                                   "stands only in the list below."));
    m_noneBroken =
        text(tr("So far nobody was asked why they open a record."), Size::Body, Tone::Quiet);
    m_broken = logTable(QStringLiteral("audit.broken"), tr("Opened by somebody with no part in it"),
                        {tr("When"), tr("Who"), tr("Of whom"), tr("Why")});
    m_broken->setMinimumHeight(160);
    apart->addWidget(m_noneBroken);
    apart->addWidget(m_broken);
    QVBoxLayout* card = cardIn(column(), tr("Who looked at and printed what"));
    m_nobody = text(tr("Nothing was looked at yet. Every sign-in, every record that is opened and "
                       "every paper that is made will stand here."),
                    Size::Body, Tone::Quiet);
    m_table = logTable(QStringLiteral("audit.looked"), tr("Who looked at and printed what"),
                       {tr("When"), tr("Who"), tr("Did what"), tr("Of whom")});
    m_table->setMinimumHeight(280);
    card->addWidget(m_nobody);
    card->addWidget(m_table);
    showLooked({});
}

void AuditPage::addStop() {
    m_stop = addSecondary(tr("Cancel"), QStringLiteral("audit.stop"));
    m_stop->hide();
    connect(m_stop, &QPushButton::clicked, this, &AuditPage::stopWanted);
}

void AuditPage::begin() {
    errors()->clear();
    m_paper->setWords({});
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

namespace {

/// With places where a line may end: at large text one word of 64 letters would widen the page.
QString breakable(const std::string& letters) {
    constexpr qsizetype group = 8;
    QString whole = QString::fromStdString(letters);
    for (qsizetype at = whole.size() / group * group; at > 0; at -= group)
        if (at < whole.size()) whole.insert(at, QChar(0x200b));
    return whole;
}

}  // namespace

/// The head, and where nothing is wrong its letters: whoever keeps them elsewhere can show later
/// that nothing before was changed.
void AuditPage::sayHead(const proof::Report& result) {
    if (result.head.root.empty()) return;
    m_result->addWidget(
        text(tr("Head: %1 entries, %2").arg(result.head.size).arg(breakable(result.head.root)),
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

void AuditPage::showLooked(const std::vector<record::UseLine>& log) {
    m_nobody->setVisible(log.empty());
    m_table->setVisible(!log.empty());
    m_table->setRowCount(static_cast<int>(log.size()));
    int row = 0;
    for (const record::UseLine& one : log)
        fillLogRow(m_table, row++,
                   {whenUsed(one.used), render::plain(one.who), useWords(one.used.said),
                    render::plain(one.whose)});
    m_table->resizeRowsToContents();
    if (!log.empty()) m_table->setCurrentCell(0, 0);
    showBroken(log);
}

void AuditPage::showBroken(const std::vector<record::UseLine>& log) {
    m_broken->setRowCount(0);
    for (const record::UseLine& one : log) {
        if (one.used.said.what != record::Use::BreakGlass) continue;
        const QString why = ReasonText::of(one.used.said.reason);
        const int row = m_broken->rowCount();
        m_broken->insertRow(row);
        fillLogRow(m_broken, row,
                   {whenUsed(one.used), render::plain(one.who), render::plain(one.whose),
                    why.isEmpty() ? tr("Nobody gave a reason") : why});
    }
    m_broken->resizeRowsToContents();
    m_broken->setVisible(m_broken->rowCount() > 0);
    m_noneBroken->setVisible(m_broken->rowCount() == 0);
    if (m_broken->rowCount() > 0) m_broken->setCurrentCell(0, 0);
}

}  // namespace ui
