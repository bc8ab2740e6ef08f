// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/paperspage.h"

#include <QClipboard>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include "dialogs/ask.h"
#include "papers/paperview.h"
#include "parts/field.h"
#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "print/printing.h"
#include "text/errortext.h"

namespace ui {

PapersPage::PapersPage(desk::Desk& desk, Settings& settings, QWidget* parent)
    : Page(QStringLiteral("papers"), parent), m_desk(desk), m_settings(settings) {
    m_copy = addSecondary(tr("Copy the chart note (F7)"), QStringLiteral("papers.copy"));
    m_print = addSecondary(tr("Print"), QStringLiteral("papers.print"));
    setPrimary(tr("Save as PDF"));
    auto* key = new QShortcut(QKeySequence(Qt::Key_F7), this);
    key->setContext(Qt::WidgetWithChildrenShortcut);
    connect(key, &QShortcut::activated, this, &PapersPage::copyNote);
    connect(m_copy, &QPushButton::clicked, this, &PapersPage::copyNote);
    connect(m_print, &QPushButton::clicked, this, &PapersPage::printIt);
    connect(this, &Page::pressed, this, &PapersPage::saveIt);
}

record::PaperKind PapersPage::kind() const {
    return base::valueOf<record::PaperKind>(m_kind->word().toStdString())
        .value_or(record::PaperKind::Chart);
}

render::PageKind PapersPage::pageKind() const {
    return m_settings.words(Setting::PaperSize) == QLatin1String("Letter")
               ? render::PageKind::Letter
               : render::PageKind::A4;
}

void PapersPage::showKind(record::PaperKind wanted) {
    m_wanted = wanted;
    refresh();
}

void PapersPage::refresh() {
    const KeptFocus kept(this);
    clear();
    errors()->clear();
    m_kind = nullptr;
    m_view = nullptr;
    m_made.reset();
    column()->addWidget(pageHeader(tr("Papers"), tr("Look first. What leaves here is written "
                                                    "into the record as issued.")));
    const bool canMake = makePaper(m_desk, record::PaperKind::ChartNote, pageKind()).has_value();
    for (QPushButton* button : {m_copy, m_print, primary()}) button->setEnabled(canMake);
    if (!canMake) {
        auto* nobody =
            new EmptyState(tr("No papers yet"),
                           tr("Here will be the chart record, the certificate, and a note to copy, "
                              "once a learner is chosen and has had a visit."),
                           tr("To the learners"), QStringLiteral("papers.toLearners"));
        connect(nobody, &EmptyState::pressed, this, &PapersPage::wantsPerson);
        column()->addWidget(nobody);
        return;
    }
    addChoices();
    preview();
}

void PapersPage::addChoices() {
    using record::PaperKind;
    const bool isCertified = makePaper(m_desk, PaperKind::Certificate, pageKind()).has_value();
    std::vector<Option> kinds;
    for (const PaperKind one :
         {PaperKind::Chart, isCertified ? PaperKind::Certificate : PaperKind::GoingHomeWithHelp,
          PaperKind::Steps, PaperKind::ChartNote})
        kinds.push_back({QString::fromStdString(base::nameOf(one)), paperTitle(one)});
    m_kind = new Choice(QStringLiteral("paperKind"), Pick::One, kinds);
    m_kind->choose(QString::fromStdString(base::nameOf(m_wanted)));
    if (m_kind->word().isEmpty()) m_kind->choose(kinds.front().word);
    m_size =
        new Choice(QStringLiteral("paperSize"), Pick::One,
                   {{QStringLiteral("A4"), tr("A4")}, {QStringLiteral("Letter"), tr("US Letter")}});
    m_size->choose(m_settings.words(Setting::PaperSize));
    // Side by side where there is room, for the paper itself is what is looked at.
    auto* choices = new FlowLayout(nullptr, 48);
    choices->addWidget(new Field(tr("Paper"), m_kind));
    choices->addWidget(new Field(tr("Size"), m_size));
    column()->addLayout(choices);
    if (!isCertified)
        column()->addWidget(text(tr("There is no certificate while the rules say not yet or a "
                                    "signature is missing."),
                                 Size::Note, Tone::Quiet));
    m_done = text({}, Size::Body, Tone::Leaf, Weight::Strong);
    m_done->setObjectName(QStringLiteral("papers.done"));
    m_done->hide();
    column()->addWidget(m_done);
    m_note = new QPlainTextEdit;
    m_note->setObjectName(QStringLiteral("chartNote"));
    m_note->setAccessibleName(tr("Chart note"));
    m_note->setReadOnly(true);
    m_note->setTabChangesFocus(true);
    m_note->setMinimumHeight(420);
    column()->addWidget(m_note);
    m_undecided = new EmptyState(tr("Not decided yet"),
                                 tr("This paper says who does the next change, when, and whom to "
                                    "call. Nobody has written that down."),
                                 tr("Write it down"), QStringLiteral("papers.toHelp"));
    connect(m_undecided, &EmptyState::pressed, this, &PapersPage::wantsHelpForm);
    m_undecided->hide();
    column()->addWidget(m_undecided);
    m_view = new PaperView;
    column()->addWidget(m_view, 0, Qt::AlignHCenter);
    connect(m_kind, &Choice::changed, this, &PapersPage::preview);
    connect(m_size, &Choice::changed, this, [this] {
        m_settings.set(Setting::PaperSize, m_size->word());
        preview();
    });
}

void PapersPage::preview() {
    m_wanted = kind();
    m_made = makePaper(m_desk, m_wanted, pageKind());
    // What could be made when the choices were put here may be too old by now.
    if (!m_made && m_wanted == record::PaperKind::Certificate) return refresh();
    m_done->hide();
    const bool isNote = m_wanted == record::PaperKind::ChartNote;
    m_note->setVisible(isNote);
    m_note->setPlainText(m_made ? m_made->note : QString());
    m_view->show(m_made ? m_made->pages : std::nullopt);
    fitView();
    const bool hasPages = m_made && m_made->pages;
    m_undecided->setVisible(m_wanted == record::PaperKind::GoingHomeWithHelp && !hasPages);
    m_view->setVisible(hasPages);
    m_print->setEnabled(hasPages);
    primary()->setEnabled(hasPages);
}

/// As wide as there is room for, up to a page of paper at its own size.
void PapersPage::fitView() {
    if (m_view == nullptr) return;
    m_view->setMinimumWidth(std::min(820, std::max(400, width() - 120)));
    m_view->setFixedHeight(m_view->heightForWidth(m_view->minimumWidth()));
}

void PapersPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    fitView();
}

bool PapersPage::issueIt() {
    if (!m_made || !errors()->took(issue(m_desk, *m_made))) return false;
    m_view->show(m_made->pages);
    return true;
}

void PapersPage::printIt() {
    m_done->hide();
    if (!m_made || !m_made->pages) return;
    // Whoever leaves the dialog leaves no paper behind, so nothing was issued either.
    const auto printer = print::ask(pageKind(), this);
    if (!printer || !issueIt()) return;
    const auto printed = print::on(*printer, *m_made->pages);
    if (!printed)
        return errors()->sayWords(
            tr("Recorded as issued, but not printed. %1").arg(ErrorText::of(printed.error())));
    noteUse(record::Use::Printed);
    m_done->setText(tr("✓  Printed and noted in the record."));
    m_done->show();
}

void PapersPage::saveIt() {
    m_done->hide();
    if (!m_made || !m_made->pages) return;
    // The proposed name says the kind alone: folders are seen by others.
    const QString folder = m_settings.words(Setting::PaperFolder);
    const QString name = QString::fromStdString(base::nameOf(m_wanted)) + QStringLiteral(".pdf");
    const auto path = ask::saveAs(this, tr("Save as PDF"),
                                  QDir(folder.isEmpty() ? QDir::homePath() : folder).filePath(name),
                                  tr("PDF (*.pdf)"));
    if (!path || !issueIt()) return;
    const auto saved = m_made->pages->writePdf(*path);
    if (!saved)
        return errors()->sayWords(
            tr("Recorded as issued, but not saved. %1").arg(ErrorText::of(saved.error())));
    noteUse(record::Use::Saved);
    m_settings.set(Setting::PaperFolder, QFileInfo(*path).absolutePath());
    m_done->setText(tr("✓  Saved as %1 and noted in the record.").arg(QFileInfo(*path).fileName()));
    m_done->show();
}

void PapersPage::noteUse(record::Use what) { m_desk.noteUse(what, base::nameOf(m_wanted)); }

void PapersPage::copyNote() {
    auto note = makePaper(m_desk, record::PaperKind::ChartNote, pageKind());
    if (!note || !errors()->took(issue(m_desk, *note))) return;
    QGuiApplication::clipboard()->setText(note->note);
    if (m_note) m_note->setPlainText(note->note);
    m_desk.noteUse(record::Use::Exported, base::nameOf(record::PaperKind::ChartNote));
    if (!m_done) return;
    m_done->setText(tr("✓  The chart note is copied and noted in the record."));
    m_done->show();
}

}  // namespace ui
